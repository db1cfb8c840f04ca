// Tests: a sheet as it is typed. In: a text of lines. Out: rows of cells, and its formulas.

/**
 * A line is a row, ` | ` parts its cells, `-` alone is a blank row; lines are trimmed. A cell that starts with `=` is a
 * formula in English: it stands apart, since a program takes none from a text.
 */
export function readTyped(text) {
  const rows = text
    .trim()
    .split('\n')
    .map((line) => (line.trim() === '-' ? [''] : line.split('|').map((cell) => cell.trim())));
  const formulas = [];
  for (const [at, row] of rows.entries()) {
    for (const [column, cell] of row.entries()) {
      if (!cell.startsWith('=')) continue;
      formulas.push({ cell: `${String.fromCharCode(65 + column)}${at + 1}`, formula: cell });
    }
  }
  return { rows, formulas };
}
