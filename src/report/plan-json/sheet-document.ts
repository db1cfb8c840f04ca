// Report view: what plan.json tells of the sheets and the shelf by themselves. In: nothing. Out: schemas for plan-document.ts.
import { z } from 'zod';
import { sheetNames } from '../../model/words.js';
import { atLeast, cost, group, ml, rows, text, whole, yesNo } from './document-fields.js';

export const shelf = group('What is owned.', {
  pots: whole('Pots, those on their way among them.'),
  paints: whole('Paints of which there is a pot.'),
  haveMl: ml('What can be got out of them.'),
  worth: cost('What they cost, by what can still be got out of them.'),
  atLeast,
  unpriced: whole('Pots without a price.'),
});

export const sheetRead = z.object({
  sheet: z.enum(sheetNames).describe('The sheet.'),
  file: text('The file in which it stands.'),
  headerRow: whole('Its header row, as a spreadsheet counts.'),
  columns: rows('Its headers, in their order.', {
    header: text('As written.'),
    column: text('The column that it was taken for; without one it was left alone.').optional(),
    maybe: text('A column that it may be meant for, which was asked about.').optional(),
    isOwn: yesNo('True where it is the own name of its column.'),
  }),
});
