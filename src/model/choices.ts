// Model: ways to buy, side by side, and what follows from each. Volumes ml of usable paint; `...Minor` is minor units.
import type { OrderLine, ShopBill } from './order.js';
import type { Chance } from './ranges.js';

/** In the order in which they stand side by side. */
export const policies = ['likely', 'goes', 'wait', 'sure'] as const;

/**
 * How much is bought at once. `likely`: what the likely needs lack. `goes`: each pot whose chance of being needed is worth it.
 * `wait`: nothing until the first pot is dry. `sure`: so much that nothing runs out in so many cases.
 */
type Policy = (typeof policies)[number];

/** Which way to buy is chosen. */
export interface Aim {
  readonly policy: Policy;
  /** Set where it is `sure`. */
  readonly surePercent?: number;
}

/** A result of many draws, and its standard error. */
export interface Sampled {
  readonly value: number;
  readonly error: number;
}

export interface Needed {
  /** That it is needed before the army is done; of a line, the last of it. */
  readonly chanceNeeded: Chance;
  /** From this chance on another one is worth buying now, 0 to 1: price over price, postage and what another order is worth. */
  readonly threshold: number;
}

export interface ChoiceLine extends OrderLine, Needed {}

/** A paint that an order leaves out, though it may be needed. */
export interface Waiting extends Needed {
  readonly paint: string;
}

/** What follows once an order is placed and the army is painted, ordering again when a pot is dry. */
export interface Follows {
  /** How many draws were painted. */
  readonly draws: number;
  /** How many orders come after the first. */
  readonly ordersAfter: Sampled;
  readonly meanInAllMinor: Sampled;
  /** One time in ten it is more. */
  readonly highInAllMinor: Sampled;
  /** What was bought and is left at the end, at what was paid for it. */
  readonly leftOverMinor: Sampled;
  /** True where something that no shop can sell is needed in some draw: then the sums are higher. */
  readonly atLeast: boolean;
  /** Undefined where no draw needs another order. */
  readonly next: NextOrder | undefined;
}

/** The order after the first. */
export interface NextOrder {
  /** That there is one. */
  readonly chance: Chance;
  /** Before this unit is done it comes most often. */
  readonly unit: string;
  /** That it comes there. */
  readonly chanceThere: Chance;
  /** What it costs where there is one. */
  readonly cashMinor: Sampled;
}

/** One way to buy. */
export interface Choice extends Aim {
  readonly cashNowMinor: number;
  /** At most so much above the best for its policy; 0: proved. */
  readonly aboveBestMinor: number;
  readonly lines: readonly ChoiceLine[];
  readonly bills: readonly ShopBill[];
  readonly waiting: readonly Waiting[];
  /** Paints without a threshold, since nobody sells them: what is likely of them counts as needed for sure. */
  readonly asLikely: readonly string[];
  /** That nothing runs out with this order alone, of the paints on offer, on draws that it has not seen. */
  readonly met: Chance;
  readonly follows: Follows;
}
