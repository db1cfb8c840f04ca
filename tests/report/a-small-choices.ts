// Ways to buy for the small plan, set by hand: one pot of Nettle coat does for most, the surest two take more.
import type { Aim, Choice, Follows, Sampled } from '../../src/model/choices.js';
import type { Chance } from '../../src/model/ranges.js';
import { smallOrder } from './a-small-shelf.js';

const sampled = (value: number, error: number): Sampled => ({ value, error });
const chance = (share: number, error: number): Chance => ({ chance: share, error });

/** One pot in 400 draws of 97.4 %: another order in 71 of them. */
const afterOnePot: Follows = {
  draws: 400,
  ordersAfter: sampled(0.1775, 0.0191),
  meanInAllMinor: sampled(871.4, 14.1),
  highInAllMinor: sampled(1480, 0),
  leftOverMinor: sampled(171.3, 6.2),
  atLeast: true,
  next: {
    chance: chance(0.1775, 0.0191),
    unit: 'Second watch',
    chanceThere: chance(0.1225, 0.0164),
    cashMinor: sampled(740, 0),
  },
};

/** Nothing at first, and then always an order for the first unit. */
const afterWaiting: Follows = {
  draws: 400,
  ordersAfter: sampled(1.1425, 0.0175),
  meanInAllMinor: sampled(845.5, 12.9),
  highInAllMinor: sampled(1480, 0),
  leftOverMinor: sampled(165.2, 6),
  atLeast: true,
  next: {
    chance: chance(0.965, 0.0092),
    unit: 'First watch',
    chanceThere: chance(0.965, 0.0092),
    cashMinor: sampled(740, 0),
  },
};

const afterMore = (minor: number): Follows => ({
  draws: 400,
  ordersAfter: sampled(0, 0),
  meanInAllMinor: sampled(minor, 0),
  highInAllMinor: sampled(minor, 0),
  leftOverMinor: sampled(minor - 561, 11.2),
  atLeast: true,
  next: undefined,
});

const [onePot] = smallOrder.lines;

/** So many pots of Nettle coat, 3.50 each. */
function pots(aim: Aim, count: number, met: Chance, follows: Follows): Choice {
  const goodsMinor = 350 * count;
  const lines = onePot === undefined || count === 0 ? [] : [{ ...onePot, count, costMinor: goodsMinor }];
  const bill = { shop: 'The Ferry Steps', goodsMinor, postageMinor: 390, totalMinor: goodsMinor + 390 };
  return {
    ...aim,
    cashNowMinor: count === 0 ? 0 : bill.totalMinor,
    aboveBestMinor: 0,
    lines: lines.map((line) => ({
      ...line,
      chanceNeeded: chance(count === 1 ? 0.974 : 0.1787, 0.002),
      threshold: 0.3097,
    })),
    bills: count === 0 ? [] : [bill],
    asLikely: aim.policy === 'goes' ? ['Rust hush'] : [],
    waiting: [
      ...(count === 0
        ? [{ paint: 'Nettle coat', chanceNeeded: chance(0.974, 0.002), threshold: 0.3097 }]
        : []),
      { paint: 'Pond wash', chanceNeeded: chance(0.213, 0.004), threshold: 0.2779 },
    ],
    met,
    follows,
  };
}

const sure = (surePercent: number): Aim => ({ policy: 'sure', surePercent });

export const smallChoices: readonly Choice[] = [
  pots({ policy: 'likely' }, 1, chance(0.7719, 0.0042), afterOnePot),
  pots({ policy: 'goes' }, 1, chance(0.8213, 0.0038), afterOnePot),
  pots({ policy: 'wait' }, 0, chance(0.026, 0.002), afterWaiting),
  pots(sure(50), 1, chance(0.8213, 0.0038), afterOnePot),
  pots(sure(80), 1, chance(0.8213, 0.0038), afterOnePot),
  { ...pots(sure(90), 2, chance(0.9144, 0.0028), afterMore(1290)), cashNowMinor: 1290 },
  {
    ...pots(sure(95), 3, chance(0.9571, 0.002), afterMore(1640)),
    cashNowMinor: 1640,
    aboveBestMinor: 50,
  },
];
