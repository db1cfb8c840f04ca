// Checks: names as they are compared. In: a name as written. Out: its tidy spelling, and its key.

const tidyAlready = /^[!-~]+(?: [!-~]+)*$/;

/** Unicode NFC, without outer blanks, inner ones single. Plain ASCII, the usual case, is told at a glance. */
export function tidyName(written: string): string {
  return tidyAlready.test(written) ? written : written.normalize('NFC').replace(/\s+/g, ' ').trim();
}

/** Two names are the same when their keys are: case, outer and repeated blanks and Unicode form do not count. */
export function foldName(written: string): string {
  return tidyName(written).toLowerCase();
}
