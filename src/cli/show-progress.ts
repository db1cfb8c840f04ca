// Command line: what a plan is at. In: its stages, how far a search is. Out: one line on the terminal.
import { stderr } from 'node:process';
import { type PlanOptions, type PlanStage, planStages } from '../plan-army.js';
import { numberWords } from '../report/words/word-numbers.js';
import { showLine } from './show-line.js';

type Stage = PlanStage | 'writing';

const says: Readonly<Record<Stage, string>> = {
  draws: 'How widely the needs vary',
  order: 'The cheapest order',
  beside: 'Other ways to buy, more figures and fewer, other colours',
  writing: 'Writing the files',
};
const numbered: readonly Stage[] = [...planStages, 'writing'];

type Settings = Parameters<typeof numberWords>[0];
type Order = Parameters<NonNullable<PlanOptions['onOrder']>>[0];

interface Progress {
  readonly best: number;
  readonly bound: number;
  readonly seconds: number;
}

export interface ShownProgress {
  readonly onStage: (stage: Stage) => void;
  /** How far the search for the order is, and the order before what follows it. Undefined where no one watches. */
  readonly follow: ((settings: Settings) => Following) | undefined;
  /** Takes the line away. */
  readonly end: () => void;
}

interface Following {
  readonly onProgress: (progress: Progress) => void;
  readonly onOrder: (order: Pick<Order, 'totalMinor'>) => void;
}

const shownFromSeconds = 1;

/**
 * Shown only on a terminal. A stage is said before it begins, since nothing can be said while it reckons; of a short run nothing
 * stays. A search is told of when it takes over a second.
 */
export function showProgress(to = stderr): ShownProgress {
  const line = showLine(to);
  if (line === undefined) return { onStage: () => undefined, follow: undefined, end: () => undefined };
  let found = '';
  const follow = (settings: Settings): Following => {
    const words = numberWords(settings);
    return {
      onProgress: ({ best, bound, seconds }) => {
        if (seconds < shownFromSeconds || !Number.isFinite(best)) return;
        const above = Math.max(0, best - Math.max(0, bound));
        line.show(
          `${found}Cheapest order so far ${words.money(Math.round(best))}, at most ${words.money(Math.ceil(above))} above the best possible (${Math.floor(seconds)} s)`,
        );
      },
      onOrder: ({ totalMinor }) => {
        found = `To buy now: ${words.money(totalMinor)}. `;
      },
    };
  };
  return {
    onStage: (stage) =>
      line.show(`${found}${says[stage]} (${numbered.indexOf(stage) + 1} of ${numbered.length})`),
    follow,
    end: () => {
      line.end();
      found = '';
    },
  };
}
