// Sheets: every column of every sheet. In: the model's word lists. Out: headers, what a cell takes, what a blank means;
// starter sheets, header detection and checks all read this one table.
import {
  boxBuilds,
  builds,
  containers,
  dresses,
  layers,
  lengthBuilds,
  lengthOf,
  methods,
  opacities,
  paintKinds,
  type SheetName,
} from '../model/words.js';
import type { Unit } from './units.js';

export interface Column {
  readonly header: string;
  readonly needed: boolean;
  /** What its cells are in where its own header does not end in it: a unit, or money of the settings' currency. */
  readonly isIn?: Unit | 'money';
  /** One line for a newcomer: what goes in, what a blank means. */
  readonly says: string;
  readonly choices?: readonly string[];
  readonly example?: string;
}

const needed = (header: string, says: string, more: Partial<Column> = {}): Column => ({
  header,
  needed: true,
  says,
  ...more,
});

const free = (header: string, says: string, more: Partial<Column> = {}): Column => ({
  ...needed(header, says, more),
  needed: false,
});

const yesOrNo = ['yes', 'no'] as const;

/** What describes a paint; the pots sheet takes these columns too. */
const ofPaint: readonly Column[] = [
  free('kind', 'What sort of paint. Blank: colour.', { choices: paintKinds, example: 'wash' }),
  free('hex', 'The colour as six hex digits. Blank: not known.', { example: '#8a2b2b' }),
  free('opacity', 'How well one coat hides what is under it. Blank: not known.', {
    choices: opacities,
    example: 'fair',
  }),
  free('density g/ml', 'Weight of one millilitre. Blank: a usual value for its kind.', { example: '1.2' }),
  free('thin', 'Parts of water to one part of paint. Blank: as usual for the layer.', { example: '0.5' }),
  free('keep ml', 'What should always be left on the shelf. Blank: 15 % of its largest pot.', {
    example: '3',
  }),
  free('also called', 'Other names of this paint, parted by commas. Blank: none.', {
    example: 'old brick red',
  }),
];

const code = free('code', 'The number under the bar code (GTIN). Blank: none.', { example: '2000310000217' });

const container = (says: string): Column =>
  free('container', says, { choices: containers, example: 'dropper' });

export const columns: Readonly<Record<SheetName, readonly Column[]>> = {
  pots: [
    needed('paint', 'Name of the paint in the pot.', { example: 'brick red' }),
    needed('size ml', 'Volume on the label, in millilitres.', { example: '17' }),
    free('left', 'What is still in it: 60%, 7.5 ml, full, empty, or a weight such as 31.2 g. Blank: full.', {
      example: '60%',
    }),
    free('empty g', 'Weight of the empty pot in grams; needed where left is a weight.', { example: '14.5' }),
    free('price', 'What the whole pot cost. Blank: unpriced.', { isIn: 'money', example: '3.50' }),
    free('opened', 'Day it was opened. Blank: not opened yet.', { example: '2026-01-31' }),
    free('counted', 'Day of the reading in left; log rows after it lower the pot. Blank: all log rows do.', {
      example: '2026-03-01',
    }),
    container('What holds the paint. Blank: a can for a primer or varnish of 150 ml or more, else a pot.'),
    free('ordered', 'yes: on its way, counts as full. Blank: no.', { choices: yesOrNo, example: 'no' }),
    code,
    free('place', 'Where it stands. Blank: not said.', { example: 'rack 2' }),
    ...ofPaint,
  ],
  paints: [needed('paint', 'Name of the paint.', { example: 'brick red' }), ...ofPaint],
  offers: [
    needed('shop', 'Who sells it.', { example: 'The Eel Trap' }),
    needed('offer', 'What the shop calls it. Rows with the same shop and offer are one set.', {
      example: 'brick red 17 ml',
    }),
    needed('price', 'Price of the whole offer; in a set it stands on one row.', {
      isIn: 'money',
      example: '3.50',
    }),
    needed('paint', 'Name of the paint in it.', { example: 'brick red' }),
    needed('size ml', 'Volume of one pot, in millilitres.', { example: '17' }),
    free('pots', 'How many such pots the offer holds. Blank: 1.', { example: '1' }),
    free('available', 'How many of the offer can be had. Blank: no limit.', { example: '4' }),
    container('What holds the paint. Blank: a can for a primer or varnish of 150 ml or more, else a pot.'),
    code,
  ],
  shops: [
    needed('shop', 'Name as in the offers sheet.', { example: 'The Eel Trap' }),
    free('postage', 'What one delivery costs. Blank: 0.', { isIn: 'money', example: '4.90' }),
    free('free from', 'Goods of this sum or more travel free. Blank: postage is always paid.', {
      isIn: 'money',
      example: '50',
    }),
    free('least order', 'The shop takes no order below this sum. Blank: any sum.', {
      isIn: 'money',
      example: '10',
    }),
  ],
  figures: [
    needed('figure', 'Name of the sculpt.', { example: 'spearman' }),
    free(
      'eye mm',
      'Height of the eyes above the soles, in millimetres. Needed unless long mm, box mm or model is given.',
      {
        example: '28',
      },
    ),
    free(
      'build',
      'How stout it is, as surface over a person’s (true scale): heroic mild 1.12, heroic 1.26, heroic strong 1.47, stocky 1.6, broad 2.2, giant 2.9. Or what long mm measures. Blank: heroic for eyes at 25 to 35 mm, else true scale; of a box: closed.',
      { choices: [...builds, ...boxBuilds, ...lengthBuilds], example: 'heroic' },
    ),
    free(
      'long mm',
      `The one length of some builds: ${lengthBuilds.map((build) => `${build}, ${lengthOf[build]}`).join('; ')}. They take no dress, creatures only wings, tail, saddle as kit.`,
      { example: '60' },
    ),
    free('dress', 'What the body wears; none: kit alone. Blank: clothed.', {
      choices: dresses,
      example: 'clothed',
    }),
    free(
      'kit',
      'What it carries or rides, parted by commas; an item named twice counts twice. Shields, at full size: small 60 cm across, round 80, large 100, both faces painted. Blank: nothing.',
      {
        example: 'weapon, round shield',
      },
    ),
    free('base', 'round 25, square 20, 25x50 or oval 60x35, in millimetres. Blank: no base.', {
      isIn: 'mm',
      example: 'round 25',
    }),
    free('base high mm', 'Height of the base. Blank: 3.', { example: '3' }),
    free('per base', 'How many figures share one base. Blank: 1.', { example: '1' }),
    free(
      'box mm',
      'Length, width, height of a vehicle, engine or building; a fourth number is the ridge of a pitched roof. Takes no dress, kit.',
      {
        example: '90x30x20',
      },
    ),
    free(
      'model',
      'Your model files of it beside the sheets (STL, OBJ, 3MF), parted by commas. Blank: none.',
      {
        example: 'spearman.stl',
      },
    ),
    free('model high mm', 'Height of the printed model; of several, of the first. Blank: as its file says.', {
      example: '34',
    }),
    free('area cm2', 'Your own total of body and kit, or hull, in cm2. Blank: estimated.', {
      example: '9.5',
    }),
    free('price', 'Price of one unpainted figure. Blank: unpriced.', { isIn: 'money', example: '1.80' }),
  ],
  zones: [
    needed('zone', 'A name of your own for a group of parts.', { example: 'coat' }),
    needed('parts', 'The parts in it, parted by commas; a share such as 50% may follow a part.', {
      example: 'front trunk, back trunk, upper arms 50%',
    }),
    free('figure', 'The figure for which this holds. Blank: any.', { example: 'spearman' }),
  ],
  schemes: [
    needed('scheme', 'Name of the scheme.', { example: 'red regiment' }),
    needed('step', 'Whole number; steps are painted in this order.', { example: '1' }),
    needed('zone', 'What is painted: a part, a ready-made zone or one of your own.', { example: 'tunic' }),
    needed('layer', 'What goes on.', { choices: layers, example: 'base coat' }),
    needed('paint', 'Name of the paint.', { example: 'brick red' }),
    free('coats', 'How many coats. Blank: as colours ask, else as usual for the layer.', { example: '2' }),
    free('method', 'How it goes on. Blank: as usual for the layer.', { choices: methods, example: 'brush' }),
    free('area %', 'How much of the zone is covered. Blank: as usual for the layer.', { example: '60' }),
    free('thin', 'Parts of water to one part of paint. Blank: as for the paint, else the layer.', {
      example: '0.5',
    }),
    free('share', 'In a mix: this paint as 50% or in parts such as 2. Blank: the only paint.', {
      example: '50%',
    }),
  ],
  swaps: [
    free('scheme', 'The scheme for which this holds. Blank: every scheme.', { example: 'red regiment' }),
    free('step', 'The step for which this holds. Blank: every step.', { example: '2' }),
    free('paint', 'The paint that is not used. Blank: every paint of the step.', { example: 'brick red' }),
    needed('instead', 'The paint that is used instead.', { example: 'rust red' }),
  ],
  army: [
    needed('unit', 'Name of the unit.', { example: 'first spears' }),
    needed('figure', 'Name as in the figures sheet.', { example: 'spearman' }),
    free('scheme', 'Name as in the schemes sheet. Blank: the only scheme.', { example: 'red regiment' }),
    needed('count', 'How many figures.', { example: '20' }),
    free('batch', 'How many are painted at one go. Blank: 10.', { example: '10' }),
    free('done', 'The last step finished on all of them. Blank: none.', { example: '0' }),
    free('priority', 'Which unit comes first; lower is earlier. Blank: its row.', { example: '1' }),
  ],
  extras: [
    needed('item', 'A brush, flock, sand, thinner ...', { example: 'static grass' }),
    needed('price', 'What it costs.', { isIn: 'money', example: '6.50' }),
    needed('serves', 'How many figures one of it serves.', { example: '200' }),
  ],
  log: [
    needed('date', 'Day of the work, as 2026-03-14.', { example: '2026-03-14' }),
    needed('paint', 'Name of the paint used.', { example: 'brick red' }),
    free('unit', 'The unit worked on. Blank: not said.', { example: 'first spears' }),
    free('step', 'The step worked on. With unit and figures: counts as progress. Blank: not said.', {
      example: '2',
    }),
    free('figures', 'How many figures have had this paint in this step, all coats. Blank: not said.', {
      example: '10',
    }),
    free('before g', 'Weight of the pot before, in grams. Blank: not weighed.', { example: '31.2' }),
    free('after g', 'Weight of the pot after, in grams. Blank: not weighed.', { example: '30.1' }),
    free(
      'used ml',
      'What was used, in millilitres, where the pot was not weighed. Blank: from the weights.',
      {
        example: '0.9',
      },
    ),
  ],
  settings: [
    needed('name', 'currency, date, locale, sure %, restock, or the name of an assumption in the report.', {
      example: 'currency',
    }),
    needed('value', 'Its value; for an assumption one number, or low / likely / high.', { example: 'EUR' }),
  ],
};
