// The army of the small plan: two units that share a job, one engine half done. Ml and costs follow from few given numbers.
import { type Amount, exactMinor } from '../../src/model/money.js';
import type { Costs, JobCost } from '../../src/model/plan.js';
import type { Unit } from '../../src/model/sheets.js';
import type { Job, Line } from '../../src/model/work.js';
import { nettleOverGrey } from './a-small-palette.js';

type LineParts = Pick<
  Line,
  'step' | 'zone' | 'layer' | 'method' | 'paint' | 'onFigureMl' | 'leftoverMl' | 'putOutMl'
> &
  Partial<Pick<Line, 'coats' | 'coatsBecause'>>;

const line = (parts: LineParts, figures = 10): Line => ({
  figures,
  areaCm2: 5,
  surface: [{ factors: ['dress clothed', 'build heroic', 'relief'], share: 1 }],
  areaShare: 1,
  coats: 1,
  thin: 0,
  mixShare: 1,
  sittings: 1,
  mark: 'from memory',
  biggestDoubt: parts.method === 'brush' ? 'brush wet film' : `${parts.method} transfer`,
  ...parts,
});

const job = (parts: Omit<Job, 'remaining'>): Job => ({
  ...parts,
  remaining: parts.lines.filter(({ step }) => step > parts.done),
});

/** Ten figures at a sitting. Brush: on the figure / 0.5 + 0.05; flood: / 0.65 + 0.1; can: (2.24) / 0.08 + 2. */
export const wardens = job({
  figure: 'Reed warden',
  scheme: 'Marsh',
  count: 10,
  batch: 10,
  done: 0,
  areaCm2: 18,
  unfinished: true,
  notPainted: ['feet'],
  lines: [
    line({
      step: 1,
      zone: 'all',
      layer: 'primer',
      method: 'spray can',
      paint: 'Kettle grey',
      onFigureMl: 2.24,
      leftoverMl: 2,
      putOutMl: 30,
    }),
    line({
      step: 2,
      zone: 'tunic',
      layer: 'base coat',
      method: 'brush',
      paint: 'Nettle coat',
      coats: 3,
      coatsBecause: nettleOverGrey,
      onFigureMl: 3,
      leftoverMl: 0.05,
      putOutMl: 6.05,
    }),
    line({
      step: 3,
      zone: 'whole',
      layer: 'wash',
      method: 'flood',
      paint: 'Pond wash',
      onFigureMl: 3.9,
      leftoverMl: 0.1,
      putOutMl: 6.1,
    }),
    line({
      step: 4,
      zone: 'tunic',
      layer: 'highlight',
      method: 'brush',
      paint: 'Chalk light',
      onFigureMl: 0.2,
      leftoverMl: 0.05,
      putOutMl: 0.45,
    }),
    line({
      step: 5,
      zone: 'belt',
      layer: 'detail',
      method: 'brush',
      paint: 'Bell brass',
      onFigureMl: 0.01,
      leftoverMl: 0.05,
      putOutMl: 0.07,
    }),
  ],
});

/** One engine, its primer already on. */
export const ram = job({
  figure: 'Pole ram',
  scheme: 'Timber',
  count: 1,
  batch: 1,
  done: 1,
  areaCm2: 80,
  unfinished: true,
  notPainted: [],
  lines: [
    line(
      {
        step: 1,
        zone: 'whole',
        layer: 'primer',
        method: 'spray can',
        paint: 'Kettle grey',
        onFigureMl: 0.5,
        leftoverMl: 2,
        putOutMl: 9,
      },
      1,
    ),
    line(
      {
        step: 2,
        zone: 'whole',
        layer: 'base coat',
        method: 'brush',
        paint: 'Rust hush',
        onFigureMl: 2,
        leftoverMl: 0.05,
        putOutMl: 4.05,
      },
      1,
    ),
  ],
});

const unit = (row: number, name: string, { figure, scheme, count, batch, done }: Job): Unit => ({
  row,
  unit: name,
  figure,
  scheme,
  count,
  batch,
  done,
  priority: row - 1,
});

const amount = (minor: number, atLeast = false): Amount => ({
  exactMinor: exactMinor(String(minor)),
  atLeast,
});

/** Prices a ml: grey 4, nettle 20, pond 25, chalk 20; brass and rust unpriced; extras 3.3 a figure. */
export const wardensCost: JobCost = {
  lines: [amount(120), amount(121), amount(152.5), amount(9), amount(0, true)],
  remainingLines: [amount(120), amount(121), amount(152.5), amount(9), amount(0, true)],
  perFigure: amount(43.55, true),
  extrasPerFigure: amount(3.3),
  whole: amount(435.5, true),
  remaining: amount(435.5, true),
};

const ramCost: JobCost = {
  lines: [amount(36), amount(0, true)],
  remainingLines: [amount(0, true)],
  perFigure: amount(39.3, true),
  extrasPerFigure: amount(3.3),
  whole: amount(39.3, true),
  remaining: amount(3.3, true),
};

export const smallUnits = [
  {
    unit: unit(2, 'First watch', wardens),
    job: wardens,
    use: wardensCost,
    cashMinor: 370,
    figuresPriceMinor: 1500,
  },
  {
    unit: unit(3, 'Second watch', wardens),
    job: wardens,
    use: wardensCost,
    cashMinor: 370,
    figuresPriceMinor: 1500,
  },
  { unit: unit(4, 'The ram', ram), job: ram, use: ramCost, cashMinor: 0, figuresPriceMinor: undefined },
] as const;

/** The remaining lines' costs of all units, by zone, layer or paint. */
function sumLines(nameOf: (line: Job['lines'][number]) => string): Map<string, Amount> {
  const sums = new Map<string, Amount>();
  for (const { job, use } of smallUnits) {
    for (const [at, line] of job.remaining.entries()) {
      const before = sums.get(nameOf(line)) ?? amount(0);
      const more = use.remainingLines[at] ?? amount(0);
      sums.set(nameOf(line), {
        exactMinor: before.exactMinor.plus(more.exactMinor),
        atLeast: before.atLeast || more.atLeast,
      });
    }
  }
  return sums;
}

export const smallCosts: Costs = {
  paints: new Map(
    [...sumLines(({ paint }) => paint)].map(([paint, useCost]) => [
      paint,
      { paint, perMl: undefined, pricedShare: 1, likeNewestMl: 0, useCost },
    ]),
  ),
  zones: sumLines(({ zone }) => zone),
  layers: sumLines(({ layer }) => layer),
  units: smallUnits,
  useWhole: amount(910.3, true),
  useRemaining: amount(874.3, true),
  extrasWhole: amount(69.3),
  cashMinor: 740,
  restockCashMinor: 640,
  figuresPrice: amount(3000, true),
  unpriced: ['Bell brass', 'Rust hush'],
};
