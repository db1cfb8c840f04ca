// How long the texts are that regular expressions are let loose on: those that go back and forth take the square of it.

/** Runs something, and gives the length of the longest text that any regular expression was asked about on the way. */
export function longestSearched(run: () => void): number {
  const { exec } = RegExp.prototype;
  let longest = 0;
  // test, replace, split and search all go through exec (ECMA-262, RegExpExec).
  RegExp.prototype.exec = function (this: RegExp, text: string) {
    longest = Math.max(longest, String(text).length);
    return exec.call(this, text);
  };
  try {
    run();
  } finally {
    RegExp.prototype.exec = exec;
  }
  return longest;
}
