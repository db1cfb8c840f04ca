// Export: plan.json. In: the description of a plan. Out: its text in pieces, so that a million lines never stand in one
// string. Each entry of a list has a line of its own.
import type { PlanDescription } from '../view/describe-plan.js';
import type { SharedEntries } from '../view/describe-work.js';

/** The whole file, ending in a line feed; a piece is an entry, or all lines of one unit. */
export function* writePlanJson(plan: PlanDescription): Generator<string, void, undefined> {
  let before = '{';
  for (const [key, value] of Object.entries(plan)) {
    yield `${before}\n"${key}":`;
    if (key === 'units') yield* writeShared(plan.units);
    else if (key === 'lines') yield* writeShared(plan.lines);
    else if (key === 'time') yield* writeTime(plan.time);
    else if (Array.isArray(value)) yield* writeList(value);
    else yield JSON.stringify(value);
    before = ',';
  }
  yield '\n}\n';
}

/** Sums first, then units, their jobs and the evenings as lists. */
function* writeTime({
  units,
  jobs,
  plan,
  ...sums
}: PlanDescription['time']): Generator<string, void, undefined> {
  yield `${JSON.stringify(sums).slice(0, -1)},\n"units":`;
  yield* writeShared(units);
  yield ',\n"jobs":';
  yield* writeList(jobs);
  yield ',\n"plan":';
  yield* writeList(plan);
  yield '}';
}

function* writeList(entries: readonly unknown[]): Generator<string, void, undefined> {
  let before = '[\n';
  for (const entry of entries) {
    yield before + JSON.stringify(entry);
    before = ',\n';
  }
  yield entries.length === 0 ? '[]' : '\n]';
}

/**
 * Entries that share most of their text: what is shared is written once and joined by what is each one's own. Both are
 * objects with at least one key, so `{"a":1}` and `{"b":2}` make `{"a":1,"b":2}`.
 */
function* writeShared<Own, Shared>(
  entries: readonly SharedEntries<Own, Shared>[],
): Generator<string, void, undefined> {
  const known = new Map<readonly Shared[], readonly string[]>();
  let before = '[\n';
  for (const { own, shared } of entries) {
    const tails = known.get(shared) ?? tailsOf(shared);
    known.set(shared, tails);
    if (shared.length === 0) continue;
    const head = JSON.stringify(own).slice(0, -1);
    yield before + tails.join(head);
    before = ',\n';
  }
  yield before === '[\n' ? '[]' : '\n]';
}

/** Pieces of text between which the own part goes, once for each shared object; nothing stands before the first. */
function tailsOf(shared: readonly unknown[]): readonly string[] {
  const last = shared.length - 1;
  return ['', ...shared.map((one, at) => `,${JSON.stringify(one).slice(1)}${at < last ? ',\n' : ''}`)];
}
