// Sheets: which column a header means, however its unit is written. In: a sheet, a header. Out: the key of a known column,
// and the currency where the header names one.
import { type SheetName, sheetNames } from '../model/words.js';
import { isCurrencySign } from './check/read-cell/read-price.js';
import type { Column } from './columns/column.js';
import { columns } from './columns/columns.js';
import { headerKey } from './match-header.js';
import { spellings, units } from './units.js';

/** A known column, as a header means it. */
export interface MeantColumn {
  /** The key of its own header. */
  readonly key: string;
  readonly currency?: HeaderCurrency;
}

export interface HeaderCurrency {
  /** Sign or code as written: `€`, `eur`. */
  readonly sign: string;
  /** False for small letters without brackets, which may be a word: `price all` hardly means the lek. */
  readonly isSure: boolean;
}

function spellingsOf(column: Column): [string, string][] {
  const key = headerKey(column.header);
  const stem = headerKey(bareHeader(column.header));
  const unit = units.find((one) => column.header.endsWith(` ${one}`)) ?? column.isIn;
  const ways = unit === undefined || unit === 'money' ? [] : spellings[unit];
  return [key, ...ways.flatMap((way) => [stem + way, `${stem}in${way}`])].map((way) => [way, key]);
}

/** By sheet and the key of each spelling, the key of its column: `sizeinml` gives `sizeml`. */
const spelled: ReadonlyMap<SheetName, ReadonlyMap<string, string>> = new Map(
  sheetNames.map((sheet) => [sheet, new Map(columns[sheet].flatMap(spellingsOf))]),
);

/** More is a text and no header of ours. */
const longest = 60;

/** A known header without its unit: `size ml` gives `size`. */
export function bareHeader(header: string): string {
  const unit = units.find((one) => header.endsWith(` ${one}`));
  return unit === undefined ? header : header.slice(0, -unit.length - 1);
}

/** Every spelling of the headers that a sheet knows, as keys; those that name a currency are not among them. */
export function knownHeaderKeys(sheet: SheetName): ReadonlySet<string> {
  return new Set(spelled.get(sheet)?.keys());
}

/**
 * The column that a header means; undefined for one of the painter's own. `Size (ml)` means `size ml`, and `Price (€)` the
 * price in euros, which is for the caller to compare with the settings.
 */
export function columnMeant(sheet: SheetName, header: string): MeantColumn | undefined {
  if (header.length > longest) return undefined;
  const key = spelled.get(sheet)?.get(headerKey(header));
  return key === undefined ? moneyMeant(sheet, header) : { key };
}

/** The key of the column that a header means, else its own. */
export function columnKey(sheet: SheetName, header: string): string {
  return columnMeant(sheet, header)?.key ?? headerKey(header);
}

function moneyMeant(sheet: SheetName, header: string): MeantColumn | undefined {
  const words = wordsOf(header);
  const [first = ''] = words;
  const last = words.at(-1) ?? '';
  for (const [sign, rest] of [
    [last, words.slice(0, -1)],
    [first, words.slice(1)],
  ] as const) {
    const key = moneyKey(sheet, rest);
    if (key === undefined || !isSign(sign)) continue;
    const isSure = !/^[a-z]+$/.test(sign) || header.includes(`(${sign})`) || header.includes(`[${sign}]`);
    return { key, currency: { sign, isSure } };
  }
  return undefined;
}

/** `Price€`, `Price (€)` and `price_€` are two words each. */
function wordsOf(header: string): string[] {
  return header
    .normalize('NFKC')
    .replace(/\p{Sc}/gu, ' $& ')
    .split(/[\s_\-,()[\]]+/)
    .filter((word) => word !== '');
}

function moneyKey(sheet: SheetName, words: readonly string[]): string | undefined {
  const bare = words.at(-1)?.toLowerCase() === 'in' ? words.slice(0, -1) : words;
  const key = headerKey(bare.join(''));
  return columns[sheet].some(({ header, isIn }) => isIn === 'money' && headerKey(header) === key)
    ? key
    : undefined;
}

const isSign = (word: string): boolean => word.length <= 4 && isCurrencySign(word.toLowerCase());
