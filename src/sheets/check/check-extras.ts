// Checks: the extras sheet. In: its rows. Out: extras with the figures that one of each serves.
import type { Extra } from '../../model/sheets.js';
import type { From } from './open-sheet.js';
import { readRows } from './read-rows.js';

/** Every row that can be taken; an item may stand in several, bought at several prices. */
export function checkExtras(from: From): readonly Extra[] {
  const { rows } = readRows('extras', from);
  return rows.flatMap(({ item, price: priceMinor, serves }) =>
    item === undefined || priceMinor === undefined || serves === undefined
      ? []
      : [{ item, priceMinor, serves }],
  );
}
