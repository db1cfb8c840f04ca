// Stock: what the paint is worth. In: pots and log as given, the stock as it stands. Out: money spent, standing, used up.
import type { Assumptions } from '../model/assumption.js';
import { followPots } from '../model/follow-pots.js';
import { groupByPaint } from '../model/group-by.js';
import { type ExactMinor, exactMinor, sumMinor } from '../model/money.js';
import type { LogRow, Pot, Sheets } from '../model/sheets.js';
import type { ShelfMoney, Spent } from '../model/spent.js';
import type { CountedStock, ShelfPot } from '../model/stock.js';
import { measurePot } from './measure-pot.js';

/** A pot is worth its price times what is left of what it held. */
export function valueShelf(
  { pots, log, paints }: Pick<Sheets, 'pots' | 'log' | 'paints'>,
  stock: readonly CountedStock[],
  assumptions: Assumptions,
): Omit<ShelfMoney, 'useBeside'> {
  const measure = (pot: Pot): ShelfPot =>
    measurePot(
      pot,
      paints.get(pot.paint) ?? { paint: pot.paint, kind: 'colour', alsoCalled: [] },
      assumptions,
    );
  const now = stock.flatMap((one) => one.pots);
  const begunWith = worthOf(pots.map(measure));
  const boughtMinor = paidFor({ pots, log });
  const standing = worthOf(now.filter(({ ordered }) => !ordered));
  const onWay = worthOf(now.filter(({ ordered }) => ordered));
  return {
    spent: listSpent(log),
    ...{ boughtMinor, begunWith, standing, onWay },
    used: begunWith.plus(boughtMinor).minus(standing).minus(onWay),
    unpricedPots: now.filter(({ priceMinor }) => priceMinor === undefined).length,
  };
}

type Paid = LogRow & { readonly priceMinor: number };

const isPaid = (row: LogRow): row is Paid => row.what === 'bought' && row.priceMinor !== undefined;

/** Of all pots that the log brought, those that are gone too; a row of which nobody knows the size brought none. */
function paidFor({ pots, log }: Pick<Sheets, 'pots' | 'log'>): number {
  const potsOf = groupByPaint(pots);
  return [...groupByPaint(log)]
    .filter(([, rows]) => rows.some(isPaid))
    .flatMap(([paint, rows]) => followPots(potsOf.get(paint) ?? [], rows).lives)
    .reduce((sum, { pot }) => sum + (pot.fromLog ? (pot.priceMinor ?? 0) : 0), 0);
}

const worthOf = (pots: readonly ShelfPot[]): ExactMinor =>
  sumMinor(
    pots.map(({ priceMinor = 0, usableMl, fullUsableMl }) =>
      exactMinor(priceMinor).times(usableMl).div(fullUsableMl),
    ),
  );

function listSpent(log: readonly LogRow[]): Spent[] {
  const sums = new Map<string, number>();
  for (const { what, date, shop = '', priceMinor, postageMinor } of log) {
    if (what !== 'bought' || (priceMinor === undefined && postageMinor === undefined)) continue;
    const key = `${date.slice(0, 7)}\n${shop}`;
    sums.set(key, (sums.get(key) ?? 0) + (priceMinor ?? 0) + (postageMinor ?? 0));
  }
  return [...sums]
    .map(([key, minor]) => ({ month: key.slice(0, 7), shop: key.slice(8), minor }))
    .sort((a, b) => (a.month < b.month ? -1 : a.month > b.month ? 1 : a.shop < b.shop ? -1 : 1));
}
