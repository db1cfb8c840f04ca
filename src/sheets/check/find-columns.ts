// Checks: which column of a table holds what. In: a table. Out: the place of each known column, and headers in doubt.
import type { Problem } from '../../model/problem.js';
import type { SheetName } from '../../model/words.js';
import { type ProblemCode, problem } from '../../problems/catalogue.js';
import { type Column, columns } from '../columns.js';
import { headerKey } from '../match-header.js';
import { cellAddress } from '../read/name-cell.js';
import type { Table } from '../table.js';
import { isSlip } from './find-nearest.js';

interface Found {
  /** By the key of a known header: where its column stands, counted from 0. */
  readonly indexes: ReadonlyMap<string, number>;
  readonly problems: readonly Problem<ProblemCode>[];
}

/** The index of each known column. The first of two alike counts; the readers have named the second. */
export function findColumns(table: Table): Found {
  const indexes = new Map<string, number>();
  const known = new Map(columns[table.sheet].map((column) => [headerKey(column.header), column]));
  const strange: number[] = [];
  for (const [index, header] of table.headers.entries()) {
    const key = headerKey(header);
    if (!known.has(key)) strange.push(index);
    else if (!indexes.has(key)) indexes.set(key, index);
  }
  const absent = [...known].filter(([key]) => !indexes.has(key)).map(([, column]) => column);
  const nearby = nearHeaders(table, strange, absent);
  return {
    indexes,
    problems: [...missingColumns(table, absent, nearby), ...questioned(table, absent, nearby)],
  };
}

/** For an absent column, the index of a header that may be meant for it. */
function nearHeaders(
  table: Table,
  strange: readonly number[],
  absent: readonly Column[],
): Map<Column, number> {
  const nearby = new Map<Column, number>();
  for (const index of strange) {
    const header = table.headers[index] ?? '';
    const column = absent.find((one) => !nearby.has(one) && isNear(header, one.header));
    if (column !== undefined) nearby.set(column, index);
  }
  return nearby;
}

const unit = /[\s_-]*(?:ml|mm|g|cm2|%|g\/ml)$/i;

/** One or two letters apart, by length; or the known header without its unit: `size` for `size ml`. */
function isNear(written: string, known: string): boolean {
  const [key, wanted, bare] = [written, known, known.replace(unit, '')].map(headerKey);
  if (key === undefined || wanted === undefined || key === '') return false;
  return key === bare || isSlip(key, wanted);
}

/** One problem for a needed column that is missing, however many rows there are. */
function missingColumns(
  table: Table,
  absent: readonly Column[],
  nearby: Map<Column, number>,
): Problem<ProblemCode>[] {
  return absent
    .filter((column) => column.needed)
    .map((column) => {
      const near = table.headers[nearby.get(column) ?? -1] ?? '';
      const place = { file: table.file, sheet: table.sheet, column: column.header };
      return problem('missing-column', place, { expected: near });
    });
}

function questioned(
  table: Table,
  absent: readonly Column[],
  nearby: Map<Column, number>,
): Problem<ProblemCode>[] {
  return absent.flatMap((column) => {
    const index = nearby.get(column);
    if (column.needed || index === undefined) return [];
    const header = table.headers[index] ?? '';
    const place = { ...headerPlace(table, index), column: header };
    return [problem('near-column', place, { found: header, expected: column.header })];
  });
}

function headerPlace({ file, sheet, headerRow }: Table, index: number) {
  return { file, sheet, row: headerRow, cell: cellAddress(index + 1, headerRow) };
}

/** What a cell of a column takes, for a problem: its example of the column list. */
export function exampleOf(sheet: SheetName, header: string): string {
  return columns[sheet].find((column) => column.header === header)?.example ?? '';
}

/** Whether a sheet can do without a column. */
export function isNeeded(sheet: SheetName, header: string): boolean {
  return columns[sheet].some((column) => column.header === header && column.needed);
}
