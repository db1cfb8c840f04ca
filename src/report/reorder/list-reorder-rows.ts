// Export: the rows of reorder.csv. In: a ReorderView. Out: rows.
import type { Alike } from '../../model/order-sums.js';
import type { Container } from '../../model/words.js';
import { roundMl } from './round-list-ml.js';
import type { ReorderGroup, ReorderLine, ReorderShop, ReorderView } from './view-reorder.js';
import { reorderWords } from './words.js';

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
  readonly costMinor?: number;
  readonly code?: string;
  readonly coversMl?: number;
  readonly overMl?: number;
  readonly missingMl?: number;
  /** Chance of being needed, 0 to 1. */
  readonly needed?: number;
  readonly date?: string;
  readonly note?: string;
}

/**
 * Every row. Offers, price and cost stand once an offer, on the first of its pots. Each group ends with its total and pots
 * without a shop, and two groups with the total of both. Nothing to buy gives a total of 0.
 */
export function listReorderRows({ groups, totalMinor, date }: ReorderView): readonly ReorderRow[] {
  const rows = groups.flatMap((group) => rowsOfGroup(group, date));
  return groups.length > 1 ? [...rows, { for: 'both', entry: 'total', costMinor: totalMinor, date }] : rows;
}

function rowsOfGroup(
  { for: whom, shops, totalMinor, note, unmet, waits }: ReorderGroup,
  date: string,
): ReorderRow[] {
  return [
    ...shops.flatMap(rowsOfShop),
    { entry: 'total' as const, costMinor: totalMinor, note, date },
    ...unmet.map(rowOfAlike),
    ...waits.map(({ paint, chanceNeeded }) => ({
      ...{ entry: 'waits' as const, paint, needed: roundChance(chanceNeeded.chance) },
    })),
  ].map((row) => ({ for: whom, ...row }));
}

type OwnRow = Omit<ReorderRow, 'for'>;

/** A pot without a shop: as an offer of one pot, that the total leaves out. */
const rowOfAlike = ({ paint, ml, count, priceMinor, ...pot }: Alike): OwnRow => ({
  ...{ entry: 'noShop', paint, sizeMl: pot.sizeMl, container: pot.container, pots: count, offers: count },
  ...(priceMinor === undefined ? {} : { priceMinor, costMinor: count * priceMinor }),
  missingMl: roundMl(ml),
  note: reorderWords.alike[priceMinor === undefined ? (pot.isOwned ? 'unpriced' : 'usual') : 'yours'],
});

const rowsOfShop = ({ shop, lines, goodsMinor, postageMinor, totalMinor, note }: ReorderShop): OwnRow[] => [
  ...lines.flatMap((line) => rowsOf(line).map((row) => ({ shop, ...row }))),
  { shop, entry: 'goods', costMinor: goodsMinor },
  { shop, entry: 'postage', costMinor: postageMinor },
  { shop, entry: 'shopTotal', costMinor: totalMinor, note },
];

/** To the nearest hundredth. */
const roundChance = (chance: number): number => Math.round(chance * 100) / 100;

/** A set takes one row a pot. */
const rowsOf = ({ offer, count, priceMinor, costMinor, needed, pots }: ReorderLine): OwnRow[] =>
  pots.map(({ paint, sizeMl, container, count: potCount, coversMl, overMl, code }, at) => ({
    ...{ entry: 'pot', offer, paint, sizeMl, container, pots: potCount, code },
    coversMl: roundMl(coversMl),
    overMl: roundMl(overMl),
    ...(at === 0 ? { offers: count, priceMinor, costMinor } : {}),
    ...(at === 0 && needed ? { needed: roundChance(needed.chanceNeeded.chance) } : {}),
  }));
