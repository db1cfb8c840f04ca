// Report view: chances and ranges in plain words. In: shares of draws, low and high. Out: text, rounded once.
import type { Chance, Range } from '../../model/ranges.js';
import { nameOf } from './word-name.js';
import type { NumberWords } from './word-numbers.js';
import { sharedWords } from './words.js';

/** Ends of a range as shares of what is drawn. */
export interface LowHigh {
  readonly low: number;
  readonly high: number;
}

/** What low and high mean, said once in every place where ranges begin. */
export const lowHighMeaning = sharedWords.lowHigh;

/** `€0.49 to €0.91`; one text where both round to the same. */
export function wordRange({ low, high }: Range, word: (value: number) => string): string {
  const [from, to] = [word(low), word(high)];
  return from === to ? from : sharedWords.range(from, to);
}

/** Minor units, unrounded. */
export const wordCostRange = (range: Range, words: NumberWords): string =>
  wordRange(range, (minor) => words.money(Math.round(minor)));

/** Draws never show that something can't be: none of them is `under 1%`, all of them `over 99%`. */
export const wordChance = ({ chance }: Chance, words: NumberWords): string => words.percent(inside(chance));

const inside = (chance: number): number => Math.min(1 - 1e-9, Math.max(1e-9, chance));

/** `26 of 100`, `under 1 of 100`, `over 99 of 100`. */
export function wordTimes({ chance }: Chance, words: NumberWords): string {
  const { some, under, over } = sharedWords;
  const ofAll = (times: string): string => some(times, words.count(100));
  if (chance < 0.005) return under(ofAll(words.count(1)));
  return chance >= 0.995 ? over(ofAll(words.count(99))) : ofAll(words.count(Math.round(chance * 100)));
}

/** `81.8% ± 0.4%`: the share of draws and its standard error. Of all draws `over 99.9%`, of none `under 0.1%`. */
export function wordReached({ chance, error }: Chance, words: NumberWords): string {
  if (chance >= 0.9995) return sharedWords.over(words.finePercent(0.999));
  if (chance < 0.0005) return sharedWords.under(words.finePercent(0.001));
  return `${words.finePercent(chance)} ± ${words.finePercent(Math.max(0.001, error))}`;
}

/** As the ranges call a pot's reading. */
const reading = 'reading of ';

/** The paint whose pots' reading a doubt is about; undefined for an assumption. */
export const readPaint = (doubt: string): string | undefined =>
  doubt.startsWith(reading) ? doubt.slice(reading.length) : undefined;

/** A doubt by its name, a painter's own word in it fenced off. */
export function wordDoubt(doubt: string): string {
  const paint = readPaint(doubt);
  return paint === undefined
    ? doubt.replace(/(?<= \().*(?=\)$)/s, nameOf)
    : sharedWords.reading(nameOf(paint));
}
