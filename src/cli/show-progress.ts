// Command line: what a plan is at. In: its stages, how far a search is. Out: one line on the terminal.
import { stderr } from 'node:process';
import { type PlanStage, planStages } from '../plan-army.js';
import { numberWords } from '../report/words/word-numbers.js';
import { showLine } from './show-line.js';

type Stage = PlanStage | 'writing';

const says: Readonly<Record<Stage, string>> = {
  draws: 'How widely the needs vary',
  'ways to buy': 'Ways to buy',
  staircase: 'More figures and fewer',
  colours: 'Other colours',
  writing: 'Writing the files',
};
const numbered: readonly Stage[] = [...planStages, 'writing'];

type Settings = Parameters<typeof numberWords>[0];

interface Progress {
  readonly best: number;
  readonly bound: number;
  readonly seconds: number;
}

export interface ShownProgress {
  readonly onStage: (stage: Stage) => void;
  /** Undefined where no one watches: then the solver need not tell. */
  readonly onProgress: ((settings: Settings) => (progress: Progress) => void) | undefined;
  /** Takes the line away. */
  readonly end: () => void;
}

const shownFromSeconds = 1;

/**
 * Shown only on a terminal. A stage is said before it begins, since nothing can be said while it reckons; of a short run nothing
 * stays. A search is told of when it takes over a second.
 */
export function showProgress(to = stderr): ShownProgress {
  const line = showLine(to);
  if (line === undefined) return { onStage: () => undefined, onProgress: undefined, end: () => undefined };
  const onProgress = (settings: Settings) => {
    const words = numberWords(settings);
    return ({ best, bound, seconds }: Progress): void => {
      if (seconds < shownFromSeconds || !Number.isFinite(best)) return;
      const above = Math.max(0, best - Math.max(0, bound));
      line.show(
        `Cheapest order so far ${words.money(Math.round(best))}, at most ${words.money(Math.ceil(above))} above the best possible (${Math.floor(seconds)} s)`,
      );
    };
  };
  return {
    onStage: (stage) => line.show(`${says[stage]} (${numbered.indexOf(stage) + 1} of ${numbered.length})`),
    onProgress,
    end: line.end,
  };
}
