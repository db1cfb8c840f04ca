// Report view: what plan.json tells of ways to buy, side by side. In: nothing. Out: their schema for plan-document.ts.
import { z } from 'zod';
import { policies } from '../../model/choices.js';
import { cash, group, list, number, rows, share, text, whole, yesNo } from './document-fields.js';
import { line } from './order-document.js';
import { chanceError } from './sure-document.js';

export const policy = z
  .enum(policies)
  .describe(
    'How much is bought at once. likely: what the likely needs lack; goes: each pot likely enough to be needed to be worth it; ' +
      'wait: nothing until the first pot is dry; sure: so much that nothing runs out in so many cases.',
  );

export const sureOfPolicy = share('For sure, in how many of all cases; else null.').nullable();

const chanceNeeded = share('Chance that it is needed before the army is done.');
const threshold = share('The chance from which on it is worth buying now.');
const next = z
  .object({
    chance: share('Chance that there is one.'),
    chanceError,
    unit: text('The unit before whose end it comes most often.'),
    chanceThere: share('Chance that it comes there.'),
    chanceThereError: chanceError,
    cash: cash('What it costs on average where there is one.'),
    cashError: cash('Standard error of that.'),
  })
  .nullable()
  .describe('The order after the first; null where none ever follows.');

export const choice = z.object({
  policy,
  sure: sureOfPolicy,
  cashNow: cash('Goods and postage of its first order.'),
  aboveBest: cash('At most this much above the best for the same; 0 where proved.'),
  met: share('Share of fresh draws in which nothing on offer runs out with that order alone.'),
  metError: chanceError,
  draws: whole('How many armies were painted on paper for what follows.'),
  ordersAfter: number('Orders that follow on average, one whenever a pot is dry.'),
  meanInAll: cash('All orders together, on average.'),
  highInAll: cash('One time in ten they are more.'),
  leftOver: cash('Of what was bought, what is left at the end on average, at what was paid for it.'),
  errors: group('Standard errors.', {
    ordersAfter: number('Of `ordersAfter`.'),
    meanInAll: cash('Of `meanInAll`.'),
    highInAll: cash('Of `highInAll`.'),
    leftOver: cash('Of `leftOver`.'),
  }),
  atLeast: yesNo('True where some draw needs what no shop can sell: then the sums are higher.'),
  next,
  lines: list(
    line.extend({ chanceNeeded, chanceNeededError: chanceError, threshold }),
    'What it buys at once, with the chance that the last of each line is needed.',
  ),
  waiting: rows('Paints that it leaves out though they may be needed, the likeliest first.', {
    paint: text('Name of the paint.'),
    chanceNeeded,
    chanceNeededError: chanceError,
    threshold,
  }),
});
