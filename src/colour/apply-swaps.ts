// Colour: the painter's swaps. In: checked sheets. Out: the same sheets with the paints of their schemes replaced.
import type { Mix } from '../model/colour.js';
import type { LogRow, Scheme, Sheets, Step, Swap } from '../model/sheets.js';

/**
 * Schemes as the swaps sheet has them painted. The row that narrows down most wins, the first of several; what it names
 * instead is swapped in its turn, until no row holds or a paint comes round again. Paints of a mix that become the same
 * are one. Steps and schemes that no row touches stay the very same objects; without rows so do the sheets. A log row of a
 * paint that its step had before still counts as work on that step.
 */
export function applySwaps(sheets: Sheets): Sheets {
  if (sheets.swaps.length === 0) return sheets;
  const schemes = new Map([...sheets.schemes].map(([name, one]) => [name, swapScheme(one, sheets.swaps)]));
  const schemeOf = new Map(sheets.army.map(({ unit, scheme }) => [unit, scheme]));
  const log = sheets.log.map((row) => countForSwap(row, schemeOf.get(row.unit ?? ''), sheets.swaps));
  return { ...sheets, schemes, log };
}

function countForSwap(row: LogRow, scheme: string | undefined, swaps: readonly Swap[]): LogRow {
  if (scheme === undefined) return row;
  const mine = swaps.filter((swap) => isAbout(swap.scheme, scheme) && isAbout(swap.step, row.step));
  const nowPaint = followSwaps(row.paint, mine);
  return nowPaint === row.paint ? row : { ...row, nowPaint };
}

/** A blank of a swap is about everything. */
const isAbout = <Value>(wanted: Value | undefined, value: Value | undefined): boolean =>
  wanted === undefined || wanted === value;

function swapScheme(scheme: Scheme, swaps: readonly Swap[]): Scheme {
  const mine = swaps.filter((swap) => isAbout(swap.scheme, scheme.scheme));
  const steps = scheme.steps.map((step) => swapStep(step, mine));
  return steps.some((step, index) => step !== scheme.steps[index]) ? { ...scheme, steps } : scheme;
}

function swapStep(step: Step, swaps: readonly Swap[]): Step {
  const mine = swaps.filter((swap) => isAbout(swap.step, step.step));
  const swapped = step.paints.map(({ paint, share }) => ({ paint: followSwaps(paint, mine), share }));
  const isSame = swapped.every(({ paint }, index) => paint === step.paints[index]?.paint);
  return isSame ? step : { ...step, paints: mergeAlike(swapped) };
}

/** What goes on in the end where a step of a scheme names a paint; the same paint where no row holds. */
export function swappedPaint(
  { scheme, step, paint }: { readonly scheme: string; readonly step: number; readonly paint: string },
  swaps: readonly Swap[],
): string {
  const mine = swaps.filter((swap) => isAbout(swap.scheme, scheme) && isAbout(swap.step, step));
  return followSwaps(paint, mine);
}

function followSwaps(paint: string, swaps: readonly Swap[]): string {
  const met = new Set([paint]);
  for (let now = paint; ; ) {
    const next = narrowest(now, swaps)?.instead;
    if (next === undefined || met.has(next)) return now;
    met.add(next);
    now = next;
  }
}

function narrowest(paint: string, swaps: readonly Swap[]): Swap | undefined {
  const mine = swaps.filter((swap) => swap.paint === undefined || swap.paint === paint);
  return mine.toSorted((a, b) => narrowness(b) - narrowness(a))[0];
}

const narrowness = ({ scheme, step, paint }: Swap): number =>
  [scheme, step, paint].filter((one) => one !== undefined).length;

function mergeAlike(mix: Mix): Mix {
  const shares = new Map<string, number>();
  for (const { paint, share } of mix) shares.set(paint, (shares.get(paint) ?? 0) + share);
  return [...shares].map(([paint, share]) => ({ paint, share }));
}
