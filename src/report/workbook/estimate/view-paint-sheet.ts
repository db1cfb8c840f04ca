// Report view: the workbook's paints. In: stock, lines, pots. Out: the sheet: need, have, likely to buy, price, cost.
import { at } from '../../../model/at.js';
import type { PaintStock } from '../../../model/stock.js';
import type { Estimate } from '../../../model/work.js';
import { type Row, SheetTable } from './sheet-table.js';
import { type KeyOf, sheetWords } from './sheet-words.js';
import type { LineTable } from './view-line-sheet.js';
import type { Supplies } from './view-pot-sheet.js';
import { cellWords } from './words.js';
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

export type PaintTable = SheetTable<KeyOf<'paints'>>;

interface PaintInputs {
  readonly stock: readonly PaintStock[];
  readonly lines: LineTable;
  readonly writeSupplies: (stock: PaintStock, number: number, needMl: Term) => Supplies;
  /** Paint of units that the workbook leaves out; undefined where there are none. */
  readonly elsewhere: Estimate['needs'] | undefined;
}

/** Paints in the order of the stock, numbered from 1; nobody's name can be taken for a pattern that way. */
export function writePaints({ stock, lines, writeSupplies, elsewhere }: PaintInputs): PaintTable {
  const table: PaintTable = new SheetTable(sheetWords.paints);
  for (const [index, one] of stock.entries()) {
    const { paint, needMl, toBuyMl } = one;
    const number = index + 1;
    const row = table.add({ number, paint, plannedMl: needMl, promisedMl: toBuyMl });
    if (elsewhere !== undefined) {
      const { wholeMl, remainingMl } = elsewhere.get(paint) ?? { wholeMl: 0, remainingMl: 0 };
      row.put({ elsewhereMl: wholeMl, elsewhereLeftMl: remainingMl });
    }
    const needOf = (key: 'putOutMl' | 'leftMl', more: 'elsewhereMl' | 'elsewhereLeftMl'): Term => {
      const sum = lines.sumIf('paintNumber', row.here('number'), key);
      return elsewhere === undefined ? sum : plus(sum, row.here(more));
    };
    row.put({ wholeMl: needOf('putOutMl', 'elsewhereMl'), needMl: needOf('leftMl', 'elsewhereLeftMl') });
    pricePaint(row, writeSupplies(one, number, row.from('needMl')));
  }
  return table;
}

/**
 * What there is, what is missing, and what a ml costs: the average of what is used; of a paint that nothing needs any
 * more, the price of its first supply that has one.
 */
function pricePaint({ here, put }: Row<KeyOf<'paints'>>, supplies: Supplies): void {
  const { table: pots, owned, ordered, all, firstPriced } = supplies;
  const [pricedMl, paid] = [pots.sumRows('pricedMl', all), pots.sumRows('cost', all)];
  const average = either(isZero(pricedMl), num(0), over(paid, pricedMl));
  const pricedShare = over(pricedMl, here('needMl'));
  // A hair less than the whole need is the whole of it.
  const snapped = either(isBelow(minus(num(1), pricedShare), num(0.000000001)), num(1), pricedShare);
  const ifNotNeeded = (given: Term, needed: Term): Term => either(isZero(here('needMl')), given, needed);
  put({
    haveMl: pots.sumRows('usableMl', owned),
    orderedMl: pots.sumRows('usableMl', ordered),
    leftAfterMl: () => most(num(0), minus(here('haveMl'), here('needMl'))),
    likelyMl: () => most(num(0), minus(here('needMl'), here('haveMl'))),
    price: ifNotNeeded(firstPriced === undefined ? num(0) : firstPriced.from('perMl'), average),
    pricedShare: ifNotNeeded(num(firstPriced === undefined ? 0 : 1), snapped),
    cost: () => times(here('wholeMl'), here('price'), here('pricedShare')),
    costLeft: () => times(here('needMl'), here('price'), here('pricedShare')),
    atLeast: () =>
      wordsIf(
        both(isBelow(num(0), here('wholeMl')), isBelow(here('pricedShare'), num(1))),
        cellWords.atLeast,
      ),
  });
}

/** Prices the lines: each pays the average of its paint; what has no price counts nothing. */
export function priceLines(lines: LineTable, paints: PaintTable): void {
  for (const { here, put } of lines.rows) {
    const { from } = at(paints.rows, here('paintNumber').result - 1);
    put({
      price: times(from('price'), from('pricedShare')),
      unpriced: minus(num(1), from('pricedShare')),
      costPerFigure: () => times(here('perFigureMl'), here('price')),
      costPerSitting: () => times(here('perSittingMl'), here('price')),
      cost: () => times(here('putOutMl'), here('price')),
      costLeft: () => times(here('leftMl'), here('price')),
      unpricedLeft: () => times(here('leftMl'), here('unpriced')),
    });
  }
}
