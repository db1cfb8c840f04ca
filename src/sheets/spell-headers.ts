// Sheets: which column a header means, however its unit is written. In: a sheet, a header. Out: the key of a known column,
// and the currency where the header names one.
import type { SheetName } from '../model/words.js';
import { isCurrencySign } from './check/read-cell/read-price.js';
import type { Column } from './columns/column.js';
import { columns } from './columns/columns.js';
import { headerKey } from './match-header.js';
import type { Called, Headed } from './table.js';
import { spellings, type Unit, units } from './units.js';

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
const joint = /(?:in|en)$/;

interface Spelled {
  /** By the key of each name, its column; the first column of two counts. */
  readonly bare: ReadonlyMap<string, MeantColumn>;
  /** The same of the columns that have a unit, by that unit. */
  readonly measured: ReadonlyMap<Unit, ReadonlyMap<string, MeantColumn>>;
}

const spelled = new Map<SheetName, Spelled>();

/** Put together when the sheet is first asked for. */
function spelledIn(sheet: SheetName): Spelled {
  const known = spelled.get(sheet) ?? spell(columns[sheet]);
  spelled.set(sheet, known);
  return known;
}

function spell(listed: readonly Column[]): Spelled {
  const bare = new Map<string, MeantColumn>();
  const measured = new Map<Unit, Map<string, MeantColumn>>();
  const add = (to: Map<string, MeantColumn>, name: string, meant: MeantColumn): void => {
    if (!to.has(name)) to.set(name, meant);
  };
  for (const column of listed) {
    const key = headerKey(column.header);
    const unit = units.find((one) => column.header.endsWith(` ${one}`)) ?? column.isIn;
    const inUnit = unit === undefined || unit === 'money' ? undefined : (measured.get(unit) ?? new Map());
    if (inUnit !== undefined) measured.set(unit as Unit, inUnit);
    add(bare, key, { key, isOwn: true });
    for (const [at, name] of namesOf(column).entries()) {
      const meant = { key, isOwn: at === 0 };
      const stem = headerKey(name);
      add(bare, stem, meant);
      if (inUnit !== undefined) add(inUnit, stem, meant);
    }
  }
  return { bare, measured };
}

/** The column that a key means, with a unit behind its name or without: `sizeinml` means `sizeml`. */
function meantPlainly(sheet: SheetName, key: string): MeantColumn | undefined {
  const { bare, measured } = spelledIn(sheet);
  const found = bare.get(key);
  if (found !== undefined) return found;
  for (const [unit, stems] of measured)
    for (const way of spellings[unit]) {
      if (!key.endsWith(way)) continue;
      const stem = key.slice(0, -way.length);
      const meant = stems.get(stem) ?? stems.get(stem.replace(joint, ''));
      if (meant !== undefined) return meant;
    }
  return undefined;
}

/** More is a text and no header of ours. */
const longest = 60;

/** A known header without its unit: `size ml` gives `size`. */
export function bareHeader(header: string): string {
  const unit = units.find((one) => header.endsWith(` ${one}`));
  return unit === undefined ? header : header.slice(0, -unit.length - 1);
}

/** The keys of headers that a sheet knows, however spelt; of those that name a currency none. */
export type KnownHeaders = Pick<ReadonlySet<string>, 'has'>;

export const knownHeaderKeys = (sheet: SheetName): KnownHeaders => ({
  has: (key) => meantPlainly(sheet, key) !== undefined,
});

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
    meantPlainly(sheet, headerKey(header)) ?? meantTwice(sheet, header) ?? moneyMeant(sheet, header);
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
  const sign = isMoney(sheet, key)
    ? endsOf(header)
        .map((end) => end.sign)
        .find(isSign)
    : undefined;
  return { key, isOwn: true, ...(sign !== undefined && { currency: currencyOf(header, sign) }) };
}

/** Words that say nothing by themselves: `nom de la couleur`, `Name der Farbe`. English, and the six others. */
const small: ReadonlySet<string> = new Set(
  'of the is der des die de du la le les del el los las di della dei delle van het'.split(' '),
);

/** `Farbe / Colour`, `prix payé`, `nom de la couleur`: words that all mean the same column. */
function meantTwice(sheet: SheetName, header: string): MeantColumn | undefined {
  const parts = header.split('/');
  const words = parts.length > 1 ? parts : wordsOf(header).filter((word) => !small.has(word.toLowerCase()));
  const [first, ...others] = words.map((word) => meantPlainly(sheet, headerKey(word)));
  const isSame = others.length > 0 && others.every((other) => other?.key === first?.key);
  return isSame && first !== undefined ? { ...first, isOwn: false } : undefined;
}

/** The key of the column that a header means, else its own. */
export function columnKey(of: Headed, header: string): string {
  return columnMeant(of, header)?.key ?? headerKey(header);
}

function moneyMeant(sheet: SheetName, header: string): MeantColumn | undefined {
  for (const { sign, rest } of endsOf(header)) {
    const meant = pricesMeant(sheet, rest);
    // Asked last: the first question makes a list of all currencies.
    if (meant !== undefined && isSign(sign)) return { ...meant, currency: currencyOf(header, sign) };
  }
  return undefined;
}

/** A last or a first word, which may be a sign of money, and the words beside it. */
function endsOf(header: string): readonly { readonly sign: string; readonly rest: readonly string[] }[] {
  const words = wordsOf(header);
  return [
    { sign: words.at(-1) ?? '', rest: words.slice(0, -1) },
    { sign: words[0] ?? '', rest: words.slice(1) },
  ];
}

const currencyOf = (header: string, sign: string): HeaderCurrency => ({
  sign,
  isSure: !/^[a-z]+$/.test(sign) || header.includes(`(${sign})`) || header.includes(`[${sign}]`),
});

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
  const meant = meantPlainly(sheet, headerKey(bare.join('')));
  return isMoney(sheet, meant?.key) ? meant : undefined;
}

const isMoney = (sheet: SheetName, key: string | undefined): boolean =>
  columns[sheet].some(({ header, isIn }) => isIn === 'money' && headerKey(header) === key);

const isSign = (word: string): boolean => word.length <= 4 && isCurrencySign(word.toLowerCase());
