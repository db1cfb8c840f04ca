// Append: a reorder list as what was bought. In: the bytes of reorder.csv, its words. Out: a row for each pot of its offers.
import { priceToMinor, splitWhole, toMajor } from '../../model/money.js';
import { decimalOf } from '../check/read-cell/parse-number.js';
import { headerKey } from '../match-header.js';
import { readCsv } from '../read/read-csv.js';
import type { TypedCells } from './check-log-rows.js';
import { unguardFormula } from './guard-formula.js';

const columnsRead = [
  'entry',
  'shop',
  'offer',
  'paint',
  'sizeMl',
  'pots',
  'cost',
  'currency',
  'date',
] as const;

/** The list's own words for its columns, and for a row that is a pot. */
export interface OrderWords {
  readonly columns: Readonly<Record<(typeof columnsRead)[number], string>>;
  readonly pot: string;
}

export interface ReadOrder {
  /** By headers of the log. */
  readonly rows: readonly TypedCells[];
  /** The day of the plan that wrote it; '' where it says none. */
  readonly planOf: string;
}

type Row = Readonly<Record<(typeof columnsRead)[number], string>>;

/** Undefined for a file that is no reorder list. Pots without a shop were not bought; an offer's cost is shared by volume. */
export function readOrder(bytes: Uint8Array, file: string, words: OrderWords): ReadOrder | undefined {
  const [headers, ...rows] = readCsv(bytes, { file, sheet: 'offers' }).grid?.rows ?? [];
  const keys = headers?.cells.map((cell) => headerKey(String(cell))) ?? [];
  const places = columnsRead.map((key) => [key, keys.indexOf(headerKey(words.columns[key]))] as const);
  if (places.some(([, place]) => place < 0)) return undefined;
  const read = rows.map(({ cells }) =>
    Object.fromEntries(places.map(([key, place]) => [key, String(cells[place] ?? '')])),
  ) as unknown as Row[];
  const pots = read.filter(({ entry }) => entry === words.pot);
  return {
    rows: groupByOffer(pots).flatMap(shareCost),
    planOf: read.find(({ date }) => date !== '')?.date ?? '',
  };
}

/** A cost begins an offer; rows without one are its other pots. */
function groupByOffer(rows: readonly Row[]): Row[][] {
  const offers: Row[][] = [];
  for (const row of rows) {
    const last = offers.at(-1);
    const [first] = last ?? [];
    if (row.cost === '' && first?.shop === row.shop && first.offer === row.offer) last?.push(row);
    else offers.push([row]);
  }
  return offers;
}

function shareCost(rows: readonly Row[]): TypedCells[] {
  const { cost = '', currency = '' } = rows[0] ?? {};
  const amount = decimalOf(cost);
  const minor = typeof amount === 'string' ? priceToMinor(amount, currency) : undefined;
  const shares = minor === undefined ? [] : splitWhole(minor, rows.map(volumeOf));
  return rows.map(({ shop, paint, sizeMl, pots }, at) => {
    const share = shares[at];
    const price = share === undefined ? '' : toMajor(share, currency);
    const cells = {
      paint: unguardFormula(paint),
      what: 'bought',
      'size ml': sizeMl,
      pots,
      price,
      shop: unguardFormula(shop),
    };
    return new Map(Object.entries(cells).filter(([, text]) => text !== ''));
  });
}

function volumeOf({ sizeMl, pots }: Row): number {
  const [size, count] = [decimalOf(sizeMl), decimalOf(pots)];
  return (typeof size === 'string' ? Number(size) : 0) * (typeof count === 'string' ? Number(count) : 0);
}
