// Report view: the pots that the workbook's paints come from. In: stock, the order, needs. Out: the sheet: what each pot
// gives, and at what price.
import { groupByPaint } from '../../../model/group-by.js';
import { newestPaid } from '../../../model/newest-paid.js';
import type { OrderedPot } from '../../../model/order.js';
import type { Plan } from '../../../model/plan.js';
import type { PaintStock, ShelfPot } from '../../../model/stock.js';
import type { Container } from '../../../model/words.js';
import { type Row, SheetTable } from './sheet-table.js';
import { type KeyOf, sheetWords } from './sheet-words.js';
import type { Likely } from './view-assumption-sheet.js';
import { cellWords } from './words.js';
import { least, minus, most, num, over, plus, type Term, times } from './write-formula.js';

type PotTable = SheetTable<KeyOf<'pots'>>;
type PotRow = Row<KeyOf<'pots'>>;

/** A paint's supplies: rows one below the other. */
export interface Supplies {
  readonly table: PotTable;
  readonly owned: readonly PotRow[];
  readonly ordered: readonly PotRow[];
  /**
   * Last of all comes as much more as is wanted, at the price of the newest pot; not where no pot has a price, or nothing is
   * needed.
   */
  readonly all: readonly PotRow[];
  /** The first with a price. */
  readonly firstPriced: PotRow | undefined;
}

interface Shelf {
  readonly order: Pick<Plan['order'], 'lines'>;
  readonly likely: Likely;
  /** Minor units as the spreadsheet has them. */
  readonly major: (minor: number) => number;
}

/** An empty sheet, and what writes the supplies of one paint into it. */
export function openPots({ order, likely, major }: Shelf) {
  const table: PotTable = new SheetTable(sheetWords.pots);
  const boughtOf = groupByPaint(
    order.lines.flatMap(({ shop, pots }) => pots.map((pot) => fromShop(shop, pot))),
  );
  const add = (number: number, one: Supply): PotRow => {
    const { paint, where, pots, sizeMl, container, usableMl, priceMinor } = one;
    const usable = likely(container === 'can' ? 'usable share of a can' : 'usable share of a pot');
    const fullMl = pots === undefined ? undefined : sizeMl * pots;
    const leftMl = usableMl === undefined ? fullMl : usableMl / usable.result;
    const money = priceMinor === undefined ? undefined : major(priceMinor);
    return table.add({ number, paint, where, pots, sizeMl, leftMl, usable, money });
  };
  const write = (stock: PaintStock, number: number, needMl: Term): Supplies => {
    const bought = boughtOf.get(stock.paint) ?? [];
    const another = needMl.result > 0 ? anotherLike(stock) : [];
    const supplies = [...stock.pots.map((pot) => fromShelf(pot, stock.paint)), ...bought, ...another];
    const all: PotRow[] = [];
    for (const one of supplies) {
      const row = add(number, one);
      drawOn(row, one, { needMl, before: all.at(-1) });
      all.push(row);
    }
    const given = stock.pots.length + bought.length;
    return {
      ...{ table, all, owned: all.slice(0, stock.pots.length), ordered: all.slice(stock.pots.length, given) },
      firstPriced: all[supplies.findIndex(({ priceMinor }) => priceMinor !== undefined)],
    };
  };
  return { table, write };
}

interface Supply {
  readonly paint: string;
  readonly where: string;
  readonly container: Container;
  readonly sizeMl: number;
  /** Undefined: as many as are wanted. */
  readonly pots: number | undefined;
  /** Undefined: they are full. */
  readonly usableMl?: number;
  readonly priceMinor: number | undefined;
}

const sheetOf = ({ fromLog }: ShelfPot): string => (fromLog ? 'log' : 'pots');

const fromShelf = (pot: ShelfPot, paint: string): Supply => ({
  ...{ paint, where: cellWords.pot(pot.row, { isOnWay: pot.ordered, sheet: sheetOf(pot) }), pots: 1 },
  ...{ container: pot.container, sizeMl: pot.sizeMl, usableMl: pot.usableMl, priceMinor: pot.priceMinor },
});

const fromShop = (shop: string, { paint, container, sizeMl, count, costMinor }: OrderedPot): Supply => ({
  ...{ paint, where: cellWords.ordered(shop), pots: count },
  ...{ container, sizeMl, priceMinor: costMinor },
});

function anotherLike({ paint, pots }: PaintStock): Supply[] {
  const newest = newestPaid(pots);
  if (newest === undefined) return [];
  const { row, container, sizeMl, priceMinor } = newest;
  const where = cellWords.notThere(row, sheetOf(newest));
  return [{ paint, where, pots: undefined, container, sizeMl, priceMinor }];
}

/** A pot is used once those above it are empty. */
function drawOn(
  { here, put }: PotRow,
  { pots, priceMinor }: Supply,
  { needMl, before }: { readonly needMl: Term; readonly before: PotRow | undefined },
): void {
  const [hasEnd, isPriced] = [pots !== undefined, priceMinor !== undefined];
  if (hasEnd) put({ usableMl: times(here('leftMl'), here('usable')) });
  const one = times(here('sizeMl'), here('usable'));
  const full = hasEnd ? times(here('pots'), one) : one;
  put({
    perMl: isPriced ? over(here('money'), full) : undefined,
    beforeMl: before === undefined ? 0 : plus(before.here('beforeMl'), before.here('usableMl')),
  });
  const missing = minus(needMl, here('beforeMl'));
  put({
    usedMl: most(num(0), hasEnd ? least(here('usableMl'), missing) : missing),
    pricedMl: () => (isPriced ? here('usedMl') : 0),
    cost: () => (isPriced ? times(here('usedMl'), here('perMl')) : 0),
  });
}
