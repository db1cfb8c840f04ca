// Comparing: what differs in the sheets, as far as plan.json and the markets tell. In: two plans. Out: a row for each column of a
// sheet that differs.
import { familyName, isOfSurface, nameForFigure } from '../model/assumption.js';
import { type Fact, type Facts, listOffers, listShops, moneyColumns, type Rows } from './list-market.js';
import type { Compared, ComparedPlan } from './pick-plan.js';

/** In the order in which they are told. */
export const comparedSheets = [
  'settings',
  'log',
  'army',
  'schemes',
  'figures',
  'pots',
  'offers',
  'shops',
] as const;

/** Of one column; without a column the whole row is missing on one side, which then has no value. */
export interface SheetDifference {
  readonly sheet: (typeof comparedSheets)[number];
  /** The row: a unit, a figure, a paint, a setting, a shop; of a scheme its name and step, of an offer its shop and name. */
  readonly name: string;
  readonly column: string | undefined;
  readonly a: Fact | undefined;
  readonly b: Fact | undefined;
  /** True where both are minor units. */
  readonly isMoney: boolean;
}

/** In the order of the sheets; rows of A as they stand there, then those that only B has. Prices only in one currency. */
export function differSheets(a: Compared, b: Compared): SheetDifference[] {
  const [stepsA, stepsB] = [listSteps(a, b), listSteps(b, a)];
  return [
    ...differRows('settings', listSettings(a, b), listSettings(b, a)),
    ...differRows('log', listLearned(a), listLearned(b)),
    ...differRows('army', listUnits(a), listUnits(b)),
    ...differRows('schemes', stepsA, stepsB),
    ...differRows('figures', listFigures(a), listFigures(b)).filter((row) => !isMoved(row, a, b)),
    ...differRows('pots', listPots(a), listPots(b)),
    ...differMarkets(a, b),
  ];
}

/** None where the market of one is not known. */
function differMarkets(a: Compared, b: Compared): SheetDifference[] {
  if (a.market === undefined || b.market === undefined) return [];
  const rows = [
    ...differRows('offers', listOffers(a.market), listOffers(b.market)),
    ...differRows('shops', listShops(a.market), listShops(b.market)),
  ].map((row) => ({ ...row, isMoney: moneyColumns.has(row.column ?? '') }));
  return a.currency === b.currency ? rows : rows.filter(({ isMoney }) => !isMoney);
}

function differRows(sheet: SheetDifference['sheet'], rowsA: Rows, rowsB: Rows): SheetDifference[] {
  return [...new Set([...rowsA.keys(), ...rowsB.keys()])].flatMap((name): SheetDifference[] => {
    const [inA, inB] = [rowsA.get(name), rowsB.get(name)];
    if (inA === undefined || inB === undefined)
      return [{ sheet, name, column: undefined, a: inA && name, b: inB && name, isMoney: false }];
    return Object.keys(inA).flatMap((column) => {
      const [a, b] = [inA[column], inB[column]];
      return a === b ? [] : [{ sheet, name, column, a, b, isMoney: false }];
    });
  });
}

/** Of the assumptions those that a settings sheet names: what a log moves is no one's setting. */
const listSettings = (
  { date, currency, settings, order, assumptions }: ComparedPlan,
  other: ComparedPlan,
): Rows => {
  const isOwn = ({ mark }: ComparedPlan['assumptions'][number]): boolean => mark === 'yours';
  const own = new Set([...assumptions, ...other.assumptions].filter(isOwn).map(({ name }) => name));
  return new Map<string, Facts>([
    ...Object.entries({
      date,
      currency,
      locale: settings.locale,
      restock: settings.restock,
      buy: order.policy,
      sure: Math.round((order.sure ?? 0) * 10_000) / 100,
    }).map(([name, value]): [string, Facts] => [name, { value }]),
    ...assumptions
      .filter(({ name }) => own.has(name))
      .map(({ name, low, likely, high }): [string, Facts] => [name, { low, likely, high }]),
  ]);
};

const listLearned = ({ learned }: ComparedPlan): Rows =>
  new Map([['rows that teach', { value: learned.weighings.length }]]);

/** A name that stands there again is told apart by its number. */
function listUnits({ units, jobs }: ComparedPlan): Rows {
  const rows = new Map<string, Facts>();
  const times = new Map<string, number>();
  for (const { unit, job } of units) {
    const found = jobs[job];
    if (found === undefined) continue;
    const time = (times.get(unit) ?? 0) + 1;
    times.set(unit, time);
    const { figure, scheme, count, batch, done } = found;
    rows.set(time === 1 ? unit : `${unit} (${time})`, { figure, scheme, count, batch, done });
  }
  return rows;
}

/** Steps still to be painted of the schemes that both have. */
function listSteps({ jobs }: ComparedPlan, other: ComparedPlan): Rows {
  const shared = new Set(other.jobs.filter(({ lines }) => lines.length > 0).map(({ scheme }) => scheme));
  const steps = new Map<string, Map<string, Set<Fact>>>();
  for (const { scheme, lines } of jobs.filter((job) => shared.has(job.scheme)))
    for (const { step, zone, layer, paint, coats, method, thin, areaShare } of lines) {
      const name = `${scheme}, step ${step}`;
      const columns = steps.get(name) ?? new Map<string, Set<Fact>>();
      steps.set(name, columns);
      const facts = { zone, layer, paint, coats, method, thin, 'area %': Math.round(areaShare * 1000) / 10 };
      for (const [column, fact] of Object.entries(facts))
        columns.set(column, (columns.get(column) ?? new Set<Fact>()).add(fact));
    }
  return new Map([...steps].map(([name, columns]): [string, Facts] => [name, joinFacts(columns)]));
}

const joinFacts = (columns: ReadonlyMap<string, ReadonlySet<Fact>>): Facts =>
  Object.fromEntries(
    [...columns].map(([column, [only, ...others]]): [string, Fact] => [
      column,
      others.length === 0 && only !== undefined ? only : [only, ...others].sort().join(', '),
    ]),
  );

const listFigures = ({ figures }: ComparedPlan): Rows =>
  new Map(figures.map(({ figure, withBaseCm2 }): [string, Facts] => [figure, { 'area cm2': withBaseCm2 }]));

/** Whether a figure's area differs by no more than what both assume of surfaces: of that, log and settings tell. */
function isMoved({ name: figure, column, a, b }: SheetDifference, ofA: ComparedPlan, ofB: ComparedPlan) {
  if (column === undefined) return false;
  const [inA, inB] = [valuesFor(figure, ofA), valuesFor(figure, ofB)];
  const moved = [...inA].reduce((sum, [name, value]) => sum + apart(value, inB.get(name) ?? value), 0);
  return apart(Number(a), Number(b)) < moved + roundedShare;
}

/** Of the factors of surfaces, the figure's own value where it has one. */
const valuesFor = (figure: string, { assumptions }: ComparedPlan): ReadonlyMap<string, number> =>
  new Map(
    assumptions
      .filter(
        ({ name }) =>
          isOfSurface(name) && [familyName(name), nameForFigure(familyName(name), figure)].includes(name),
      )
      .map(({ name, likely }) => [familyName(name), likely]),
  );

const apart = (one: number, other: number): number => Math.abs(Math.log(other / one));

/** What the digits of plan.json leave open of a ratio of areas. */
const roundedShare = 1e-6;

/** Paints of which there is a pot. */
const listPots = ({ paints }: ComparedPlan): Rows =>
  new Map(
    paints
      .filter(({ pots }) => pots.length > 0)
      .map(({ paint, pots, haveMl }): [string, Facts] => [paint, { pots: pots.length, left: haveMl }]),
  );
