// Checks: the columns of the schemes sheet. In: its table. Out: rows of values, not yet compared with one another.
import { layers, methods } from '../../model/words.js';
import type { Table } from '../table.js';
import type { Findings } from './collect-findings.js';
import { column, type RowOf } from './open-sheet.js';
import { choiceKind } from './read-cell/read-choice.js';
import { coatCount, stepNumber } from './read-cell/read-count.js';
import { nameKind } from './read-cell/read-name.js';
import { thinning } from './read-cell/read-number.js';
import { areaShare, mixShare } from './read-cell/read-share.js';
import { type ReadSheet, readRows } from './read-rows.js';

const schemesSchema = {
  scheme: column('scheme', nameKind),
  step: column('step', stepNumber),
  zone: column('zone', nameKind),
  layer: column('layer', choiceKind('a layer', layers)),
  paint: column('paint', nameKind),
  coats: column('coats', coatCount),
  method: column('method', choiceKind('a method', methods)),
  area: column('area %', areaShare),
  thin: column('thin', thinning),
  share: column('share', mixShare),
};

export type SchemeSheet = ReadSheet<typeof schemesSchema>;
export type SchemeRow = RowOf<typeof schemesSchema>;

/** The cells of the schemes sheet. */
export function openSchemes(table: Table | undefined, findings: Findings): SchemeSheet {
  return readRows('schemes', schemesSchema, { table, findings });
}
