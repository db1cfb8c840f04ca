// Report view: the three figures of a shelf without an army. In: the plan and its sums. Out: plain text.
import { joinSentences } from '../../words/join-sentences.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { AnswerFigure } from './answer-figure.js';
import { shelfWords } from './shelf-words.js';

/** What stands there, what it is worth, what is low and what brings it back to its level. */
export function viewShelf(inputs: ViewInputs): readonly [AnswerFigure, AnswerFigure, AnswerFigure] {
  const { plan, words } = inputs;
  const { shelf } = plan.summary;
  const { stands, worth } = shelfWords(words);
  const isUnpriced = shelf.unpriced === shelf.pots;
  return [
    { question: stands.question, figure: words.aboutMl(shelf.haveMl), detail: stands.holds(shelf) },
    {
      question: worth.question,
      figure: isUnpriced ? worth.noPrices : words.amount(shelf.worth),
      detail: isUnpriced ? worth.howToPrice : joinSentences(worth.says, worth.unpriced(shelf)),
    },
    viewLow(inputs),
  ];
}

function viewLow({ plan, words }: ViewInputs): AnswerFigure {
  const { low } = shelfWords(words);
  const { restock, costs, summary } = plan;
  const paints = summary.lasting.unusedLow.map(({ paint }) => paint);
  if (paints.length === 0) return { question: low.question, figure: low.nothing, detail: low.isEnough };
  const { alikeCost } = summary.restock ?? summary.order;
  return {
    question: low.question,
    figure: low.figure(paints.length),
    detail: joinSentences(
      low.names(paints),
      (restock?.lines.length ?? 0) > 0 ? low.restock(costs.restockCashMinor) : '',
      low.noShop(alikeCost),
    ),
  };
}
