// Coats, undercoats, primers: their English. In: results, ways to say numbers. Out: text.
import type { CoatReason, ComparedPrimer, Mix, UndercoatAdvice } from '../../../model/colour.js';
import type { ReasonedCoats } from '../../../model/summary.js';
import type { Opacity } from '../../../model/words.js';
import { formOf } from '../../words/form-of.js';
import { wordMinutes } from '../../words/word-minutes.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, isTraceMl, listOf, type NumberWords } from '../../words/word-numbers.js';

const labels = {
  drawn: 'Drawn',
  paint: 'paint',
  minutes: 'brush time',
  why: 'Why so many coats',
  caption: 'Coats that colours decided, most first; each with the colour beneath that asks for most',
  reason: 'Coats, and why',
  hides: 'one coat hides',
  differs: 'difference beneath',
  left: 'left of it',
  undercoats: {
    heading: 'An undercoat worth its coat',
    meaning:
      'Colours that you own and that save more coats than they take. To lay one, give it a step of its own before, and fill in the coats. Saved on all figures still to be done.',
    caption: 'What an undercoat would save',
    undercoat: 'Undercoat',
    coats: 'coats',
  },
  primers: {
    heading: 'Which primer',
    caption:
      'The whole scheme on the whole army, done or not, with each primer in turn, whether owned, on offer or in a scheme; costed as if just its likely needs were bought, so not quite as above; least brush time first',
    primer: 'Primer',
    best: 'best',
    coats: 'coats in all',
    cost: 'cost of use',
    compared: 'compared',
  },
};

export const coatWords = (say: NumberWords) => ({
  labels,
  /** `visible`: from so much on a colour difference is seen. */
  lead: (visible: number): string =>
    'Where a scheme leaves coats blank, a base coat or midtone gets as many as hide what lies beneath: coats are added ' +
    `until nothing shows through, a colour difference under ${say.plain(visible)}.`,
  because: (coats: number, reason: CoatReason): string =>
    `${countOf(say, coats, 'coat')}: ${wordReason(reason, say)}`,
  places: (places: ReasonedCoats['places']): string => wordPlaces(places, say),
  more: (reasons: number): string =>
    `${countOf(say, reasons, 'more reason')}: plan.json says it with each line.`,
  unknown: (paints: readonly string[]): string =>
    `No hex or no opacity in your sheets: ${listOf(paints.map(nameOf), 12)}. A base coat or midtone of them or over ` +
    'them has the coats that its scheme says, or else the usual number of its layer.',
  undercoats: undercoatWords(say),
  primers: primerWords(say),
});
export type CoatWords = ReturnType<typeof coatWords>;

const opacities: Readonly<Record<Opacity, string>> = { strong: 'strong', fair: 'fair', weak: 'weak' };

/** `Oat`; of a mix `Oat and Foam mixed`. */
function wordMix(mix: Mix): string {
  const names = listOf(mix.map(({ paint }) => nameOf(paint)));
  return mix.length > 1 ? `${names} mixed` : names;
}

const isSame = (one: Mix, other: Mix): boolean =>
  one.length === other.length && one.every(({ paint }, at) => paint === other[at]?.paint);

/** `weak yellow over dark brown; over Oat it would be 1`. */
function wordReason(reason: CoatReason, say: NumberWords): string {
  const { rule, over, under, opacity, better, beneath } = reason;
  if (rule === 'metallic over pale') return `metallic ${wordMix(over)} over pale ${wordMix(under)}`;
  if (isSame(over, under)) return `${wordMix(over)} over itself`;
  const other = beneath.filter((one) => !isSame(one, under)).map(wordMix);
  const also = other.length === 0 ? '' : `, harder to hide than ${listOf(other, 3)} beside it`;
  const saved =
    better === undefined ? '' : `; over ${nameOf(better.undercoat)} it would be ${say.count(better.coats)}`;
  const top = opacity === undefined ? wordMix(over) : `${opacities[opacity]} ${wordMix(over)}`;
  return `${top} over ${wordMix(under)}${also}${saved}`;
}

/** Schemes and places in each that are named. */
const mostPlaces = 4;

function wordPlaces(places: ReasonedCoats['places'], say: NumberWords): string {
  const schemes = [...places].map(([scheme, steps]) => {
    const zones = [...steps.values()].map(({ step, zone }) => `${step} ${nameOf(zone)}`);
    return `${nameOf(scheme)}: ${listOf(zones, mostPlaces)}`;
  });
  const rest = schemes.length - mostPlaces;
  return [...schemes.slice(0, mostPlaces), ...(rest > 0 ? [countOf(say, rest, 'more scheme')] : [])].join(
    '; ',
  );
}

const undercoatWords = (say: NumberWords) => ({
  says: ({ over, undercoat, undercoatCoats, coatsWith, coatsWithout }: UndercoatAdvice): string =>
    `${countOf(say, undercoatCoats, 'coat')} of ${nameOf(undercoat)} first, then ` +
    `${countOf(say, coatsWith, 'coat')} of ${wordMix(over)} instead of ${say.count(coatsWithout)}`,
  where: ({ scheme, step, zone, figures }: UndercoatAdvice): string =>
    `${nameOf(scheme)}: ${step} ${nameOf(zone)}, ${countOf(say, figures, 'figure')}`,
  coats: (saved: number): string => `${say.count(saved)} fewer`,
  /** Leftovers of one more palette may take more than the coats save. */
  ml: (savedMl: number): string =>
    isTraceMl(savedMl) ? 'as much' : `${say.ml(Math.abs(savedMl))} ${savedMl > 0 ? 'less' : 'more'}`,
  minutes: (saved: number): string => `${wordMinutes(saved, say)} less`,
  more: (undercoats: number): string =>
    `${countOf(say, undercoats, 'more undercoat')} would save less; plan.json lists each.`,
});

const primerWords = (say: NumberWords) => ({
  best: (best: BestPrimers): string => wordBest(best, say),
  notListed: (shown: number, others: number): string =>
    ` The first ${say.count(shown)} are listed; ${say.count(others)} more stand in plan.json.`,
  colourless:
    'No colour: without a hex nobody knows how well coats hide it, so those over it are the usual ones of their layers, and its row says little.',
  flags: {
    owned: 'on your shelf',
    notOwned: 'not owned',
    onOffer: 'on offer',
    inUse: 'in your schemes',
    colourless: 'no colour',
  },
});

export interface BestPrimers {
  /** Nothing tells these apart; none where none can be called the best. */
  readonly best: readonly ComparedPrimer[];
  /** The only one that the schemes have; undefined where they have several, or none. */
  readonly only: ComparedPrimer | undefined;
  /** Minutes that the best save against that one. */
  readonly savedMin: number;
}

/** Primers named as the best. */
const mostNamed = 4;

function wordBest({ best, only, savedMin }: BestPrimers, say: NumberWords): string {
  if (best.length === 0)
    return 'Fewer than two of these primers have a colour, so none can be called the best.';
  const named = best.map((one) => `${nameOf(one.paint)}${one === only ? ', which your schemes have,' : ''}`);
  const takes = formOf(
    best.length,
    'takes the least brush time',
    'take the least brush time, and tie in all else',
  );
  const least = `${listOf(named, mostNamed)} ${takes}`;
  if (only === undefined || best.includes(only)) return `${least}.`;
  return `${least}: ${wordMinutes(savedMin, say)} less than ${nameOf(only.paint)}, which your schemes have.${wordToBuy(best)}`;
}

function wordToBuy(best: readonly ComparedPrimer[]): string {
  if (best.some(({ owned }) => owned)) return '';
  return formOf(
    best.length,
    ' You do not own it, and the order above does not hold it.',
    ' You own none of them, and the order above holds none.',
  );
}
