// Report view: the three figures of a shelf without an army. In: the plan and its sums. Out: plain text.
import { joinSentences } from '../../words/join-sentences.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { shelfWords } from './shelf-words.js';
import type { AnswerView } from './view.js';

/** What stands there, what it is worth, what brings low pots back to their level. */
export function viewShelf({ plan, words, trust }: ViewInputs): AnswerView['figures'] {
  const texts = shelfWords(words);
  const { summary, stock, restock, costs } = plan;
  const { shelf } = summary;
  const low = stock.filter(({ runningLow }) => runningLow).map(({ paint }) => paint);
  const isBought = (restock?.lines.length ?? 0) > 0;
  const isUnpriced = shelf.unpriced === shelf.pots;
  const given = trust.of(summary.lasting.trust);
  return [
    {
      question: texts.stands.question,
      figure: texts.stands.figure(shelf),
      detail: joinSentences(texts.stands.holds(shelf), texts.stands.low(low)),
      trust: given,
    },
    {
      question: texts.worth.question,
      figure: isUnpriced ? texts.worth.noPrices : words.amount(shelf.worth),
      detail: isUnpriced
        ? texts.worth.howToPrice
        : joinSentences(texts.worth.says, texts.worth.unpriced(shelf)),
      trust: given,
    },
    {
      question: texts.restock.question,
      figure: isBought ? words.money(costs.restockCashMinor) : texts.restock.nothing(low.length),
      detail: isBought ? texts.restock.says : texts.restock.why(low.length),
      trust: given,
    },
  ];
}
