// Report view: what plan.json holds, field by field. In: nothing. Out: the schema from which reports/plan.schema.json is
// made, and its types. Only the making of that file and tests import the schema itself; a plan imports types alone.
import { z } from 'zod';
import { cautions, lackable } from '../../model/plan.js';
import { layers, sheetNames } from '../../model/words.js';
import { choice, policy, sureOfPolicy } from './choice-document.js';
import { fewestPots, frontierPoint, primer, substitute, swap, undercoat } from './colour-document.js';
import { armyShare, costs, money } from './cost-document.js';
import {
  biggestDoubt,
  cm2,
  date,
  group,
  list,
  mark,
  ml,
  number,
  rows,
  share,
  text,
  whole,
} from './document-fields.js';
import { job, unit } from './job-document.js';
import { alike, budget, order, stairs } from './order-document.js';
import { paint } from './paint-document.js';
import { planVersion } from './plan-version.js';
import { sheetRead, shelf } from './sheet-document.js';
import { doubtOfCash, draws, learned, promise, remedy } from './sure-document.js';
import { time } from './time-document.js';

const work = z.object({
  putOutMl: ml('The whole scheme on every figure.'),
  putOutRemainingMl: ml('Of that, what is still to be put out.'),
  zones: rows('Most paint first.', {
    zone: text('The zone.'),
    putOutMl: ml('Still to be put out on it.'),
    layers: z.partialRecord(z.enum(layers), z.number().min(0)).describe('The same by layer.'),
  }),
  paints: rows('In the order in which they first go on.', {
    paint: text('Name of the paint.'),
    putOutMl: ml('The whole scheme on every figure.'),
    putOutRemainingMl: ml('Of that, what is still to be put out; the three that follow add up to it.'),
    onFigureMl: ml('What ends on the figures.'),
    lostMl: ml('What is lost on the way.'),
    leftoverMl: ml('What palette, brush, cup or nozzle keep.'),
    mark,
    biggestDoubt,
  }),
});

const figure = z.object({
  figure: text('Name of the figure.'),
  wholeCm2: cm2('Body and kit, or hull.'),
  withBaseCm2: cm2('The same with its base.'),
  parts: z.record(z.string(), z.number().min(0)).describe('Square centimetres of each part.'),
  mark,
  biggestDoubt,
});

const problem = z.object({
  code: text('Name of the sort of problem.'),
  severity: z.enum(['error', 'warning']).describe('A plan has warnings only.'),
  file: text('The file in which it stands.'),
  sheet: z.enum(sheetNames).optional().describe('The sheet.'),
  row: whole('The row, the header being row 1.').optional(),
  column: text('The header as written.').optional(),
  cell: text('The address in a spreadsheet.').optional(),
  found: text('What stands there.'),
  expected: text('What would be right.'),
  hint: text('What to do.'),
});

const assumption = z.object({
  name: text('Its name in the settings sheet.'),
  low: number('One time in ten it is lower.'),
  likely: number('The value that is likely.'),
  high: number('One time in ten it is higher.'),
  unit: text('Blank for a plain factor.'),
  mark,
  source: text('Where it comes from, or what it stands for.'),
  weighings: whole('From how many rows of the log it was learned; only with the mark weighed.').optional(),
});

export const planSchema = group('A plan made by Halfpot.', {
  version: z.literal(planVersion).describe('Raised whenever a key changes its meaning; keys may be added.'),
  date: date.describe('The day of the plan.'),
  currency: text('ISO 4217 code of every amount of money.'),
  settings: group('The settings that hold.', {
    locale: text('BCP 47 tag of the report.'),
    surePercent: number(
      'How sure the order shall be that nothing runs out, percent; null where no promise is asked for.',
    ).nullable(),
    restock: z.enum(['army', 'shelf']).describe('What the orders are for.'),
  }),
  army: group('How big the army is, and whether its pots last.', {
    figures: whole('Figures in all.'),
    units: whole('Units in all.'),
    chanceAllLast: share('Chance that today’s pots last for the whole army.'),
    chanceAllLastError: share('Its standard error.'),
  }),
  lacking: list(z.enum(lackable), 'Sheets without rows, for which parts of the plan stay empty.'),
  shelf,
  draws,
  costs,
  money,
  armies: list(
    armyShare,
    'Each army’s share, in the order in which they are painted; none where one is planned alone.',
  ),
  units: list(unit, 'The units, in the order of the army sheet.'),
  jobs: list(job, 'What units alike in figure, scheme, count, batch and progress share.'),
  work: work.describe('Paint put out by the whole army.'),
  figures: list(figure, 'Areas of the figures.'),
  paints: list(paint, 'Every paint that is owned or needed.'),
  promise,
  doubts: list(
    doubtOfCash,
    'What causes the spread of the cash for what today’s pots lack, the greatest first; under 0.01 left out.',
  ),
  remedies: list(remedy, 'What would settle most of that doubt, the greatest first.'),
  learned,
  order: z
    .object({ policy, sure: sureOfPolicy })
    .extend(order.shape)
    .describe('What the army needs to be bought now, by the chosen way to buy.'),
  choices: list(
    choice,
    'Ways to buy, side by side: what each costs now, and what follows as the army is painted.',
  ),
  withoutShop: list(
    alike,
    'What stands for `unmet` of the order: another pot like the newest priced one, bought from nobody on these sheets.',
  ),
  restock: order
    .nullable()
    .describe(
      'What brings low pots back to their level after what the chosen way to buy provides for; null where not asked for.',
    ),
  stairs: stairs.describe(
    'Cash for paint against the number of figures, from none to twice the army, with the margin of the chosen way to buy.',
  ),
  budget: budget
    .nullable()
    .describe(
      'What a sum of cash finishes, with the margin of the chosen way to buy; null where no sum was given.',
    ),
  undercoats: list(undercoat, 'Coats of another colour beneath that save more coats than they take.'),
  primers: list(primer, 'The whole army with each primer in turn, best first.'),
  swaps: list(swap, 'What the swaps sheet changed.'),
  instead: list(substitute, 'What is owned instead of paints to buy; for each paint the best first.'),
  frontier: list(
    frontierPoint,
    'Cash against the largest colour difference allowed, by rising difference, with the margin of the chosen way to buy.',
  ),
  frontierNotDrawn: list(
    number('CIEDE2000.'),
    'Larger differences that were left out, since they bring in too many paints to search among.',
  ),
  fewestPots: fewestPots.describe(
    'The choice that buys the fewest pots within the largest difference drawn.',
  ),
  time: time.describe('How long it takes one painter. Minutes are likely values, from memory unless yours.'),
  cautions: list(z.enum(cautions), 'What in the plan calls for caution.'),
  problems: list(problem, 'Warnings of the sheets.'),
  defaults: rows('Blanks that took their default.', {
    sheet: text('Name of the sheet.'),
    column: text('Name of the column.'),
    rows: whole('How many rows left it blank.'),
    meaning: text('What the blank means.'),
  }),
  read: list(sheetRead, 'How the sheets were read.'),
  assumptions: list(assumption, 'Every assumption that the plan rests on.'),
});

type Frozen<T> = T extends readonly (infer Item)[]
  ? readonly Frozen<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Frozen<T[Key]> }
    : T;

/** plan.json as a value. */
export type PlanDocument = Frozen<z.infer<typeof planSchema>>;
