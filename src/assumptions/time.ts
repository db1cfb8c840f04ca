// Assumptions: how long painting takes. Names are `<method> pace`, `... handling`, `... setup`, `<layer> care`,
// `wider brush from`, `evening min`, `long drying`. How long a layer dries stands with the layers.
import type { Assumption } from '../model/assumption.js';
import type { Layer, Method } from '../model/words.js';
import { define } from './define-assumption.js';

type Triple = readonly [number, number, number];

interface MethodTimes {
  /** Minutes per cm2 of plain covering. */
  readonly pace: Triple;
  /** Minutes for taking up, turning and setting down one figure, and for loading the brush: each coat of each zone. */
  readonly handling: Triple;
  /** Minutes of fetching, shaking and putting out the paint, and of rinsing: each sitting. */
  readonly setup: Triple;
}

const methodTimes: Record<Method, MethodTimes> = {
  brush: { pace: [0.35, 0.5, 0.75], handling: [0.5, 0.8, 1.2], setup: [0.5, 1, 2] },
  flood: { pace: [0.13, 0.2, 0.3], handling: [0.5, 0.8, 1.2], setup: [0.5, 1, 2] },
  drybrush: { pace: [0.15, 0.25, 0.4], handling: [0.5, 0.8, 1.2], setup: [0.5, 1, 2] },
  sponge: { pace: [0.15, 0.25, 0.4], handling: [0.5, 0.8, 1.2], setup: [0.5, 1, 2] },
  spread: { pace: [0.2, 0.3, 0.5], handling: [0.5, 0.8, 1.2], setup: [0.5, 1, 2] },
  airbrush: { pace: [0.02, 0.04, 0.08], handling: [0.15, 0.3, 0.5], setup: [5, 10, 20] },
  'spray can': { pace: [0.005, 0.01, 0.02], handling: [0.1, 0.2, 0.4], setup: [3, 5, 10] },
};

/** Fine marks take longer for their area than plain covering: so many times as long. */
const layerCare: Record<Layer, Triple> = {
  primer: [1, 1, 1],
  'base coat': [1, 1, 1],
  midtone: [1, 1.2, 1.5],
  wash: [1, 1, 1],
  glaze: [0.8, 1, 1.3],
  drybrush: [1, 1, 1],
  highlight: [2, 3, 5],
  'edge highlight': [6, 10, 16],
  detail: [1.5, 2.5, 4],
  'tidy-up': [1.5, 2.5, 4],
  varnish: [1, 1, 1],
  basing: [1, 1, 1],
};

const memory = (source: string) => ({ mark: 'from memory', source }) as const;
const guessed = memory('set to meet the 30 to 40 minutes of a plain figure, common practice');

export const timeAssumptions: readonly Assumption[] = [
  ...Object.entries(methodTimes).flatMap(([method, { pace, handling, setup }]) => [
    define(`${method} pace`, pace, { unit: 'min per cm2', ...guessed }),
    define(`${method} handling`, handling, { unit: 'min a coat of a zone', ...guessed }),
    define(`${method} setup`, setup, {
      unit: 'min a sitting',
      ...memory('paint fetched, shaken and put out, tools rinsed'),
    }),
  ]),
  ...Object.entries(layerCare).map(([layer, care]) =>
    define(`${layer} care`, care, {
      unit: 'of plain covering',
      ...memory('fine marks take longer for their area'),
    }),
  ),
  define('wider brush from', 5, {
    unit: 'cm2 of a zone',
    ...memory('beyond it the minutes a cm2 fall with the root of the area; not for sprays, sponge, drybrush'),
  }),
  define('evening min', 120, {
    unit: 'min',
    ...memory('how long one sits down to paint; your own stands in the settings sheet'),
  }),
  define('long drying', 30, {
    unit: 'min',
    ...memory('what dries this long or longer is best left for the end of an evening'),
  }),
];
