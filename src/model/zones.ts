// Model: parts of a figure and the ready-made zones. In: nothing. Out: readonly lists shared by sheets and estimate.
import { isCreature, isMeasuredByLength, type KitItem, kitItems } from './words.js';

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

type KnownPart = BodyPart | KitItem | BasePart | 'hide' | 'hull';
export const parts: readonly KnownPart[] = [...bodyParts, ...kitItems, 'hide', 'hull', ...baseParts];

/** One that is known, or one that the model file of a figure names. */
export type Part = string;

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

const all = (names: readonly Part[]): PartShare[] => names.map((part) => ({ part, share: 1 }));
const some = (zone: PartialZone, names: readonly Part[]): ZonePart[] =>
  names.map((part) => ({ part, assumed: zoneShareName(zone) }));

const torso: readonly Part[] = ['front trunk', 'back trunk', 'buttocks', 'groin'];
const whole: readonly Part[] = [...bodyParts, ...kitItems, 'hide', 'hull'];

/** Zones that need no row in the zones sheet; every part is a zone by its own name too. */
export const readyMadeZones: ReadonlyMap<string, readonly ZonePart[]> = new Map([
  ...parts.map((part): [string, ZonePart[]] => [part, all([part])]),
  ['whole', all(whole)],
  ['base', all(baseParts)],
  ['all', all(parts)],
  ['skin', all(['head', 'neck', 'hands', 'hide'])],
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

/** The model of a figure, as far as zones ask: pieces by part, '' for what is divided by the body chart. */
interface Modelled {
  readonly figure: string;
  readonly model?: { readonly pieces: readonly { readonly part: Part }[] } | undefined;
}

/** Parts of a figure that its model file names, in the order of the file. */
export function partsOfModel({ model }: Pick<Modelled, 'model'>): Part[] {
  return [...new Set(model?.pieces.map(({ part }) => part))].filter((part) => part !== '');
}

/** Whether a part belongs to the base: `whole` leaves it out. */
export const isBasePart = (part: Part): boolean =>
  part === 'base' || (baseParts as readonly Part[]).includes(part);

/** Of a model's own parts, those in a zone: the one of that name; every one is in `all`, and but for its base in `whole`. */
export function modelPartsInZone(zone: string, of: Pick<Modelled, 'model'>): PartShare[] {
  const isIn = (part: Part): boolean =>
    part === zone || zone === 'all' || (zone === 'whole' && !isBasePart(part));
  return of.model === undefined ? [] : all(partsOfModel(of).filter(isIn));
}

/**
 * The parts that a zone names, each with how much of it the zone covers, whether or not a figure has them. The
 * painter's row for this figure wins over one for any figure, and that over a ready-made zone; with these two go the parts
 * of the figure's model in the zone. An unknown zone is empty.
 */
export function partsOfZone(zone: string, of: Modelled, ownZones: readonly ZoneRow[]): readonly ZonePart[] {
  const own = ownZones.filter((one) => one.zone === zone);
  const forFigure = own.find((one) => one.figure === of.figure);
  if (forFigure !== undefined) return forFigure.parts;
  const named = own.find((one) => one.figure === undefined)?.parts ?? readyMadeZones.get(zone) ?? [];
  const more = modelPartsInZone(zone, of).filter(({ part }) => named.every((one) => one.part !== part));
  return more.length === 0 ? named : [...named, ...more];
}

/** What of a figure decides which parts it has. */
interface PartsOf {
  readonly build: string;
  readonly dress: string;
  readonly eyeMm?: number;
  readonly kit: readonly { readonly item: KitItem }[];
  readonly base?: unknown;
  readonly boxMm?: unknown;
  readonly model?: Modelled['model'];
}

/**
 * The parts that a figure has: body (unless dress is none), kit, hull of a box or thing, hide of a creature, base top and edge. A model's named parts
 * take the place of those of the same name, and its base that of the base; where all of it is named, it is all there is.
 * A figure with neither body, kit, box, model nor base gives an empty list.
 */
export function partsOfFigure(figure: PartsOf): Part[] {
  const byLength = isMeasuredByLength(figure.build);
  const body = figure.boxMm === undefined && !byLength && figure.dress !== 'none' ? [...bodyParts] : [];
  const kit = kitItems.filter((item) => figure.kit.some((worn) => worn.item === item));
  const made: Part[] = byLength ? [isCreature(figure.build) ? 'hide' : 'hull'] : [];
  const hull: Part[] = figure.boxMm === undefined ? made : ['hull'];
  const named = partsOfModel(figure);
  const base = figure.base === undefined || named.some(isBasePart) ? [] : [...baseParts];
  const drawn = [...body, ...kit, ...hull];
  if (figure.model === undefined) return [...drawn, ...base];
  const isDivided = figure.model.pieces.some(({ part }) => part === '');
  const chart = drawn.filter((part) => !named.includes(part));
  const rest: Part[] = chart.length > 0 ? chart : ['hull'];
  return [...(isDivided ? rest : []), ...named, ...base];
}
