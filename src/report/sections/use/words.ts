// Use: its English. In: results, ways to say numbers. Out: text.
import type { WorkSums } from '../../../model/summary.js';
import type { Job } from '../../../model/work.js';
import { nameOf } from '../../words/word-name.js';
import { listOf, type NumberWords } from '../../words/word-numbers.js';

const labels = {
  heading: 'On the figures',
  byZone: 'Millilitres by zone and layer',
  zonesMeaning:
    'Millilitres put out. The larger the dab, the more of its layer’s paint goes there. Rounded so that rows and columns add up: a last digit may differ from the pots above. The cost is that of the paint still to be used, extras apart.',
  zonesCaption: 'ml put out and what it costs, by zone and layer',
  zone: 'Zone',
  inAll: 'in all',
  cost: 'cost',
  allZones: 'In all',
  layerCost: 'Cost',
  byPaint: 'Millilitres by paint',
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
};

export const useWords = (say: NumberWords) => ({
  labels,
  lead: ({ wholeMl, remainingMl, onFigureShare }: WorkSums): string => {
    const whole = `The whole scheme takes ${say.aboutMl(wholeMl)} out of the pots`;
    if (remainingMl === 0) return `${whole}; nothing of it is still to be done.`;
    const left =
      remainingMl === wholeMl ? whole : `${whole}; ${say.aboutMl(remainingMl)} of that is still to be done`;
    return `${left}. ${say.percent(onFigureShare)} stays on the figures; the rest stays in brush and palette, or misses as spray.`;
  },
  unpainted: ({ figure, scheme, notPainted }: Pick<Job, 'figure' | 'scheme' | 'notPainted'>): string =>
    `Nothing is counted for ${listOf(notPainted, 12)} of ${nameOf(figure)} in ${nameOf(scheme)}: no colour reaches them.`,
});
export type UseWords = ReturnType<typeof useWords>;
