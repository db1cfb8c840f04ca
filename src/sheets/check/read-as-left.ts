// Checks: whether cells could say what is left in pots. In: cells that hold something. Out: yes or no.
import type { Cell } from '../table.js';
import { Mistake, readCell } from './read-cell/cell-kind.js';
import { leftsKind } from './read-cell/read-several.js';

/** Bare numbers up to this may be a shelf, a price or a rating; from here on they look like percent or ml. */
const leastTelling = 10;

/**
 * Whether two of three cells could say what is left, and any says less than full. Bare numbers do where they are shares of 1,
 * or up to 100 and look measured; any of them where the header speaks of it.
 */
export function readsAsLeft({
  cells,
  isCalledSo,
}: {
  readonly cells: readonly Cell[];
  readonly isCalledSo: boolean;
}): boolean {
  const bare: string[] = [];
  let read = 0;
  let isTelling = false;
  for (const cell of cells) {
    const reading = readCell(leftsKind, cell);
    const isBare = reading instanceof Mistake && reading.code === 'left-without-unit';
    if (isBare) bare.push(String(cell).replace(',', '.'));
    else if (!(reading instanceof Mistake)) isTelling ||= reading.how !== 'by eye' || reading.share < 1;
    else continue;
    read += 1;
  }
  const isMeant = isTelling || (bare.length > 0 && (isCalledSo || lookMeasured(bare)));
  return isMeant && read * 3 >= cells.length * 2 && bare.every((value) => Number(value) <= 100);
}

/** Prices have two decimals, and shares of 1 may. */
function lookMeasured(bare: readonly string[]): boolean {
  const values = bare.map(Number);
  const areShares = values.every((value) => value <= 1) && values.some((value) => value > 0 && value < 1);
  const arePrices = bare.some((one) => /\.\d\d$/.test(one));
  return areShares || (!arePrices && !isNumbering(values) && values.some((value) => value > leastTelling));
}

/** 1, 2, 3 ... down the sheet. */
export const isNumbering = (bare: readonly number[]): boolean =>
  bare.length > 1 && bare.every((value, at) => at === 0 || value === (bare[at - 1] ?? 0) + 1);
