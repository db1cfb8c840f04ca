// Model: the order, and what stands beside it: what was passed over, the staircase, the budget. Volumes ml of usable
// paint; `...Minor` is whole minor units.
import type { Container } from './words.js';

/** Usable ml of one paint that an order must cover. */
export interface OrderNeed {
  readonly paint: string;
  readonly ml: number;
}

export interface OrderedPot {
  readonly paint: string;
  readonly sizeMl: number;
  readonly container: Container;
  /** In all: pots of the offer times offers bought. */
  readonly count: number;
  /** Usable ml of one. */
  readonly usableMl: number;
  /** Of all of them, what the needs take; pots that only fill up an order cover nothing. */
  readonly coversMl: number;
  /** What they leave over. */
  readonly overMl: number;
  /** This row's share of the line's cost; rows of a line add up to it. */
  readonly costMinor: number;
  readonly code?: string;
}

export interface OrderLine {
  readonly shop: string;
  readonly offer: string;
  readonly count: number;
  readonly priceMinor: number;
  readonly costMinor: number;
  readonly pots: readonly OrderedPot[];
}

export interface ShopBill {
  readonly shop: string;
  readonly goodsMinor: number;
  readonly postageMinor: number;
  /** Both together. */
  readonly totalMinor: number;
  /** Set where the goods do not reach the shop's least order. */
  readonly belowLeastOrderMinor?: number;
}

/** An offer that the order leaves out, though it looks tempting. */
export interface PassedOver {
  readonly shop: string;
  readonly offer: string;
  /** How much more the cheapest order with it would cost. */
  readonly extraMinor: number;
}

/** The cheapest order from one shop alone. */
export interface OneShop {
  readonly shop: string;
  readonly totalMinor: number;
}

export interface Order {
  /**
   * `proved`: no order that covers the needs costs less. `not proved`: none costs less than the total less
   * `aboveBestMinor`. `can't be met`: the offers do not cover every need; the rest is ordered, what is missing
   * stands in `unmet`.
   */
  readonly status: 'nothing to buy' | 'proved' | 'not proved' | "can't be met";
  /** At most this much above the best possible; 0 where the order (or the part that can be met) is proved. */
  readonly aboveBestMinor: number;
  /** Set on a proved order where time ran out before all orders at its cost were compared: another may take fewer shops or pots. */
  readonly tiesOpen?: true;
  /** Goods and postage. */
  readonly totalMinor: number;
  readonly postageMinor: number;
  readonly lines: readonly OrderLine[];
  readonly bills: readonly ShopBill[];
  /** What no offer covers. */
  readonly unmet: readonly OrderNeed[];
  /** Sets that hold needed paints and are not bought. */
  readonly passedOver: readonly PassedOver[];
  /** For each shop that by itself covers all that can be met. */
  readonly fromOneShop: readonly OneShop[];
}

/** From so many figures on, the order costs so much. */
export interface Stair {
  readonly figures: number;
  readonly cashMinor: number;
  /** Paints that the cheaper order before does not hold enough of. */
  readonly because: readonly string[];
  readonly proved: boolean;
}

/** Cash to spend against the number of figures, painted by priority, from none to twice the army. */
export interface Stairs {
  readonly steps: readonly Stair[];
  readonly mostFigures: number;
  /** False where there were too many to find each: between the steps shown the cash may rise earlier. */
  readonly everyStep: boolean;
}

/** What a sum of cash finishes. */
export interface Budget {
  readonly budgetMinor: number;
  /** The order for what is finished; within the budget. */
  readonly order: Order;
  /** Every unit of the army, in the order of priority. */
  readonly units: readonly { readonly unit: string; readonly figures: number; readonly finished: number }[];
  /** What it takes more to finish each of the next unfinished units, by itself. */
  readonly nextSteps: readonly {
    readonly unit: string;
    readonly figures: number;
    readonly extraMinor: number;
  }[];
  /** False where a search ended before it was proved that no more figures can be had. */
  readonly proved: boolean;
  /** Units after the first unfinished ones that were not tried. */
  readonly notTried: number;
}
