// Sheets: how many rows all of them may have together, as written or written out.

/** What is checked and kept of a row takes two kilobytes at the most. */
export const mostRows = 150_000;
