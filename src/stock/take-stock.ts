// Stock: the shelf against the army's needs. In: pots, paints, needs. Out: per paint what is there, missing, low.
import { likely } from '../assumptions/look-up.js';
import { type Assumptions, weakestMark } from '../model/assumption.js';
import type { OrderNeed } from '../model/order.js';
import type { LogRow, Paint, Sheets } from '../model/sheets.js';
import type { CountedStock, ShelfPot } from '../model/stock.js';
import { sameMl } from '../model/volume.js';
import type { Estimate } from '../model/work.js';
import { measurePot } from './measure-pot.js';
import { sortPots } from './sort-pots.js';
import { useUp } from './use-up.js';

/**
 * One entry for every paint that is owned, needed or to be kept, in the order of the paints. `toBuyMl` is what the remaining
 * work needs beyond what is there. A paint without pots has nothing; one without need asks for nothing.
 */
export function takeStock(
  sheets: Sheets,
  needs: Estimate['needs'],
  assumptions: Assumptions,
): CountedStock[] {
  const potsOf = groupByPaint(sheets.pots);
  const rowsOf = groupByPaint(sheets.log);
  return [...sheets.paints.values()]
    .filter(({ paint, keepMl = 0 }) => potsOf.has(paint) || needs.has(paint) || keepMl > 0)
    .map((paint) => {
      const counted = sortPots(potsOf.get(paint.paint) ?? []).map((pot) => ({
        pot: measurePot(pot, paint, assumptions),
        countedOn: pot.countedOn,
      }));
      const rows: readonly LogRow[] = rowsOf.get(paint.paint) ?? [];
      const pots = useUp(counted, rows, { paint, assumptions });
      const needMl = needs.get(paint.paint)?.remainingMl ?? 0;
      return weighUp(paint, pots, needMl, likely(assumptions, 'shelf level') / 100);
    });
}

function groupByPaint<Row extends { readonly paint: string }>(rows: readonly Row[]): Map<string, Row[]> {
  const rowsOf = new Map<string, Row[]>();
  for (const row of rows) {
    const others = rowsOf.get(row.paint);
    if (others === undefined) rowsOf.set(row.paint, [row]);
    else others.push(row);
  }
  return rowsOf;
}

function weighUp(paint: Paint, pots: readonly ShelfPot[], needMl: number, shelfShare: number): CountedStock {
  const haveMl = sumMl(pots);
  const leftAfterMl = Math.max(0, haveMl - needMl);
  const keepMl = paint.keepMl ?? shelfShare * Math.max(0, ...pots.map(({ sizeMl }) => sizeMl));
  return {
    paint: paint.paint,
    pots,
    needMl,
    haveMl,
    orderedMl: sumMl(pots.filter(({ ordered }) => ordered)),
    leftAfterMl,
    toBuyMl: needMl - haveMl > sameMl ? needMl - haveMl : 0,
    keepMl,
    runningLow: keepMl - leftAfterMl > sameMl,
    mark: weakestMark(['yours', ...pots.map(({ mark }) => mark)]),
  };
}

const sumMl = (pots: readonly ShelfPot[]): number => pots.reduce((total, pot) => total + pot.usableMl, 0);

/** What must be bought of some needs, in usable ml, beyond what is on the shelf. */
export function findMissing(needs: ReadonlyMap<string, number>, stock: readonly CountedStock[]): OrderNeed[] {
  const haveMl = haveMlOf(stock);
  return [...needs].flatMap(([paint, needMl]) => {
    const ml = needMl - (haveMl.get(paint) ?? 0);
    return ml > sameMl ? [{ paint, ml }] : [];
  });
}

/** What must be bought for the army: every paint with something missing, in usable ml. */
export function findShort(stock: readonly CountedStock[]): OrderNeed[] {
  return stock.filter(({ toBuyMl }) => toBuyMl > 0).map(({ paint, toBuyMl }) => ({ paint, ml: toBuyMl }));
}

/** Likely need less what is there, of every paint that is needed, in usable ml; below 0 where it lasts. */
export function findLacking(stock: readonly CountedStock[]): ReadonlyMap<string, number> {
  const needed = stock.filter(({ needMl }) => needMl > 0);
  return new Map(needed.map(({ paint, needMl, haveMl }) => [paint, needMl - haveMl]));
}

/** Usable ml on the shelf, by paint. */
export function haveMlOf(stock: readonly CountedStock[]): ReadonlyMap<string, number> {
  return new Map(stock.map(({ paint, haveMl }) => [paint, haveMl]));
}
