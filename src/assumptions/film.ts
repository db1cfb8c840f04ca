// Assumptions: wet film, transfer and leftover of each method. Names are `<method> wet film`, `... transfer`,
// `... leftover`, and `painter`.
import type { Assumption } from '../model/assumption.js';
import type { Method } from '../model/words.js';
import { define } from './define-assumption.js';

type Triple = readonly [number, number, number];

interface MethodValues {
  readonly film: Triple;
  readonly transfer: Triple;
  readonly leftover: Triple;
}

const methodValues: Record<Method, MethodValues> = {
  brush: { film: [30, 50, 80], transfer: [0.3, 0.5, 0.7], leftover: [0.04, 0.08, 0.2] },
  flood: { film: [60, 100, 160], transfer: [0.5, 0.65, 0.8], leftover: [0.05, 0.1, 0.2] },
  drybrush: { film: [5, 10, 20], transfer: [0.05, 0.15, 0.3], leftover: [0.03, 0.05, 0.1] },
  sponge: { film: [20, 40, 60], transfer: [0.35, 0.5, 0.65], leftover: [0.03, 0.05, 0.1] },
  spread: { film: [300, 800, 2000], transfer: [0.6, 0.8, 0.9], leftover: [0.1, 0.2, 0.4] },
  airbrush: { film: [15, 25, 40], transfer: [0.2, 0.35, 0.5], leftover: [0.2, 0.5, 1] },
  'spray can': { film: [60, 100, 150], transfer: [0.04, 0.08, 0.16], leftover: [1, 2, 4] },
};

const memory = { mark: 'from memory', source: 'no published figure for small figures is known' } as const;

export const filmAssumptions: readonly Assumption[] = [
  ...Object.entries(methodValues).flatMap(([method, { film, transfer, leftover }]) => [
    define(`${method} wet film`, film, { unit: 'µm', ...memory }),
    define(`${method} transfer`, transfer, { unit: 'of the paint put out', ...memory }),
    define(`${method} leftover`, leftover, { unit: 'ml a sitting', ...memory }),
  ]),
  define('full target of a spray', 18, {
    unit: 'cm2',
    mark: 'from memory',
    source: 'a smaller target catches less of the cone: transfer x sqrt(area / this)',
  }),
  define('least catch of a spray', 0.2, {
    unit: 'of the transfer',
    mark: 'from memory',
    source: 'a very small target',
  }),
  define('most catch of a spray', 2, {
    unit: 'of the transfer',
    mark: 'from memory',
    source: 'a very large target',
  }),
  define('most transfer of an airbrush', 0.8, {
    unit: 'of the paint put out',
    mark: 'from memory',
    source: 'some mist passes the largest target',
  }),
  define('painter', [0.8, 1, 1.25], {
    mark: 'from memory',
    source: 'how heavily one loads a brush, against the likely painter',
  }),
];
