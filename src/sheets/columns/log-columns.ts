// Columns: the painter's own record and values. In: nothing. Out: the columns of log and settings.

import type { CellKind, Written } from '../check/read-cell/cell-kind.js';
import { figureCount, stepNumber } from '../check/read-cell/read-count.js';
import { dateKind } from '../check/read-cell/read-date.js';
import { nameKind } from '../check/read-cell/read-name.js';
import { scaleWeight, usedVolume } from '../check/read-cell/read-number.js';
import type { CellDate } from '../table.js';
import { free, needed } from './column.js';
import { settingNames } from './setting-rows.js';

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
