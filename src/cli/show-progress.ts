// Command line: a long search for the order. In: how far it is. Out: one line on the terminal, written over itself.
import { stderr } from 'node:process';
import { numberWords } from '../report/words/word-numbers.js';
import type { Sheets } from './read-or-show.js';

interface Progress {
  readonly best: number;
  readonly bound: number;
  readonly seconds: number;
}

export interface ShownProgress {
  /** Undefined where no one watches: then the solver need not tell. */
  readonly onProgress: ((progress: Progress) => void) | undefined;
  /** Takes the line away. */
  readonly end: () => void;
}

const shownFromSeconds = 1;

/** Shown only on a terminal and only when a search takes over a second. */
export function showProgress(settings: Sheets['settings'], to = stderr): ShownProgress {
  if (!to.isTTY) return { onProgress: undefined, end: () => undefined };
  const words = numberWords(settings);
  let shown = false;
  const onProgress = ({ best, bound, seconds }: Progress): void => {
    if (seconds < shownFromSeconds || !Number.isFinite(best)) return;
    const above = Math.max(0, best - Math.max(0, bound));
    to.write(
      `\r\u001b[KCheapest order so far ${words.money(Math.round(best))}, at most ${words.money(Math.ceil(above))} above the best possible (${Math.floor(seconds)} s)`,
    );
    shown = true;
  };
  return {
    onProgress,
    end: () => {
      if (shown) to.write('\r\u001b[K');
      shown = false;
    },
  };
}
