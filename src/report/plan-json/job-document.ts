// plan.json: what it tells of units and of the jobs that they share. In: nothing. Out: schemas for plan-document.ts.
import { z } from 'zod';
import { methods } from '../../model/words.js';
import { coatsBecause } from './colour-document.js';
import {
  atLeast,
  biggestDoubt,
  cash,
  cm2,
  cost,
  layer,
  list,
  mark,
  ml,
  number,
  rows,
  share,
  text,
  whole,
  yesNo,
} from './document-fields.js';
import { jobTime } from './time-document.js';

export const unit = z.object({
  unit: text('Name of the unit; the army sheet may use one twice.'),
  job: whole('Its place in `jobs`, from 0.'),
  cash: cash('Its share of the order, postage included; the units add up to the total of the order.'),
  cashPerFigure: cost('The same for one figure.'),
  army: text('Of several armies, the one it belongs to; left out where one is planned alone.').optional(),
  doneOnEvening: whole(
    'The evening, from 1, on which its last figure is finished; null where finished, not spelled out, or planned for in part.',
  ).nullable(),
});

const line = z.object({
  step: whole('Number of the step.'),
  figures: whole('How many figures still lack it.'),
  zone: text('What is painted.'),
  layer,
  method: z.enum(methods).describe('How it goes on.'),
  paint: text('Name of the paint; a mix has a line for each of its paints.'),
  areaCm2: cm2('The zone on one figure, before the area share.'),
  areaShare: share('How much of the zone is covered.'),
  coats: number('How many coats.'),
  coatsBecause: coatsBecause.optional(),
  thin: number('Parts of water to one part of paint.'),
  mixShare: share("This paint's share of the mix; 1 where it is the only paint."),
  sittings: whole('How many goes: paint is put out once in each.'),
  onFigureMl: ml('What ends on these figures.'),
  leftoverMl: ml('What palette, brush, cup or nozzle keep.'),
  putOutMl: ml('What leaves the pot, for these figures.'),
  useCost: cost('Cost of use of what is put out.'),
  atLeast,
  mark,
  biggestDoubt,
});

const part = (says: string) =>
  z.object({ name: text(says), useCost: cost('On one figure, the whole scheme.'), atLeast });

const benchPaint = z.object({
  paint: text('Name of the paint.'),
  isSwap: yesNo('True where it goes on instead of the paint that the scheme names.'),
  coatMl: ml('To put out for one coat.'),
  coatHighMl: ml('Enough for it nine times in ten.'),
  drops: whole('The same in drops; null for what is sprayed or spread.').nullable(),
  highDrops: whole('Enough nine times in ten; null for what is sprayed or spread.').nullable(),
});

const bench = z.object({
  batch: whole('Which of its batches comes next, from 1.'),
  batches: whole('How many it has in all.'),
  figures: whole('Figures in it.'),
  steps: rows('In order.', {
    step: whole('Number of the step.'),
    zone: text('What is painted.'),
    layer,
    figures: whole('How many of the batch still lack it.'),
    coats: number('How many coats.'),
    driesMin: number('How long a coat dries, in minutes.'),
    startNext: yesNo('True where it dries long and the batch has nothing else to be painted meanwhile.'),
    paints: list(benchPaint, 'Its paint, or those of its mix.'),
  }),
});

export const job = z.object({
  figure: text('Name of the figure.'),
  scheme: text('Name of the scheme.'),
  count: whole('Figures in one unit.'),
  batch: whole('How many are painted at one go.'),
  done: whole('The last step finished on all of them; 0: none.'),
  units: whole('How many units share this job.'),
  unfinished: yesNo('True while a step is still to be done.'),
  steps: whole('Steps of the scheme.'),
  stepsFinished: whole('Steps that every figure has had.'),
  begun: rows('Steps that some figures have had.', {
    step: whole('Number of the step.'),
    figures: whole('How many have had it.'),
  }),
  areaCm2: cm2('One figure with its base.'),
  putOutMl: ml('What the whole scheme takes from the pots, for one unit.'),
  putOutRemainingMl: ml('Of that, what is still to be put out.'),
  useCostPerFigure: cost('Cost of use of the whole scheme on one figure, extras included.'),
  useCostPerFigureLow: cost('One time in ten it is lower; what has no price is left out.'),
  useCostPerFigureHigh: cost('One time in ten it is higher.'),
  extrasPerFigure: cost('Of that, the extras.'),
  layers: list(part('The layer.'), 'By layer; with the extras they add up to `useCostPerFigure`.'),
  zones: list(part('The zone.'), 'By zone; with the extras they add up to the same.'),
  useCost: cost('Cost of use of the whole scheme on all figures of one unit, extras included.'),
  useCostLow: cost('One time in ten it is lower; what has no price is left out.'),
  useCostHigh: cost('One time in ten it is higher.'),
  atLeast,
  useCostRemaining: cost('Cost of use of what is still to be done; extras while unfinished.'),
  remainingAtLeast: yesNo('True where something of what is still to be done has no price.'),
  figuresPrice: cash('Price of the unpainted figures of one unit; null where unpriced.').nullable(),
  notPainted: list(z.string(), 'Parts that only primer, wash or varnish reaches, or nothing.'),
  mark,
  biggestDoubt,
  time: jobTime.describe('How long one unit takes.'),
  bench: bench
    .nullable()
    .describe('The next batch; null for a finished job and one whose units wait longest.'),
  lines: list(line, 'Work still to be done on one unit, in step order.'),
});
