// Report view: the pots that the workbook's paints come from. In: stock, the order, needs. Out: the sheet: what each pot
// gives, and at what price.
import { newestPaid } from '../../../model/newest-paid.js';
import type { OrderedPot } from '../../../model/order.js';
import type { Plan } from '../../../model/plan.js';
import type { PaintStock, ShelfPot } from '../../../model/stock.js';
import type { Container } from '../../../model/words.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { AssumptionSheet } from './view-assumption-sheet.js';
import { least, minus, most, num, over, plus, type Term, times } from './write-formula.js';

const columns = {
  number: ['paint no.', 9],
  paint: ['paint', 24],
  where: ['where', 30],
  pots: ['pots', 6],
  sizeMl: ['size ml', 8],
  leftMl: ['left ml, by the label', 12, 3],
  usable: ['usable share', 12],
  usableMl: ['usable ml', 10, 3],
  money: ['price of them', 12, 4],
  perMl: ['price a usable ml', 12, 4],
  beforeMl: ['ml in pots used before', 12, 3],
  usedMl: ['ml used', 10, 3],
  pricedMl: ['ml used with a price', 12, 3],
  cost: ['cost of use', 12, 4],
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
  const table: Supplies['table'] = new SheetTable('pots', columns, [
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

const fromShelf = ({ row, ordered, container, sizeMl, usableMl, priceMinor }: ShelfPot): Supply => ({
  where: `${ordered ? 'on its way' : 'shelf'}, row ${row} of pots`,
  ...{ container, sizeMl, pots: 1, usableMl, priceMinor },
});

function anotherLike({ pots }: PaintStock): Supply[] {
  const newest = newestPaid(pots);
  if (newest === undefined) return [];
  const { row, container, sizeMl, priceMinor } = newest;
  return [
    { where: `not there; priced as row ${row} of pots`, container, sizeMl, pots: undefined, priceMinor },
  ];
}

const fromShop = (shop: string, { container, sizeMl, count, costMinor }: OrderedPot): Supply => ({
  where: `order, ${shop}`,
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
