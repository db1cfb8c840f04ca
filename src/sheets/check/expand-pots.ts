// Checks: how many pots a row of the pots sheet is. In: the row. Out: one size, and what is left in each; counts that do not
// agree are told.
import type { OneReading } from './read-cell/read-left.js';
import type { RowIn, SheetOf } from './read-rows.js';

type Row = RowIn<'pots'>;

export interface RowOfPots {
  readonly sizeMl: number | undefined;
  /** One for each pot; undefined where nothing is said. */
  readonly lefts: readonly (OneReading | undefined)[];
}

/** A row that says two numbers of pots has none; one that says nothing has one. */
export function expandPots(sheet: SheetOf<'pots'>, row: Row): RowOfPots {
  const { sizeMl: size, left, count } = row;
  const ofSize = typeof size === 'object' ? size.count : undefined;
  const ofLeft = left?.how === 'several' ? left.of.length : undefined;
  const said = (
    [
      ['count', count],
      ['sizeMl', ofSize],
      ['left', ofLeft],
    ] as const
  ).flatMap(([key, pots]) => (pots === undefined ? [] : [{ key, pots }]));
  const [first, ...others] = said;
  const other = others.find(({ pots }) => pots !== first?.pots);
  if (first !== undefined && other !== undefined)
    sheet.blame('pots-of-two-counts', row, other.key, { expected: sheet.text(row, first.key) });
  const isUnknown = other !== undefined || row.bad.includes('count');
  const pots = isUnknown ? 0 : (first?.pots ?? 1);
  return {
    sizeMl: typeof size === 'object' ? size.ml : size,
    lefts:
      left?.how === 'several' && pots > 0
        ? left.of
        : Array<OneReading | undefined>(pots).fill(left?.how === 'several' ? undefined : left),
  };
}
