// Command line: one line on the terminal, written over itself. In: texts. Out: the last of them is seen, until it is taken away.
import { stderr } from 'node:process';

export interface ShownLine {
  readonly show: (text: string) => void;
  /** Takes the line away. */
  readonly end: () => void;
}

/** Undefined where no one watches. */
export function showLine(to = stderr): ShownLine | undefined {
  if (!to.isTTY) return undefined;
  let shown = false;
  return {
    show: (text) => {
      to.write(`\r\u001b[K${text}`);
      shown = true;
    },
    end: () => {
      if (shown) to.write('\r\u001b[K');
      shown = false;
    },
  };
}
