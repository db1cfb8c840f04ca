// Report view: what plan.json holds of ranges, the promise, doubts and weighings. In: nothing. Out: their schemas.
import { z } from 'zod';
import { cash, date, group, list, number, share, text, whole, yesNo } from './document-fields.js';

export const draws = group(
  'Low is P10 of the draws, high P90, or likely where that lies beyond; likely is the formula at its likely values, without drawing.',
  {
    count: whole(
      'How many draws ranges and chances come from; fresh ones of the same number check the promise.',
    ),
    seed: whole('The seed of the draws; the fresh ones have the next.'),
  },
);

export const chanceError = share('Standard error of the chance before it.');

const level = z.object({
  sure: share('How sure.'),
  cash: cash('The least cash found for it, postage included.'),
  met: share('Share of the fresh draws in which no paint that shops offer runs out with its order.'),
  metError: chanceError,
  proved: yesNo('False where a search for its order ended early.'),
});

export const promise = group('What the order promises. `choices` say how near the best each level is.', {
  sure: share(
    'How sure the order shall be that nothing at all runs out; null where no promise was asked for.',
  ).nullable(),
  met: share('Share of the draws, from which the order was made, in which nothing runs out with it.'),
  metError: chanceError,
  metOnFreshDraws: share('The same on draws that the order has not seen.'),
  metOnFreshDrawsError: chanceError,
  metOfOffered: share('The same on fresh draws for the paints that shops offer.'),
  metOfOfferedError: chanceError,
  likely: group('What a plan without ranges would buy.', {
    cash: cash('The least cash for the likely needs, each paint by itself.'),
    met: share('Share of the fresh draws in which that does, for the paints that shops offer.'),
    metError: chanceError,
  }),
  levels: list(level, 'What it costs to be more or less sure, ascending.'),
});

export const doubtOfPaint = z.object({
  name: text('An assumption, or `reading of` a paint.'),
  share: share('Share of the spread that it causes by itself.'),
});

export const doubtOfCash = z.object({
  name: text('An assumption, or `reading of` a paint.'),
  shareOfCashSpread: share('Share of the spread of the cash that it causes by itself.'),
});

export const remedy = z.object({
  how: z
    .enum(['weigh', 'measure', 'read', 'count'])
    .describe(
      'weigh: a pot before and after the next batch; measure: a figure; read: weigh a pot; count: look into a pot that work without amounts has lowered.',
    ),
  what: text('The method, the figure or the paint.'),
  paint: text('For weigh, the paint of which the method puts out most; else blank.'),
  shareOfCashSpread: share('Share of the spread of the cash that it settles.'),
});

const weighing = z.object({
  row: whole('Row of the log, the header being row 1.'),
  isCount: yesNo(
    'True where it is a count: what went since the one before, and all that was painted between.',
  ),
  date: date.describe('Day of the work.'),
  unit: text('The unit worked on; of a count all of them.'),
  paint: text('Name of the paint.'),
  figures: whole('How many figures.'),
  usedMl: number('What was used. Millilitres.'),
  expectedMl: number('What the assumptions expect without any weighing. Millilitres.'),
  errorMl: number('Standard deviation of what was used, as a weighing tells it. Millilitres.'),
});

export const learned = group('What the log teaches.', {
  slope: number('Used over expected, a line through the origin; 1 without weighings.'),
  slopeError: number('Its standard error.'),
  widened: number(
    'How many times wider than thought the errors of the rows are, since they contradict one another; 1 where they do not.',
  ),
  weighings: list(weighing, 'Rows of the log that could be held against the estimate.'),
});
