// Report view: what to weigh first, and what the doubt comes from. In: doubts and remedies of the plan. Out: things to do in
// plain words, assumptions by the share of the doubt that they cause, paints that may last or not.

import type { Plan } from '../../../model/plan.js';
import type { Doubt, Remedy } from '../../../model/ranges.js';
import type { Container, Method } from '../../../model/words.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { nameOf } from '../../words/word-name.js';
import { countOf } from '../../words/word-numbers.js';
import { wordChance, wordDoubt } from '../../words/word-sure.js';
import { type LearnedView, viewLearned } from './view-learned.js';

export interface WeighView {
  readonly lead: string;
  /** What to do, the greatest help first. */
  readonly remedies: readonly {
    readonly says: string;
    /** Of the doubt about the cash, what it settles. */
    readonly share: number;
  }[];
  /** What causes the doubt about the cash. */
  readonly doubts: readonly DoubtRow[];
  /** What each paint hangs on that may last or not. */
  readonly paints: readonly {
    readonly paint: string;
    readonly hex: string;
    readonly chance: string;
    readonly doubts: readonly DoubtRow[];
  }[];
  /** Said where more paints are in doubt than are listed; else ''. */
  readonly morePaints: string;
  readonly learned: LearnedView;
}

interface DoubtRow {
  readonly name: string;
  /** Id of its row in the registry; '' for a pot's reading. */
  readonly id: string;
  readonly causes: string;
  readonly share: number;
}

/** Paints in doubt that get a row of their own, and doubts named for each. */
const [paintRows, doubtsEach] = [30, 3];

/** Also where nothing is in doubt: then it says so. */
export function viewWeigh(inputs: ViewInputs): WeighView {
  const { plan, words } = inputs;
  const { ranges } = plan;
  const risky = plan.summary.doubts.paints;
  return {
    lead: wordLead(plan),
    remedies: ranges.remedies.map((remedy, place) => ({
      says: `${wordRemedy(remedy, plan)}: that settles about ${words.percent(remedy.share)} of ${place === 0 ? 'the doubt about the cash' : 'it'}.`,
      share: remedy.share,
    })),
    doubts: ranges.doubts.map((doubt) => viewDoubt(doubt, inputs)),
    paints: risky.slice(0, paintRows).map(({ paint, range }) => ({
      paint,
      hex: hexOf(plan, paint),
      chance: wordChance(range.chanceShort, words),
      doubts: range.doubts.slice(0, doubtsEach).map((doubt) => viewDoubt(doubt, inputs)),
    })),
    morePaints:
      risky.length > paintRows
        ? `${countOf(words, risky.length - paintRows, 'more paint is', 'more paints are')} in doubt; plan.json lists each.`
        : '',
    learned: viewLearned(inputs),
  };
}

const wordLead = ({ ranges }: Plan): string =>
  ranges.doubts.length === 0
    ? 'Whatever turns out, today’s pots lack nothing, so no weighing would change what to buy.'
    : 'The doubt about the cash is how widely the worth of what today’s pots lack spreads from one army like this to another.';

function viewDoubt({ name, share }: Doubt, { words, trust }: ViewInputs): DoubtRow {
  return { name: wordDoubt(name), id: trust.idOf(name), causes: words.percent(share), share };
}

/** What is done to the next batch. */
const doings: Record<Method, string> = {
  brush: 'batch that you paint with it by brush',
  flood: 'batch that you wash with it',
  drybrush: 'batch that you drybrush with it',
  sponge: 'batch that you sponge with it',
  spread: 'batch of bases that you spread it on',
  airbrush: 'batch that you airbrush with it',
  'spray can': 'batch that you spray',
};

const vessels: Record<Container, string> = { dropper: 'dropper', pot: 'pot', tube: 'tube', can: 'can' };

/** `your Towpath primer can`; without a pot, `the Moorhen red that you buy`. */
function wordPot(paint: string, { stock }: Plan): string {
  const pot = stock.find((one) => one.paint === paint)?.pots[0];
  return pot === undefined
    ? `the ${nameOf(paint)} that you buy`
    : `your ${nameOf(paint)} ${vessels[pot.container]}`;
}

function wordRemedy({ how, what, paint }: Remedy, plan: Plan): string {
  if (how === 'measure')
    return `Find out the surface of a ${nameOf(what)}, and write it into the figures sheet as area cm2`;
  if (how === 'read')
    return `Weigh ${wordPot(what, plan)} and an empty one like it, and write both into the pots sheet`;
  const doing = Object.entries(doings).find(([method]) => method === what)?.[1] ?? 'batch';
  return `Weigh ${wordPot(paint, plan)} before and after the next ${doing}`;
}
