// Compare: two plans in words. In: the comparison, what each is called, its locale and currency. Out: rows of texts.
import type { Comparison, PaintRow, Sum, SumRow } from '../../compare/compare-plans.js';
import type { SheetDifference } from '../../compare/differ-sheets.js';
import { type NumberWords, numberWords } from '../words/word-numbers.js';
import { compareWords } from './words.js';

/** One of the two, as the painter called it. */
export interface Side {
  readonly name: string;
  readonly currency: string;
  readonly settings: { readonly locale: string };
}

export interface CompareRow {
  readonly what: string;
  readonly a: string;
  readonly b: string;
  /** '' where none is made. */
  readonly difference: string;
}

export interface CompareView {
  readonly names: { readonly a: string; readonly b: string };
  /** What is to be known of the sums. */
  readonly notes: readonly string[];
  readonly isSame: boolean;
  readonly sums: readonly CompareRow[];
  /** Those that differ. */
  readonly paints: readonly CompareRow[];
  /** How many paints are alike; '' where none is. */
  readonly alike: string;
  readonly sheets: readonly CompareRow[];
  /** What is to be known of the sheets. */
  readonly sheetNotes: readonly string[];
}

/** Numbers are written as A has them; each sum in its own currency. */
export function viewCompare(
  { sums, paints, sheets, isSame, isOneCurrency, hasMarkets }: Comparison,
  sides: { readonly a: Side; readonly b: Side },
): CompareView {
  const { locale } = sides.a.settings;
  const inA = numberWords({ locale, currency: sides.a.currency });
  const inB = numberWords({ locale, currency: sides.b.currency });
  const differing = paints.filter(({ differenceMl }) => differenceMl !== 0);
  return {
    names: { a: sides.a.name, b: sides.b.name },
    notes: [
      ...(isOneCurrency ? [] : [compareWords.currencies(sides.a.currency, sides.b.currency)]),
      ...(sums.some(({ a, b }) => a.atLeast || b.atLeast) ? [compareWords.atLeast] : []),
    ],
    isSame,
    sums: sums.map((row) => viewSum(row, inA, inB)),
    paints: differing.map((row) => viewPaint(row, inA)),
    alike: compareWords.alike(paints.length - differing.length),
    sheets: sheets.map((row) => ({
      what: compareWords.row(row),
      ...{ a: wordFact(row.a, row, inA), b: wordFact(row.b, row, inA) },
      difference: '',
    })),
    sheetNotes: [
      ...(sheets.length === 0 ? [compareWords.sameSheets(hasMarkets)] : []),
      ...(hasMarkets ? [] : [compareWords.noOffers]),
    ],
  };
}

function viewSum(
  { what, isMoney, a, b, difference }: SumRow,
  inA: NumberWords,
  inB: NumberWords,
): CompareRow {
  const say = ({ value, atLeast }: Sum, words: NumberWords): string => {
    if (value === undefined) return '';
    return isMoney ? words.priced(value, atLeast) : words.count(value);
  };
  const change = isMoney ? inA.money : inA.count;
  return {
    what: compareWords.sums[what],
    ...{ a: say(a, inA), b: say(b, inB) },
    difference: difference === undefined ? '' : signed(difference, change),
  };
}

function viewPaint({ paint, aMl, bMl, differenceMl }: PaintRow, words: NumberWords): CompareRow {
  const say = (ml: number): string => words.bareMl(ml, 1);
  const difference = signed(differenceMl, say);
  return { what: paint, a: say(aMl), b: say(bMl), difference };
}

/** With its sign, a minus as it is printed (U+2212); what is alike is 0 without one. */
function signed(value: number, say: (of: number) => string): string {
  if (value === 0) return say(0);
  return `${value < 0 ? '\u2212' : '+'}${say(Math.abs(value))}`;
}

function wordFact(fact: SheetDifference['a'], { isMoney }: SheetDifference, words: NumberWords): string {
  if (fact === undefined) return compareWords.missing;
  if (fact === '') return compareWords.blank;
  if (typeof fact === 'string') return fact;
  return isMoney ? words.money(fact) : words.plain(fact);
}
