// Comparing: two plans side by side. In: two plan documents, with their markets where they are known. Out: sums, paints and sheets, each of A, of B, and B less A.
import { exactMinor, minorDigits, roundMinor } from '../model/money.js';
import { differSheets, type SheetDifference } from './differ-sheets.js';
import type { Compared, ComparedPlan } from './pick-plan.js';

export type SumName = 'cash now' | 'cash in all' | 'cost a figure' | 'pots short' | 'evenings' | 'coats';

/** Money is whole minor units; `undefined` where there is nothing to say. */
export interface Sum {
  readonly value: number | undefined;
  /** True where something in it has no price. */
  readonly atLeast: boolean;
}

export interface SumRow {
  readonly what: SumName;
  readonly isMoney: boolean;
  readonly a: Sum;
  readonly b: Sum;
  /** B less A; undefined where one is missing or has no price at all, and for money in two currencies. */
  readonly difference: number | undefined;
}

/** Still to be put out, to a tenth of a millilitre; 0 where a plan does not need it. */
export interface PaintRow {
  readonly paint: string;
  readonly aMl: number;
  readonly bMl: number;
  readonly differenceMl: number;
}

export interface Comparison {
  readonly sums: readonly SumRow[];
  /** The most different first, then by name. */
  readonly paints: readonly PaintRow[];
  readonly sheets: readonly SheetDifference[];
  readonly isOneCurrency: boolean;
  /** False where the offers and shops of one are not known. */
  readonly hasMarkets: boolean;
  readonly isSame: boolean;
}

/** Sums are rounded before one is taken from the other, so that a difference is that of the sums beside it. */
export function comparePlans(a: Compared, b: Compared): Comparison {
  const isOneCurrency = a.currency === b.currency;
  const [ofA, ofB] = [sumUp(a), sumUp(b)];
  const sums = sumNames.map((what): SumRow => {
    const isMoney = moneyNames.has(what);
    const canDiffer = isOneCurrency || !isMoney;
    const pair = { a: ofA[what], b: ofB[what] };
    return { what, isMoney, ...pair, difference: canDiffer ? less(pair.b, pair.a) : undefined };
  });
  const paints = comparePaints(a, b);
  const sheets = differSheets(a, b);
  const isSame =
    sheets.length === 0 &&
    paints.every(({ differenceMl }) => differenceMl === 0) &&
    sums.every((row) => row.a.value === row.b.value && row.a.atLeast === row.b.atLeast);
  const hasMarkets = a.market !== undefined && b.market !== undefined;
  return { sums, paints, sheets, isOneCurrency, hasMarkets, isSame };
}

const sumNames = [
  'cash now',
  'cash in all',
  'cost a figure',
  'pots short',
  'evenings',
  'coats',
] as const satisfies readonly SumName[];

const moneyNames: ReadonlySet<SumName> = new Set(['cash now', 'cash in all', 'cost a figure']);

/** Where one is not known, or has no price at all, there is none. */
function less(one: Sum, other: Sum): number | undefined {
  const isKnown = ({ value, atLeast }: Sum): boolean => value !== 0 || !atLeast;
  const { value } = one;
  if (value === undefined || other.value === undefined || !isKnown(one) || !isKnown(other)) return undefined;
  return value - other.value;
}

function sumUp(plan: ComparedPlan): Readonly<Record<SumName, Sum>> {
  const { army, choices, costs, currency, order, paints, time } = plan;
  const minor = (sum: string, parts = 1): number =>
    roundMinor(
      exactMinor(sum)
        .times(10 ** minorDigits(currency))
        .div(parts),
    );
  const chosen = choices.find(({ policy, sure }) => policy === order.policy && sure === order.sure);
  const exact = (value: number): Sum => ({ value, atLeast: false });
  const isShort = ({ state, needMl }: (typeof paints)[number]): boolean =>
    state === 'short' || (state === 'none owned' && needMl.likely > 0);
  return {
    'cash now': exact(minor(costs.cash)),
    'cash in all': { value: chosen && minor(chosen.meanInAll), atLeast: chosen?.atLeast ?? false },
    'cost a figure': {
      value: army.figures > 0 ? minor(costs.use, army.figures) : undefined,
      atLeast: costs.useAtLeast,
    },
    'pots short': exact(paints.filter(isShort).length),
    evenings: exact(time.evenings),
    coats: exact(sumCoats(plan)),
  };
}

/** Coats still to be painted, each on one figure counted once; the paints of a mix are one coat together. */
function sumCoats({ jobs }: ComparedPlan): number {
  let coats = 0;
  for (const { units, lines } of jobs)
    for (const line of lines) coats += line.coats * line.mixShare * line.figures * units;
  return Math.round(coats);
}

function comparePaints(a: ComparedPlan, b: ComparedPlan): PaintRow[] {
  const [inA, inB] = [needsOf(a), needsOf(b)];
  return [...new Set([...inA.keys(), ...inB.keys()])]
    .map((paint): PaintRow => {
      const [tenthsA, tenthsB] = [inA.get(paint) ?? 0, inB.get(paint) ?? 0];
      const differenceMl = (tenthsB - tenthsA) / 10;
      return { paint, aMl: tenthsA / 10, bMl: tenthsB / 10, differenceMl };
    })
    .filter(({ aMl, bMl }) => aMl > 0 || bMl > 0)
    .sort((x, y) => Math.abs(y.differenceMl) - Math.abs(x.differenceMl) || (x.paint < y.paint ? -1 : 1));
}

/** Whole tenths of a millilitre by paint. */
const needsOf = ({ work }: ComparedPlan): ReadonlyMap<string, number> =>
  new Map(
    work.paints.map(({ paint, putOutRemainingMl }): [string, number] => [
      paint,
      Math.round(putOutRemainingMl * 10),
    ]),
  );
