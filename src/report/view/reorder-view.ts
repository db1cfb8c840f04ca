// Report view: the reorder list as the report, reorder.csv and reorder.xlsx all show it.

export interface ReorderPot {
  readonly paint: string;
  readonly sizeMl: number;
  readonly container: string;
  /** Pots of this row in all. */
  readonly count: number;
  /** Usable ml that the needs take of all of them, and what is left over. */
  readonly coversMl: number;
  readonly overMl: number;
  /** GTIN as text; '' where none is known. */
  readonly code: string;
}

export interface ReorderLine {
  readonly offer: string;
  /** Offers bought. */
  readonly count: number;
  readonly priceMinor: number;
  readonly costMinor: number;
  readonly pots: readonly ReorderPot[];
}

export interface ReorderShop {
  readonly shop: string;
  readonly lines: readonly ReorderLine[];
  readonly goodsMinor: number;
  readonly postageMinor: number;
  readonly totalMinor: number;
  /** A remark such as a least order not reached; '' for none. */
  readonly note: string;
}

/** `army`: what the plan needs. `shelf`: what brings low pots back to their level. */
export interface ReorderGroup {
  readonly for: 'army' | 'shelf';
  readonly shops: readonly ReorderShop[];
  readonly totalMinor: number;
  /** Said where the order is not proved to be the cheapest; else ''. */
  readonly note: string;
  /** Paints no offer covers, with the usable ml that are missing. */
  readonly unmet: readonly { readonly paint: string; readonly ml: number }[];
}

/** How CSV is written where the painter sits. */
export interface CsvMarks {
  readonly decimal: '.' | ',';
  readonly delimiter: ',' | ';';
}

export interface ReorderView {
  readonly date: string;
  readonly currency: string;
  /** ISO 4217 digits of the currency. */
  readonly minorDigits: number;
  readonly csv: CsvMarks;
  readonly groups: readonly ReorderGroup[];
  readonly totalMinor: number;
}
