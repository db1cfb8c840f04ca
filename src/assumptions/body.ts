// Assumptions: surface of bodies, kit, boxes. Names are `dress ...`, `build ...`, `kit ...`, `share ...`, `relief`.
import type { Assumption, Mark } from '../model/assumption.js';
import type { Build, Dress, KitItem } from '../model/words.js';
import type { BodyPart } from '../model/zones.js';
import { define } from './define-assumption.js';

type Triple = readonly [number, number, number];

const duBois: { mark: Mark; source: string } = {
  mark: 'published',
  source: 'Du Bois & Du Bois 1916, 0.007184 H^0.725 W^0.425 at 170 cm and 70 kg',
};

const openModels = (what: string): { mark: Mark; source: string } => ({
  mark: 'open models',
  source: `visible area of free-licensed 3D models: ${what}`,
});

const dresses: Record<Exclude<Dress, 'none'>, Triple> = {
  bare: [0.85, 0.92, 1],
  clothed: [1, 1.2, 1.4],
  armoured: [1.2, 1.35, 1.55],
};

const builds: Record<Exclude<Build, 'true scale'>, Triple> = {
  'heroic mild': [1.08, 1.12, 1.17],
  heroic: [1.15, 1.26, 1.38],
  'heroic strong': [1.35, 1.47, 1.6],
  stocky: [1.3, 1.6, 1.9],
  broad: [1.8, 2.2, 2.7],
};

const kit: Record<KitItem, Triple> = {
  weapon: [0.08, 0.15, 0.25],
  bow: [0.2, 0.3, 0.4],
  'small shield': [0.2, 0.3, 0.4],
  'round shield': [0.4, 0.55, 0.75],
  'large shield': [0.65, 0.85, 1.05],
  cloak: [0.35, 0.5, 0.7],
  horse: [2.5, 3.6, 4],
  barding: [1.2, 1.7, 2.2],
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

const reliefSource: { mark: Mark; source: string } = {
  mark: 'from memory',
  source: 'folds, buckles and rivets that a plain surface lacks',
};

export const bodyAssumptions: readonly Assumption[] = [
  define('skin of a person', 18097.078, { unit: 'cm2', ...duBois }),
  define('stature of a person', 1700, { unit: 'mm', ...duBois }),
  define('eye level', 0.936, {
    unit: 'of stature',
    mark: 'published',
    source: 'Drillis & Contini 1966, body segment heights',
  }),
  ...Object.entries(dresses).map(([name, values]) =>
    define(`dress ${name}`, values, { unit: 'of bare skin', ...openModels('people and soldiers') }),
  ),
  define('build true scale', 1, {
    unit: 'of true scale',
    mark: 'open models',
    source: 'by definition: a person, made small',
  }),
  ...Object.entries(builds).map(([name, values]) =>
    define(`build ${name}`, values, { unit: 'of true scale', ...openModels('people, proportions changed') }),
  ),
  ...Object.entries(kit).map(([name, values]) =>
    define(`kit ${name}`, values, { unit: 'of bare skin', ...openModels('soldiers, riders, horses') }),
  ),
  ...Object.entries(bodyShares).map(([name, value]) =>
    define(`share ${name}`, value, { unit: '% of skin', ...lundBrowder }),
  ),
  define('relief', [1.05, 1.1, 1.15], reliefSource),
  define('relief of a box', [1.1, 1.3, 1.6], reliefSource),
];
