// Checks: which model files the figures name. In: tables as read. Out: their names, so that they can be measured beforehand.
import type { ReadTables } from '../table.js';
import { makeFindings } from './collect-findings.js';
import { column, openSheet } from './open-sheet.js';
import { listKind } from './read-cell/read-name.js';
import { visitRows } from './read-rows.js';

/** Each once, in the order of the rows. What is wrong with the sheet is told when it is checked. */
export function listModelFiles({ tables }: ReadTables): ReadonlySet<string> {
  const table = tables.find(({ sheet }) => sheet === 'figures');
  const sheet = openSheet(
    'figures',
    { model: column('model', listKind) },
    { table, findings: makeFindings() },
  );
  const names = new Set<string>();
  visitRows(sheet, ({ model }) => {
    for (const name of model ?? []) names.add(name);
  });
  return names;
}
