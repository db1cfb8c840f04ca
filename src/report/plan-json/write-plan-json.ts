// Export: plan.json. In: the description of a plan. Out: its text in pieces, so that a million lines never stand in one
// string. Each entry of a list has a line of its own.
import type { PlanDescription } from './describe-plan.js';
import type { EntryList } from './describe-work.js';

/** The text `own` between all texts of `around`, which many pieces share: held by reference, so that it can be made once. */
export interface FilledPiece {
  readonly own: string;
  readonly around: readonly string[];
}

export type Piece = string | FilledPiece;

/** The whole file, ending in a line feed, as texts: an entry, or all lines of one unit. */
export function* writePlanJson(plan: PlanDescription): Generator<string, void, undefined> {
  for (const piece of piecesOfPlanJson(plan)) {
    yield typeof piece === 'string' ? piece : piece.around.join(piece.own);
  }
}

/** The same, without joining what units share. */
export function* piecesOfPlanJson(plan: PlanDescription): Generator<Piece, void, undefined> {
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
}: PlanDescription['time']): Generator<Piece, void, undefined> {
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
function* writeShared<Own, Shared>(entries: EntryList<Own, Shared>): Generator<Piece, void, undefined> {
  const textAround = openTexts<Shared>();
  let isFirst = true;
  for (const { own, shared } of entries) {
    if (shared.length === 0) continue;
    const around = textAround(shared);
    const head = JSON.stringify(own).slice(0, -1);
    yield isFirst ? `[${around.join(head).slice(1)}` : { own: head, around };
    isFirst = false;
  }
  yield isFirst ? '[]' : '\n]';
}

/** Texts around the own part, each made once; an entry stands after a comma and a line feed. */
function openTexts<Shared>(): (shared: readonly Shared[]) => readonly string[] {
  const lists = new Map<readonly Shared[], readonly string[]>();
  const texts = new Map<Shared, string>();
  const textOf = (one: Shared): string => {
    const text = texts.get(one) ?? `,${JSON.stringify(one).slice(1)}`;
    texts.set(one, text);
    return text;
  };
  return (shared) => {
    const last = shared.length - 1;
    const around = lists.get(shared) ?? [
      ',\n',
      ...shared.map((one, at) => (at < last ? `${textOf(one)},\n` : textOf(one))),
    ];
    lists.set(shared, around);
    return around;
  };
}
