// Report view: what the page shows of orders, as part of the contract in report-view.ts. Plain text.
import type { TrustView } from './trust-view.js';

export interface ShoppingView {
  readonly lead: string;
  /** Of the amounts to buy; prices are the painter's own. */
  readonly trust: TrustView;
  readonly groups: readonly ShoppingGroup[];
  /** Both groups together; '' where only one has anything to buy. */
  readonly bothTotal: string;
}

export interface ShoppingGroup {
  readonly title: string;
  readonly says: string;
  /** How sure it is that nothing cheaper covers it; '' where nothing is bought. */
  readonly proof: string;
  readonly shops: readonly ShoppingShop[];
  readonly total: string;
  /** What else could be ordered, the cheapest first; none where nothing else was weighed. */
  readonly ways: readonly OtherWay[];
  readonly unmet: readonly { readonly paint: string; readonly hex: string; readonly missing: string }[];
}

export interface ShoppingShop {
  readonly shop: string;
  readonly lines: readonly ShoppingLine[];
  readonly goods: string;
  /** `Postage`, or `Postage back` where goods of this group make those of the army travel free. */
  readonly postageLabel: string;
  readonly postage: string;
  readonly total: string;
  readonly note: string;
}

export interface ShoppingLine {
  readonly offer: string;
  readonly count: string;
  readonly price: string;
  readonly cost: string;
  readonly pots: readonly {
    readonly paint: string;
    readonly hex: string;
    /** `2 pots of 17 ml` */
    readonly what: string;
    /** What the needs take of them and what they leave over. */
    readonly covers: string;
    readonly code: string;
  }[];
  /** Why more of it is bought than is needed; else ''. */
  readonly why: string;
}

export interface OtherWay {
  readonly way: string;
  readonly total: string;
  /** Compared with the order: `€0.95 more`. */
  readonly more: string;
}
