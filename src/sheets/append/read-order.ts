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

/** The list's own words for its columns, and for rows that are a pot, and a shop's postage. */
export interface OrderWords {
  readonly columns: Readonly<Record<(typeof columnsRead)[number], string>>;
  readonly pot: string;
  readonly postage: string;
}

export interface ReadOrder {
  /** By headers of the log. */
  readonly rows: readonly TypedCells[];
  /** The day of the plan that wrote it; '' where it says none. */
  readonly planOf: string;
}

type Row = Readonly<Record<(typeof columnsRead)[number], string>>;

/**
 * Undefined for a file that is no reorder list. Pots without a shop were not bought; an offer's cost is shared by volume, and a
 * shop's postage stands on its first row.
 */
export function readOrder(bytes: Uint8Array, file: string, words: OrderWords): ReadOrder | undefined {
  const [headers, ...rows] = readCsv(bytes, { file, sheet: 'offers' }).grid?.rows ?? [];
  const keys = headers?.cells.map((cell) => headerKey(String(cell))) ?? [];
  const places = columnsRead.map((key) => [key, keys.indexOf(headerKey(words.columns[key]))] as const);
  if (places.some(([, place]) => place < 0)) return undefined;
  const read = rows.map(({ cells }) =>
    Object.fromEntries(places.map(([key, place]) => [key, String(cells[place] ?? '')])),
  ) as unknown as Row[];
  const rowsOf = (of: string): Row[] => read.filter(({ entry }) => entry === of);
  return {
    rows: addPostage(groupByOffer(rowsOf(words.pot)).flatMap(shareCost), rowsOf(words.postage)),
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

/** Below 0 is what the shelf's goods take off the army's postage: only their sum is paid. */
function addPostage(rows: readonly TypedCells[], paid: readonly Row[]): TypedCells[] {
  const told = new Set<string>();
  return rows.map((cells) => {
    const shop = cells.get('shop') ?? '';
    const own = told.has(shop) ? [] : paid.filter((row) => unguardFormula(row.shop) === shop);
    told.add(shop);
    const minor = own.reduce((sum, row) => sum + (minorOf(row) ?? 0), 0);
    return minor <= 0 ? cells : new Map([...cells, ['postage', toMajor(minor, own[0]?.currency ?? '')]]);
  });
}

function minorOf({ cost, currency }: Row): number | undefined {
  const amount = decimalOf(cost);
  return typeof amount === 'string' ? priceToMinor(amount, currency) : undefined;
}

function shareCost(rows: readonly Row[]): TypedCells[] {
  const [first] = rows;
  const minor = first && minorOf(first);
  const currency = first?.currency ?? '';
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
