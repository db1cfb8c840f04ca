// Checks: the extras sheet. In: its rows. Out: extras with the figures that one of each serves.
import type { Extra } from '../../model/sheets.js';
import type { Table } from '../table.js';
import type { Findings } from './collect-findings.js';
import { column } from './open-sheet.js';
import type { CellKind } from './read-cell/cell-kind.js';
import { nameKind } from './read-cell/read-name.js';
import { servedFigures } from './read-cell/read-number.js';
import { readRows } from './read-rows.js';

export const extrasSchema = (price: CellKind<number>) => ({
  item: column('item', nameKind),
  price: column('price', price),
  serves: column('serves', servedFigures),
});

interface Given {
  readonly table: Table | undefined;
  readonly price: CellKind<number>;
  readonly findings: Findings;
}

/** Every row that can be taken; an item may stand in several, bought at several prices. */
export function checkExtras({ table, price, findings }: Given): readonly Extra[] {
  const { rows } = readRows('extras', extrasSchema(price), { table, findings });
  return rows.flatMap(({ item, price: priceMinor, serves }) =>
    item === undefined || priceMinor === undefined || serves === undefined
      ? []
      : [{ item, priceMinor, serves }],
  );
}
