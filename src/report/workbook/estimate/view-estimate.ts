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
  const lastStepOf = (scheme: string): number =>
    Math.max(0, ...(sheets.schemes.get(scheme)?.steps ?? []).map(({ step }) => step));
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
  const perRecipe = writeRecipes(recipes.recipes, lines);
  const costs = writeCosts({
    ...{ ...recipes, figures: plan.estimate.figures, units, lines, perRecipe },
    ...{ extrasEach: extras.each, major },
  });
  const firsts = [assumptions.table, units, areas.table, zones.table, lines, paints];
  const lasts = [pots.table, perRecipe, costs, extras.table];
  return {
    date: plan.date,
    sheets: [
      viewReadMe(plan, recipes),
      writeTotals({ plan, paints, costs, major }),
      ...[...firsts, ...lasts].map((table) => table.view()),
      viewMoneySheet(plan, major),
    ],
  };
}

/** Minor units, also parts of one, as a spreadsheet has them: 1250 cents are 12.5. */
function majorOf(currency: string): (minor: number) => number {
  const scale = 10 ** minorDigits(currency);
  return (minor) => minor / scale;
}

function sumNeeds(units: readonly UnitCost[]): Estimate['needs'] {
  const needs = new Map<string, { wholeMl: number; remainingMl: number }>();
  const needOf = (paint: string) => {
    const need = needs.get(paint) ?? { wholeMl: 0, remainingMl: 0 };
    needs.set(paint, need);
    return need;
  };
  for (const { job } of units) {
    for (const { paint, putOutMl } of job.lines) needOf(paint).wholeMl += putOutMl;
    for (const { paint, putOutMl } of job.remaining) needOf(paint).remainingMl += putOutMl;
  }
  return needs;
}
