// Report view: what the army costs. In: the plan, its sums. Out: the sums explained, cost per figure split over
// layers, and each unit's sums.
import type { Costs } from '../../model/plan.js';
import type { CostsView } from './cost-view.js';
import { perFigure, wordArmy, wordUnits } from './sum-units.js';
import { listCostParts, viewCostUnit, viewFigureOnce } from './view-cost-unit.js';
import type { ViewInputs } from './view-inputs.js';
import { nameOf } from './word-name.js';
import { countOf, listOf, type NumberWords } from './word-numbers.js';
import { lowHighMeaning, wordCostRange } from './word-sure.js';

/** Units that get a row of their own; a longer army's rest is summed, so that the page stays readable. */
const unitRows = 1000;

/** Money of the plan; units in the army sheet's order. */
export function viewCosts(inputs: ViewInputs): CostsView {
  const { plan, words, trust } = inputs;
  const { costs } = plan;
  const shown = costs.units.slice(0, unitRows);
  const rows = wordUnits(plan, words, unitRows);
  const parts = listCostParts(plan.estimate.jobs.keys(), costs.extrasWhole);
  const viewFigure = viewFigureOnce({ parts, words, trust });
  const { perFigure: ranges } = plan.ranges;
  const dearest = Math.max(
    0,
    ...shown.map(({ use, job }) => Math.max(use.perFigure.exactMinor.toNumber(), ranges.get(job)?.high ?? 0)),
  );
  return {
    sums: explainSums(inputs),
    unpriced: wordUnpriced(costs.unpriced),
    parts,
    units: shown.map((unit, index) =>
      viewCostUnit(unit, {
        ...{ id: `unit-${index + 1}`, dearest, words, viewFigure },
        range: ranges.get(unit.job),
      }),
    ),
    more: rows.length > shown.length ? wordMore(shown.length, costs.units.length, words) : '',
    rows,
    total: wordArmy(plan, words),
  };
}

/** Said where the page is not the whole army. */
function wordMore(shown: number, units: number, words: NumberWords): string {
  return `The first ${words.count(shown)} units are shown one by one; the other ${words.count(units - shown)} are summed in one row, and plan.json lists each.`;
}

function explainSums({ plan, words, costTrust, supplyTrust }: ViewInputs): CostsView['sums'] {
  const { costs, figureCount, ranges } = plan;
  const each = words.money(perFigure(costs.cashMinor, figureCount));
  return [
    {
      title: 'Cost of use',
      within: false,
      trust: costTrust,
      figure: words.amount(costs.useWhole),
      range: wordCostRange(ranges.useWhole, words),
      says: `Paint put out for the whole scheme at what its pots cost, and extras (${words.amount(costs.extrasWhole)} of it).${wordLikeNewest(costs)} Steps already done count too. Low to high: ${lowHighMeaning}, prices taken as they are.`,
    },
    {
      title: 'of that, still to be used',
      within: true,
      trust: costTrust,
      figure: words.amount(costs.useRemaining),
      range: wordCostRange(ranges.useRemaining, words),
      says: 'The same for the steps that are not done yet.',
    },
    {
      title: 'Cash to spend',
      within: false,
      trust: supplyTrust,
      figure: words.money(costs.cashMinor),
      range: '',
      says: `Whole pots on the order, with postage: ${each} a figure. It is never added to the cost of use: part of it stays in the pots, and pots you own are paid already.`,
    },
    {
      title: 'The figures themselves',
      within: false,
      trust: { mark: 'yours', doubt: '', doubtId: '' },
      figure: words.amount(costs.figuresPrice),
      range: '',
      says: `What ${countOf(words, figureCount, 'unpainted figure')} cost, apart from both.`,
    },
  ];
}

/** Whose price is that of a pot which is not there. */
function wordLikeNewest({ paints }: Costs): string {
  const named = [...paints.values()].filter(({ likeNewestMl }) => likeNewestMl > 0);
  return named.length === 0
    ? ''
    : ` What neither pots nor order give of ${listOf(
        named.map(({ paint }) => nameOf(paint)),
        12,
      )} costs what your newest pot of it did (yours).`;
}

const wordUnpriced = (paints: readonly string[]): string =>
  paints.length === 0
    ? ''
    : `Without a price, wholly or in part: ${listOf(paints.map(nameOf), 12)}. They are not free, only unknown, so sums that lack them say “at least”, and their ranges are of the rest.`;
