// Report view: units and their lines as plan.json tells them. In: units with job and cost. Out: entries, of which those
// of units that share a job are one object.
import { type Amount, type ExactMinor, exactMinor, toMajor } from '../../model/money.js';
import type { Plan, UnitCost } from '../../model/plan.js';
import type { Range, Ranges } from '../../model/ranges.js';
import type { Job, Line } from '../../model/work.js';
import { describeReason } from './describe-colour.js';
import { describeCostRange } from './describe-sure.js';
import type { PlanDocument } from './plan-document.js';
import { roundNumber, useDigits } from './round-number.js';

type DocumentUnit = PlanDocument['units'][number];
type DocumentLine = PlanDocument['lines'][number];

/** What is a unit's own; the rest of its entry is shared. */
export type OwnOfUnit = Pick<DocumentUnit, 'unit' | 'cash' | 'cashPerFigure'>;
export type SharedByUnits = Omit<DocumentUnit, keyof OwnOfUnit>;
export type OwnOfLines = Pick<DocumentLine, 'unit'>;
export type SharedLine = Omit<DocumentLine, 'unit'>;

/** For each of `shared` an entry of plan.json: the keys of `own`, then those of the shared one. */
export interface SharedEntries<Own, Shared> {
  readonly own: Own;
  /** Held by reference: entries alike share one array. */
  readonly shared: readonly Shared[];
}

/** Entries made whenever they are asked for, so that those of 100,000 units never stand in memory together. */
export type EntryList<Own, Shared> = Iterable<SharedEntries<Own, Shared>>;

/** Entries of every unit and of every line still to be done, in the order of the units. */
export function describeWork({ costs: { units }, ranges }: Plan, currency: string) {
  const describe = describeOnce(ranges.perFigure, currency);
  const perFigure = divideMinor(currency);
  const ofUnit = (unit: UnitCost): SharedEntries<OwnOfUnit, SharedByUnits> => ({
    own: {
      unit: unit.unit.unit,
      cash: toMajor(unit.cashMinor, currency),
      cashPerFigure: perFigure(unit.cashMinor, unit.unit.count),
    },
    shared: describe(unit).units,
  });
  const ofLines = (unit: UnitCost): SharedEntries<OwnOfLines, SharedLine> => ({
    own: { unit: unit.unit.unit },
    shared: describe(unit).lines,
  });
  return { units: listEntries(units, ofUnit), lines: listEntries(units, ofLines) };
}

/** The entry of each of `list`, anew each time the entries are gone through. */
export function listEntries<From, Own, Shared>(
  list: readonly From[],
  describe: (one: From) => SharedEntries<Own, Shared>,
): EntryList<Own, Shared> {
  return {
    *[Symbol.iterator]() {
      for (const one of list) yield describe(one);
    },
  };
}

/** Describes the job of a unit, or gives what an earlier unit of the same job got. */
function describeOnce(
  perFigure: Ranges['perFigure'],
  currency: string,
): (unit: UnitCost) => ReturnType<typeof describeJob> {
  const known = new Map<Job, ReturnType<typeof describeJob>>();
  const describeLine = describeLineOnce(currency);
  return (unit) => {
    const described =
      known.get(unit.job) ?? describeJob(unit, perFigure.get(unit.job), { currency, describeLine });
    known.set(unit.job, described);
    return described;
  };
}

/** Whole minor units over a whole count, as a decimal of six digits rounded half up. */
function divideMinor(currency: string): (minor: number, count: number) => string {
  const known = new Map<number, Map<number, string>>();
  return (minor, count) => {
    const ofCount = known.get(count) ?? new Map<number, string>();
    const text = ofCount.get(minor) ?? toMajor(exactMinor(minor).div(count), currency, useDigits);
    known.set(count, ofCount.set(minor, text));
    return text;
  };
}

type DescribeLine = (line: Line, scheme: string, amount: Amount) => SharedLine;

/** Describes a line, or gives what an earlier job that shares it got. */
function describeLineOnce(currency: string): DescribeLine {
  const known = new Map<Line, SharedLine>();
  return (line, scheme, amount) => {
    const described = known.get(line) ?? {
      scheme,
      ...describeOwn(line),
      useCost: toMajor(amount.exactMinor, currency, useDigits),
      atLeast: amount.atLeast,
      mark: line.mark,
      biggestDoubt: line.biggestDoubt,
    };
    known.set(line, described);
    return described;
  };
}

interface Describing {
  readonly currency: string;
  readonly describeLine: DescribeLine;
}

/** Units of one job have one figure and count, so the price of their figures is the job's too. */
function describeJob(
  { job, use, figuresPriceMinor }: UnitCost,
  range: Range | undefined,
  { currency, describeLine }: Describing,
) {
  const { figure, scheme, count, batch, done, unfinished, notPainted } = job;
  const cost = (amount: ExactMinor) => toMajor(amount, currency, useDigits);
  const likely = use.perFigure.exactMinor.toNumber();
  const { low, high } = range ?? { low: likely, high: likely };
  const each = describeCostRange({ low, high }, currency);
  const all = describeCostRange({ low: low * count, high: high * count }, currency);
  const shared: SharedByUnits = {
    ...{ figure, scheme, count, batch, done, unfinished },
    areaCm2: roundNumber(job.areaCm2),
    useCostPerFigure: cost(use.perFigure.exactMinor),
    useCostPerFigureLow: each.low,
    useCostPerFigureHigh: each.high,
    extrasPerFigure: cost(use.extrasPerFigure.exactMinor),
    useCost: cost(use.whole.exactMinor),
    useCostLow: all.low,
    useCostHigh: all.high,
    atLeast: use.whole.atLeast,
    useCostRemaining: cost(use.remaining.exactMinor),
    remainingAtLeast: use.remaining.atLeast,
    figuresPrice: figuresPriceMinor === undefined ? null : toMajor(figuresPriceMinor, currency),
    notPainted,
  };
  const unpriced = { exactMinor: exactMinor(0), atLeast: true };
  const lines = job.remaining.map((line, at) =>
    describeLine(line, job.scheme, use.remainingLines[at] ?? unpriced),
  );
  return { units: [shared], lines };
}

/** All of a line but its scheme, its cost and what it is doubted for. */
const describeOwn = (line: Line) => ({
  step: line.step,
  figures: line.figures,
  zone: line.zone,
  layer: line.layer,
  method: line.method,
  paint: line.paint,
  areaCm2: roundNumber(line.areaCm2),
  areaShare: roundNumber(line.areaShare),
  coats: line.coats,
  ...(line.coatsBecause !== undefined && { coatsBecause: describeReason(line.coatsBecause) }),
  thin: line.thin,
  mixShare: roundNumber(line.mixShare),
  sittings: line.sittings,
  onFigureMl: roundNumber(line.onFigureMl),
  leftoverMl: roundNumber(line.leftoverMl),
  putOutMl: roundNumber(line.putOutMl),
});
