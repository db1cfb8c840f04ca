// Tests: the workbook, as a formula library works it out, against the plan.
import { type Amount, minorDigits } from '../../../src/model/money.js';
import type { PaintCost, Plan, UnitCost } from '../../../src/model/plan.js';
import type { Line } from '../../../src/model/work.js';
import { parts } from '../../../src/model/zones.js';
import type { Recalculated } from './recalculate-workbook.js';

type Expect = (found: unknown, wanted: unknown, where: string) => void;

/** Paints that cost the same by order and workbook; those of another order are left alone. */
interface How {
  readonly expectNear: Expect;
  readonly isAlike: (paint: string) => boolean;
}

/** Every figure, zone, line, paint, unit and total. Units that share a recipe are added up, as the workbook does. */
export function compareWithPlan(
  book: Recalculated,
  plan: Plan,
  expectNear: Expect,
  { isAlike = () => true }: Partial<How> = {},
): void {
  const how = { expectNear, isAlike };
  compareAreas(book, plan, expectNear);
  compareLines(book, plan, how);
  comparePaints(book, plan, how);
  if (plan.stock.every(({ paint }) => isAlike(paint))) compareCosts(book, plan, expectNear);
}

const majorOf = ({ settings }: Plan) => {
  const scale = 10 ** minorDigits(settings.currency);
  return (amount: Amount | undefined): number => (amount?.exactMinor.toNumber() ?? 0) / scale;
};

function compareAreas(book: Recalculated, { estimate }: Plan, expectNear: Expect): void {
  for (const row of book.rows('areas')) {
    const { figure } = row;
    const area = estimate.figures.get(String(figure));
    expectNear(row['whole cm2'], area?.wholeCm2, `${figure} whole`);
    expectNear(row['with base cm2'], area?.withBaseCm2, `${figure} with base`);
    for (const part of parts) expectNear(row[part] ?? undefined, area?.parts.get(part), `${figure} ${part}`);
  }
  const zones = new Map(book.rows('zones').map(({ figure, zone, ...row }) => [`${figure} ${zone}`, row]));
  for (const { figure, lines } of estimate.jobs.keys()) {
    for (const { zone, areaCm2 } of lines)
      expectNear(zones.get(`${figure} ${zone}`)?.['area cm2'], areaCm2, `${figure} ${zone}`);
  }
}

/** Units by recipe: those of one figure and scheme, or one alone that the log knows. */
function groupUnits(book: Recalculated, plan: Plan): Map<unknown, UnitCost[]> {
  const groups = new Map<unknown, UnitCost[]>();
  for (const [at, { job: recipe }] of book.rows('units').entries()) {
    const one = plan.costs.units[at];
    if (one !== undefined) groups.set(recipe, [...(groups.get(recipe) ?? []), one]);
  }
  return groups;
}

function compareLines(book: Recalculated, plan: Plan, how: How): void {
  const rows = book.rows('lines');
  for (const [recipe, units] of groupUnits(book, plan)) {
    const mine = rows.filter((row) => row.job === recipe);
    const lines = units[0]?.job.lines ?? [];
    how.expectNear(mine.length, lines.length, `lines of recipe ${recipe}`);
    for (const [at, line] of lines.entries()) {
      const where = `recipe ${recipe}, line ${at}`;
      compareOne(mine[at] ?? {}, line, (header, found, wanted) =>
        how.expectNear(found, wanted, `${where}, ${header}`),
      );
      const wanted = sumOver(units, line, majorOf(plan));
      for (const [header, value] of Object.entries(wanted)) {
        if (header.startsWith('cost') && !how.isAlike(line.paint)) continue;
        how.expectNear(mine[at]?.[header], value, `${where}, ${header}`);
      }
    }
  }
}

type Row = Readonly<Record<string, unknown>>;

/** What one figure of a line asks for. */
function compareOne(
  row: Row,
  line: Line,
  compare: (header: string, found: unknown, wanted: unknown) => void,
): void {
  const wanted = {
    step: line.step,
    zone: line.zone,
    layer: line.layer,
    method: line.method,
    paint: line.paint,
    coats: line.coats,
    thin: line.thin,
    'share of the zone': line.areaShare,
    'share of the mix': line.mixShare,
    'zone cm2': line.areaCm2,
    'ml on one figure': line.onFigureMl / line.figures,
  };
  for (const [header, value] of Object.entries(wanted)) compare(header, row[header], value);
}

/** A line over all units of its recipe, by the headers of the workbook. */
function sumOver(units: readonly UnitCost[], line: Line, major: (amount: Amount | undefined) => number) {
  const isSame = (one: Line): boolean =>
    one.step === line.step && one.zone === line.zone && one.layer === line.layer && one.paint === line.paint;
  const sums: Record<string, number> = {};
  const add = (header: string, value: number): void => {
    sums[header] = (sums[header] ?? 0) + value;
  };
  for (const { job, use } of units) {
    for (const [word, lines, costs] of [
      ['whole', job.lines, use.lines],
      ['remaining', job.remaining, use.remainingLines],
    ] as const) {
      const place = lines.findIndex(isSame);
      add(`figures, ${word}`, lines[place]?.figures ?? 0);
      add(`sittings, ${word}`, lines[place]?.sittings ?? 0);
      add(`ml put out, ${word}`, lines[place]?.putOutMl ?? 0);
      add(`cost, ${word}`, major(costs[place]));
    }
  }
  return sums;
}

function comparePaints(book: Recalculated, plan: Plan, { expectNear, isAlike }: How): void {
  const rows = book.rows('paints');
  expectNear(rows.length, plan.stock.length, 'paints');
  for (const [at, { paint, needMl, haveMl, leftAfterMl }] of plan.stock.entries()) {
    const row = rows[at] ?? {};
    const price = plan.costs.paints.get(paint);
    const wanted = {
      paint,
      'need ml, remaining': needMl,
      'need ml, whole': plan.estimate.needs.get(paint)?.wholeMl ?? 0,
      'have ml': haveMl,
      'left after ml': leftAfterMl,
      'likely to buy ml': Math.max(0, needMl - haveMl),
      ...(price === undefined || !isAlike(paint) ? {} : pricesOf(price, majorOf(plan))),
    };
    for (const [header, value] of Object.entries(wanted))
      expectNear(row[header], value, `${paint}, ${header}`);
  }
}

const pricesOf = ({ perMl, pricedShare, useCost }: PaintCost, major: (amount?: Amount) => number) => ({
  'price a ml': perMl === undefined ? 0 : major({ exactMinor: perMl, atLeast: false }),
  'share with a price': pricedShare,
  'cost of use, remaining': major(useCost),
});

function compareCosts(book: Recalculated, plan: Plan, expectNear: Expect): void {
  const { costs } = plan;
  const major = majorOf(plan);
  const rows = book.rows('costs');
  expectNear(rows.length, costs.units.length, 'units');
  for (const [at, { unit, use }] of costs.units.entries()) {
    const wanted = {
      unit: unit.unit,
      'cost of use, whole': major(use.whole),
      'of it a figure': major(use.perFigure),
      'cost of use, remaining': major(use.remaining),
      'whole, or more': use.whole.atLeast ? 'at least' : '',
      'remaining, or more': use.remaining.atLeast ? 'at least' : '',
    };
    for (const [header, value] of Object.entries(wanted))
      expectNear(rows[at]?.[header], value, `${unit.unit}, ${header}`);
  }
  compareTotals(book, plan, expectNear);
}

/** What the first sheet says of now, all units counted, also those that are put together or left out. */
export function compareTotals(book: Recalculated, plan: Plan, expectNear: Expect): void {
  const { costs, estimate, figureCount } = plan;
  const major = majorOf(plan);
  const now = new Map(book.rows('totals').map(({ total, ...row }) => [total, row.now]));
  const needs = [...estimate.needs.values()];
  const wanted = {
    figures: figureCount,
    'paint put out, whole scheme': needs.reduce((sum, { wholeMl }) => sum + wholeMl, 0),
    'paint put out, remaining': needs.reduce((sum, { remainingMl }) => sum + remainingMl, 0),
    [`cost of use, whole scheme${more(costs.useWhole)}`]: major(costs.useWhole),
    [`of it extras${more(costs.extrasWhole)}`]: major(costs.extrasWhole),
    [`cost of use, a figure${more(costs.useWhole)}`]: major(costs.useWhole) / (figureCount || 1),
    [`cost of use, remaining${more(costs.useRemaining)}`]: major(costs.useRemaining),
    [`price of the unpainted figures${more(costs.figuresPrice)}`]: major(costs.figuresPrice),
  };
  for (const [total, value] of Object.entries(wanted)) expectNear(now.get(total), value, total);
}

const more = ({ atLeast }: Amount): string => (atLeast ? ', at least' : '');
