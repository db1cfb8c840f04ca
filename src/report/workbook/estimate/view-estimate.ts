// Report view: the estimate as a workbook that works itself out again. In: the plan, the sheets it was made from. Out: what
// stands in which cell; numbers and formulas, no library.
import { minorDigits } from '../../../model/money.js';
import type { Plan, UnitCost } from '../../../model/plan.js';
import type { Sheets } from '../../../model/sheets.js';
import type { Estimate } from '../../../model/work.js';
import { type Bounds, listRecipes } from './list-recipes.js';
import { openAreas } from './view-area-sheet.js';
import { openAssumptions } from './view-assumption-sheet.js';
import { writeCosts } from './view-cost-sheet.js';
import { writeExtras } from './view-extras-sheet.js';
import { writeLines } from './view-line-sheet.js';
import { viewMoneySheet } from './view-money-sheet.js';
import { priceLines, writePaints } from './view-paint-sheet.js';
import { openPots } from './view-pot-sheet.js';
import { viewReadMe } from './view-read-me.js';
import { writeRecipes } from './view-recipe-sheet.js';
import { writeTotals } from './view-total-sheet.js';
import { writeUnits } from './view-unit-sheet.js';
import { openZones } from './view-zone-sheet.js';
import type { WorkbookView } from './workbook-view.js';

/** What of the sheets the plan does not carry. */
export type EstimateSheets = Pick<Sheets, 'schemes' | 'zones' | 'extras'>;

/**
 * Every sheet of the workbook. Formulas bring their results, so it is right at opening; they follow from the assumptions
 * and counts to the totals. Sheets are those that the painter gave, swaps or none. An empty army gives sheets without rows.
 */
export function viewEstimate(plan: Plan, sheets: EstimateSheets, bounds?: Bounds): WorkbookView {
  const major = majorOf(plan.settings.currency);
  const lastStepOf = lastSteps(sheets);
  const recipes = listRecipes(plan.costs.units, lastStepOf, bounds);
  const assumptions = openAssumptions(plan.assumptions);
  const { likely } = assumptions;
  const areas = openAreas(plan.estimate.figures, likely);
  const zones = openZones(sheets.zones, { areas, figures: plan.estimate.figures, likely });
  const units = writeUnits(recipes.rows);

  const lines = writeLines({
    ...{ ...recipes, schemes: sheets.schemes, paints: plan.paints, likely, areas, zones, units },
    paintNumbers: new Map(plan.stock.map(({ paint }, at) => [paint, at + 1])),
  });
  const pots = openPots({ order: plan.order, likely, major });
  const elsewhere = recipes.leftOut.length === 0 ? undefined : sumNeeds(recipes.leftOut);
  const paints = writePaints({ stock: plan.stock, lines, writeSupplies: pots.write, elsewhere });
  priceLines(lines, paints);

  const extras = writeExtras(sheets.extras, major);
  const figurePriceMinor = (name: string) => plan.estimate.figures.get(name)?.figure.priceMinor;
  const { rows, leftOut } = recipes;
  const perRecipe = writeRecipes(recipes.recipes, lines);
  const costs = writeCosts({
    ...{ rows, leftOut, units, lines, recipes: perRecipe, major },
    ...{ extrasEach: extras.each, figurePriceMinor },
  });
  return {
    date: plan.date,
    sheets: [
      viewReadMe(plan, recipes),
      writeTotals({ plan, paints, costs, major }),
      assumptions.view(),
      ...[units, areas.table].map((table) => table.view()),
      zones.view(),
      ...[lines, paints, pots.table, perRecipe, costs].map((table) => table.view()),
      extras.view,
      viewMoneySheet(plan, major),
    ],
  };
}

/** Minor units, also parts of one, as a spreadsheet has them: 1250 cents are 12.5. */
function majorOf(currency: string): (minor: number) => number {
  const scale = 10 ** minorDigits(currency);
  return (minor) => minor / scale;
}

function lastSteps({ schemes }: EstimateSheets): (scheme: string) => number {
  const last = new Map(
    [...schemes].map(([name, { steps }]) => [name, Math.max(0, ...steps.map(({ step }) => step))]),
  );
  return (scheme) => last.get(scheme) ?? 0;
}

function sumNeeds(units: readonly UnitCost[]): Estimate['needs'] {
  const needs = new Map<string, { wholeMl: number; remainingMl: number }>();
  const add = (paint: string, wholeMl: number, remainingMl: number): void => {
    const before = needs.get(paint) ?? { wholeMl: 0, remainingMl: 0 };
    before.wholeMl += wholeMl;
    before.remainingMl += remainingMl;
    needs.set(paint, before);
  };
  for (const { job } of units) {
    for (const { paint, putOutMl } of job.lines) add(paint, putOutMl, 0);
    for (const { paint, putOutMl } of job.remaining) add(paint, 0, putOutMl);
  }
  return needs;
}
