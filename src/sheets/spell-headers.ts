// Sheets: which column a header means, however its unit is written. In: a sheet, a header. Out: the key of a known column,
// and the currency where the header names one.
import { type SheetName, sheetNames } from '../model/words.js';
import { isCurrencySign } from './check/read-cell/read-price.js';
import type { Column } from './columns/column.js';
import { columns } from './columns/columns.js';
import { headerKey } from './match-header.js';
import type { Called, Headed } from './table.js';
import { spellings, units } from './units.js';

/** A known column, as a header means it. */
export interface MeantColumn {
  /** The key of its own header. */
  readonly key: string;
  /** Called by its own name, with a unit or without; of two columns it comes before one that is called otherwise. */
  readonly isOwn: boolean;
  readonly currency?: HeaderCurrency;
}

export interface HeaderCurrency {
  /** Sign or code as written: `€`, `eur`. */
  readonly sign: string;
  /** False for small letters without brackets, which may be a word: `price all` hardly means the lek. */
  readonly isSure: boolean;
}

/** What a column is called, its own header without its unit first. */
export const namesOf = ({ header, called }: Column): readonly string[] => [
  bareHeader(header),
  ...(called?.split(', ') ?? []),
];

/** Words between a name and its unit: `Inhalt in ml`, `contenido en ml`. */
const joints = ['', 'in', 'en'] as const;

function spellingsOf(column: Column): [string, MeantColumn][] {
  const key = headerKey(column.header);
  const unit = units.find((one) => column.header.endsWith(` ${one}`)) ?? column.isIn;
  const ways = unit === undefined || unit === 'money' ? [] : spellings[unit];
  return namesOf(column).flatMap((name, at) => {
    const stem = headerKey(name);
    const measured = joints.flatMap((joint) => ways.map((way) => stem + joint + way));
    return [stem, ...measured, ...(at === 0 ? [key] : [])].map((way): [string, MeantColumn] => [
      way,
      { key, isOwn: at === 0 },
    ]);
  });
}

/** By sheet and the key of each spelling, its column: `sizeinml` means `sizeml`. The first column of two counts. */
const spelled: ReadonlyMap<SheetName, ReadonlyMap<string, MeantColumn>> = new Map(
  sheetNames.map((sheet) => [sheet, new Map(columns[sheet].flatMap(spellingsOf).toReversed())]),
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
 * price in euros, which is for the caller to compare with the settings. What the columns sheet says comes first, and then no
 * other header means that column.
 */
export function columnMeant({ sheet, called }: Headed, header: string): MeantColumn | undefined {
  const settled = called?.get(headerKey(header));
  if (settled !== undefined) return settled === '' ? undefined : settle(sheet, header, settled);
  if (header.length > longest) return undefined;
  const meant =
    spelled.get(sheet)?.get(headerKey(header)) ?? meantTwice(sheet, header) ?? moneyMeant(sheet, header);
  return meant !== undefined && isTaken(called, meant.key) ? undefined : meant;
}

/** Whether the columns sheet says what a header means. */
export const isSettled = ({ called }: Headed, header: string): boolean =>
  called?.has(headerKey(header)) === true;

/** Whether nothing says what a header means. */
export const isOpen = (of: Headed, header: string): boolean =>
  columnMeant(of, header) === undefined && !isSettled(of, header);

const isTaken = (called: Called | undefined, key: string): boolean =>
  called !== undefined && [...called.values()].includes(key);

/** A price is in the currency that its header names, whoever says that it is a price. */
function settle(sheet: SheetName, header: string, key: string): MeantColumn {
  const sign = isMoney(sheet, key) ? signsOf(header)[0] : undefined;
  return { key, isOwn: true, ...(sign && { currency: { sign: sign.sign, isSure: sign.isSure } }) };
}

/** `Farbe / Colour`: in two languages, which mean the same. */
function meantTwice(sheet: SheetName, header: string): MeantColumn | undefined {
  const [first, ...others] = header.split('/').map((part) => spelled.get(sheet)?.get(headerKey(part)));
  return others.length > 0 && others.every((other) => other?.key === first?.key) ? first : undefined;
}

/** The key of the column that a header means, else its own. */
export function columnKey(of: Headed, header: string): string {
  return columnMeant(of, header)?.key ?? headerKey(header);
}

function moneyMeant(sheet: SheetName, header: string): MeantColumn | undefined {
  for (const { rest, ...currency } of signsOf(header)) {
    const meant = pricesMeant(sheet, rest);
    if (meant !== undefined) return { ...meant, currency };
  }
  return undefined;
}

/** A last or a first word that is a sign of money, and the words beside it. */
function signsOf(header: string): readonly (HeaderCurrency & { readonly rest: readonly string[] })[] {
  const words = wordsOf(header);
  const [first = ''] = words;
  const ends = [
    { sign: words.at(-1) ?? '', rest: words.slice(0, -1) },
    { sign: first, rest: words.slice(1) },
  ];
  return ends
    .filter(({ sign }) => isSign(sign))
    .map(({ sign, rest }) => ({
      ...{ sign, rest },
      isSure: !/^[a-z]+$/.test(sign) || header.includes(`(${sign})`) || header.includes(`[${sign}]`),
    }));
}

/** `Price€`, `Price (€)` and `price_€` are two words each. */
function wordsOf(header: string): string[] {
  return header
    .normalize('NFKC')
    .replace(/\p{Sc}/gu, ' $& ')
    .split(/[\s_\-,()[\]]+/)
    .filter((word) => word !== '');
}

function pricesMeant(sheet: SheetName, words: readonly string[]): MeantColumn | undefined {
  const bare = words.at(-1)?.toLowerCase() === 'in' ? words.slice(0, -1) : words;
  const meant = spelled.get(sheet)?.get(headerKey(bare.join('')));
  return isMoney(sheet, meant?.key) ? meant : undefined;
}

const isMoney = (sheet: SheetName, key: string | undefined): boolean =>
  columns[sheet].some(({ header, isIn }) => isIn === 'money' && headerKey(header) === key);

const isSign = (word: string): boolean => word.length <= 4 && isCurrencySign(word.toLowerCase());
