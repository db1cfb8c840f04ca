// Report view: what to weigh first, and what the doubt comes from. In: doubts and remedies of the plan. Out: things to do in
// plain words, assumptions by the share of the doubt that they cause, paints that may last or not.

import type { Plan } from '../../../model/plan.js';
import type { Doubt, Remedy } from '../../../model/ranges.js';
import type { Container } from '../../../model/words.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordChance, wordDoubt } from '../../words/word-sure.js';
import { type LearnedView, viewLearned } from './view-learned.js';
import { type WeighWords, weighWords } from './words.js';

export interface WeighView extends Pick<WeighWords, 'labels'> {
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

/** Things to do that are named. */
const mostRemedies = 5;

/** Also where nothing is in doubt: then it says so. */
export function viewWeigh(inputs: ViewInputs): WeighView {
  const { plan, words } = inputs;
  const { ranges } = plan;
  const texts = weighWords(words);
  const risky = plan.summary.doubts.paints;
  return {
    labels: texts.labels,
    lead: texts.lead(ranges.doubts.length > 0),
    remedies: ranges.remedies.slice(0, mostRemedies).map((remedy, place) => ({
      says: texts.remedy(remedy, potOf(remedy, plan), place === 0),
      share: remedy.share,
    })),
    doubts: ranges.doubts.map((doubt) => viewDoubt(doubt, inputs)),
    paints: risky.slice(0, paintRows).map(({ paint, range }) => ({
      paint,
      hex: hexOf(plan, paint),
      chance: wordChance(range.chanceShort, words),
      doubts: range.doubts.slice(0, doubtsEach).map((doubt) => viewDoubt(doubt, inputs)),
    })),
    morePaints: risky.length > paintRows ? texts.morePaints(risky.length - paintRows) : '',
    learned: viewLearned(inputs, texts.learned),
  };
}

function viewDoubt({ name, share }: Doubt, { words, trust }: ViewInputs): DoubtRow {
  return { name: wordDoubt(name), id: trust.idOf(name), causes: words.percent(share), share };
}

/** What the paint that is to be weighed is in; undefined where none of it is owned. */
function potOf({ how, what, paint }: Remedy, { stock }: Plan): Container | undefined {
  const weighed = how === 'weigh' ? paint : what;
  return stock.find((one) => one.paint === weighed)?.pots[0]?.container;
}
