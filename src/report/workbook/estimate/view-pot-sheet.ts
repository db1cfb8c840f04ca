// Report view: the pots that the workbook's paints come from. In: stock, the order, needs. Out: the sheet: what each pot
// gives, and at what price.
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
      const leftMl = one.usableMl === undefined ? one.sizeMl * one.pots : one.usableMl / usable.result;
      table.put(row, { leftMl, usable });
      if (one.priceMinor !== undefined) table.put(row, { money: major(one.priceMinor) });
      drawOn(table, row, { needMl, isFirst, isPriced: one.priceMinor !== undefined });
      return row;
    };
    const shelf = stock.pots.map(fromShelf);
    const bought = boughtOf.get(paint) ?? [];
    const rows = [...shelf, ...bought].map((one, at) => ({ row: add(one, at === 0), ...one }));
    return {
      table,
      owned: rows.slice(0, shelf.length).map(({ row }) => row),
      ordered: rows.slice(shelf.length).map(({ row }) => row),
      firstPriced: rows.find(({ priceMinor }) => priceMinor !== undefined)?.row,
    };
  };
  return { table, write };
}

interface Supply {
  readonly where: string;
  readonly container: Container;
  readonly sizeMl: number;
  readonly pots: number;
  /** Undefined: they are full. */
  readonly usableMl?: number;
  readonly priceMinor: number | undefined;
}

const fromShelf = ({ row, ordered, container, sizeMl, usableMl, priceMinor }: ShelfPot): Supply => ({
  where: `${ordered ? 'on its way' : 'shelf'}, row ${row} of pots`,
  ...{ container, sizeMl, pots: 1, usableMl, priceMinor },
});

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
}

/** A pot is used once those above it are empty. */
function drawOn(table: Supplies['table'], row: number, { needMl, isFirst, isPriced }: Drawing): void {
  const here = (key: keyof typeof columns): Term => table.here(key, row);
  table.put(row, { usableMl: times(here('leftMl'), here('usable')) });
  const before = plus(table.here('beforeMl', row - 1), table.here('usableMl', row - 1));
  const full = times(here('pots'), here('sizeMl'), here('usable'));
  table.put(row, {
    beforeMl: isFirst ? 0 : before,
    perMl: isPriced ? over(here('money'), full) : undefined,
  });
  table.put(row, { usedMl: most(num(0), least(here('usableMl'), minus(needMl, here('beforeMl')))) });
  table.put(row, {
    pricedMl: isPriced ? here('usedMl') : 0,
    cost: isPriced ? times(here('usedMl'), here('perMl')) : 0,
  });
}
