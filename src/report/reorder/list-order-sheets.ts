// Export: the worksheets of reorder.xlsx. In: a ReorderView. Out: sums first, then a sheet for each shop, ready to be sent, and
// what is in no order.
import { listReorderRows } from './list-reorder-rows.js';
import { nameSheets } from './name-sheets.js';
import { reorderColumns } from './reorder-columns.js';
import type { ReorderGroup, ReorderLine, ReorderShop, ReorderView } from './view-reorder.js';
import { reorderWords } from './words.js';

/** Whole minor units, and the formula that gives them where others do. */
interface MoneyCell {
  readonly minor: number;
  readonly formula?: string;
}

type OrderCell = string | number | undefined | MoneyCell;

/** A `code` is text that looks like a number; a width is in characters, at the least. */
export interface OrderColumn {
  readonly header: string;
  readonly kind: 'text' | 'code' | 'number' | 'money';
  readonly width: number;
}

export interface OrderRow {
  readonly cells: readonly OrderCell[];
  /** Sums stand out. */
  readonly isSum?: true;
}

export interface OrderSheet {
  readonly name: string;
  readonly columns: readonly OrderColumn[];
  readonly rows: readonly OrderRow[];
}

const { columns, entries, whom, sheets } = reorderWords;

/** What one group orders from a shop. */
interface Part {
  readonly for: ReorderGroup['for'];
  readonly of: ReorderShop;
}

/** The first row of a sheet under its headers. */
const firstRow = 2;

/** Nothing to buy gives one sheet with a total of 0. */
export function listOrderSheets(view: ReorderView): OrderSheet[] {
  const shops = new Map<string, Part[]>();
  for (const group of view.groups)
    for (const of of group.shops) shops.set(of.shop, [...(shops.get(of.shop) ?? []), { for: group.for, of }]);
  const names = nameSheets([...shops.keys()], Object.values(sheets));
  const named = [...shops.values()].map((parts, at) => ({ parts, name: names[at] ?? '' }));
  const places = new Map(named.flatMap(({ parts, name }) => placeParts(parts, name)));
  return [
    sumSheet(view, places),
    ...named.map(({ parts, name }) => shopSheet(parts, name)),
    ...leftOutSheet(view),
  ];
}

/** Where the costs of each part stand. */
function placeParts(parts: readonly Part[], name: string): [ReorderShop, string][] {
  let row = firstRow;
  return parts.map(({ of }) => {
    const from = row;
    row += of.lines.length;
    return [of, `'${name}'!G${from}:G${row - 1}`];
  });
}

const shopColumns: readonly OrderColumn[] = [
  { header: columns.bought, kind: 'text', width: 8 },
  { header: columns.offer, kind: 'text', width: 16 },
  { header: columns.inIt, kind: 'text', width: 30 },
  { header: columns.code, kind: 'code', width: 15 },
  { header: columns.offers, kind: 'number', width: 8 },
  { header: columns.price, kind: 'money', width: 13 },
  { header: columns.cost, kind: 'money', width: 14 },
];

/** One line an offer; goods and postage of all groups together. */
function shopSheet(parts: readonly Part[], name: string): OrderSheet {
  const lines = parts.flatMap(({ of }) => of.lines);
  const last = firstRow + lines.length - 1;
  const sum = (of: 'goodsMinor' | 'postageMinor' | 'totalMinor'): number =>
    parts.reduce((all, part) => all + part.of[of], 0);
  const sumRow = (entry: string, cost: MoneyCell, isSum?: true): OrderRow => ({
    cells: [undefined, entry, undefined, undefined, undefined, undefined, cost],
    ...(isSum && { isSum }),
  });
  const notes = parts.flatMap(({ of: { note } }) => (note === '' ? [] : [{ cells: [undefined, note] }]));
  return {
    name,
    columns: shopColumns,
    rows: [
      ...lines.map((line, at) => lineRow(line, firstRow + at)),
      sumRow(entries.goods, { minor: sum('goodsMinor'), formula: `SUM(G${firstRow}:G${last})` }),
      sumRow(entries.postage, { minor: sum('postageMinor') }),
      sumRow(entries.total, { minor: sum('totalMinor'), formula: `G${last + 1}+G${last + 2}` }, true),
      ...notes,
    ],
  };
}

const emptyBox = '\u2610';

const lineRow = ({ offer, count, priceMinor, costMinor, pots }: ReorderLine, row: number): OrderRow => ({
  cells: [
    emptyBox,
    offer,
    pots.map(reorderWords.inIt).join('; '),
    [...new Set(pots.map(({ code }) => code))].filter((code) => code !== '').join(', '),
    count,
    { minor: priceMinor },
    { minor: costMinor, formula: `E${row}*F${row}` },
  ],
});

const sumColumns: readonly OrderColumn[] = [
  { header: columns.for, kind: 'text', width: 7 },
  { header: columns.shop, kind: 'text', width: 16 },
  { header: entries.goods, kind: 'money', width: 14 },
  { header: entries.postage, kind: 'money', width: 14 },
  { header: entries.total, kind: 'money', width: 14 },
  { header: columns.date, kind: 'text', width: 11 },
  { header: columns.note, kind: 'text', width: 10 },
];

/** A row for each group and shop, a total for each group, and one for both. */
function sumSheet(view: ReorderView, places: ReadonlyMap<ReorderShop, string>): OrderSheet {
  const rows: OrderRow[] = [];
  const totals = view.groups.map((group) => {
    const first = firstRow + rows.length;
    for (const of of group.shops) rows.push(billRow(group.for, of, { row: firstRow + rows.length, places }));
    const last = firstRow + rows.length - 1;
    const formula = group.shops.length === 0 ? {} : { formula: `SUM(E${first}:E${last})` };
    const total = { minor: group.totalMinor, ...formula };
    rows.push(totalRow(whom[group.for], total, [view.date, group.note]));
    return `E${last + 1}`;
  });
  if (totals.length > 1)
    rows.push(totalRow(whom.both, { minor: view.totalMinor, formula: totals.join('+') }, [view.date]));
  return { name: sheets.sums, columns: sumColumns, rows };
}

const totalRow = (who: string, total: MoneyCell, behind: readonly string[]): OrderRow => ({
  cells: [who, entries.total, undefined, undefined, total, ...behind],
  isSum: true,
});

interface Placed {
  readonly row: number;
  readonly places: ReadonlyMap<ReorderShop, string>;
}

const billRow = (whose: ReorderGroup['for'], of: ReorderShop, { row, places }: Placed): OrderRow => ({
  cells: [
    whom[whose],
    of.shop,
    { minor: of.goodsMinor, formula: `SUM(${places.get(of)})` },
    { minor: of.postageMinor },
    { minor: of.totalMinor, formula: `C${row}+D${row}` },
    undefined,
    of.note,
  ],
});

/** Columns of reorder.csv that pots without a shop and paints that wait leave blank, or that are the same for all. */
const elsewhereKeys = ['shop', 'offer', 'offers', 'currency', 'code', 'coversMl', 'overMl', 'date'];

/** Pots without a shop and paints that wait, with the columns of reorder.csv; no sheet where there are none. */
function leftOutSheet(view: ReorderView): OrderSheet[] {
  const kept = reorderColumns.filter(({ key }) => !elsewhereKeys.includes(key));
  const rows = listReorderRows(view).filter(({ entry }) => entry === 'noShop' || entry === 'waits');
  const sheet = {
    name: sheets.leftOut,
    columns: kept.map(({ key, kind, width }) => ({ header: columns[key], kind, width })),
    rows: rows.map((row) => ({
      cells: kept.map(({ kind, value }) => {
        const cell = value(row, view.currency);
        return kind === 'money' && typeof cell === 'number' ? { minor: cell } : cell;
      }),
    })),
  };
  return rows.length === 0 ? [] : [sheet];
}
