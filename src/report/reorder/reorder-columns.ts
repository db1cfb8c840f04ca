// Export: the columns of reorder.csv, some of which reorder.xlsx has too. In: a row. Out: what stands in it, how it looks.
import type { ReorderRow } from './list-reorder-rows.js';
import { reorderWords } from './words.js';

type ColumnKey = keyof typeof reorderWords.columns;

/** `money` is whole minor units; a `code` is text that looks like a number. */
interface ReorderColumn {
  readonly key: ColumnKey;
  readonly kind: 'text' | 'code' | 'number' | 'money';
  /** Of a worksheet, in characters, at the least. */
  readonly width: number;
  /** Undefined or '': blank. */
  readonly value: (row: ReorderRow, currency: string) => string | number | undefined;
}

const { whom, entries, container } = reorderWords;

/** In their order. */
export const reorderColumns: readonly ReorderColumn[] = [
  { key: 'for', kind: 'text', width: 7, value: (row) => whom[row.for] },
  { key: 'entry', kind: 'text', width: 11, value: ({ entry }) => entries[entry] },
  { key: 'shop', kind: 'text', width: 12, value: ({ shop }) => shop },
  { key: 'offer', kind: 'text', width: 16, value: ({ offer }) => offer },
  { key: 'paint', kind: 'text', width: 14, value: ({ paint }) => paint },
  { key: 'sizeMl', kind: 'number', width: 8, value: ({ sizeMl }) => sizeMl },
  { key: 'container', kind: 'text', width: 10, value: (row) => row.container && container(row.container) },
  { key: 'pots', kind: 'number', width: 6, value: ({ pots }) => pots },
  { key: 'offers', kind: 'number', width: 7, value: ({ offers }) => offers },
  { key: 'price', kind: 'money', width: 13, value: ({ priceMinor }) => priceMinor },
  { key: 'cost', kind: 'money', width: 14, value: ({ costMinor }) => costMinor },
  {
    key: 'currency',
    kind: 'text',
    width: 8,
    value: ({ costMinor }, currency) => (costMinor === undefined ? undefined : currency),
  },
  { key: 'code', kind: 'code', width: 15, value: ({ code }) => code },
  { key: 'coversMl', kind: 'number', width: 10, value: ({ coversMl }) => coversMl },
  { key: 'overMl', kind: 'number', width: 13, value: ({ overMl }) => overMl },
  { key: 'missingMl', kind: 'number', width: 11, value: ({ missingMl }) => missingMl },
  { key: 'needed', kind: 'number', width: 8, value: ({ needed }) => needed },
  { key: 'date', kind: 'text', width: 11, value: ({ date }) => date },
  { key: 'note', kind: 'text', width: 10, value: ({ note }) => note },
];
