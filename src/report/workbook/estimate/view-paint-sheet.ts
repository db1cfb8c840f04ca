// Report view: the workbook's paints. In: stock, lines, pots. Out: the sheet: need, have, likely to buy, price, cost.
import type { PaintStock } from '../../../model/stock.js';
import type { Estimate } from '../../../model/work.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { LineTable } from './view-line-sheet.js';
import type { Supplies } from './view-pot-sheet.js';
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

const columns = {
  number: ['paint no.', 9],
  paint: ['paint', 24],
  wholeMl: ['need ml, whole', 12, 3],
  needMl: ['need ml, remaining', 12, 3],
  plannedMl: ['remaining, as planned', 12, 3],
  haveMl: ['have ml', 9, 3],
  leftAfterMl: ['left after ml', 12, 3],
  likelyMl: ['likely to buy ml', 12, 3],
  promisedMl: ['promised ml to buy', 12, 3],
  orderedMl: ['in the order ml', 12, 3],
  price: ['price a ml', 11, 4],
  pricedShare: ['share with a price', 12, 3],
  cost: ['cost of use, whole', 12, 4],
  costLeft: ['cost of use, remaining', 12, 4],
  atLeast: ['or more', 9],
  elsewhereMl: ['whole, units left out', 12, 3],
  elsewhereLeftMl: ['remaining, units left out', 12, 3],
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
  const table: PaintTable = new SheetTable('paints', columns, [
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
      'at least',
    ),
  });
}
