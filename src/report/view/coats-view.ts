// Report view: what the page shows of coats, undercoats and primers, as part of the contract in report-view.ts. Plain
// text, and colours as `#rrggbb` or '' where no sheet gives one.
import type { TrustView } from './trust-view.js';

export interface CoatsView {
  readonly lead: string;
  readonly trust: TrustView;
  /** Reasons that are shown at once, most coats first; none where colours decided nothing. */
  readonly first: readonly CoatRow[];
  /** Reasons that are folded away. */
  readonly folded: readonly CoatRow[];
  /** Said where some reasons are not listed at all; else ''. */
  readonly more: string;
  /** Paints without a colour or an opacity, and what that means; else ''. */
  readonly unknown: string;
  readonly undercoats: readonly UndercoatRow[];
  /** Said where more undercoats are known than listed; else ''. */
  readonly moreUndercoats: string;
  /** Undefined where there are no two primers to compare. */
  readonly primers: PrimersView | undefined;
}

/** One colour over another. */
export interface Over {
  readonly over: string;
  readonly under: string;
}

export interface CoatRow {
  readonly drawn: Over;
  /** `3 coats: weak yellow over dark brown; over Oat it would be 1`. */
  readonly says: string;
  /** What one coat hides; '' where the rule asks for none. */
  readonly hides: string;
  /** Colour difference beneath, and what is left of it after all coats; '' where the rule asks for none. */
  readonly differs: string;
  readonly left: string;
  /** Schemes with steps and zones. */
  readonly where: string;
}

export interface UndercoatRow {
  readonly drawn: Over;
  readonly says: string;
  readonly where: string;
  readonly coats: string;
  readonly ml: string;
  readonly minutes: string;
}

export interface PrimersView {
  readonly lead: string;
  /** What a primer without a colour means; '' where all have one. */
  readonly colourless: string;
  readonly rows: readonly PrimerRow[];
}

export interface PrimerRow {
  readonly paint: string;
  readonly hex: string;
  readonly isBest: boolean;
  /** `on your shelf`, `in your schemes`, `on offer`, `no colour`. */
  readonly flags: readonly string[];
  readonly coats: string;
  readonly ml: string;
  readonly cost: string;
  readonly minutes: string;
  /** Minutes against the primers in use: `7 h 30 min less`; '' for these. */
  readonly compared: string;
}
