// Columns: the painter's own record and values. In: nothing. Out: the columns of log and settings.
import { logEvents } from '../../model/words.js';
import type { CellKind, Written } from '../check/read-cell/cell-kind.js';
import { choiceKind } from '../check/read-cell/read-choice.js';
import { figureCount, loggedCount, stepNumber } from '../check/read-cell/read-count.js';
import { dateKind } from '../check/read-cell/read-date.js';
import { leftKind } from '../check/read-cell/read-left.js';
import { nameKind } from '../check/read-cell/read-name.js';
import { potVolume, scaleWeight, usedVolume } from '../check/read-cell/read-number.js';
import type { CellDate } from '../table.js';
import { free, money, needed } from './column.js';
import { settingNames } from './setting-rows.js';

/** A row that begins with this takes the last row back that is like it but for this word. */
export const takesBack = 'not ';

const unsaid = { means: 'not said' };
const unweighed = { means: 'not weighed' };

export const log = {
  date: needed('date', dateKind, {
    says: 'Day of the work, as 2026-03-14.',
    called: 'day, Datum, Tag, jour, fecha, día, data, giorno, dag, dzień',
    example: '2026-03-14',
  }),
  paint: needed('paint', nameKind, {
    says: 'Name of the paint used.',
    from: 'paints',
    called: 'colour, color, Farbe, peinture, couleur, pintura, colore, verf, kleur, farba, kolor',
    example: 'brick red',
  }),
  unit: free('unit', nameKind, {
    fillsDown: { where: 'figures' },
    says: 'The unit worked on.',
    blank: unsaid,
    from: 'army',
    called: 'squad, regiment, Einheit, unité, unidad, unità, eenheid, oddział',
    example: 'first spears',
  }),
  step: free('step', stepNumber, {
    says: 'The step worked on. With unit and figures: counts as progress.',
    blank: unsaid,
    called: 'Schritt, étape, paso, passo, stap, krok',
    example: '2',
  }),
  figures: free('figures', figureCount, {
    says: 'How many figures have had this paint in this step, all coats.',
    blank: unsaid,
    called:
      'count, number, models, Anzahl, Figuren, nombre, figurines, cantidad, figuras, quantità, numero, aantal, figuren, liczba, figurki',
    example: '10',
  }),
  beforeG: free('before g', scaleWeight, {
    says: 'Weight of the pot before, in grams.',
    blank: unweighed,
    called: 'weight before, vorher, avant, antes, prima, ervoor, przed',
    example: '31.2',
  }),
  afterG: free('after g', scaleWeight, {
    says: 'Weight of the pot after, in grams.',
    blank: unweighed,
    called: 'weight after, nachher, après, después, dopo, erna, potem',
    example: '30.1',
  }),
  usedMl: free('used ml', usedVolume, {
    says: 'What was used, in millilitres, where the pot was not weighed.',
    blank: { means: 'from the weights' },
    called: 'verbraucht, utilisé, usado, usato, verbruikt, zużyto',
    example: '0.9',
  }),
  what: free(
    'what',
    choiceKind('what happened', [...logEvents, ...logEvents.map((one) => `${takesBack}${one}` as const)]),
    {
      says: 'What happened. With not before it: the last row that is else like it never was.',
      blank: { means: 'used' },
      example: 'bought',
    },
  ),
  left: free('left', leftKind, {
    says: 'Of a count: what is in the pot in use, as in the pots sheet.',
    blank: unsaid,
    example: '40%',
  }),
  sizeMl: free('size ml', potVolume, {
    says: 'Of pots: volume on the label, in millilitres.',
    blank: { means: 'any; of a pot bought, as the last one' },
    example: '17',
  }),
  pots: free('pots', loggedCount, {
    says: 'How many pots were bought, arrived, were thrown away, or stand there at a count.',
    blank: { means: 'one bought or thrown away; else all' },
    example: '2',
  }),
  price: free('price', money, {
    isIn: 'money',
    says: 'What all pots of the row cost together.',
    blank: { means: 'unpriced' },
    example: '5.90',
  }),
  shop: free('shop', nameKind, {
    says: 'Where they were bought.',
    blank: unsaid,
    from: 'shops',
    example: 'The Eel Trap',
  }),
  postage: free('postage', money, {
    isIn: 'money',
    says: 'What the delivery cost; of an order it stands on one row.',
    blank: { means: 'none' },
    example: '3.50',
  }),
  written: free('written', nameKind, {
    says: 'When a command wrote the row; what it wrote at once is taken back at once.',
    blank: { means: 'written by hand' },
    example: '2026-03-14T19:32:05.120Z',
  }),
};

/** Each row has a kind of its own: see `settingRows`. */
const anything: CellKind<Written | CellDate> = {
  noun: 'a value',
  read: (cell) => cell,
  readDate: (date) => date,
};

export const settings = {
  name: needed('name', nameKind, {
    says: `${settingNames.join(', ')}, or the name of an assumption in the report.`,
    called: 'setting, Einstellung, réglage, ajuste, impostazione, instelling, ustawienie',
    example: 'currency',
  }),
  value: needed('value', anything, {
    says: 'Its value; for an assumption one number, or low / likely / high.',
    called: 'Wert, valeur, valor, valore, waarde, wartość',
    example: 'EUR',
  }),
};
