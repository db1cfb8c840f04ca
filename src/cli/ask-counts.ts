// Command line: counting paint after paint. In: checked sheets, a way to ask. Out: a row for each answer.
import { takeShelfNow } from '../plan-army.js';
import type { TypedCells } from '../sheets/append/check-log-rows.js';
import { Mistake } from '../sheets/check/read-cell/cell-kind.js';
import { leftKind } from '../sheets/check/read-cell/read-left.js';
import type { Sheets } from './read-or-show.js';
import { showPlain } from './show-plain.js';
import { countOf } from './show-problems.js';
import { inMl } from './tell-shelf.js';

/** Undefined where nobody answers any more. */
export type Ask = (question: string) => Promise<string | undefined>;

const help = 'Write 40%, 7.5 ml, 31.2 g, empty; nothing where it is as it says; q to stop.\n';

/** Every paint of which a pot is begun; nothing typed leaves it as it is, `q` or the end of the answers ends the round. */
export async function askCounts(sheets: Sheets, ask: Ask): Promise<TypedCells[]> {
  const rows: TypedCells[] = [];
  for (const { paint, pots } of await takeShelfNow(sheets)) {
    const there = pots.filter(({ ordered, usableMl }) => !ordered && usableMl > 0);
    if (there.every(({ usableMl, fullUsableMl }) => usableMl === fullUsableMl)) continue;
    const haveMl = there.reduce((sum, { usableMl }) => sum + usableMl, 0);
    const says = `${showPlain(paint)}, ${inMl(haveMl)} in ${countOf(there.length, 'pot')}`;
    const left = await askUntil(ask, `${says}. Left in the one in use? `, isReading);
    if (left === undefined) break;
    if (left === '') continue;
    const cells = new Map([
      ['paint', paint],
      ['what', 'counted'],
      ['left', left],
    ]);
    rows.push(cells);
    if (there.length === 1) continue;
    const isCount = (text: string): boolean => /^[1-9]\d*$/.test(text) && Number(text) <= there.length;
    const count = await askUntil(ask, `How many pots of it are there? (${there.length}) `, isCount);
    cells.set('pots', count || String(there.length));
    if (count === undefined) break;
  }
  return rows;
}

const isReading = (text: string): boolean => !(leftKind.read(text) instanceof Mistake);

async function askUntil(
  ask: Ask,
  question: string,
  isRight: (text: string) => boolean,
): Promise<string | undefined> {
  for (let answer = await ask(question); ; answer = await ask(`${help}${question}`)) {
    const text = answer?.trim();
    if (text === undefined || text.toLowerCase() === 'q') return undefined;
    if (text === '' || isRight(text)) return text;
  }
}
