// Budget: its English. In: results, ways to say numbers. Out: text.
import type { Aim } from '../../../model/choices.js';
import type { Order, OrderNeed, ShopBill } from '../../../model/order.js';
import type { BudgetSums } from '../../../model/order-sums.js';
import { formOf } from '../../words/form-of.js';
import { joinSentences } from '../../words/join-sentences.js';
import { wordMargin } from '../../words/word-aim.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { searchLonger, wordBut } from '../../words/word-proof.js';
import { sharedWords } from '../../words/words.js';

export const budgetWords = (say: NumberWords) => ({
  labels: {
    caption: 'What is left unfinished, and the cash beyond this order that would finish each unit by itself',
    unit: 'Unit',
    drawn: 'Drawn',
    finished: 'finished',
    left: 'left',
    extra: 'to finish it',
    short: 'budget short by',
    order: 'The order for it',
    total: 'In all',
  },
  title: (budgetMinor: number) => `What ${say.money(budgetMinor)} finishes`,
  lead: (aim: Aim) =>
    joinSentences(
      'Units by priority as long as the cash lasts, then whole units of the others, and last as many figures as can be had of units cut short.',
      wordMargin(aim, say),
    ),
  finished: ({ figures, finished }: BudgetSums) => {
    const all = countOf(say, figures, 'figure');
    return finished === figures ? `All ${all}` : sharedWords.some(say.count(finished), all);
  },
  spent: (order: Order, { leftMinor }: BudgetSums) => {
    const rest = leftMinor === 0 ? 'nothing is left over' : `${say.money(leftMinor)} is left over`;
    return order.lines.length === 0
      ? `From what stands on the shelf${wordBut(order)}: nothing is bought.`
      : `For ${say.money(order.totalMinor)} with postage${wordBut(order)}; ${rest}.`;
  },
  /** Units finished whole, with their figures; the first dozen by name. */
  whole: (units: BudgetSums['whole']) =>
    `Finished whole: ${listOf(
      units.map(({ unit, figures }) => `${nameOf(unit)} (${say.count(figures)})`),
      12,
    )}.`,
  offers: (lines: Order['lines'], { postageMinor }: Pick<ShopBill, 'postageMinor'>) => {
    const named = lines.map(({ offer, count }) =>
      count === 1 ? nameOf(offer) : `${say.count(count)} × ${nameOf(offer)}`,
    );
    return `${listOf(named, 30)}${postageMinor === 0 ? '' : `; postage ${say.money(postageMinor)}`}`;
  },
  moreOpen: (units: number) => `${say.count(units)} more units are left unfinished; plan.json lists each.`,
  ...noteWords(say),
});

export type BudgetWords = ReturnType<typeof budgetWords>;

const noteWords = (say: NumberWords) => ({
  notProved: joinSentences(
    'A search ended before it was proved that no more figures can be had.',
    searchLonger,
  ),
  notTried: (units: number) =>
    `${countOf(say, units, 'unit')} of the last priorities ${formOf(units, 'was', 'were')} not tried: what is left over may finish some of ${formOf(units, 'it', 'them')}.`,
  unmet: (unmet: readonly OrderNeed[]) => {
    const missing = unmet.map(({ paint, ml }) => `${nameOf(paint)} (${say.ml(ml)})`);
    return `What no offer covers stands in no figure’s way here; to finish them you still need ${listOf(missing, 12)}.`;
  },
});
