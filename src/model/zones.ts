// Model: parts of a figure and the ready-made zones. In: nothing. Out: readonly lists shared by sheets and estimate.
import { type KitItem, kitItems } from './words.js';

/** Body parts, in the order of the Lund-Browder chart. Their shares stand in the registry. */
export const bodyParts = [
  'head',
  'neck',
  'front trunk',
  'back trunk',
  'buttocks',
  'groin',
  'upper arms',
  'forearms',
  'hands',
  'thighs',
  'lower legs',
  'feet',
] as const;
export type BodyPart = (typeof bodyParts)[number];

const baseParts = ['base top', 'base edge'] as const;
type BasePart = (typeof baseParts)[number];

export type Part = BodyPart | KitItem | BasePart | 'hull';
export const parts: readonly Part[] = [...bodyParts, ...kitItems, 'hull', ...baseParts];

/** A part and how much of it a zone covers; `share` is 0 to 1. */
export interface PartShare {
  readonly part: Part;
  readonly share: number;
}

/** Ready-made zones that cover only some of a part. */
export type PartialZone = 'face' | 'hair' | 'eyes' | 'trousers' | 'boots' | 'belt';

/** A part of a zone: a share of it, or as many percent as an assumption says, by its registry name. */
export type ZonePart = PartShare | { readonly part: Part; readonly assumed: string };

/** Registry name of how much such a zone covers of the parts that it does not cover whole. */
export const zoneShareName = (zone: PartialZone): string => `share ${zone}`;

/** How much of the part the zone covers, 0 to 1. */
export function shareOf(covered: ZonePart, percentOf: (assumption: string) => number): number {
  return 'share' in covered ? covered.share : percentOf(covered.assumed) / 100;
}

const all = (names: readonly Part[]): ZonePart[] => names.map((part) => ({ part, share: 1 }));
const some = (zone: PartialZone, names: readonly Part[]): ZonePart[] =>
  names.map((part) => ({ part, assumed: zoneShareName(zone) }));

const torso: readonly Part[] = ['front trunk', 'back trunk', 'buttocks', 'groin'];
const whole: readonly Part[] = [...bodyParts, ...kitItems, 'hull'];

/** Zones that need no row in the zones sheet; every part is a zone by its own name too. */
export const readyMadeZones: ReadonlyMap<string, readonly ZonePart[]> = new Map([
  ...parts.map((part): [string, ZonePart[]] => [part, all([part])]),
  ['whole', all(whole)],
  ['base', all(baseParts)],
  ['all', all(parts)],
  ['skin', all(['head', 'neck', 'hands'])],
  ['face', some('face', ['head'])],
  ['hair', some('hair', ['head'])],
  ['eyes', some('eyes', ['head'])],
  ['torso', all(torso)],
  ['tunic', all([...torso, 'upper arms'])],
  ['sleeves', all(['upper arms', 'forearms'])],
  ['trousers', [...all(['thighs']), ...some('trousers', ['lower legs'])]],
  ['legs', all(['thighs', 'lower legs'])],
  ['boots', [...some('boots', ['lower legs']), ...all(['feet'])]],
  ['belt', some('belt', ['front trunk', 'back trunk'])],
]);

/** A row of the zones sheet: what it says of a zone, for one figure or for any. */
interface ZoneRow {
  readonly zone: string;
  readonly figure?: string;
  readonly parts: readonly PartShare[];
}

/**
 * The parts that a zone names, each with how much of it the zone covers, whether or not a figure has them. The
 * painter's row for this figure wins over one for any figure, and that over a ready-made zone. An unknown zone is empty.
 */
export function partsOfZone(zone: string, figure: string, ownZones: readonly ZoneRow[]): readonly ZonePart[] {
  const own = ownZones.filter((one) => one.zone === zone);
  const chosen = own.find((one) => one.figure === figure) ?? own.find((one) => one.figure === undefined);
  return chosen?.parts ?? readyMadeZones.get(zone) ?? [];
}

/** What of a figure decides which parts it has. */
interface PartsOf {
  readonly dress: string;
  readonly eyeMm?: number;
  readonly kit: readonly { readonly item: KitItem }[];
  readonly base?: unknown;
  readonly boxMm?: unknown;
}

/**
 * The parts that a figure has: body (unless dress is none), kit, hull of a box, base top and edge.
 * A figure with neither body, kit, box nor base gives an empty list.
 */
export function partsOfFigure(figure: PartsOf): Part[] {
  const body = figure.boxMm === undefined && figure.dress !== 'none' ? [...bodyParts] : [];
  const kit = kitItems.filter((item) => figure.kit.some((worn) => worn.item === item));
  const hull: Part[] = figure.boxMm === undefined ? [] : ['hull'];
  const base = figure.base === undefined ? [] : [...baseParts];
  return [...body, ...kit, ...hull, ...base];
}
