// Report view: what plan.json tells of time. In: nothing. Out: schemas for plan-document.ts.
import { z } from 'zod';
import { layer, list, number, rows, text, whole, yesNo } from './document-fields.js';

const minutes = (says: string) => z.number().min(0).describe(`${says} Minutes.`);

const batch = z.object({
  figures: whole('Figures in it.'),
  batches: whole('How many of the unit are like this one.'),
  elapsedMin: minutes('Step by step, from the first setup to the last stroke.'),
  waitingMin: minutes('Of that, nothing to do but wait for paint to dry.'),
  atLeastMin: minutes('No order of work is shorter.'),
  shortest: z
    .enum(['proved', 'rule of thumb'])
    .describe('proved: no other order of work is shorter than step by step.'),
});

export const jobTime = z.object({
  brushMinPerFigure: minutes('The whole scheme on one figure, tool in hand.'),
  brushMinPerFigureLow: minutes('One time in ten a figure takes less.'),
  brushMinPerFigureHigh: minutes('One time in ten a figure takes more.'),
  brushMin: minutes('What is still to be done on one such unit, tool in hand.'),
  setupMin: minutes('Fetching, putting out and rinsing for it.'),
  waitingMin: minutes('Waiting, one batch after the other, step by step.'),
  elapsedMin: minutes('All of it, one batch after the other.'),
  smallestBatchWithoutWaiting: whole(
    'Figures of the smallest batch at which nothing waits; null where none is large enough.',
  ).nullable(),
  smallestBatchBetweenLongDrying: whole(
    'As `smallestBatchWithoutWaiting`, but what dries long is left for the end of an evening.',
  ).nullable(),
  batches: list(batch, 'Its batches, alike ones together.'),
});

const piece = z.object({
  what: z.enum(['painting', 'spraying', 'waiting']).describe('What is done.'),
  minutes: minutes('How long, setup included.'),
  unit: text('Name of the unit.').optional(),
  step: whole('Number of the step.').optional(),
  layer: layer.optional(),
  coat: whole('Which coat of it, from 1.').optional(),
  figures: number('On how many figures.').optional(),
});

export const time = z.object({
  brushMin: minutes('What is still to be done, tool in hand.'),
  brushMinLow: minutes('One time in ten less.'),
  brushMinHigh: minutes('One time in ten more.'),
  setupMin: minutes('Fetching, putting out and rinsing.'),
  waitingMin: minutes('Waiting, one batch after the other.'),
  elapsedMin: minutes('One batch after the other, one unit after the other, without a break.'),
  eveningMin: minutes('An evening.'),
  evenings: whole('How many evenings, batches overlapping so that little waits.'),
  eveningsReckoned: yesNo('True where evenings past those of `plan` are reckoned at their pace.'),
  plan: rows('The evenings, from the first.', {
    minutes: minutes('Waiting included.'),
    pieces: list(piece, 'In order; waiting has no unit, step, layer, coat and figures.'),
  }),
});
