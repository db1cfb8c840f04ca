// Checks: what swaps make of the schemes and of one another. In: swaps, schemes, paints. Out: nothing; circles, repeats,
// other kinds and swaps of what nobody uses are told.
import type { Paint } from '../../model/sheets.js';
import type { CheckedSchemes } from './check-schemes.js';
import { hasErrors } from './collect-findings.js';
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
  const isSpoilt = hasErrors(schemes.sheet.findings, 'schemes');
  const used = isSpoilt ? [] : listUses(schemes);
  const before = new Map<string | undefined, SwapEntry[]>();
  for (const entry of entries) {
    const ofPaint = before.get(entry.paint) ?? [];
    before.set(entry.paint, ofPaint);
    if (!tellRepeat(sheet, entry, ofPaint) && !tellCircle(sheet, entry, before) && !isSpoilt) {
      checkUse(sheet, entry, { used, entries, paintOf, copyOf: schemes.copyOf });
    }
    ofPaint.push(entry);
  }
}

/** Rows above the one at hand, by the paint that they swap, in their order. */
type Before = ReadonlyMap<string | undefined, readonly SwapEntry[]>;

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

function tellRepeat(sheet: SwapSheet, { row, ...swap }: SwapEntry, ofPaint: readonly SwapEntry[]): boolean {
  const same = ofPaint.find(({ scheme, step }) => scheme === swap.scheme && step === swap.step);
  if (same !== undefined) sheet.blame('swap-repeated', row, 'instead', { expected: sheet.rowName(same.row) });
  return same !== undefined;
}

/**
 * Follows what is used instead from row to row, where both can hold for one step. A circle is told at the row that
 * closes it, which is the last of its rows.
 */
function tellCircle(sheet: SwapSheet, entry: SwapEntry, before: Before): boolean {
  const way = entry.paint === undefined ? undefined : findWay(entry, entry.paint, before);
  if (way === undefined) return false;
  sheet.blame('swap-circle', entry.row, 'instead', { found: nameSome([entry.paint ?? '', ...way]) });
  return true;
}

/** Paints of a circle that are named. */
const mostNamed = 12;

/** The paints of a circle, back to the first; of a long one the first and the last. */
function nameSome(paints: readonly string[]): string {
  const circle = [...paints, ...paints.slice(0, 1)];
  if (circle.length <= mostNamed) return circle.join(', ');
  return `${circle.slice(0, mostNamed / 2).join(', ')} ... ${circle.slice(-mostNamed / 2).join(', ')}`;
}

/** The paints by which rows lead from what `from` uses instead back to `target`; undefined where none do. */
function findWay(from: SwapEntry, target: string, before: Before): readonly string[] | undefined {
  const cameFrom = new Map<string, string | undefined>([[from.instead, undefined]]);
  // A map goes on to what is added while it is gone through: these are the paints still to be followed.
  for (const paint of cameFrom.keys()) {
    for (const row of before.get(paint) ?? []) {
      if (!canMeet(row, from)) continue;
      if (row.instead === target) return wayTo(paint, cameFrom);
      if (!cameFrom.has(row.instead)) cameFrom.set(row.instead, paint);
    }
  }
  return undefined;
}

function wayTo(paint: string, cameFrom: ReadonlyMap<string, string | undefined>): readonly string[] {
  const way: string[] = [];
  for (let at: string | undefined = paint; at !== undefined; at = cameFrom.get(at)) way.push(at);
  return way.reverse();
}

/** Whether there can be a step for which both rows hold. */
function canMeet(one: SwapEntry, other: SwapEntry): boolean {
  const agree = <T>(a: T | undefined, b: T | undefined) => a === undefined || b === undefined || a === b;
  return agree(one.scheme, other.scheme) && agree(one.step, other.step);
}

interface Beside extends Pick<CheckedSchemes, 'copyOf'> {
  readonly used: readonly Use[];
  readonly entries: readonly SwapEntry[];
  readonly paintOf: ReadonlyMap<string, Paint>;
}

function checkUse(sheet: SwapSheet, entry: SwapEntry, { used, entries, paintOf, copyOf }: Beside): void {
  const { row, paint, instead } = entry;
  const uses = used.filter((use) => holdsAt(entry, use) && (paint === undefined || use.paint === paint));
  const comesBySwap = entries.some(
    (other) => other !== entry && other.instead === paint && canMeet(other, entry),
  );
  if (uses.length === 0 && !comesBySwap && !row.bad.includes('step')) {
    if (!isUnknownStep(entry, used)) tellNoUse(sheet, entry);
    return;
  }
  const inSchemes = [...new Set(uses.map(({ scheme }) => copyOf.get(scheme) ?? scheme))];
  if (entry.step !== undefined && entry.scheme === undefined && inSchemes.length > 1)
    sheet.blame('swap-in-schemes', row, 'scheme', {
      found: String(entry.step),
      expected: inSchemes.slice(0, 4).join(', '),
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
