// Colours of the small plan: one reason for coats, an undercoat, primers, a swap taken, substitutes, cash against colour.

import type {
  CoatReason,
  Instead,
  PrimerComparison,
  SwapTaken,
  UndercoatAdvice,
} from '../../src/model/colour.js';
import type { Frontier, FrontierPoint, FrontierSwap } from '../../src/model/frontier.js';
import { exactMinor } from '../../src/model/money.js';

const only = (paint: string) => [{ paint, share: 1 }];

/** 23.1 x 0.3^3 = 0.62 is left after three coats, 2.08 after two. */
export const nettleOverGrey: CoatReason = {
  rule: 'shows through',
  over: only('Nettle coat'),
  under: only('Kettle grey'),
  beneath: [only('Kettle grey')],
  opacity: 'weak',
  coatOpacity: 0.7,
  dE00: 23.1,
  better: { undercoat: 'Moss bed', coats: 1 },
};

export const smallUndercoats: readonly UndercoatAdvice[] = [
  {
    scheme: 'Marsh',
    step: 2,
    zone: 'tunic',
    layer: 'base coat',
    over: only('Nettle coat'),
    under: only('Kettle grey'),
    undercoat: 'Moss bed',
    undercoatCoats: 1,
    coatsWithout: 3,
    coatsSaved: 1,
    coatsWith: 1,
    figures: 20,
    mlSaved: -0.31,
    minutesSaved: 66,
  },
];

export const smallPrimers: PrimerComparison = {
  primers: [
    {
      paint: 'Lamp white',
      owned: true,
      inUse: false,
      hasColour: true,
      coats: 101,
      ml: 95.2,
      useCost: { exactMinor: exactMinor('880.4'), atLeast: true },
      minutes: 150,
    },
    {
      paint: 'Kettle grey',
      owned: true,
      inUse: true,
      hasColour: true,
      coats: 142,
      ml: 98.4,
      useCost: { exactMinor: exactMinor('910.3'), atLeast: true },
      minutes: 263,
    },
    {
      paint: 'Pitch shed',
      owned: false,
      inUse: false,
      hasColour: false,
      coats: 142,
      ml: 98.4,
      useCost: { exactMinor: exactMinor('1020'), atLeast: false },
      minutes: 263,
    },
  ],
  best: ['Lamp white'],
};

export const smallSwaps: readonly SwapTaken[] = [
  { scheme: 'Timber', steps: [2], paint: 'Bark hush', by: 'Rust hush', dE00: 0.83 },
];

/** 12.1 ml of Nettle coat are needed in all: 4.08 there, 8.02 to buy. */
export const smallInstead: readonly Instead[] = [
  {
    paint: 'Nettle coat',
    toBuyMl: 8.02,
    neededMl: 12.1,
    by: [
      { paint: 'Nettle, old label', sameByName: true, spareMl: 14, isEnough: true },
      { paint: 'Moss bed', sameByName: false, dE00: 1.96, spareMl: 6.5, isEnough: false },
    ],
  },
];

const moss: FrontierSwap = { paint: 'Nettle coat', by: 'Moss bed', dE00: 1.96 };
const clay: FrontierSwap = { paint: 'Rust hush', by: 'Clay, "wet"', dE00: 6.2 };

/** Own colours: 7.40, and Rust hush is not to be had. From 2 nothing is bought; from 7 a pot of clay for 3.10 and postage. */
const pointAt = (dE00: number): FrontierPoint => {
  const unmet = dE00 < 7 ? [{ paint: 'Rust hush', ml: 4.05 }] : [];
  const rest = { dE00, unmet, status: "can't be met", aboveBestMinor: 0 } as const;
  if (dE00 < 2) return { ...rest, cashMinor: 740, pots: 1, swaps: [] };
  if (dE00 < 7) return { ...rest, cashMinor: 0, pots: 0, swaps: [moss] };
  return {
    dE00,
    unmet,
    status: 'not proved',
    aboveBestMinor: 40,
    cashMinor: 700,
    pots: 2,
    swaps: [moss, clay],
  };
};

export const smallFrontier: Frontier = {
  points: [0, 2, 5, 10].map(pointAt),
  notDrawn: [],
  fewestPots: { ...pointAt(10), status: 'proved', aboveBestMinor: 0, cashMinor: 760, pots: 1, abovePots: 0 },
};
