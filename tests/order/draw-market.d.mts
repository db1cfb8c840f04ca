// Types of the seeded draws.
import type { OrderNeed } from '../../src/model/order.js';
import type { Offer, Shop } from '../../src/model/sheets.js';

export interface Draws {
  /** A whole number from `low` to `high`. */
  readonly whole: (low: number, high: number) => number;
  /** 0 to 1. */
  readonly share: () => number;
  readonly chance: (share: number) => boolean;
}

export interface DrawnMarket {
  readonly needs: readonly OrderNeed[];
  readonly offers: readonly Offer[];
  readonly shops: ReadonlyMap<string, Shop>;
}

interface Size {
  readonly paints: number;
  readonly offers: number;
  readonly shops: number;
  /** Share of the offers that are sets. */
  readonly sets?: number;
  readonly sizesMl?: readonly number[];
}

export function drawFrom(seed: number): Draws;
export function drawMarket(seed: number, size: Size): DrawnMarket;
