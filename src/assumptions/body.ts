// Assumptions: surface of bodies, kit, creatures, boxes. Names are `dress ...`, `build ...`, `kit ...`, `share ...`,
// `relief`, `sculpt`, of boxes `relief ...`, of what one length measures `surface ...` and `... of a creature`.
import type { Assumption, Mark } from '../model/assumption.js';
import {
  type BoxBuild,
  type Build,
  type CreatureKit,
  type Dress,
  type KitItem,
  type LengthBuild,
  lengthOf,
} from '../model/words.js';
import type { BodyPart } from '../model/zones.js';
import { define } from './define-assumption.js';

type Triple = readonly [number, number, number];

/** A value and where it comes from. */
interface Sourced {
  readonly values: Triple;
  readonly mark: Mark;
  readonly source: string;
}

const memory = (source: string) => ({ mark: 'from memory', source }) as const;

/** Rays were cast at the models: what they reach is visible. */
const openModels = (values: Triple, source: string): Sourced => ({ values, mark: 'open models', source });

const stout = (values: Triple): Sourced => ({
  values,
  ...memory('more head, hands and girth; no model was measured'),
});

/** Collections of models, by the packages of Debian that carry them. */
const first = 'a data package of Debian 12 with antique soldiers, beasts and houses (CC BY-SA 3.0, 2022)';
const second = 'another one with creatures of legend and engines (CC BY-SA 3.0, 2007 to 2011)';

const soldiers = 'eleven soldiers with shield and weapon, free licences, date unknown';

const dresses: Record<Exclude<Dress, 'none'>, Sourced> = {
  bare: openModels(
    [0.85, 0.92, 1],
    'default human of Debian’s assimp-testmodels (BSD-3), male and female base mesh (CC0), date unknown',
  ),
  clothed: openModels([1, 1.2, 1.4], 'three game models, free licences, date unknown'),
  armoured: openModels([1.2, 1.35, 1.55], 'nine soldiers without kit, free licences, date unknown'),
};

/** Against true scale, which is 1 by definition and no assumption. */
const builds: Record<Exclude<Build, 'true scale'>, Sourced> = {
  'heroic mild': stout([1.08, 1.12, 1.17]),
  heroic: stout([1.15, 1.26, 1.38]),
  'heroic strong': stout([1.35, 1.47, 1.6]),
  stocky: stout([1.3, 1.6, 1.9]),
  broad: stout([1.8, 2.2, 2.7]),
  giant: openModels([1.7, 2.9, 5], `five giants, one of stone and one of wicker; ${second}`),
};

const kit: Record<KitItem, Sourced> = {
  weapon: openModels([0.08, 0.15, 0.25], soldiers),
  bow: openModels([0.15, 0.27, 0.4], 'bows with quivers, free licences, number and date unknown'),
  'small shield': openModels([0.2, 0.3, 0.4], soldiers),
  'round shield': openModels([0.4, 0.55, 0.75], soldiers),
  'large shield': openModels([0.65, 0.85, 1.05], soldiers),
  cloak: {
    values: [0.4, 0.6, 0.9],
    ...memory('no model was measured but a long one with its collar, 0.89'),
  },
  horse: openModels([2.5, 3.6, 4], 'ten riders, horses alone, a pony, free licences, date unknown'),
  barding: openModels([1.2, 1.7, 2.2], 'one barded rider, free licence, date unknown'),
  wings: { values: [0.7, 1.2, 2], ...memory('a pair as wide as the person is high, both sides') },
  tail: { values: [0.1, 0.2, 0.35], ...memory('as long as a leg, thinner') },
  saddle: openModels(
    [0.45, 0.7, 1.3],
    `ten saddle blankets of ${first}, of the horse they lie on; what they hide is not taken off`,
  ),
};

/** Surface over the square of the length that a ruler is laid along. */
const surfaces: Record<LengthBuild, Sourced> = {
  beast: openModels([2.1, 3.2, 4.9], `fifteen beasts on four legs, fourteen kept apart; ${first}, ${second}`),
  winged: openModels(
    [0.33, 0.47, 0.67],
    `three birds; a fourth and two winged wyrms, kept apart, have a quarter more; ${first}, ${second}`,
  ),
  serpent: {
    values: [0.12, 0.25, 0.4],
    ...memory(`a snake in four poses, 0.24 to 0.28 (${second}); others are thinner or thicker`),
  },
  engine: openModels([0.95, 2.1, 4.7], `ten rams and throwing engines, nine kept apart; ${first}, ${second}`),
  wall: openModels(
    [0.9, 1.8, 3.8],
    `21 pieces of town walls, 21 kept apart; ${first}; a low field wall has less, its box tells more`,
  ),
  house: openModels([1.9, 3, 4.6], `25 houses on closed ground, 25 kept apart; ${first}, ${second}`),
  hedge: { values: [0.6, 1.1, 2.2], ...memory('open models draw leaves as flat cards') },
};

const ofCreature: Record<CreatureKit, Sourced> = {
  wings: openModels([0.6, 1, 1.6], `both sides, of a winged wyrm 1.01 (${second}); the spread from memory`),
  tail: { values: [0.05, 0.1, 0.2], ...memory('beyond the one that a beast has') },
  saddle: openModels([0.12, 0.2, 0.36], `ten saddle blankets of ${first}; what they hide is not taken off`),
};

const bodyShares: Record<BodyPart, number> = {
  head: 7,
  neck: 2,
  'front trunk': 13,
  'back trunk': 13,
  buttocks: 5,
  groin: 1,
  'upper arms': 8,
  forearms: 6,
  hands: 5,
  thighs: 19,
  'lower legs': 14,
  feet: 7,
};

const lundBrowder: { mark: Mark; source: string } = {
  mark: 'published',
  source: 'Lund & Browder 1944, chart for adults',
};

/** Against the sides and top of a box; an open frame leaves gaps in them. */
const reliefs: Record<BoxBuild, Sourced> = {
  closed: openModels([1, 1.1, 1.25], 'five closed hulls, licences and date unknown'),
  'open frame': openModels([0.55, 0.7, 0.9], 'three engines, licences and date unknown'),
};

export const bodyAssumptions: readonly Assumption[] = [
  define('skin of a person', 18097.078, {
    unit: 'cm2',
    ...memory(
      '170 cm and 70 kg, chosen; the formula is published, 0.007184 H^0.725 W^0.425, Du Bois & Du Bois 1916',
    ),
  }),
  define('stature of a person', 1700, { unit: 'mm', ...memory('the same person, chosen') }),
  define('eye level', 0.936, {
    unit: 'of stature',
    mark: 'published',
    source: 'Drillis & Contini 1966, body segment heights',
  }),
  ...Object.entries(dresses).map(([name, { values, ...origin }]) =>
    define(`dress ${name}`, values, { unit: 'of bare skin', ...origin }),
  ),
  ...Object.entries(builds).map(([name, { values, ...origin }]) =>
    define(`build ${name}`, values, { unit: 'of true scale', ...origin }),
  ),
  ...Object.entries(kit).map(([name, { values, ...origin }]) =>
    define(`kit ${name}`, values, { unit: 'of bare skin', ...origin }),
  ),
  ...Object.entries(bodyShares).map(([name, value]) =>
    define(`share ${name}`, value, { unit: '% of skin', ...lundBrowder }),
  ),
  define('relief', [1.05, 1.1, 1.15], memory('folds, buckles and rivets that a plain surface lacks')),
  define('sculpt', [0.82, 1, 1.22], {
    mark: 'open models',
    source:
      'each figure by itself: what dress, build and kit leave open between one sculpt and the next; of fifteen models, licences and dates unknown',
  }),
  ...Object.entries(reliefs).map(([name, { values, ...origin }]) =>
    define(`relief ${name}`, values, { unit: 'of sides and top', ...origin }),
  ),
  ...Object.entries(surfaces).map(([name, { values, ...origin }]) =>
    define(`surface ${name}`, values, {
      unit: `of its length squared, ${lengthOf[name as LengthBuild]}`,
      ...origin,
    }),
  ),
  ...Object.entries(ofCreature).map(([name, { values, ...origin }]) =>
    define(`${name} of a creature`, values, { unit: 'of its hide', ...origin }),
  ),
];
