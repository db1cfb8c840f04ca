// Report view: the pots that the workbook's paints come from. In: stock, the order, needs. Out: the sheet: what each pot
// gives, and at what price.
import { newestPaid } from '../../../model/newest-paid.js';
import type { OrderedPot } from '../../../model/order.js';
import type { Plan } from '../../../model/plan.js';
import type { PaintStock, ShelfPot } from '../../../model/stock.js';
import type { Container } from '../../../model/words.js';
import { columnWords } from './column-words.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { AssumptionSheet } from './view-assumption-sheet.js';
import { cellWords, sheetWords } from './words.js';
import { least, minus, most, num, over, plus, type Term, times } from './write-formula.js';

const names = columnWords.pots;
const columns = {
  number: [names.number, 9],
  paint: [names.paint, 24],
  where: [names.where, 30],
  pots: [names.pots, 6],
  sizeMl: [names.sizeMl, 8],
  leftMl: [names.leftMl, 12, 3],
  usable: [names.usable, 12],
  usableMl: [names.usableMl, 10, 3],
  money: [names.money, 12, 4],
  perMl: [names.perMl, 12, 4],
  beforeMl: [names.beforeMl, 12, 3],
  usedMl: [names.usedMl, 10, 3],
  pricedMl: [names.pricedMl, 12, 3],
  cost: [names.cost, 12, 4],
} as const satisfies Record<string, ColumnOf>;

/** A paint's supplies: rows one below the other. */
export interface Supplies {
  readonly table: SheetTable<keyof typeof columns>;
  readonly owned: readonly number[];
  readonly ordered: readonly number[];
  /** As much more as is wanted, at the price of the newest pot; none where no pot has a price, or nothing is needed. */
  readonly beyond: readonly number[];
  /** The first with a price. */
  readonly firstPriced: number | undefined;
}

export interface Shelf {
  readonly order: Pick<Plan['order'], 'lines'>;
  readonly likely: AssumptionSheet['likely'];
  /** Minor units as the spreadsheet has them. */
  readonly major: (minor: number) => number;
}

/** An empty sheet, and what writes the supplies of one paint into it. */
export function openPots({ order, likely, major }: Shelf) {
  const table: Supplies['table'] = new SheetTable(sheetWords.pots.name, columns, [
    'number',
    'beforeMl',
    'pricedMl',
    'cost',
  ]);
  const boughtOf = groupPots(order);
  const write = (stock: PaintStock, number: number, needMl: Term): Supplies => {
    const { paint } = stock;
    const add = (one: Supply, isFirst: boolean): number => {
      const row = table.add({ number, paint, where: one.where, pots: one.pots, sizeMl: one.sizeMl });
      const usable = likely(one.container === 'can' ? 'usable share of a can' : 'usable share of a pot');
      const fullMl = one.pots === undefined ? undefined : one.sizeMl * one.pots;
      table.put(row, { leftMl: one.usableMl === undefined ? fullMl : one.usableMl / usable.result, usable });
      if (one.priceMinor !== undefined) table.put(row, { money: major(one.priceMinor) });
      const isPriced = one.priceMinor !== undefined;
      drawOn(table, row, { needMl, isFirst, isPriced, hasEnd: one.pots !== undefined });
      return row;
    };
    const shelf = stock.pots.map(fromShelf);
    const bought = boughtOf.get(paint) ?? [];
    const given = shelf.length + bought.length;
    const another = needMl.result > 0 ? anotherLike(stock) : [];
    const rows = [...shelf, ...bought, ...another].map((one, at) => ({
      row: add(one, at === 0),
      ...one,
    }));
    const rowsOf = (from: number, to?: number) => rows.slice(from, to).map(({ row }) => row);
    return {
      table,
      owned: rowsOf(0, shelf.length),
      ordered: rowsOf(shelf.length, given),
      beyond: rowsOf(given),
      firstPriced: rows.find(({ priceMinor }) => priceMinor !== undefined)?.row,
    };
  };
  return { table, write };
}

interface Supply {
  readonly where: string;
  readonly container: Container;
  readonly sizeMl: number;
  /** Undefined: as many as are wanted. */
  readonly pots: number | undefined;
  /** Undefined: they are full. */
  readonly usableMl?: number;
  readonly priceMinor: number | undefined;
}

const fromShelf = ({ row, ordered, fromLog, ...pot }: ShelfPot): Supply => ({
  where: cellWords.pot(row, { isOnWay: ordered, sheet: sheetOf({ fromLog }) }),
  ...{
    container: pot.container,
    sizeMl: pot.sizeMl,
    pots: 1,
    usableMl: pot.usableMl,
    priceMinor: pot.priceMinor,
  },
});

const sheetOf = ({ fromLog }: { readonly fromLog?: true | undefined }): string => (fromLog ? 'log' : 'pots');

function anotherLike({ pots }: PaintStock): Supply[] {
  const newest = newestPaid(pots);
  if (newest === undefined) return [];
  const { row, container, sizeMl, priceMinor } = newest;
  return [
    { where: cellWords.notThere(row, sheetOf(newest)), container, sizeMl, pots: undefined, priceMinor },
  ];
}

const fromShop = (shop: string, { container, sizeMl, count, costMinor }: OrderedPot): Supply => ({
  where: cellWords.ordered(shop),
  ...{ container, sizeMl, pots: count, priceMinor: costMinor },
});

/** The order's pots by paint. */
function groupPots({ lines }: Shelf['order']): Map<string, Supply[]> {
  const bought = new Map<string, Supply[]>();
  for (const { shop, pots } of lines) {
    for (const pot of pots) {
      bought.set(pot.paint, [...(bought.get(pot.paint) ?? []), fromShop(shop, pot)]);
    }
  }
  return bought;
}

interface Drawing {
  readonly needMl: Term;
  readonly isFirst: boolean;
  readonly isPriced: boolean;
  /** False for a supply that is as large as is wanted. */
  readonly hasEnd: boolean;
}

/** A pot is used once those above it are empty. */
function drawOn(table: Supplies['table'], row: number, { needMl, isFirst, isPriced, hasEnd }: Drawing): void {
  const here = (key: keyof typeof columns): Term => table.here(key, row);
  if (hasEnd) table.put(row, { usableMl: times(here('leftMl'), here('usable')) });
  const before = plus(table.here('beforeMl', row - 1), table.here('usableMl', row - 1));
  const one = times(here('sizeMl'), here('usable'));
  const full = hasEnd ? times(here('pots'), one) : one;
  table.put(row, {
    beforeMl: isFirst ? 0 : before,
    perMl: isPriced ? over(here('money'), full) : undefined,
  });
  const missing = minus(needMl, here('beforeMl'));
  table.put(row, { usedMl: most(num(0), hasEnd ? least(here('usableMl'), missing) : missing) });
  table.put(row, {
    pricedMl: isPriced ? here('usedMl') : 0,
    cost: isPriced ? times(here('usedMl'), here('perMl')) : 0,
  });
}
