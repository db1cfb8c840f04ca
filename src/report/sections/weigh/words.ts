// Weigh: its English. In: doubts, remedies, weighings, ways to say numbers. Out: text.
import type { Learned, Remedy, Weighing } from '../../../model/ranges.js';
import type { Container, Method } from '../../../model/words.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';
import { sharedWords } from '../../words/words.js';

const labels = {
  heading: 'How far to trust this',
  shares:
    'How widely the cash may turn out differently, and why. Shares are of what each causes by itself: they need not add up to the whole.',
  doubts: 'Where the doubt comes from',
  paints: 'Paints that may not last, and why',
  paintsCaption: 'Chance of running out, and what causes most of the doubt about what is missing',
  paint: 'Paint',
  runsShort: 'runs out',
  hangsOn: 'hangs on',
  weighed: 'What you have weighed',
  weighedCaption: 'Used against expected;',
  day: 'Day',
  unit: 'Unit',
  figures: 'figures',
  used: 'used',
  expected: 'expected',
  times: 'used / expected',
};

export const weighWords = (say: NumberWords) => ({
  labels,
  lead: (isInDoubt: boolean): string =>
    isInDoubt
      ? 'Most values are from memory, so ranges are wide; each weighing narrows them. “Usually” holds in eight of ten armies like yours: same figures, other luck.'
      : 'Whatever turns out, today’s pots lack nothing, so no weighing would change what to buy.',
  /** `isFirst`: the one that says what it is a share of. */
  remedy: (remedy: Remedy, pot: Container | undefined, isFirst: boolean): string =>
    `${wordRemedy(remedy, pot)}: that settles about ${say.percent(remedy.share)} of ${isFirst ? 'the doubt about the cash' : 'it'}.`,
  morePaints: (paints: number): string =>
    `${countOf(say, paints, 'more paint is', 'more paints are')} in doubt; plan.json lists each.`,
  learned: learnedWords(say),
});
export type WeighWords = ReturnType<typeof weighWords>;

/** What is done to the next batch. */
const doings: Readonly<Record<Method, string>> = {
  brush: 'batch that you paint with it by brush',
  flood: 'batch that you wash with it',
  drybrush: 'batch that you drybrush with it',
  sponge: 'batch that you sponge with it',
  spread: 'batch of bases that you spread it on',
  airbrush: 'batch that you airbrush with it',
  'spray can': 'batch that you spray',
};

const doingOf = (method: string): string =>
  Object.entries(doings).find(([name]) => name === method)?.[1] ?? 'batch';

/** `your Towpath primer can`; without a pot, `the Moorhen red that you buy`. */
const wordPot = (paint: string, pot: Container | undefined): string =>
  pot === undefined
    ? `the ${nameOf(paint)} that you buy`
    : `your ${nameOf(paint)} ${sharedWords.containers[pot][0]}`;

function wordRemedy({ how, what, paint }: Remedy, pot: Container | undefined): string {
  switch (how) {
    case 'measure':
      return `Find out the surface of a ${nameOf(what)}, and write it into the figures sheet as area cm2`;
    case 'count':
      return `Count ${wordPot(what, pot)} (halfpot count): what was painted since has only been estimated`;
    case 'read':
      return `Weigh ${wordPot(what, pot)} and an empty one like it, and write both into the pots sheet`;
    case 'weigh':
      return `Weigh ${wordPot(paint, pot)} before and after the next ${doingOf(what)}`;
  }
}

const learnedWords = (say: NumberWords) => ({
  /** What the weighings say together. */
  says: ({ weighings, slope, slopeError, widened }: Learned): string => {
    const times = `${say.bareMl(slope, 1)} times what is expected (± ${say.bareMl(Math.max(0.1, slopeError), 1)})`;
    const from = countOf(say, weighings.length, 'weighing');
    const apart =
      widened > 1
        ? ` They contradict one another: each counts as ${say.bareMl(widened, 1)} times less exact than it is written. Something changed between them, or one is wrong.`
        : '';
    return `You use ${times}, by ${from}, all methods together. What they teach is in every number of this report; expected is what would be without them.${apart}`;
  },
  /** Without any. */
  begin:
    'Nothing yet. Weigh a pot before and after a batch and write both into the log sheet, with unit and figures: the film, transfer and leftover of its method get a value of your own, and every range here narrows.',
  more: (shown: number, weighings: number): string =>
    `The latest ${say.count(shown)} of ${say.count(weighings)}; plan.json lists each.`,
  error: 'the error is that of a weighing, and of one batch beside another',
  used: ({ usedMl, errorMl }: Weighing): string => `${say.ml(usedMl)} ± ${say.ml(errorMl)}`,
  usedTimes: (times: number): string => `${say.bareMl(times, 1)} times`,
});
