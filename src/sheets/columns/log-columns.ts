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
  date: needed('date', dateKind, { says: 'Day of the work, as 2026-03-14.', example: '2026-03-14' }),
  paint: needed('paint', nameKind, {
    says: 'Name of the paint used.',
    from: 'paints',
    example: 'brick red',
  }),
  unit: free('unit', nameKind, {
    says: 'The unit worked on.',
    blank: unsaid,
    from: 'army',
    example: 'first spears',
  }),
  step: free('step', stepNumber, {
    says: 'The step worked on. With unit and figures: counts as progress.',
    blank: unsaid,
    example: '2',
  }),
  figures: free('figures', figureCount, {
    says: 'How many figures have had this paint in this step, all coats.',
    blank: unsaid,
    example: '10',
  }),
  beforeG: free('before g', scaleWeight, {
    says: 'Weight of the pot before, in grams.',
    blank: unweighed,
    example: '31.2',
  }),
  afterG: free('after g', scaleWeight, {
    says: 'Weight of the pot after, in grams.',
    blank: unweighed,
    example: '30.1',
  }),
  usedMl: free('used ml', usedVolume, {
    says: 'What was used, in millilitres, where the pot was not weighed.',
    blank: { means: 'from the weights' },
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
    example: 'currency',
  }),
  value: needed('value', anything, {
    says: 'Its value; for an assumption one number, or low / likely / high.',
    example: 'EUR',
  }),
};
