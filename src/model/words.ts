// Model: the closed word lists of the sheets. In: nothing. Out: readonly lists and the types of their members.

export const layers = [
  'primer',
  'base coat',
  'midtone',
  'wash',
  'glaze',
  'drybrush',
  'highlight',
  'edge highlight',
  'detail',
  'tidy-up',
  'varnish',
  'basing',
] as const;
export type Layer = (typeof layers)[number];

/** Layers of solid colour, laid to hide what is under them; where their coats are blank, colours decide how many that takes. */
export const solidLayers: readonly Layer[] = ['base coat', 'midtone'];

export const methods = ['brush', 'flood', 'drybrush', 'sponge', 'spread', 'airbrush', 'spray can'] as const;
export type Method = (typeof methods)[number];

export const dresses = ['bare', 'clothed', 'armoured', 'none'] as const;
export type Dress = (typeof dresses)[number];

export const builds = [
  'true scale',
  'heroic mild',
  'heroic',
  'heroic strong',
  'stocky',
  'broad',
  'giant',
] as const;
export type Build = (typeof builds)[number];

/** A hull all round, or beams and wheels with gaps between them. */
export const boxBuilds = ['closed', 'open frame'] as const;
export type BoxBuild = (typeof boxBuilds)[number];

const creatureBuilds = ['beast', 'winged', 'serpent'] as const;
const thingBuilds = ['engine', 'wall', 'house', 'hedge'] as const;
/** Measured by one length. */
export const lengthBuilds = [...creatureBuilds, ...thingBuilds] as const;
export type LengthBuild = (typeof lengthBuilds)[number];

const isOneOf = (words: readonly string[], build: string): boolean => words.includes(build);
export const isMeasuredByLength = (build: string): build is LengthBuild => isOneOf(lengthBuilds, build);
export const isCreature = (build: string): boolean => isOneOf(creatureBuilds, build);

/** What a ruler is laid along. */
export const lengthOf: Readonly<Record<LengthBuild, string>> = {
  beast: 'from the ground to the top of its back',
  winged: 'from wing tip to wing tip',
  serpent: 'along its back, coils and all',
  engine: 'its longest side',
  wall: 'its longest side',
  house: 'the longest side of its ground',
  hedge: 'its longest side',
};

export const kitItems = [
  'weapon',
  'bow',
  'small shield',
  'round shield',
  'large shield',
  'cloak',
  'horse',
  'barding',
  'wings',
  'tail',
  'saddle',
] as const;
export type KitItem = (typeof kitItems)[number];
/** What a creature may have that its build does not. */
export const creatureKit = ['wings', 'tail', 'saddle'] as const satisfies readonly KitItem[];
export type CreatureKit = (typeof creatureKit)[number];

export const containers = ['dropper', 'pot', 'tube', 'can'] as const;
export type Container = (typeof containers)[number];

export const paintKinds = ['colour', 'metallic', 'wash', 'medium', 'primer', 'varnish', 'texture'] as const;
export type PaintKind = (typeof paintKinds)[number];

export const opacities = ['strong', 'fair', 'weak'] as const;
export type Opacity = (typeof opacities)[number];

export const sheetNames = [
  'pots',
  'paints',
  'offers',
  'shops',
  'figures',
  'zones',
  'schemes',
  'swaps',
  'army',
  'extras',
  'log',
  'settings',
  'columns',
] as const;
export type SheetName = (typeof sheetNames)[number];

/** The three sheets of an army: all of them, or none. */
export const armySheets = ['figures', 'schemes', 'army'] as const satisfies readonly SheetName[];

/** The sheets that answer most together; each of them says something only if it has rows. */
export const neededSheets = ['pots', ...armySheets] as const satisfies readonly SheetName[];

/** What is missing for any answer: pots alone are a shelf, an army without pots is painted from scratch. */
export function missingSheets(has: (sheet: SheetName) => boolean): readonly SheetName[] {
  const asked: readonly SheetName[] = armySheets.some(has) ? armySheets : ['pots'];
  return asked.filter((sheet) => !has(sheet));
}

/** What a row of the log may record. */
export const logEvents = ['used', 'bought', 'arrived', 'counted', 'thrown away'] as const;
export type LogEvent = (typeof logEvents)[number];
