// Report view: the workbook's paints. In: stock, lines, pots. Out: the sheet: need, have, likely to buy, price, cost.
import type { PaintStock } from '../../../model/stock.js';
import type { Estimate } from '../../../model/work.js';
import { columnWords } from './column-words.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { LineTable } from './view-line-sheet.js';
import type { Supplies } from './view-pot-sheet.js';
import { cellWords, sheetWords } from './words.js';
import {
  both,
  either,
  isBelow,
  isZero,
  minus,
  most,
  num,
  over,
  plus,
  type Term,
  times,
  wordsIf,
} from './write-formula.js';

const names = columnWords.paints;
const columns = {
  number: [names.number, 9],
  paint: [names.paint, 24],
  wholeMl: [names.wholeMl, 12, 3],
  needMl: [names.needMl, 12, 3],
  plannedMl: [names.plannedMl, 12, 3],
  haveMl: [names.haveMl, 9, 3],
  leftAfterMl: [names.leftAfterMl, 12, 3],
  likelyMl: [names.likelyMl, 12, 3],
  promisedMl: [names.promisedMl, 12, 3],
  orderedMl: [names.orderedMl, 12, 3],
  price: [names.price, 11, 4],
  pricedShare: [names.pricedShare, 12, 3],
  cost: [names.cost, 12, 4],
  costLeft: [names.costLeft, 12, 4],
  atLeast: [names.atLeast, 9],
  elsewhereMl: [names.elsewhereMl, 12, 3],
  elsewhereLeftMl: [names.elsewhereLeftMl, 12, 3],
} as const satisfies Record<string, ColumnOf>;

export type PaintTable = SheetTable<keyof typeof columns>;

export interface PaintInputs {
  readonly stock: readonly PaintStock[];
  readonly lines: LineTable;
  readonly writeSupplies: (stock: PaintStock, number: number, needMl: Term) => Supplies;
  /** Paint of units that the workbook leaves out; undefined where there are none. */
  readonly elsewhere: Estimate['needs'] | undefined;
}

/** Paints in the order of the stock, numbered from 1; nobody's name can be taken for a pattern that way. */
export function writePaints({ stock, lines, writeSupplies, elsewhere }: PaintInputs): PaintTable {
  const table: PaintTable = new SheetTable(sheetWords.paints.name, columns, [
    'number',
    'plannedMl',
    'promisedMl',
    'elsewhereMl',
    'elsewhereLeftMl',
  ]);
  for (const [at, { paint, needMl, toBuyMl }] of stock.entries()) {
    const row = table.add({ number: at + 1, paint, plannedMl: needMl, promisedMl: toBuyMl });
    if (elsewhere !== undefined) {
      const more = elsewhere.get(paint) ?? { wholeMl: 0, remainingMl: 0 };
      table.put(row, { elsewhereMl: more.wholeMl, elsewhereLeftMl: more.remainingMl });
    }
    const needOf = (key: 'putOutMl' | 'leftMl', more: 'elsewhereMl' | 'elsewhereLeftMl'): Term => {
      const sum = lines.sumIf('paintNumber', table.here('number', row), key);
      return elsewhere === undefined ? sum : plus(sum, table.here(more, row));
    };
    table.put(row, {
      wholeMl: needOf('putOutMl', 'elsewhereMl'),
      needMl: needOf('leftMl', 'elsewhereLeftMl'),
    });
  }
  for (const [at, one] of stock.entries()) {
    const row = at + 2;
    pricePaint(table, row, writeSupplies(one, at + 1, table.from('needMl', row)));
  }
  return table;
}

/**
 * What there is, what is missing, and what a ml costs: the average of what is used; of a paint that nothing needs any
 * more, the price of its first supply that has one.
 */
function pricePaint(table: PaintTable, row: number, supplies: Supplies): void {
  const { table: pots, owned, ordered, beyond, firstPriced } = supplies;
  const here = (key: keyof typeof columns): Term => table.here(key, row);
  const all = [...owned, ...ordered, ...beyond];
  table.put(row, {
    haveMl: pots.sumRows('usableMl', owned),
    orderedMl: pots.sumRows('usableMl', ordered),
  });
  const firstPrice = firstPriced === undefined ? num(0) : pots.from('perMl', firstPriced);
  const [pricedMl, paid] = [pots.sumRows('pricedMl', all), pots.sumRows('cost', all)];
  const average = either(isZero(pricedMl), num(0), over(paid, pricedMl));
  const pricedShare = over(pricedMl, here('needMl'));
  // A hair less than the whole need is the whole of it.
  const snapped = either(isBelow(minus(num(1), pricedShare), num(0.000000001)), num(1), pricedShare);
  table.put(row, {
    leftAfterMl: most(num(0), minus(here('haveMl'), here('needMl'))),
    likelyMl: most(num(0), minus(here('needMl'), here('haveMl'))),
    price: either(isZero(here('needMl')), firstPrice, average),
    pricedShare: either(isZero(here('needMl')), num(firstPriced === undefined ? 0 : 1), snapped),
  });
  table.put(row, {
    cost: times(here('wholeMl'), here('price'), here('pricedShare')),
    costLeft: times(here('needMl'), here('price'), here('pricedShare')),
    atLeast: wordsIf(
      both(isBelow(num(0), here('wholeMl')), isBelow(here('pricedShare'), num(1))),
      cellWords.atLeast,
    ),
  });
}
