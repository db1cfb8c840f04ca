// Colour: the painter's swaps. In: checked sheets. Out: the same sheets with the paints of their schemes replaced.
import type { Mix } from '../model/colour.js';
import { groupBy } from '../model/group-by.js';
import { remember } from '../model/remember.js';
import type { LogRow, Scheme, Sheets, Step, Swap } from '../model/sheets.js';

/**
 * Schemes as the swaps sheet has them painted. The row that narrows down most wins, the first of several; what it names
 * instead is swapped in its turn, until no row holds or a paint comes round again. Paints of a mix that become the same
 * are one. Steps and schemes that no row touches stay the very same objects; without rows so do the sheets. A log row of a
 * paint that its step had before still counts as work on that step.
 */
export function applySwaps(sheets: Sheets): Sheets {
  if (sheets.swaps.length === 0) return sheets;
  const follow = openSwaps(sheets.swaps);
  const schemes = new Map([...sheets.schemes].map(([name, one]) => [name, swapScheme(one, follow)]));
  const schemeOf = new Map(sheets.army.map(({ unit, scheme }) => [unit, scheme]));
  const log = sheets.log.map((row) => countForSwap(row, schemeOf.get(row.unit ?? ''), follow));
  return { ...sheets, schemes, log };
}

/** A paint where a step of a scheme names it; of a log row without a step only rows for every step hold. */
interface Use {
  readonly scheme: string;
  readonly step: number | undefined;
  readonly paint: string;
}

/** What goes on in the end; the same paint where no row holds. */
export type FollowSwaps = (use: Use) => string;

function countForSwap(row: LogRow, scheme: string | undefined, follow: FollowSwaps): LogRow {
  if (scheme === undefined) return row;
  const nowPaint = follow({ scheme, step: row.step, paint: row.paint });
  return nowPaint === row.paint ? row : { ...row, nowPaint };
}

function swapScheme(scheme: Scheme, follow: FollowSwaps): Scheme {
  const steps = scheme.steps.map((step) => swapStep(step, scheme.scheme, follow));
  return steps.some((step, index) => step !== scheme.steps[index]) ? { ...scheme, steps } : scheme;
}

function swapStep(step: Step, scheme: string, follow: FollowSwaps): Step {
  const swapped = step.paints.map(({ paint, share }) => ({
    paint: follow({ scheme, step: step.step, paint }),
    share,
  }));
  const isSame = swapped.every(({ paint }, index) => paint === step.paints[index]?.paint);
  return isSame ? step : { ...step, paints: mergeAlike(swapped) };
}

/** Rows by their paint, looked up once; a long chain is followed once for all uses that no row tells apart. */
export function openSwaps(swaps: readonly Swap[]): FollowSwaps {
  const byPaint = groupBy(swaps, ({ paint = anyPaint }) => paint);
  const [schemes, steps] = [
    new Set(swaps.map(({ scheme }) => scheme)),
    new Set(swaps.map(({ step }) => step)),
  ];
  return remember(
    (use: Use) => follow(use, byPaint),
    ({ scheme, step, paint }) =>
      `${schemes.has(scheme) ? scheme : ''}\n${steps.has(step) ? step : ''}\n${paint}`,
  );
}

/** No paint is called so. */
const anyPaint = '';

function follow(use: Use, byPaint: ReadonlyMap<string, readonly Swap[]>): string {
  const ofAny = narrowest(byPaint.get(anyPaint) ?? [], use);
  const met = new Set([use.paint]);
  for (let now = use.paint; ; ) {
    const ofPaint = narrowest(byPaint.get(now) ?? [], use);
    const next = narrowest(
      [ofAny, ofPaint].flatMap((swap) => swap ?? []),
      use,
    )?.instead;
    if (next === undefined || met.has(next)) return now;
    met.add(next);
    now = next;
  }
}

/** The row that says most of those that hold for a use, whatever its paint; of several the first in the sheet. */
function narrowest(swaps: readonly Swap[], use: Use): Swap | undefined {
  return swaps
    .filter(({ scheme, step }) => isAbout(scheme, use.scheme) && isAbout(step, use.step))
    .sort((a, b) => narrowness(b) - narrowness(a))[0];
}

/** A blank of a swap is about everything. */
const isAbout = <Value>(wanted: Value | undefined, value: Value | undefined): boolean =>
  wanted === undefined || wanted === value;

const narrowness = ({ scheme, step, paint }: Swap): number =>
  [scheme, step, paint].filter((one) => one !== undefined).length;

function mergeAlike(mix: Mix): Mix {
  const shares = new Map<string, number>();
  for (const { paint, share } of mix) shares.set(paint, (shares.get(paint) ?? 0) + share);
  return [...shares].map(([paint, share]) => ({ paint, share }));
}
