// Command line: an evening's work. In: a unit, some of its steps. Out: a row for each paint that its figure takes there.
import { applySwaps, stepsOfUnit } from '../plan-army.js';
import type { TypedCells } from '../sheets/append/check-log-rows.js';
import { foldName } from '../sheets/check/fold-name.js';
import { completeName } from './complete-name.js';
import { UsageError } from './end-run.js';
import type { Sheets } from './read-or-show.js';

interface Evening {
  readonly unit?: string;
  readonly steps?: string;
  /** Left out: the whole unit. */
  readonly figures?: string;
}

/** Throws a UsageError for a unit or steps that there are not, and for flags that say what the scheme says. */
export function listEvening(sheets: Sheets, evening: Evening, date: string): TypedCells[] {
  const more = ['paint', 'step', 'before', 'after', 'used'].find((flag) => flag in evening);
  if (more !== undefined)
    throw new UsageError(
      `--steps takes all paints of those steps, so --${more} says nothing. Leave one of them out.`,
    );
  const unit = findUnit(sheets, evening.unit);
  const steps = stepsOfUnit(unit, applySwaps(sheets));
  const spans = readSteps(evening.steps ?? '');
  const done = steps.filter(({ step }) => spans.some(({ from, to }) => step >= from && step <= to));
  if (done.length === 0) {
    const all = [...new Set(steps.map(({ step }) => step))].join(', ');
    throw new UsageError(`${unit.unit} takes no paint in step ${evening.steps}. Its steps are ${all}.`);
  }
  const figures = evening.figures ?? String(unit.count);
  const rows = done.flatMap(({ step, paints }) => paints.map(({ paint }) => `${step}\n${paint}`));
  return [...new Set(rows)].map((row) => {
    const [step = '', paint = ''] = row.split('\n');
    return new Map(Object.entries({ date, paint, unit: unit.unit, step, figures }));
  });
}

function findUnit({ army }: Sheets, typed: string | undefined): Sheets['army'][number] {
  if (typed === undefined) throw new UsageError('Of which unit? Give --unit beside --steps.');
  const name = completeName(
    typed,
    army.map(({ unit }) => unit),
  );
  const unit = army.find((one) => foldName(one.unit) === foldName(name));
  if (unit === undefined)
    throw new UsageError(
      `No unit is "${typed}". Write it as the army sheet has it: ${army
        .map((one) => one.unit)
        .slice(0, 5)
        .join(', ')}.`,
    );
  return unit;
}

/** `3`, `2-5`, or several: `2-5,8`. */
const readSteps = (text: string): { readonly from: number; readonly to: number }[] =>
  text.split(',').map((part) => {
    const [, from, to = from] = /^\s*(\d{1,4})(?:\s*[-–]\s*(\d{1,4}))?\s*$/.exec(part) ?? [];
    if (from === undefined || Number(to) < Number(from))
      throw new UsageError(`"${text}" is no step. Write --steps as 3, as 2-5, or as 2-5,8.`);
    return { from: Number(from), to: Number(to) };
  });
