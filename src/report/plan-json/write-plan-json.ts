// plan.json: its text. In: the description of a plan. Out: the text in pieces, so that a hundred thousand units never stand in
// one string. Each entry of a list has a line of its own.
import type { PlanDescription } from './describe-plan.js';

/** The whole file, ending in a line feed. */
export function* writePlanJson(plan: PlanDescription): Generator<string, void, undefined> {
  let before = '{';
  for (const [key, value] of Object.entries(plan)) {
    yield `${before}\n"${key}":`;
    if (key === 'time') yield* writeTime(plan.time);
    else if (isList(value)) yield* writeList(value);
    else yield JSON.stringify(value);
    before = ',';
  }
  yield '\n}\n';
}

const isList = (value: unknown): value is Iterable<unknown> =>
  typeof value === 'object' && value !== null && Symbol.iterator in value;

/** Sums first, then the evenings as a list. */
function* writeTime({ plan, ...sums }: PlanDescription['time']): Generator<string, void, undefined> {
  yield `${JSON.stringify(sums).slice(0, -1)},\n"plan":`;
  yield* writeList(plan);
  yield '}';
}

function* writeList(entries: Iterable<unknown>): Generator<string, void, undefined> {
  let before = '[\n';
  for (const entry of entries) {
    yield before + JSON.stringify(entry);
    before = ',\n';
  }
  yield before === ',\n' ? '\n]' : '[]';
}
