// Time of the small plan, by hand. Each warden takes 0.4 + 3 x 3 + 3 + 2 + 1 = 15.4 minutes, the ram still 30 + 30.
import type { BatchTime, Evening, JobTime, Pass, TimePlan } from '../../src/model/time.js';
import { ram, smallUnits, wardens } from './a-small-army.js';

const pass = (step: number, layer: Pass['layer'], rest: Partial<Pass> = {}): Pass => ({
  ...{
    step,
    layer,
    coat: 1,
    spray: false,
    zones: ['tunic'],
    paints: ['Nettle coat'],
    palette: `brush ${step}`,
    figures: 10,
  },
  ...{ brushMinPerFigure: 3, setupMin: 1, driesMin: 5 },
  ...rest,
});

const primer = pass(1, 'primer', {
  spray: true,
  zones: ['all'],
  paints: ['Kettle grey'],
  brushMinPerFigure: 0.4,
  setupMin: 5,
  driesMin: 30,
});
const base = pass(2, 'base coat');
const [second, third] = [2, 3].map((coat) => pass(2, 'base coat', { coat, setupMin: 0 }));
const wash = pass(3, 'wash', { zones: ['whole'], driesMin: 30 });
const highlight = pass(4, 'highlight', { brushMinPerFigure: 2 });
const detail = pass(5, 'detail', { zones: ['belt'], brushMinPerFigure: 1 });
const timber = pass(2, 'base coat', { zones: ['whole'], figures: 1, brushMinPerFigure: 30 });
const again = { ...timber, coat: 2, setupMin: 0 };

const batch = (of: Omit<BatchTime, 'batches'>): BatchTime => ({ batches: 1, ...of });

export const wardensTime: JobTime = {
  job: wardens,
  brushMinPerFigure: 15.4,
  brushPerFigure: { low: 11.2, likely: 15.4, high: 21.3 },
  ...{ brushMin: 154, setupMin: 9, waitingMin: 36.4, elapsedMin: 199.4 },
  passes: [primer, base, ...(second && third ? [second, third] : []), wash, highlight, detail],
  batches: [
    batch({
      ...{ figures: 10, brushMin: 154, setupMin: 9, waitingMin: 36.4, elapsedMin: 199.4 },
      ...{ atLeastMin: 193.4, shortest: 'rule of thumb' },
    }),
  ],
  smallestBatchWithoutWaiting: { figures: 74, becauseOf: primer },
  smallestBatchBetweenLongDrying: { figures: 5, becauseOf: highlight },
};

export const ramTime: JobTime = {
  job: ram,
  brushMinPerFigure: 62,
  brushPerFigure: { low: 44, likely: 62, high: 88 },
  ...{ brushMin: 60, setupMin: 1, waitingMin: 5, elapsedMin: 66 },
  passes: [timber, again],
  batches: [
    batch({
      ...{ figures: 1, brushMin: 60, setupMin: 1, waitingMin: 5, elapsedMin: 66 },
      ...{ atLeastMin: 66, shortest: 'proved' },
    }),
  ],
  smallestBatchWithoutWaiting: { figures: 2, becauseOf: timber },
  smallestBatchBetweenLongDrying: { figures: 2, becauseOf: timber },
};

const paint = (unit: string, of: Pass, minutes: number, figures = 10): Evening['pieces'][number] => ({
  ...{ what: of.spray ? 'spraying' : 'painting', unit, pass: of, figures, minutes },
  setupMin: of.setupMin,
});

/** Two evenings of 150 minutes are spelled out: 13 sprayed, 21.4 waited, 91 and 22 painted; then 31, 10 and 31. */
const evenings: readonly Evening[] = [
  {
    pieces: [
      paint('First watch', primer, 9),
      paint('Second watch', primer, 4),
      { what: 'waiting', minutes: 21.4 },
      paint('First watch', base, 31),
      ...(second && third ? [paint('First watch', second, 30), paint('First watch', third, 30)] : []),
      paint('Second watch', base, 22, 7),
    ],
    minutes: 147.4,
  },
  {
    pieces: [
      paint('First watch', wash, 31),
      paint('Second watch', base, 10, 3),
      paint('The ram', timber, 31, 1),
    ],
    minutes: 72,
  },
];

export const smallTime: TimePlan = {
  brushMin: 368,
  brushRange: { low: 270, likely: 368, high: 504 },
  setupMin: 19,
  waitingMin: 77.8,
  elapsedMin: 464.8,
  eveningMin: 150,
  evenings: 4,
  spelledOut: evenings,
  eveningsReckoned: true,
  units: smallUnits.map(({ unit, job }) => ({
    unit,
    time: job === ram ? ramTime : wardensTime,
    doneOnEvening: job === ram ? 2 : undefined,
  })),
};
