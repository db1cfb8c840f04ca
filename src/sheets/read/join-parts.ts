// Readers: files or worksheets that are parts of one sheet. In: their grids. Out: those that count, and what is to be said of them.
import { problem } from '../../problems/catalogue.js';
import type { FoundProblem, Grid } from './grid.js';

export interface Part {
  /** Of the file or worksheet. */
  readonly name: string;
  readonly grid: Grid;
}

/** Parts of one sheet in one folder or workbook; of two that hold the same the first counts, and both are named. */
export function joinParts(parts: readonly Part[]): {
  readonly grids: readonly Grid[];
  readonly problems: readonly FoundProblem[];
} {
  const [first] = parts;
  if (first === undefined) return { grids: [], problems: [] };
  const { sheet, file } = first.grid;
  const seen = new Map<string, Part>();
  const problems: FoundProblem[] = [];
  for (const part of parts) {
    const cells = JSON.stringify(part.grid.rows.map((row) => row.cells));
    const before = seen.get(cells);
    if (before === undefined) seen.set(cells, part);
    else {
      const found = `${before.name}, ${part.name}`;
      problems.push(problem('two-of-one-sheet', { file }, { found, expected: sheet }));
    }
  }
  const kept = [...seen.values()];
  const found = kept.map(({ name }) => `"${name}"`).join(', ');
  const said = problem('sheet-of-parts', { file, sheet }, { found, expected: sheet });
  return { grids: kept.map(({ grid }) => grid), problems: [...problems, said] };
}
