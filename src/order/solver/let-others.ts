// Solver: a turn for those who wait. In: nothing. Out: a promise, kept once what threads have found was heard of.

/** For work in this thread that is long and made of many pieces: between two of them a thread is given its next question. */
export const letOthers = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
