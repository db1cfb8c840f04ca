// Checks: what swaps make of the schemes and of one another. In: swaps, schemes, paints. Out: nothing; circles, repeats,
// other kinds and swaps of what nobody uses are told.
import type { Paint } from '../../model/sheets.js';
import type { CheckedSchemes } from './check-schemes.js';
import { holdsAt, type SwapEntry, type SwapSheet } from './open-swaps.js';

interface Given {
  readonly paintOf: ReadonlyMap<string, Paint>;
  readonly schemes: CheckedSchemes;
}

/** Each row against the schemes and the rows before it. */
export function checkSwapsTogether(
  sheet: SwapSheet,
  entries: readonly SwapEntry[],
  { paintOf, schemes }: Given,
): void {
  const isSpoilt = schemes.sheet.findings.problems.some(
    (one) => one.sheet === 'schemes' && one.severity === 'error',
  );
  const used = isSpoilt ? [] : listUses(schemes);
  const before: SwapEntry[] = [];
  for (const entry of entries) {
    if (!tellRepeat(sheet, entry, before) && !tellCircle(sheet, entry, before) && !isSpoilt) {
      checkUse(sheet, entry, { used, entries, paintOf });
    }
    before.push(entry);
  }
}

interface Use {
  readonly scheme: string;
  readonly step: number;
  readonly paint: string;
}

function listUses({ schemes }: CheckedSchemes): readonly Use[] {
  return [...schemes.values()].flatMap(({ scheme, steps }) =>
    steps.flatMap(({ step, paints }) => paints.map(({ paint }) => ({ scheme, step, paint }))),
  );
}

function tellRepeat(sheet: SwapSheet, { row, ...swap }: SwapEntry, before: readonly SwapEntry[]): boolean {
  const same = before.find(
    ({ scheme, step, paint }) => scheme === swap.scheme && step === swap.step && paint === swap.paint,
  );
  if (same !== undefined) sheet.blame('swap-repeated', row, 'instead', { expected: `row ${same.row.row}` });
  return same !== undefined;
}

/**
 * Follows what is used instead from row to row, where both can hold for one step. A circle is told at the row that
 * closes it, which is the last of its rows.
 */
function tellCircle(sheet: SwapSheet, entry: SwapEntry, before: readonly SwapEntry[]): boolean {
  const way = entry.paint === undefined ? undefined : findWay(entry, entry.paint, before);
  if (way === undefined) return false;
  const found = [entry.paint, ...way].join(', ');
  sheet.blame('swap-circle', entry.row, 'instead', { found: `${found}, ${entry.paint}` });
  return true;
}

/** The paints by which rows lead from what `from` uses instead back to `target`; undefined where none do. */
function findWay(from: SwapEntry, target: string, rows: readonly SwapEntry[]): readonly string[] | undefined {
  const met = new Set([from.instead]);
  const open: { readonly at: SwapEntry; readonly way: readonly string[] }[] = [
    { at: from, way: [from.instead] },
  ];
  for (let next = open.shift(); next !== undefined; next = open.shift()) {
    const { at, way } = next;
    for (const row of rows) {
      if (row.paint !== at.instead || !canMeet(row, from)) continue;
      if (row.instead === target) return way;
      if (met.has(row.instead)) continue;
      met.add(row.instead);
      open.push({ at: row, way: [...way, row.instead] });
    }
  }
  return undefined;
}

/** Whether there can be a step for which both rows hold. */
function canMeet(one: SwapEntry, other: SwapEntry): boolean {
  const agree = <T>(a: T | undefined, b: T | undefined) => a === undefined || b === undefined || a === b;
  return agree(one.scheme, other.scheme) && agree(one.step, other.step);
}

interface Beside {
  readonly used: readonly Use[];
  readonly entries: readonly SwapEntry[];
  readonly paintOf: ReadonlyMap<string, Paint>;
}

function checkUse(sheet: SwapSheet, entry: SwapEntry, { used, entries, paintOf }: Beside): void {
  const { row, paint, instead } = entry;
  const uses = used.filter((use) => holdsAt(entry, use) && (paint === undefined || use.paint === paint));
  const comesBySwap = entries.some(
    (other) => other !== entry && other.instead === paint && canMeet(other, entry),
  );
  if (uses.length === 0 && !comesBySwap && !row.bad.includes('step')) {
    if (!isUnknownStep(entry, used)) tellNoUse(sheet, entry);
    return;
  }
  const schemes = [...new Set(uses.map(({ scheme }) => scheme))];
  if (entry.step !== undefined && entry.scheme === undefined && schemes.length > 1)
    sheet.blame('swap-in-schemes', row, 'scheme', {
      found: String(entry.step),
      expected: schemes.slice(0, 4).join(', '),
    });
  const kind = paintOf.get(instead)?.kind;
  const replaced = [...new Set([paint ?? [], uses.map((use) => use.paint)].flat())];
  const other = replaced.find((name) => name !== instead && paintOf.get(name)?.kind !== kind);
  if (other === undefined) return;
  const expected = `${other} is a ${paintOf.get(other)?.kind ?? 'colour'}`;
  sheet.blame('swap-of-other-kind', row, 'instead', {
    found: `${instead} is a ${kind ?? 'colour'}`,
    expected,
  });
}

/** Told at the step already. */
const isUnknownStep = ({ scheme, step }: SwapEntry, used: readonly Use[]): boolean =>
  scheme !== undefined &&
  step !== undefined &&
  !used.some((use) => use.scheme === scheme && use.step === step);

function tellNoUse(sheet: SwapSheet, { row, step, paint }: SwapEntry): void {
  if (paint === undefined) sheet.blame('swap-without-use', row, 'step', { found: `a step ${step}` });
  else sheet.blame('swap-without-use', row, 'paint', { found: `the paint "${paint}"` });
}
