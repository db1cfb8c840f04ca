// Checks: which model files the figures name. In: tables as read. Out: their names, so that they can be measured beforehand.
import type { ReadTables } from '../table.js';
import { makeFindings } from './collect-findings.js';
import { openSheet } from './open-sheet.js';
import { anyPrice } from './read-cell/read-price.js';
import { visitRows } from './read-rows.js';

/** Each once, in the order of the rows. What is wrong with the sheet is told when it is checked. */
export function listModelFiles({ tables }: ReadTables): ReadonlySet<string> {
  const table = tables.find(({ sheet }) => sheet === 'figures');
  const sheet = openSheet('figures', { table, terms: { price: anyPrice }, findings: makeFindings() });
  const names = new Set<string>();
  if (!sheet.has('model')) return names;
  visitRows(sheet, ({ model }) => {
    for (const name of model ?? []) names.add(name);
  });
  return names;
}
