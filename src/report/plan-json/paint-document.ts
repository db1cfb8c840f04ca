// Plan.json: paints, field by field. In: nothing. Out: the part of its schema.
import { z } from 'zod';
import {
  atLeast,
  cash,
  container,
  cost,
  group,
  list,
  mark,
  ml,
  number,
  share,
  text,
  whole,
  yesNo,
} from './document-fields.js';
import { doubtOfPaint } from './sure-document.js';

const shelfPot = z.object({
  sheet: z.enum(['pots', 'log']).describe('Log: a pot that was bought since.'),
  row: whole('Its row there, the header being row 1.'),
  sizeMl: number('Volume on the label, millilitres.'),
  container,
  usableMl: ml('What is left in it.'),
  price: cash('What the whole pot cost; null where unpriced.').nullable(),
  ordered: yesNo('True where it is on its way.'),
  mark,
});

const lastsTo = z
  .object({
    figures: whole('The last figure of the army that it lasts for; 0: for none.'),
    unit: text('The unit in which it runs out.'),
    ofUnit: whole('Of that unit, the figures it lasts for.'),
  })
  .nullable();

export const paint = z.object({
  paint: text('Name of the paint.'),
  needMl: group('What the work still to be done puts out.', {
    low: ml('One time in ten less is needed.'),
    likely: ml('By the formula at the likely values; about as often more as less.'),
    high: ml('One time in ten more is needed.'),
  }),
  haveMl: ml('What the shelf holds and what is on its way.'),
  haveLowMl: ml('One time in ten it is less.'),
  haveHighMl: ml('One time in ten it is more.'),
  orderedMl: ml('Of that, what is on its way.'),
  isEstimated: yesNo('True where work without amounts has lowered it since the last count.'),
  leftAfterMl: ml('What the plan leaves of today’s pots, before buying.'),
  toBuyMl: ml('What the chosen way to buy takes beyond what is there, in likely usable paint.'),
  keepMl: ml('The shelf level.'),
  state: z
    .enum(['none owned', 'short', 'tight', 'enough'])
    .describe(
      'none owned; short: the chance of running short is over 0.5; tight: over 0.1; enough: up to 0.1, or not needed.',
    ),
  runningLow: yesNo('True where a pot is owned and what is left after the plan is under the shelf level.'),
  chanceShort: share('Chance that today’s pots do not last.'),
  chanceShortError: share('Its standard error.'),
  lasts: group('To which figure today’s pots last, in the order of painting; null where for all.', {
    likely: lastsTo.describe('Likely.'),
    low: lastsTo.describe('One time in ten it lasts no farther.'),
  }),
  doubts: list(doubtOfPaint, 'What causes the spread of what is missing, where it is not all but sure.'),
  pricePerMl: cost(
    'What a millilitre of usable paint costs: that of its pots and of the order, beyond them that of its newest pot with a price (yours); null where unpriced.',
  ).nullable(),
  useCost: cost('Cost of use of the need.'),
  useCostLow: cost('The same for the low need.'),
  useCostHigh: cost('The same for the high need.'),
  atLeast,
  mark,
  pots: list(shelfPot, 'Its pots, in the order in which they are used up.'),
});
