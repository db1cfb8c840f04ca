// Instead: its English. In: results, ways to say numbers. Out: text; '' where there is nothing to say.
import type { Aim } from '../../../model/choices.js';
import type { Instead, Substitute, SwapTaken } from '../../../model/colour.js';
import type { FewestPots, FrontierChoice } from '../../../model/frontier.js';
import type { ColourSums, FrontierLevel } from '../../../model/summary.js';
import { formOf } from '../../words/form-of.js';
import { wordAim } from '../../words/word-aim.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { searchLonger } from '../../words/word-proof.js';
import { sharedWords } from '../../words/words.js';

const labels = {
  unasked: 'Nothing is ever swapped unless you say so.',
  drawn: 'Drawn',
  unknown: 'not known',
  taken: {
    heading: 'Swapped already',
    says: 'Your swaps sheet says so; everything in this report counts them in.',
    caption: 'Swaps that hold',
    paint: 'The scheme names',
    by: 'Used instead',
    difference: 'Difference',
    where: 'Where',
    short: { by: 'used instead', difference: 'difference', where: 'where' },
  },
  near: {
    heading: 'Near what is to be bought',
    says: 'Paints of the same kind that you own and that the army leaves over; other names for the same colour first, then the nearest. A hex tells little: put a dab of each side by side on primed plastic, let both dry, and look by daylight. If one will do, write its row into the swaps sheet and plan again. Blank scheme and step mean everywhere.',
    sheet: 'The swaps sheet begins with',
    caption: 'Instead of',
    paint: 'Paint',
    difference: 'Difference',
    spare: 'Left over',
    row: 'Row for the swaps sheet',
    sameByName: 'same colour by name',
    short: { difference: 'difference' },
  },
  frontier: {
    heading: 'Other colours that save money',
    allowed: 'Difference allowed',
    cash: 'Cash',
    pots: 'Pots',
    swaps: 'Swaps',
    proved: 'Proved',
    /** Between what is used and what it stands in for. */
    standsFor: 'for',
    noSwaps: 'none',
    rows: 'rows for the swaps sheet',
    short: { cash: 'cash', pots: 'pots' },
  },
};

export const insteadWords = (say: NumberWords) => ({
  labels,
  ...leadWords(say),
  ...rowWords(say),
  frontier: {
    ...frontierWords(say),
    ...choiceWords(say),
  },
});

export type InsteadWords = ReturnType<typeof insteadWords>;

const leadWords = (say: NumberWords) => ({
  /** `near`: paints that have something near on the shelf. */
  heading: (toBuy: number, near: number) => {
    if (toBuy === 0) return 'Swapped already';
    if (near === 0) return 'Nothing you own comes near what is to be bought';
    const those =
      near === toBuy && near === 1
        ? 'the paint to buy'
        : sharedWords.some(say.count(near), `the ${countOf(say, toBuy, 'paint')} to buy`);
    return `Paints you own that could replace ${those}`;
  },
  noneNear:
    'Nothing that you own and that the army leaves over comes near what is to be bought, by colour or by another name. ' +
    'Paints without a hex can’t be compared.',
  moreTaken: (swaps: number) => wordMoreOf(countOf(say, swaps, 'more swap')),
  morePaints: (paints: number) => wordMoreOf(countOf(say, paints, 'more paint')),
});

const wordMoreOf = (rest: string): string => `${rest}: plan.json lists each.`;

const rowWords = (say: NumberWords) => ({
  where: ({ scheme, steps }: SwapTaken) =>
    `${nameOf(scheme)}, ${formOf(steps.length, 'step', 'steps')} ${listOf(steps.map(say.count), 8)}`,
  toBuy: ({ toBuyMl, neededMl }: Instead, aim: Aim) =>
    `${say.ml(toBuyMl)} to buy: ${wordAim(aim, say)} takes ${say.ml(neededMl)} in all`,
  spare: ({ spareMl, isEnough }: Substitute) =>
    `${say.ml(spareMl)} left over: ${isEnough ? 'enough for all of it' : 'enough for some steps, not for all'}`,
  fartherOff: (paints: number) => `and ${say.count(paints)} farther off`,
});

const frontierWords = (say: NumberWords) => ({
  lead: (colours: ColourSums) => {
    const { levels } = colours;
    const [first, last] = [levels[0], levels.at(-1)];
    if (first === undefined || last === undefined) return '';
    const own = `Each paint as your schemes name it: ${say.money(first.cashMinor)}`;
    return (
      `${own}. With another paint of the same kind wherever one is within ${say.plain(last.dE00)}: ${wordGain(colours, say)}. ` +
      'Each paint’s whole need is served by one paint, from the shelf or bought, and all is decided together.'
    );
  },
  caption: (isProved: boolean, aim: Aim) =>
    `The least cash for each colour difference allowed, ${wordAim(aim, say)}${isProved ? ', each proved: no choice of paints costs less' : ''}`,
  unmet:
    'Where a choice can’t be met, no paint within the difference is owned or on offer in that amount; its cash is that of the rest.',
  open: `Not all of these are proved. ${searchLonger}`,
  notDrawn: (fromDE00: number) =>
    `Differences of ${say.plain(fromDE00)} and more are left out: they bring in too many paints to search among.`,
});

/** More cash where other paints cover what the named ones leave open. */
function wordGain({ levels, savedMinor }: ColourSums, say: NumberWords): string {
  const still = new Set(levels.at(-1)?.unmet.map(({ paint }) => paint));
  const covered = (levels[0]?.unmet ?? []).filter(({ paint }) => !still.has(paint));
  const covers =
    covered.length === 0
      ? ''
      : `, and it covers ${listOf(covered.map(({ paint }) => nameOf(paint)))}, which no offer does`;
  if (savedMinor === 0) return `as much${covers}`;
  const { more, less } = sharedWords;
  return `${(savedMinor > 0 ? less : more)(say.money(Math.abs(savedMinor)))}${covers}`;
}

const choiceWords = (say: NumberWords) => ({
  /** The differences at which a level holds. */
  allowed: ({ dE00, toDE00 }: FrontierLevel) =>
    dE00 === toDE00 ? say.plain(dE00) : sharedWords.range(say.plain(dE00), say.plain(toDE00)),
  fewest: ({ dE00 }: FewestPots) => `fewest pots, within ${say.plain(dE00)}`,
  aboveFewest: (pots: number) => `at most ${countOf(say, pots, 'pot')} above the fewest`,
  status: ({ status, aboveBestMinor, unmet }: FrontierChoice) => {
    const above = aboveBestMinor > 0 ? `at most ${say.money(aboveBestMinor)} above the best` : '';
    if (status === "can't be met") {
      const lacks = listOf(unmet.map(({ paint, ml }) => `${say.ml(ml)} of ${nameOf(paint)}`));
      return `can’t be met: ${lacks} missing${above === '' ? '' : `; the rest ${above}`}`;
    }
    return status === 'proved'
      ? sharedWords.provedOrNot(true)
      : `${sharedWords.provedOrNot(false)}: ${above}`;
  },
  chained:
    'One paint is replaced and stands in for another here: give scheme or step in each row, or they follow one another.',
});
