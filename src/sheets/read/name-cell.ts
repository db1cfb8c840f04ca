// Readers: spreadsheet addresses. In: column and row numbers from 1. Out: `B14`, and back.

/** Column letters as a spreadsheet shows them: 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** The other way round: A is 1, AA is 27. No letters give 0. */
export function columnNumber(letters: string): number {
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column;
}

/** Address of a cell, e.g. `B14` for column 2 of row 14. */
export function cellAddress(column: number, row: number): string {
  return `${columnLetters(column)}${row}`;
}
