// Checks: which column of a table holds what. In: a table. Out: the place of each known column, and headers in doubt.
import type { Problem } from '../../model/problem.js';
import type { ColumnRead } from '../../model/sheets.js';
import { type ProblemCode, problem } from '../../problems/catalogue.js';
import type { Column } from '../columns/column.js';
import { columns } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import { columnMeant, type HeaderCurrency, isSettled } from '../spell-headers.js';
import { headerPlace, type Table } from '../table.js';
import { joinOr } from './find-nearest.js';
import { isWanted, likelyColumns } from './likely-columns.js';
import { isNote, nearHeaders } from './near-headers.js';
import type { CellKind, Money } from './read-cell/cell-kind.js';

interface Found {
  /** By the key of a known header: where its column stands, counted from 0. */
  readonly indexes: ReadonlyMap<string, number>;
  readonly problems: readonly Problem<ProblemCode>[];
  readonly read: readonly ColumnRead[];
}

interface Placed {
  readonly indexes: Map<string, number>;
  /** Headers that name no column. */
  readonly strange: number[];
  readonly problems: Problem<ProblemCode>[];
}

/**
 * The index of each known column. The first of two alike counts; the readers have named the second. `kinds` says by header
 * how cells are read; a currency in a header of prices has to be that of their kind, if it has any.
 */
export function findColumns(table: Table, kinds: ReadonlyMap<string, CellKind<unknown>>): Found {
  const money = [...kinds.values()].find((kind) => kind.money !== undefined)?.money;
  const placed: Placed = { indexes: new Map(), strange: [], problems: [] };
  const priced = placePlain(table, placed);
  placePriced(table, priced, { placed, money });
  placeModels(table, placed.indexes);
  const { indexes, strange, problems } = placed;
  const absent = columns[table.sheet].filter(({ header }) => !indexes.has(headerKey(header)));
  const open = strange.filter((index) => !isSettled(table, table.headers[index] ?? ''));
  const nearby = nearHeaders(table.headers, open, absent);
  const own = open.filter((index) => isOwn(table.headers[index] ?? ''));
  const unasked = { own: own.filter((index) => ![...nearby.values()].includes(index)), nearby, absent };
  const likely = findLikely(table, { ...unasked, indexes, kinds });
  return {
    indexes,
    read: listRead(table, indexes, [...[...nearby].map(([column, index]) => ({ column, index })), ...likely]),
    problems: [
      ...problems,
      ...missingColumns(table, absent.filter(isMissed(indexes)), { nearby, likely }),
      ...questioned(table, absent, nearby),
      ...maybeMeant(table, likely, absent),
    ],
  };
}

type Asked = readonly { readonly column: Column; readonly index: number }[];

function listRead(table: Table, indexes: ReadonlyMap<string, number>, asked: Asked): ColumnRead[] {
  const { sheet, headers } = table;
  const own = new Map(columns[sheet].map(({ header }) => [headerKey(header), header]));
  const byIndex = new Map([...indexes].map(([key, index]) => [index, own.get(key)]));
  const maybes = new Map(asked.toReversed().map(({ column, index }) => [index, column.header]));
  return headers.flatMap((header, index): ColumnRead[] => {
    if (header.trim() === '') return [];
    const column = byIndex.get(index);
    const maybe = maybes.get(index);
    const meant = columnMeant({ sheet }, header);
    const isOwn = meant?.isOwn === true && column !== undefined && headerKey(column) === meant.key;
    return [{ header, isOwn, ...(column && { column }), ...(maybe && { maybe }) }];
  });
}

/** Of the painter's own, and no note. */
const isOwn = (header: string): boolean => header.trim() !== '' && !isNote(header);

interface Unasked {
  /** Headers of the painter's own that nothing is asked about. */
  readonly own: readonly number[];
  readonly nearby: ReadonlyMap<Column, number>;
  readonly absent: readonly Column[];
  readonly indexes: ReadonlyMap<string, number>;
  readonly kinds: ReadonlyMap<string, CellKind<unknown>>;
}

type Likely = ReturnType<typeof likelyColumns>;

/** A column that is blank on every row is as good as absent. */
function findLikely(table: Table, { own, nearby, absent, indexes, kinds }: Unasked): Likely {
  if (own.length === 0) return [];
  const isBlank = ({ header }: Column): boolean => {
    const index = indexes.get(headerKey(header)) ?? -1;
    return table.rows.every(({ cells }) => (cells[index] ?? '') === '');
  };
  const wanted = columns[table.sheet].flatMap((column) => {
    const kind = kinds.get(column.header);
    if (kind === undefined || !isWanted(column) || nearby.has(column)) return [];
    const isThere = !absent.includes(column);
    return isThere && (column.needed || !isBlank(column)) ? [] : [{ column, kind, isThere }];
  });
  return likelyColumns(table, own, wanted);
}

function maybeMeant(table: Table, likely: Likely, absent: readonly Column[]): Problem<ProblemCode>[] {
  return likely.flatMap(({ index, column }) => {
    if (column.needed) return [];
    const details = { found: column.blank?.means ?? '', expected: column.header };
    const code = absent.includes(column) ? 'column-maybe-meant' : 'blank-column-maybe-meant';
    return [problem(code, headerPlace(table, index), details)];
  });
}

/** A header of prices that names a currency. */
interface Priced extends HeaderCurrency {
  readonly key: string;
  readonly index: number;
}

/** A column's own name comes before any other that it is called by. Gives back the headers that name a currency. */
function placePlain(table: Table, { indexes, strange }: Placed): Priced[] {
  const priced: Priced[] = [];
  const others: { readonly key: string; readonly index: number }[] = [];
  for (const [index, header] of table.headers.entries()) {
    const meant = columnMeant(table, header);
    if (meant === undefined) strange.push(index);
    else if (meant.currency !== undefined) priced.push({ key: meant.key, index, ...meant.currency });
    else if (!meant.isOwn) others.push({ key: meant.key, index });
    else if (!indexes.has(meant.key)) indexes.set(meant.key, index);
  }
  for (const { key, index } of others) {
    if (indexes.has(key)) strange.push(index);
    else indexes.set(key, index);
  }
  return priced;
}

const fileName = /\.\w{2,4}\s*(?:,|$)/;

/** Where no column is called figure, and that called model names no file, that holds the figures. */
function placeModels({ sheet, rows }: Table, indexes: Map<string, number>): void {
  const index = indexes.get('model');
  if (sheet !== 'figures' || index === undefined || indexes.has('figure')) return;
  if (rows.some(({ cells }) => fileName.test(String(cells[index] ?? '')))) return;
  indexes.delete('model');
  indexes.set('figure', index);
}

/**
 * A plain `price` comes first, then `price EUR` where prices are in euros. Only where neither is there is a foreign
 * currency a problem: beside them it is a column of the painter's own.
 */
function placePriced(
  table: Table,
  priced: readonly Priced[],
  { placed, money }: { readonly placed: Placed; readonly money: Money | undefined },
): void {
  const { indexes, strange, problems } = placed;
  const isOwn = ({ sign }: Priced): boolean => money?.isOwn(sign.toLowerCase()) ?? true;
  for (const one of [...priced.filter(isOwn), ...priced.filter((other) => !isOwn(other))]) {
    const isOnly = !indexes.has(one.key) && (isOwn(one) || one.isSure);
    if (isOnly) indexes.set(one.key, one.index);
    else strange.push(one.index);
    const details = { found: one.sign, expected: money?.currency ?? '' };
    if (isOnly && !isOwn(one))
      problems.push(problem('other-currency', headerPlace(table, one.index), details));
  }
  strange.sort((a, b) => a - b);
}

/** Headers that one missing column may have. */
const mostNamed = 3;

const isMissed =
  (indexes: ReadonlyMap<string, number>) =>
  ({ needed, unless }: Column): boolean =>
    needed && (unless === undefined || !indexes.has(headerKey(unless)));

/** One problem for a needed column that is missing, however many rows there are. */
function missingColumns(
  table: Table,
  absent: readonly Column[],
  { nearby, likely }: { readonly nearby: ReadonlyMap<Column, number>; readonly likely: Likely },
): Problem<ProblemCode>[] {
  return absent.map((column) => {
    const near = nearby.get(column);
    const meant = likely.filter((one) => one.column === column).map(({ index }) => index);
    const headers = (near === undefined ? meant : [near]).map((index) => `"${table.headers[index] ?? ''}"`);
    const place = { file: table.file, sheet: table.sheet, column: column.header };
    return problem('missing-column', place, { expected: joinOr(headers.slice(0, mostNamed)) });
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
    const details = { found: table.headers[index] ?? '', expected: column.header };
    return [problem('near-column', headerPlace(table, index), details)];
  });
}
