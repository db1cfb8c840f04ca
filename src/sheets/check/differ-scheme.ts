// Checks: what a scheme has otherwise than the one that it begins like. In: the rows of that one, and those that differ. Out: its
// rows as if written out; rows that change nothing, or that change one thing in two ways, are told.

import { groupBy } from '../../model/group-by.js';
import { foldName } from './fold-name.js';
import type { NameBook } from './keep-names.js';
import type { RowIn, SheetOf } from './read-rows.js';

export type SchemeSheet = SheetOf<'schemes'>;
export type SchemeRow = RowIn<'schemes'>;

interface Likeness {
  /** The row that says what it begins like. */
  readonly like: SchemeRow;
  /** Whole rows of that scheme. */
  readonly base: readonly SchemeRow[];
  /** Rows that differ; their zones are apart. */
  readonly rows: readonly SchemeRow[];
}

/** What a row is about: a blank holds for all. */
const selectors = ['step', 'zone', 'layer'] as const;
const values = ['coats', 'method', 'area', 'thin'] as const;

/** For a paint: the step is left out. */
export const leftOut = 'none';

/** Steps in their order, those that are new behind those of the same number. */
export function differ(
  sheet: SchemeSheet,
  { like, base, rows }: Likeness,
  zones: NameBook | undefined,
): readonly SchemeRow[] {
  const partsOf = (row: SchemeRow): Parts => {
    const zone = row.zone === undefined ? undefined : foldName(zones?.find(row.zone) ?? row.zone);
    return [row.step?.toString() ?? '', zone ?? '', row.layer ?? ''];
  };
  const differing = rows.filter((row) => row.bad.length === 0 && saysMore(row));
  const byParts = groupBy(differing, (row) => partsOf(row).join('\n'));
  const used = new Set<SchemeRow>();
  const kept = [...groupBy(base, (row) => partsOf(row).join('\n')).values()].flatMap((group) => {
    const [first] = group;
    const about =
      first === undefined ? [] : narrowings(partsOf(first)).flatMap((parts) => byParts.get(parts) ?? []);
    for (const row of about) used.add(row);
    return change(sheet, group, about);
  });
  const news = addSteps(
    sheet,
    differing.filter((row) => !used.has(row)),
    { like, base },
  );
  const { scheme } = like;
  return [...kept, ...news].map((row) => ({ ...row, scheme })).sort((a, b) => (a.step ?? 0) - (b.step ?? 0));
}

/** Step, zone and layer as they are compared; '' for a blank. */
type Parts = readonly [string, string, string];

/** All that a row may say to be about these, widest first; a row that says nothing is about nothing. */
const narrowings = ([step, zone, layer]: Parts): readonly string[] =>
  (
    [
      [step, '', ''],
      ['', zone, ''],
      ['', '', layer],
      [step, zone, ''],
      [step, '', layer],
      ['', zone, layer],
      [step, zone, layer],
    ] as const
  ).map((parts) => parts.join('\n'));

/** Whether two rows without a number, one below the other, are of one step: they come from one row, or are one mix. */
export function sharesStep(row: SchemeRow, above: SchemeRow): boolean {
  if (row.cells === above.cells) return true;
  const isMix = row.share !== undefined && above.share !== undefined && row.layer === above.layer;
  return isMix && foldName(row.zone ?? '') === foldName(above.zone ?? '');
}

/** Rows about nothing in the beginning are new steps; without a number they come last. */
function addSteps(
  sheet: SchemeSheet,
  rows: readonly SchemeRow[],
  { like, base }: Pick<Likeness, 'like' | 'base'>,
): readonly SchemeRow[] {
  let above: SchemeRow | undefined;
  let last = Math.max(0, ...base.slice(-1).map(({ step = 0 }) => step));
  return rows.flatMap((row) => {
    const isWhole = row.zone !== undefined && row.layer !== undefined && row.paint !== undefined;
    if (!isWhole) {
      sheet.blame('like-nothing', row, 'like', { found: like.like ?? '' });
      return [];
    }
    const isShared = above !== undefined && sharesStep(row, above);
    last = row.step ?? (isShared ? last : last + 1);
    above = row;
    return [{ ...row, step: last }];
  });
}

const saysMore = (row: SchemeRow): boolean =>
  [...selectors, ...values, 'paint' as const, 'share' as const].some((key) => row[key] !== undefined);

/** Rows alike in step, zone and layer, with the paints of the narrowest rows about them, and what those say besides. */
function change(
  sheet: SchemeSheet,
  group: readonly SchemeRow[],
  about: readonly SchemeRow[],
): readonly SchemeRow[] {
  const [first, ...others] = group;
  if (first === undefined || about.length === 0) return group;
  const narrowness = (row: SchemeRow): number => selectors.filter((key) => row[key] !== undefined).length;
  const painting = about.filter(({ paint }) => paint !== undefined);
  const most = Math.max(0, ...painting.map(narrowness));
  const [chosen, ...more] = painting.filter((row) => narrowness(row) === most);
  const isSame = (row: SchemeRow): boolean =>
    selectors.every((key) => (row[key] === undefined) === (chosen?.[key] === undefined));
  const other = more.find((row) => !isSame(row));
  if (chosen !== undefined && other !== undefined)
    sheet.blame('like-two-ways', other, 'paint', { expected: sheet.rowName(chosen) });
  const paints = chosen === undefined ? [] : [chosen, ...more.filter(isSame)];
  if (paints.some(({ paint }) => foldName(paint ?? '') === leftOut)) return [];
  const beside = about
    .filter(({ paint }) => paint === undefined)
    .toSorted((a, b) => narrowness(a) - narrowness(b));
  const begun = beside.reduce(withValues, first);
  if (paints.length === 0) return [begun, ...others];
  return paints.map((row) => {
    const { cells, part, bad, paint, share } = row;
    return { ...withValues(begun, row), row: row.row, cells, part, bad, paint, share };
  });
}

/** What a row says of coats, method, area and thinning, in place of what was said. */
function withValues(of: SchemeRow, row: SchemeRow): SchemeRow {
  const said = values.filter((key) => row[key] !== undefined).map((key) => [key, row[key]]);
  return { ...of, ...Object.fromEntries(said) };
}
