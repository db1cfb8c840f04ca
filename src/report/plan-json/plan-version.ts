// plan.json: its version. In: nothing. Out: a number.

/** Raised whenever a key changes its meaning or goes; new keys alone do not raise it. */
export const planVersion = 3;
