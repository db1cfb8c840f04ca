// Model: what follows from the plan's orders, counted and compared: promises, ways to buy, stairs, a budget. Volumes ml; `...Minor`
// is money in minor units, whole; chances 0 to 1.
import type { Choice, Needed, Waiting } from './choices.js';
import type { OneShop, OrderLine, OrderNeed, PassedOver, Stair } from './order.js';
import type { Chance, PromiseLevel } from './ranges.js';
import type { Container } from './words.js';

/**
 * How the promise stands on draws that the order has not seen. `kept`; `apart`: kept for the paints that shops offer, but
 * not with the others that the army needs; `missed`: the offers do not reach it; `not sold`: nothing of what is missing is on offer.
 */
export type Standing = 'kept' | 'apart' | 'missed' | 'not sold';

export interface PromiseSums {
  readonly standing: Standing;
  /** That of the paints on offer where they stand apart, else of all. */
  readonly reached: Chance;
  /** True where paints that no shop offers lower the chance. */
  readonly isHeldBack: boolean;
  /** The level that reaches farthest, where it does better than the order; else undefined. */
  readonly surer: PromiseLevel | undefined;
}

/** One way to buy, counted. */
export interface ChoiceSums {
  readonly postageMinor: number;
  /** Paints that it leaves out, but for those that are hardly ever needed. */
  readonly waits: readonly Waiting[];
}

/** Ways to buy beside one another. */
export interface BuyingSums {
  /** The way of the order. */
  readonly chosen: Choice | undefined;
  /** That in goes, where another is chosen. */
  readonly goes: Choice | undefined;
  readonly sums: ReadonlyMap<Choice, ChoiceSums>;
  /** Ways that buy anything; those together that buy the same. */
  readonly lists: readonly (readonly [Choice, ...Choice[]])[];
  /** How likely the last of each line of the order is needed. */
  readonly needed: ReadonlyMap<OrderLine, Needed>;
  /** Cash now of the dearest. */
  readonly mostMinor: number;
  /** True where none costs anything. */
  readonly isFree: boolean;
}

/** Whole pots without a shop, of a paint that no offer covers. */
export interface Alike extends OrderNeed {
  readonly sizeMl: number;
  readonly container: Container;
  readonly count: number;
  /** Of one, as last paid; undefined where nobody paid any. */
  readonly priceMinor: number | undefined;
  /** False where no pot of it was ever owned: then size and container are those of its kind. */
  readonly isOwned: boolean;
  /** True where it is what is likely, since without an offer nothing tells how sure to be of it. */
  readonly isAsLikely: boolean;
}

/** An order, counted. */
export interface OrderSums {
  readonly pots: number;
  /** What stands for its unmet needs. */
  readonly alike: readonly Alike[];
  /** How many these are, what they cost, and whether some of them have no price. */
  readonly alikeCost: { readonly pots: number; readonly minor: number; readonly atLeast: boolean };
  /** Offers of a line that could be left out and every need would still be covered. */
  readonly spare: ReadonlyMap<OrderLine, number>;
  /** Other ways to buy, the cheapest first. */
  readonly ways: readonly OtherWay[];
}

export type OtherWay = { readonly totalMinor: number; readonly extraMinor: number } & (
  | { readonly way: 'one shop'; readonly shop: OneShop['shop'] }
  | { readonly way: 'with set'; readonly set: Pick<PassedOver, 'shop' | 'offer'> }
);

/** A step at which the cash goes up. */
export interface Rise extends Stair {
  readonly riseMinor: number;
}

export interface NextRise {
  readonly rise: Rise;
  /** Its cash beyond the army's. */
  readonly extraMinor: number;
  /** Up to this figure the army's order is known to reach. */
  readonly reachesFigure: number;
  /** False where steps before it may have been passed over. */
  readonly isNext: boolean;
}

export interface StairSums {
  /** Steps at the same cash as the one before are left out. */
  readonly rises: readonly Rise[];
  /** Cash for the army. */
  readonly armyMinor: number;
  /** The first rise beyond the army; undefined where there is none. */
  readonly next: NextRise | undefined;
  readonly unproved: number;
}

export interface OpenUnit {
  readonly unit: string;
  readonly figures: number;
  readonly finished: number;
  readonly left: number;
  /** Cash beyond the order that would finish it; undefined where it was not priced. */
  readonly extraMinor: number | undefined;
  /** What the budget lacks for it; 0 where it lacks nothing, or it was not priced. */
  readonly shortMinor: number;
}

export interface BudgetSums {
  readonly figures: number;
  readonly finished: number;
  readonly leftMinor: number;
  readonly whole: readonly { readonly unit: string; readonly figures: number }[];
  readonly open: readonly OpenUnit[];
}
