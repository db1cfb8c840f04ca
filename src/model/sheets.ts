// Model: the painter's sheets after checking. Names that refer to each other are spelled alike
// (the first spelling met), so every stage may compare them with ===.
import type { Figure } from './figure.js';
import type { Container, Layer, LogEvent, Method, Opacity, PaintKind, SheetName } from './words.js';
import type { PartShare } from './zones.js';

/** A date as `YYYY-MM-DD`. */
export type IsoDate = string;

/** What the `left` column says; rough where it says `about` or `almost`. Volumes are of the labelled volume. */
export type Reading =
  | { readonly how: 'by eye' /** 0 to 1 */; readonly share: number; readonly isRough?: true }
  | { readonly how: 'in ml'; readonly ml: number; readonly isRough?: true }
  | { readonly how: 'weighed'; readonly grams: number; readonly emptyGrams: number };

export interface Pot {
  /** Row of the pots sheet, as a spreadsheet shows it; of a pot that the log brought, row of the log. */
  readonly row: number;
  readonly fromLog?: true;
  readonly paint: string;
  readonly sizeMl: number;
  readonly left: Reading;
  /** False where the `left` cell was blank and the pot counts as full. */
  readonly leftGiven: boolean;
  readonly container: Container;
  /** Price paid for the whole pot, whole minor units; absent: unpriced. */
  readonly priceMinor?: number;
  readonly openedOn?: IsoDate;
  /** The day of the reading in `left`; log rows after it lower the pot. Absent: every log row does. */
  readonly countedOn?: IsoDate;
  /** On its way: counts as full. */
  readonly ordered: boolean;
  /** Where the log says that it was bought. */
  readonly shop?: string;
  readonly code?: string;
  readonly place?: string;
}

/** One for every paint that any sheet names. */
export interface Paint {
  readonly paint: string;
  readonly kind: PaintKind;
  /** `#rrggbb`, lower case. */
  readonly hex?: string;
  readonly opacity?: Opacity;
  readonly densityGPerMl?: number;
  /** Parts of water to one of paint. */
  readonly thin?: number;
  /** The shelf level; absent: a share of its largest pot. */
  readonly keepMl?: number;
  readonly alsoCalled: readonly string[];
}

export interface OfferPot {
  readonly paint: string;
  readonly sizeMl: number;
  /** How many such pots stand in the offer; whole, 1 or more. */
  readonly count: number;
  readonly container: Container;
  readonly code?: string;
}

/** One pot, or a set of several, at one price. */
export interface Offer {
  readonly row: number;
  readonly shop: string;
  readonly offer: string;
  readonly priceMinor: number;
  /** How many of the offer can be had; absent: no limit. */
  readonly available?: number;
  readonly pots: readonly OfferPot[];
}

/** One for every shop that the offers name, with or without a row in the shops sheet. */
export interface Shop {
  readonly shop: string;
  readonly postageMinor: number;
  /** Goods of this sum or more travel free; absent: postage is always paid. */
  readonly freeFromMinor?: number;
  readonly leastOrderMinor?: number;
}

/** A zone of the painter's own. With `figure` it counts for that figure only, and wins over one without. */
export interface OwnZone {
  readonly zone: string;
  readonly figure?: string;
  readonly parts: readonly PartShare[];
}

/** One treatment of a scheme. A mix holds several paints; else one of share 1. Absent: the layer's default. */
export interface Step {
  readonly row: number;
  readonly step: number;
  readonly zone: string;
  readonly layer: Layer;
  readonly method?: Method;
  readonly coats?: number;
  /** 0 to 1 */
  readonly areaShare?: number;
  readonly thin?: number;
  /** Shares are above 0 and sum to 1. */
  readonly paints: readonly { readonly paint: string; readonly share: number }[];
}

/** Steps in ascending order of their number, rows in sheet order within a number. */
export interface Scheme {
  readonly scheme: string;
  readonly steps: readonly Step[];
}

export interface Unit {
  readonly row: number;
  readonly unit: string;
  readonly figure: string;
  readonly scheme: string;
  readonly count: number;
  readonly batch: number;
  /** The last step number finished on every figure; 0: none. */
  readonly done: number;
  /** Lower comes first; blank cells take the row's place in the sheet. */
  readonly priority: number;
  /** Of several armies that are planned together, the one it belongs to. */
  readonly army?: string;
}

export interface Extra {
  readonly item: string;
  readonly priceMinor: number;
  /** Figures that one item serves. */
  readonly serves: number;
}

export interface LogRow {
  readonly row: number;
  /** The file that holds the row: a workbook's own log, or the log.csv beside it. */
  readonly file?: string;
  /** What the scheme has in place of the paint since a swap: the row's work counts as that paint's. */
  readonly nowPaint?: string;
  /** Absent: used. */
  readonly what?: Exclude<LogEvent, 'used'>;
  /** When a command wrote it; alike in all rows of one writing. */
  readonly written?: string;
  readonly date: IsoDate;
  readonly paint: string;
  /** Of a use, like all down to `usedMl`; the rest is of pots. */
  readonly unit?: string;
  readonly step?: number;
  readonly figures?: number;
  readonly beforeG?: number;
  readonly afterG?: number;
  readonly usedMl?: number;
  /** What a count found in the pot in use. */
  readonly left?: Reading;
  readonly sizeMl?: number;
  /** Of what was bought. */
  readonly container?: Container;
  /** Absent: one, where pots are bought or thrown away; else all that there are. */
  readonly pots?: number;
  /** Of all pots of the row, whole minor units. */
  readonly priceMinor?: number;
  /** Of the order that the row belongs to, whole minor units. */
  readonly postageMinor?: number;
  readonly shop?: string;
}

/** The painter's decision to use another paint. Scheme and step, where given, narrow it down. */
export interface Swap {
  readonly row: number;
  readonly scheme?: string;
  readonly step?: number;
  /** Absent: every paint of the step. */
  readonly paint?: string;
  readonly instead: string;
}

/** A painter's own value for an assumption, by its registry name. */
export interface Override {
  readonly name: string;
  readonly likely: number;
  /** Absent: the registry's low and high move in proportion. */
  readonly low?: number;
  readonly high?: number;
}

export interface Settings {
  /** ISO 4217 code, upper case. */
  readonly currency: string;
  readonly date?: IsoDate;
  /** BCP 47 tag. */
  readonly locale: string;
  /** 50 to 99: buy so much that nothing runs out in so many cases. Absent: as `buy` says. */
  readonly surePercent?: number;
  /** `likely`: what is likely needed; `goes`: what is worth it. Absent: goes. */
  readonly buy?: 'likely' | 'goes';
  /** What another order is worth beyond its postage, whole minor units. Absent: one postage more. */
  readonly againMinor?: number;
  readonly restock: 'army' | 'shelf';
  /** Where pots, offers and log of several armies stand, from the sheets; absent: in them. */
  readonly shelf?: string;
  readonly overrides: readonly Override[];
}

/** A blank that took its default: how many rows of which column, and what the blank means. */
export interface DefaultUsed {
  readonly sheet: string;
  readonly column: string;
  readonly rows: number;
  readonly meaning: string;
}

/** A column of the painter's, and what it was taken for. */
export interface ColumnRead {
  /** As written. */
  readonly header: string;
  /** The column that it is taken for; undefined: one of the painter's own, left alone. */
  readonly column?: string;
  /** A column that it may be meant for, which was asked about. */
  readonly maybe?: string;
  /** True where it bears the column's own name. */
  readonly isOwn: boolean;
}

/** How one sheet was read. */
export interface SheetRead {
  readonly sheet: SheetName;
  readonly file: string;
  /** As a spreadsheet counts. */
  readonly headerRow: number;
  /** In their order; those without a header are left out. */
  readonly columns: readonly ColumnRead[];
}

export interface Sheets {
  readonly pots: readonly Pot[];
  readonly paints: ReadonlyMap<string, Paint>;
  readonly offers: readonly Offer[];
  readonly shops: ReadonlyMap<string, Shop>;
  readonly figures: ReadonlyMap<string, Figure>;
  readonly zones: readonly OwnZone[];
  readonly schemes: ReadonlyMap<string, Scheme>;
  readonly army: readonly Unit[];
  readonly extras: readonly Extra[];
  readonly log: readonly LogRow[];
  readonly swaps: readonly Swap[];
  readonly settings: Settings;
  readonly defaults: readonly DefaultUsed[];
  readonly read: readonly SheetRead[];
}
