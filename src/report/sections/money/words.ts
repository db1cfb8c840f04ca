// Money so far: its English. In: results, ways to say numbers. Out: text.
import { formOf } from '../../words/form-of.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';

const labels = {
  heading: 'Money so far',
  spent: 'Bought, by month and shop',
  spentCaption: 'What the log says was bought, with postage',
  month: 'Month',
  shop: 'Shop',
  cash: 'cash',
  total: 'All of it',
  finished: 'What finished figures have cost',
  finishedCaption:
    'A figure of the units that are finished, with extras: by the estimate, and by what its paints took. Paints that were neither counted nor measured stand as estimated',
  figure: 'Figure',
  scheme: 'scheme',
  figures: 'figures',
  estimated: 'estimated',
  really: 'really',
};

export const moneyWords = (say: NumberWords) => ({
  labels,
  noShop: 'not said',
  used: { title: 'Used up', says: 'Thrown away pots count as used.' },
  standing: {
    title: 'Standing in the pots',
    says: (unpriced: number): string =>
      unpriced === 0
        ? ''
        : `${countOf(say, unpriced, 'pot')} without a price ${formOf(unpriced, 'is', 'are')} left out.`,
  },
  onWay: { title: 'On its way', says: '' },
});
export type MoneyWords = ReturnType<typeof moneyWords>;
