// Export: the rows of the reorder list, which reorder.csv and reorder.xlsx both write. In: a ReorderView. Out: rows, with
// where each cost comes from.
import type { Alike } from '../../model/order-sums.js';
import type { Container } from '../../model/words.js';
import { roundMl } from './format-amount.js';
import type { ReorderGroup, ReorderLine, ReorderShop, ReorderView } from './view-reorder.js';
import { reorderWords } from './words.js';

/** An amount and how the list comes to it. */
export interface Cost {
  readonly minor: number;
  /** Offers times price of its own row; the costs of rows from one to another, or of some rows, counted from 0; else as it is. */
  readonly from?: 'offers' | { readonly first: number; readonly last: number } | readonly number[];
}

/** One row; what is left out stays blank. */
export interface ReorderRow {
  readonly for: keyof typeof reorderWords.whom;
  readonly entry: keyof typeof reorderWords.entries;
  readonly shop?: string;
  readonly offer?: string;
  readonly paint?: string;
  readonly sizeMl?: number;
  readonly container?: Container;
  readonly pots?: number;
  readonly offers?: number;
  readonly priceMinor?: number;
  readonly cost?: Cost;
  readonly code?: string;
  readonly coversMl?: number;
  readonly overMl?: number;
  readonly missingMl?: number;
  /** Chance of being needed, 0 to 1. */
  readonly needed?: number;
  readonly date?: string;
  readonly note?: string;
}

/** Adds a row and gives its place, counted from 0. */
type Add = (row: ReorderRow) => number;

/**
 * Every row. Offers, price and cost stand once an offer, on the first of its pots. Each group ends with its total and pots
 * without a shop, and two groups with the total of both. Nothing to buy gives a total of 0.
 */
export function listReorderRows(view: ReorderView): readonly ReorderRow[] {
  const rows: ReorderRow[] = [];
  const add: Add = (row) => rows.push(row) - 1;
  const totals = view.groups.map((group) => addGroup(add, group, view));
  if (view.groups.length > 1)
    add({ for: 'both', entry: 'total', cost: { minor: view.totalMinor, from: totals }, date: view.date });
  return rows;
}

function addGroup(add: Add, group: ReorderGroup, { date }: Pick<ReorderView, 'date'>): number {
  const { for: whom, shops, totalMinor, note, unmet, waits } = group;
  const totals = shops.map((shop) => addShop(add, whom, shop));
  const total = add({ for: whom, entry: 'total', cost: { minor: totalMinor, from: totals }, note, date });
  for (const one of unmet) add({ for: whom, ...rowOfAlike(one) });
  for (const { paint, chanceNeeded } of waits)
    add({ for: whom, entry: 'waits', paint, needed: roundChance(chanceNeeded.chance) });
  return total;
}

/** A pot without a shop: as an offer of one pot, that the total leaves out. */
const rowOfAlike = ({ paint, ml, count, priceMinor, ...pot }: Alike): Omit<ReorderRow, 'for'> => ({
  ...{ entry: 'noShop', paint, sizeMl: pot.sizeMl, container: pot.container, pots: count, offers: count },
  ...(priceMinor === undefined ? {} : { priceMinor, cost: { minor: count * priceMinor, from: 'offers' } }),
  missingMl: roundMl(ml),
  note: reorderWords.alike[priceMinor === undefined ? (pot.isOwned ? 'unpriced' : 'usual') : 'yours'],
});

function addShop(add: Add, whom: ReorderRow['for'], of: ReorderShop): number {
  const { shop, lines, goodsMinor, postageMinor, totalMinor, note } = of;
  const place = { for: whom, shop };
  const pots = lines.flatMap((line) => rowsOf(line).map((row) => add({ ...place, ...row })));
  const [first = 0, last = first] = [pots[0], pots.at(-1)];
  const goods = add({ ...place, entry: 'goods', cost: { minor: goodsMinor, from: { first, last } } });
  const postage = add({ ...place, entry: 'postage', cost: { minor: postageMinor } });
  const cost = { minor: totalMinor, from: [goods, postage] };
  return add({ ...place, entry: 'shopTotal', cost, note });
}

/** To the nearest hundredth. */
const roundChance = (chance: number): number => Math.round(chance * 100) / 100;

/** A set takes one row a pot. */
const rowsOf = ({
  offer,
  count,
  priceMinor,
  costMinor,
  needed,
  pots,
}: ReorderLine): Omit<ReorderRow, 'for'>[] =>
  pots.map(({ paint, sizeMl, container, count: potCount, coversMl, overMl, code }, at) => ({
    ...{ entry: 'pot', offer, paint, sizeMl, container, pots: potCount, code },
    coversMl: roundMl(coversMl),
    overMl: roundMl(overMl),
    ...(at === 0 ? { offers: count, priceMinor, cost: { minor: costMinor, from: 'offers' } } : {}),
    ...(at === 0 && needed ? { needed: roundChance(needed.chanceNeeded.chance) } : {}),
  }));
