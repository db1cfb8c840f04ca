// Report view: why so many coats, in a painter's words. In: a reason and its coats. Out: sentences.
import type { CoatReason, Mix } from '../../../model/colour.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';

/** `Oat`; of a mix `Oat and Foam mixed`. */
export function wordMix(mix: Mix): string {
  const names = listOf(mix.map(({ paint }) => nameOf(paint)));
  return mix.length > 1 ? `${names} mixed` : names;
}

const isSame = (one: Mix, other: Mix): boolean =>
  one.length === other.length && one.every(({ paint }, at) => paint === other[at]?.paint);

/** `3 coats: weak yellow over dark brown; over Oat it would be 1`. */
export function wordCoats(coats: number, because: CoatReason, words: NumberWords): string {
  const { rule, over, under, opacity, better, beneath } = because;
  const count = countOf(words, coats, 'coat');
  if (rule === 'metallic over pale') return `${count}: metallic ${wordMix(over)} over pale ${wordMix(under)}`;
  if (isSame(over, under)) return `${count}: ${wordMix(over)} over itself`;
  const other = beneath.filter((one) => !isSame(one, under)).map(wordMix);
  const also = other.length === 0 ? '' : `, harder to hide than ${listOf(other, 3)} beside it`;
  const saved =
    better === undefined ? '' : `; over ${nameOf(better.undercoat)} it would be ${words.count(better.coats)}`;
  const top = opacity === undefined ? wordMix(over) : `${opacity} ${wordMix(over)}`;
  return `${count}: ${top} over ${wordMix(under)}${also}${saved}`;
}
