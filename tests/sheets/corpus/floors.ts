// Tests: the scores below which no file of the corpus may fall. In: floors.txt. Out: its scores, and the text of new ones.
import type { Score } from './score-reading.js';

const columns = ['cells', 'right', 'asked', 'left', 'errors'] as const;
const width = 7;

/** A line for each path: its name, numbers, then each cell that is read wrong in silence, parted by two blanks or more. */
export function writeFloors(scores: ReadonlyMap<string, Score>): string {
  const widest = Math.max(...[...scores.keys()].map((path) => path.length)) + 2;
  const line = (path: string, numbers: readonly (string | number)[], wrong: string): string =>
    `${path.padEnd(widest)}${numbers.map((one) => String(one).padStart(width)).join('')}  ${wrong}`.trimEnd();
  const lines = [...scores].map(([path, score]) =>
    line(path, [...columns.map((column) => score[column]), score.wrong.length], score.wrong.join('  ')),
  );
  return [line('path', [...columns, 'wrong'], 'in silence'), ...lines, ''].join('\n');
}

/** No text gives no floors. */
export function readFloors(text: string): ReadonlyMap<string, Score> {
  const lines = text.split('\n').slice(1);
  return new Map(
    lines
      .filter((line) => line !== '')
      .map((line) => {
        const [path = '', ...fields] = line.split(/ {2,}/);
        const [cells = 0, right = 0, asked = 0, left = 0, errors = 0] = fields.map(Number);
        return [path, { cells, right, asked, left, errors, wrong: fields.slice(columns.length + 1) }];
      }),
  );
}

/** In words, each way in which a score is worse than its floor. A file that is understood better may have more errors, but not one that had none. */
export function worseThan(floor: Score, score: Score): string[] {
  const before = new Set(floor.wrong);
  const fresh = score.wrong.filter((place) => !before.has(place));
  return [
    ...(score.right < floor.right ? [`${score.right} cells read right, where ${floor.right} were`] : []),
    ...(floor.errors === 0 && score.errors > 0 ? [`${score.errors} errors to mend, where none were`] : []),
    ...(fresh.length > 0 ? [`read wrong in silence: ${fresh.join(', ')}`] : []),
  ];
}
