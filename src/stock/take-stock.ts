// Stock: the shelf against the army's needs. In: pots, paints, needs. Out: per paint what is there, missing, low.
import { likely } from '../assumptions/look-up.js';
import { type Assumptions, weakestMark } from '../model/assumption.js';
import { followPots } from '../model/follow-pots.js';
import { groupByPaint } from '../model/group-by.js';
import type { OrderNeed } from '../model/order.js';
import type { LogRow, Paint, Sheets } from '../model/sheets.js';
import type { CountedStock, PastWork, ShelfPot } from '../model/stock.js';
import { sameMl } from '../model/volume.js';
import type { Estimate } from '../model/work.js';
import { measurePot } from './measure-pot.js';
import { type UsedShelf, useUp } from './use-up.js';

/** What tells of the shelf. */
interface Shelf extends Pick<Sheets, 'pots' | 'log' | 'paints'> {
  /** What the rows of the log that say no amount are likely to have taken. */
  readonly past?: ReadonlyMap<LogRow, PastWork>;
}

/**
 * One entry for every paint that is owned, needed or to be kept, in the order of the paints. `toBuyMl` is what the remaining
 * work needs beyond what is there. A paint without pots has nothing; one without need asks for nothing.
 */
export function takeStock(
  { pots, log, paints, past = new Map() }: Shelf,
  needs: Estimate['needs'],
  assumptions: Assumptions,
): CountedStock[] {
  const potsOf = groupByPaint(pots);
  const rowsOf = groupByPaint(log);
  const keepShare = likely(assumptions, 'shelf level') / 100;
  return [...paints.values()].flatMap((paint) => {
    const name = paint.paint;
    const { lives, rows } = followPots(potsOf.get(name) ?? [], rowsOf.get(name) ?? []);
    if (lives.length === 0 && !needs.has(name) && (paint.keepMl ?? 0) <= 0) return [];
    const measured = lives.map(({ pot, ...life }) => ({ ...life, pot: measurePot(pot, paint, assumptions) }));
    const used = useUp(measured, rows, { paint, assumptions, past });
    return [weighUp(paint, used, { needMl: needs.get(name)?.remainingMl ?? 0, keepShare })];
  });
}

function weighUp(
  paint: Paint,
  { pots, ...inDoubt }: UsedShelf,
  { needMl, keepShare }: { readonly needMl: number; readonly keepShare: number },
): CountedStock {
  const haveMl = sumMl(pots);
  const leftAfterMl = Math.max(0, haveMl - needMl);
  const keepMl = paint.keepMl ?? keepShare * Math.max(0, ...pots.map(({ sizeMl }) => sizeMl));
  return {
    paint: paint.paint,
    pots,
    ...inDoubt,
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
