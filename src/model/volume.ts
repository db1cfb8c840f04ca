// Model: when two volumes are the same. In: nothing. Out: the difference that no stage looks at.

/** Volumes nearer than this, in ml, are the same: far below a drop (0.05 ml), far above the rounding of long sums. */
export const sameMl = 1e-6;
