// Use: its English. In: results, ways to say numbers. Out: text.
import type { PutOut } from '../../../model/summary.js';
import type { Job } from '../../../model/work.js';
import { nameOf } from '../../words/word-name.js';
import { listOf, type NumberWords } from '../../words/word-numbers.js';

const labels = {
  heading: 'Where the paint goes',
  putOut: 'Put out is what leaves the pot, whether it ends on a figure or not.',
  byZone: 'By zone and layer',
  zonesMeaning:
    'Millilitres put out. The larger the dab, the more of its layer’s paint goes there. Rounded so that rows and columns add up: a last digit may differ from the pots above. The cost is that of the paint still to be used, extras apart.',
  zonesCaption: 'ml put out and what it costs, by zone and layer',
  zone: 'Zone',
  inAll: 'in all',
  cost: 'cost',
  allZones: 'In all',
  layerCost: 'Cost',
  byPaint: 'By paint',
  keyOnFigure: 'on the figures',
  keyLost: 'lost on the way: in the brush, the water, the air',
  keyLeftover: 'left over on palette, brush, cup or nozzle',
  paintsCaption: 'ml put out and what it costs, by paint',
  paint: 'Paint',
  drawn: 'Drawn',
  remaining: 'still to be done',
  onFigure: 'on the figures',
  lost: 'lost on the way',
  leftover: 'left over',
  whole: 'whole scheme',
  notPainted: 'Not painted',
  notPaintedMeaning: 'Parts that no step but primer, wash and varnish reaches. Nothing is counted for them.',
};

export const useWords = (say: NumberWords) => ({
  labels,
  lead: ({ wholeMl, remainingMl }: PutOut): string => {
    const whole = `The whole scheme puts out ${say.ml(wholeMl)} of paint`;
    if (remainingMl === 0) return `${whole}; nothing of it is still to be done.`;
    return remainingMl === wholeMl
      ? `${whole}, all of it still to be done.`
      : `${whole}; ${say.ml(remainingMl)} of that is still to be done, and is shown here.`;
  },
  unpainted: ({ figure, scheme, notPainted }: Pick<Job, 'figure' | 'scheme' | 'notPainted'>): string =>
    `${nameOf(figure)} in ${nameOf(scheme)}: ${listOf(notPainted, 12)}`,
});
export type UseWords = ReturnType<typeof useWords>;
