// Comparing: what differs in the sheets, as far as plan.json tells; it holds no offers and no shops. In: two plan documents.
// Out: a row for each column of a sheet that differs.
import type { ComparedPlan } from './pick-plan.js';

/** Of one column; without a column the whole row is missing on one side, which then has no value. */
export interface SheetDifference {
  readonly sheet: 'settings' | 'army' | 'schemes' | 'figures' | 'pots';
  /** The row: a unit, a figure, a paint, a setting; of a scheme its name and step. */
  readonly name: string;
  readonly column: string | undefined;
  readonly a: Fact | undefined;
  readonly b: Fact | undefined;
}

export type Fact = string | number;

/** Columns of a row. */
type Facts = Readonly<Record<string, Fact>>;
type Rows = ReadonlyMap<string, Facts>;

/** In the order of the sheets; rows of A as they stand there, then those that only B has. */
export function differSheets(a: ComparedPlan, b: ComparedPlan): SheetDifference[] {
  const [stepsA, stepsB] = [listSteps(a, b), listSteps(b, a)];
  return [
    ...differRows('settings', listSettings(a), listSettings(b)),
    ...differRows('army', listUnits(a), listUnits(b)),
    ...differRows('schemes', stepsA, stepsB),
    ...differRows('figures', listFigures(a), listFigures(b)),
    ...differRows('pots', listPots(a), listPots(b)),
  ];
}

function differRows(sheet: SheetDifference['sheet'], rowsA: Rows, rowsB: Rows): SheetDifference[] {
  return [...new Set([...rowsA.keys(), ...rowsB.keys()])].flatMap((name): SheetDifference[] => {
    const [inA, inB] = [rowsA.get(name), rowsB.get(name)];
    if (inA === undefined || inB === undefined)
      return [{ sheet, name, column: undefined, a: inA && name, b: inB && name }];
    return Object.keys(inA).flatMap((column) => {
      const [a, b] = [inA[column], inB[column]];
      return a === b ? [] : [{ sheet, name, column, a, b }];
    });
  });
}

const listSettings = ({ date, currency, settings, order, assumptions }: ComparedPlan): Rows =>
  new Map<string, Facts>([
    ...Object.entries({
      date,
      currency,
      locale: settings.locale,
      restock: settings.restock,
      buy: order.policy,
      sure: Math.round((order.sure ?? 0) * 10_000) / 100,
    }).map(([name, value]): [string, Facts] => [name, { value }]),
    ...assumptions.map(({ name, low, likely, high }): [string, Facts] => [name, { low, likely, high }]),
  ]);

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

/** Paints of which there is a pot. */
const listPots = ({ paints }: ComparedPlan): Rows =>
  new Map(
    paints
      .filter(({ pots }) => pots.length > 0)
      .map(({ paint, pots, haveMl }): [string, Facts] => [paint, { pots: pots.length, left: haveMl }]),
  );
