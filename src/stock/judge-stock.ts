// Stock: how each paint stands, by chance. In: stock with likely needs, chances of running short, what is promised.
// Out: the same stock with its states and what is to be bought.
import type { Chance } from '../model/ranges.js';
import type { CountedStock, PaintStock, StockState } from '../model/stock.js';
import { sameMl } from '../model/volume.js';

/** Over this chance of running short a paint is short, over the other it is tight. */
const shortOver = 0.5;
const tightOver = 0.1;

export interface Judged {
  readonly chancesShort: ReadonlyMap<string, Chance>;
  /** Usable ml to be bought for the promise; below 0: so much more is there. */
  readonly toBuyMl: ReadonlyMap<string, number>;
}

/** `enough` up to one chance in ten, `tight` up to one in two, `short` above; a paint that nothing needs is `enough`. */
export function judgeStock(stock: readonly CountedStock[], { chancesShort, toBuyMl }: Judged): PaintStock[] {
  return stock.map((one) => {
    const ml = toBuyMl.get(one.paint) ?? 0;
    return {
      ...one,
      toBuyMl: ml > sameMl ? ml : 0,
      state: stateOf(one, chancesShort.get(one.paint)?.chance ?? 0),
    };
  });
}

function stateOf({ needMl, pots }: CountedStock, chanceShort: number): StockState {
  if (needMl === 0) return 'enough';
  if (pots.length === 0) return 'none owned';
  if (chanceShort > shortOver) return 'short';
  return chanceShort > tightOver ? 'tight' : 'enough';
}
