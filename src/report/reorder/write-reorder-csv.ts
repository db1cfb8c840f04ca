// Export: the reorder list as CSV. In: a ReorderView. Out: text by RFC 4180 with CRLF line ends and a byte order mark,
// by which spreadsheets know UTF-8; marks as in the painter's locale. No cell can run as a formula.
import Papa from 'papaparse';
import type { CsvMarks } from '../words/word-numbers.js';
import { guardText } from '../workbook/guard-text.js';
import { formatAmount, roundMl } from './format-amount.js';
import type { ReorderGroup, ReorderLine, ReorderShop, ReorderView } from './view-reorder.js';

const columns = [
  'for',
  'entry',
  'shop',
  'offer',
  'paint',
  'size ml',
  'container',
  'pots',
  'offers',
  'price',
  'cost',
  'currency',
  'code',
  'covers ml',
  'left over ml',
  'missing ml',
  'note',
] as const;

/** One record; a column that is left out stays blank. */
type CsvRow = { readonly [column in (typeof columns)[number]]?: string | number };

const byteOrderMark = '\ufeff';

/**
 * The whole file. `entry` says what a record is: `pot`, `goods`, `postage`, `shop total`, `total` or `no offer`.
 * `covers ml` is what the needs take of a row's pots; pots that only fill up an order cover 0.
 * Offers, price and cost stand once an offer, on the first of its pots. Each group ends with its total, and two
 * groups with the total of both. Nothing to buy gives the header and a total of 0.
 */
export function writeReorderCsv(view: ReorderView): string {
  const { decimal, delimiter } = view.csv;
  const amount = (minor: number) => formatAmount(minor, view.minorDigits).replace('.', decimal);
  const rows = view.groups.flatMap((group) => groupRows(group, amount));
  if (view.groups.length > 1) rows.push({ for: 'both', entry: 'total', cost: amount(view.totalMinor) });
  const records = rows
    .map((row) => (row.cost === undefined ? row : { ...row, currency: view.currency }))
    .map((row) => columns.map((column) => cellOf(row[column] ?? '', decimal)));
  const text = Papa.unparse([[...columns], ...records], { delimiter, newline: '\r\n', quotes: mustQuote });
  return `${byteOrderMark}${text}\r\n`;
}

type Amount = (minor: number) => string;

function groupRows(group: ReorderGroup, amount: Amount): CsvRow[] {
  const bought = group.shops.flatMap((shop) => shopRows(shop, amount));
  const total: CsvRow = { entry: 'total', cost: amount(group.totalMinor), note: group.note };
  const missing = group.unmet.map(({ paint, ml }) => ({
    entry: 'no offer',
    paint,
    'missing ml': roundMl(ml),
  }));
  return [...bought, total, ...missing].map((row) => ({ for: group.for, ...row }));
}

function shopRows({ shop, lines, goodsMinor, postageMinor, totalMinor, note }: ReorderShop, amount: Amount) {
  const rows: CsvRow[] = [
    ...lines.flatMap((line) => lineRows(line, amount)),
    { entry: 'goods', cost: amount(goodsMinor) },
    { entry: 'postage', cost: amount(postageMinor) },
    { entry: 'shop total', cost: amount(totalMinor), note },
  ];
  return rows.map((row) => ({ ...row, shop }));
}

function lineRows({ offer, count, priceMinor, costMinor, pots }: ReorderLine, amount: Amount): CsvRow[] {
  const once: CsvRow = { offers: count, price: amount(priceMinor), cost: amount(costMinor) };
  return pots.map((pot, index) => ({
    entry: 'pot',
    offer,
    paint: pot.paint,
    'size ml': pot.sizeMl,
    container: pot.container,
    pots: pot.count,
    code: pot.code,
    'covers ml': roundMl(pot.coversMl),
    'left over ml': roundMl(pot.overMl),
    ...(index === 0 ? once : {}),
  }));
}

const cellOf = (value: string | number, decimal: CsvMarks['decimal']): string =>
  typeof value === 'number' ? String(value).replace('.', decimal) : guardText(value);

/**
 * Beside what RFC 4180 asks for: whatever a spreadsheet of another locale might part, and a code, which is text and keeps
 * its leading zeros.
 */
const mustQuote = (cell: string, column: number): boolean =>
  (/[,;\t]/.test(cell) && !/^-?\d+,\d+$/.test(cell)) || (columns[column] === 'code' && /^\d/.test(cell));
