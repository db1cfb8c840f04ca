// Report view: what every section is worded from, and what the main results are doubted for.
// In: a plan. Out: its sums, its words, its trust tags, made once.
import type { Plan } from '../../model/plan.js';
import {
  type Doubts,
  doubtCost,
  isNeeded,
  mergeDoubts,
  noDoubts,
  sumWork,
  type WorkSums,
} from './sum-work.js';
import { type TrustView, type TrustWords, trustWords } from './view-trust.js';
import { type NumberWords, numberWords } from './word-numbers.js';

export interface ViewInputs {
  readonly plan: Plan;
  readonly sums: WorkSums;
  readonly words: NumberWords;
  /** Language of the page. */
  readonly lang: string;
  readonly trust: TrustWords;
  /** Of whether the pots last, and of what to buy. */
  readonly supplyTrust: TrustView;
  /** Of the cost of use, weighed by money. */
  readonly costTrust: TrustView;
}

/** Throws where locale or currency is none: the sheets have checked both. */
export function viewInputs(plan: Plan): ViewInputs {
  const sums = sumWork(plan);
  const trust = trustWords(plan.assumptions);
  const needed = plan.stock.filter(({ paint }) => isNeeded(sums, paint));
  return {
    plan,
    sums,
    trust,
    words: numberWords(plan.settings),
    lang: pageLanguage(plan.settings.locale),
    supplyTrust: trust.lead(
      trust.of(doubtSupply(plan, sums), ...needed.map(({ mark }) => mark)),
      plan.ranges.doubts[0],
    ),
    costTrust: trust.of(doubtCosts(plan)),
  };
}

/** The words are English whatever the numbers look like; a wrong tag would make a screen reader mispronounce them. */
const pageLanguage = (locale: string): string => (/^en(-|$)/i.test(locale) ? locale : 'en');

/** The paints on which the verdict hangs: those that are missing; else those that are tight; else all. */
function doubtSupply({ stock }: Plan, { paints, doubts }: WorkSums): Doubts {
  const missing = stock.filter(({ toBuyMl }) => toBuyMl > 0);
  const deciding = missing.length > 0 ? missing : stock.filter(({ state }) => state === 'tight');
  const theirs = deciding.flatMap(({ paint }) => paints.get(paint)?.doubts ?? []);
  return theirs.length > 0 ? mergeDoubts(theirs) : doubts;
}

/** Doubts of all units' costs; a job that several units share is walked once. */
function doubtCosts({ costs, estimate }: Plan): Doubts {
  const doubts = noDoubts();
  const seen = new Map(costs.units.map(({ job, use }) => [job, use]));
  for (const [job, use] of seen) doubtCost({ job, use }, doubts, estimate.jobs.get(job) ?? 0);
  return doubts;
}
