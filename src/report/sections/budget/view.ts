// Report view: what a budget finishes. In: the plan's budget. Out: figures finished, what stays open and what it would take,
// the order in short.
import type { Budget, Order } from '../../../model/order.js';
import type { BudgetSums, OpenUnit } from '../../../model/summary.js';
import { shareOf } from '../../drawing/scale.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordFinished } from '../../words/word-budget.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordBut } from '../../words/word-promise.js';
import { searchLonger, wordProof } from '../../words/word-proof.js';

export interface BudgetView {
  /** `What €30.00 finishes` */
  readonly title: string;
  readonly lead: string;
  /** `107 of 109 figures` */
  readonly figure: string;
  readonly says: string;
  /** How sure the order is; '' where nothing is bought. */
  readonly proof: string;
  /** Searches that ended early, units not tried, paint that no offer covers. */
  readonly notes: readonly string[];
  /** Units that are not wholly finished, in the order of priority. */
  readonly open: readonly OpenRow[];
  /** Said where more units are open than are listed; else ''. */
  readonly more: string;
  /** Units finished whole, in one sentence; '' for none. */
  readonly whole: string;
  /** The order in short: each shop with its offers. */
  readonly shops: readonly { readonly shop: string; readonly offers: string; readonly cash: string }[];
  readonly total: string;
}

interface OpenRow {
  readonly unit: string;
  /** `6 of 10` */
  readonly finished: string;
  readonly share: number;
  readonly left: string;
  /** Beyond the order shown; '' where it was not priced. */
  readonly extra: string;
  /** How much the budget lacks for it; '' where it was not priced, or lacks nothing. */
  readonly short: string;
}

/** Open units that get a row of their own. */
const openRows = 100;

/** Undefined without a budget. */
export function viewBudget({ plan, words }: ViewInputs): BudgetView | undefined {
  const { budget, summary } = plan;
  if (budget === undefined || summary.budget === undefined) return undefined;
  const { order } = budget;
  const { open } = summary.budget;
  return {
    title: `What ${words.money(budget.budgetMinor)} finishes`,
    lead: 'The army sheet’s priorities come first, one after the other as long as the cash lasts; of those that it does not finish, as many figures as can be had. A unit may be cut short. What the promise takes over the likely needs is kept in proportion.',
    figure: wordFinished(summary.budget, words),
    says: wordSpent(order, summary.budget, words),
    proof: wordProof(order, 'army', words),
    notes: wordNotes(budget, words),
    open: open.slice(0, openRows).map((unit) => viewOpen(unit, words)),
    more:
      open.length > openRows
        ? `${words.count(open.length - openRows)} more units are left unfinished; plan.json lists each.`
        : '',
    whole: wordWhole(summary.budget, words),
    shops: order.bills.map(({ shop, totalMinor }) => ({
      shop,
      offers: wordOffers(order, shop, words),
      cash: words.money(totalMinor),
    })),
    total: words.money(order.totalMinor),
  };
}

function wordSpent(order: Order, { leftMinor }: BudgetSums, words: NumberWords): string {
  const rest = leftMinor === 0 ? 'nothing is left over' : `${words.money(leftMinor)} is left over`;
  return order.lines.length === 0
    ? `From what stands on the shelf${wordBut(order)}: nothing is bought.`
    : `For ${words.money(order.totalMinor)} with postage${wordBut(order)}; ${rest}.`;
}

/** Units finished whole, with their figures; the first dozen by name. */
function wordWhole({ whole }: BudgetSums, words: NumberWords): string {
  const named = whole.map(({ unit, figures }) => `${nameOf(unit)} (${words.count(figures)})`);
  return whole.length === 0 ? '' : `Finished whole: ${listOf(named, 12)}.`;
}

function viewOpen(of: OpenUnit, words: NumberWords): OpenRow {
  const { unit, figures, finished, left, extraMinor, shortMinor } = of;
  return {
    unit,
    finished: `${words.count(finished)} of ${words.count(figures)}`,
    share: shareOf(finished, figures),
    left: words.count(left),
    extra: extraMinor === undefined ? '' : words.money(extraMinor),
    short: shortMinor > 0 ? words.money(shortMinor) : '',
  };
}

function wordOffers({ lines, bills }: Order, shop: string, words: NumberWords): string {
  const offers = lines
    .filter((line) => line.shop === shop)
    .map(({ offer, count }) => (count === 1 ? nameOf(offer) : `${words.count(count)} × ${nameOf(offer)}`));
  const postageMinor = bills.find((bill) => bill.shop === shop)?.postageMinor ?? 0;
  const postage = postageMinor === 0 ? '' : `; postage ${words.money(postageMinor)}`;
  return `${listOf(offers, 30)}${postage}`;
}

function wordNotes({ order, proved, notTried }: Budget, words: NumberWords): string[] {
  const missing = listOf(
    order.unmet.map(({ paint, ml }) => `${nameOf(paint)} (${words.ml(ml)})`),
    12,
  );
  const untried = countOf(words, notTried, 'unit');
  return [
    ...(proved
      ? []
      : [`A search ended before it was proved that no more figures can be had. ${searchLonger}`]),
    ...(notTried === 0
      ? []
      : [
          `${untried} of the last priorities ${notTried === 1 ? 'was' : 'were'} not tried: what is left over may finish some of ${notTried === 1 ? 'it' : 'them'}.`,
        ]),
    ...(missing === ''
      ? []
      : [`What no offer covers stands in no figure’s way here; to finish them you still need ${missing}.`]),
  ];
}
