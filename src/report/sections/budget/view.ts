// Report view: what a budget finishes. In: the plan's budget. Out: figures finished, what stays open and what it would take,
// the order in short.
import type { Budget, Order } from '../../../model/order.js';
import type { OpenUnit } from '../../../model/order-sums.js';
import { shareOf } from '../../drawing/scale.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { NumberWords } from '../../words/word-numbers.js';
import { wordProof } from '../../words/word-proof.js';
import { sharedWords } from '../../words/words.js';
import { type BudgetWords, budgetWords } from './words.js';

export interface BudgetView {
  readonly labels: BudgetWords['labels'];
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
  const texts = budgetWords(words);
  const { order } = budget;
  const { open, whole } = summary.budget;
  return {
    labels: texts.labels,
    title: texts.title(budget.budgetMinor),
    lead: texts.lead(plan.aim),
    figure: texts.finished(summary.budget),
    says: texts.spent(order, summary.budget),
    proof: wordProof(order, 'army', words),
    notes: listNotes(budget, texts),
    open: open.slice(0, openRows).map((unit) => viewOpen(unit, words)),
    more: open.length > openRows ? texts.moreOpen(open.length - openRows) : '',
    whole: whole.length === 0 ? '' : texts.whole(whole),
    shops: order.bills.map((bill) => ({
      shop: bill.shop,
      offers: texts.offers(linesFrom(order, bill.shop), bill),
      cash: words.money(bill.totalMinor),
    })),
    total: words.money(order.totalMinor),
  };
}

const linesFrom = ({ lines }: Order, shop: string): Order['lines'] =>
  lines.filter((line) => line.shop === shop);

function viewOpen(of: OpenUnit, words: NumberWords): OpenRow {
  const { unit, figures, finished, left, extraMinor, shortMinor } = of;
  return {
    unit,
    finished: sharedWords.some(words.count(finished), words.count(figures)),
    share: shareOf(finished, figures),
    left: words.count(left),
    extra: extraMinor === undefined ? '' : words.money(extraMinor),
    short: shortMinor > 0 ? words.money(shortMinor) : '',
  };
}

const listNotes = ({ order, proved, notTried }: Budget, texts: BudgetWords): string[] => [
  ...(proved ? [] : [texts.notProved]),
  ...(notTried === 0 ? [] : [texts.notTried(notTried)]),
  ...(order.unmet.length === 0 ? [] : [texts.unmet(order.unmet)]),
];
