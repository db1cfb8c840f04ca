// Command line: what a run is at. In: its stages, how far a search is. Out: one line on the terminal, written over itself.
import { stderr } from 'node:process';
import { type PlanStage, planStages } from '../plan-army.js';
import { numberWords } from '../report/words/word-numbers.js';

type Stage = 'reading' | PlanStage | 'writing';

const says: Readonly<Record<Stage, string>> = {
  reading: 'Reading the sheets',
  draws: 'How widely the needs vary',
  'ways to buy': 'Ways to buy',
  staircase: 'More figures and fewer',
  colours: 'Other colours',
  writing: 'Writing the files',
};
/** Reading comes before, also where nothing is planned. */
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
  if (!to.isTTY) return { onStage: () => undefined, onProgress: undefined, end: () => undefined };
  let shown = false;
  const show = (text: string): void => {
    to.write(`\r\u001b[K${text}`);
    shown = true;
  };
  const onProgress = (settings: Settings) => {
    const words = numberWords(settings);
    return ({ best, bound, seconds }: Progress): void => {
      if (seconds < shownFromSeconds || !Number.isFinite(best)) return;
      const above = Math.max(0, best - Math.max(0, bound));
      show(
        `Cheapest order so far ${words.money(Math.round(best))}, at most ${words.money(Math.ceil(above))} above the best possible (${Math.floor(seconds)} s)`,
      );
    };
  };
  return {
    onStage: (stage) => show(`${says[stage]}${wordPlace(numbered.indexOf(stage) + 1)}`),
    onProgress,
    end: () => {
      if (shown) to.write('\r\u001b[K');
      shown = false;
    },
  };
}

const wordPlace = (place: number): string => (place === 0 ? '' : ` (${place} of ${numbered.length})`);
