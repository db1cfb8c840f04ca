// Estimate: the whole army. In: checked sheets, assumptions. Out: areas, jobs with their lines, needs per paint in ml.
import { assume, logSpread } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { CoatChoices } from '../model/colour.js';
import type { Sheets, Unit } from '../model/sheets.js';
import type { Estimate, FigureArea, Job, Line } from '../model/work.js';
import type { Part } from '../model/zones.js';
import { estimateLine } from './estimate-line.js';
import { findUnpainted } from './find-unpainted.js';
import { measureFigure } from './measure-figure.js';
import { type DoneByLog, doneKey, trackProgress } from './track-progress.js';
import { shareLeftovers, type Treatment, treatFigure } from './treat-figure.js';

/**
 * Paint for every unit, step, zone and paint, likely values. What the army sheet's `done` or the log call finished asks
 * for nothing more; blank coats of covering layers are as colours ask. An empty army gives no jobs and no needs.
 */
export function estimateArmy(
  sheets: Sheets,
  assumptions: Assumptions,
  { figures = measureFigures(sheets, assumptions), coats = new Map() }: Prepared = {},
): Estimate {
  const jobOf = planJobs({
    writeRecipe: (unit) => writeRecipe(unit, { sheets, figures, assumptions, coats }),
    painterSpread: painterSpreadOf(assumptions),
    progress: trackProgress(sheets.log, sheets.army),
  });
  const units = sheets.army.map((unit) => ({ unit, job: jobOf(unit) }));
  const jobs = countJobs(units);
  return { figures, jobs, units, needs: sumNeeds(jobs, sheets.schemes) };
}

function countJobs(units: Estimate['units']): Map<Job, number> {
  const counts = new Map<Job, number>();
  for (const { job } of units) counts.set(job, (counts.get(job) ?? 0) + 1);
  return counts;
}

/** What is worked out before the estimate: areas of the figures, coats that colours ask for. */
export interface Prepared {
  readonly figures?: ReadonlyMap<string, FigureArea>;
  readonly coats?: CoatChoices;
}

/** The areas of every figure of the sheets. */
export function measureFigures({ figures }: Sheets, assumptions: Assumptions): Map<string, FigureArea> {
  return new Map([...figures].map(([name, one]) => [name, measureFigure(one, assumptions)]));
}

/** What is still needed of each paint, ml. */
export function remainingNeeds({ needs }: Estimate): Map<string, number> {
  return new Map([...needs].map(([paint, { remainingMl }]) => [paint, remainingMl]));
}

interface Measured {
  readonly sheets: Sheets;
  readonly figures: ReadonlyMap<string, FigureArea>;
  readonly assumptions: Assumptions;
  readonly coats: CoatChoices;
}

/** What a figure in a scheme asks for, whatever the number of figures. */
interface Recipe {
  readonly area: FigureArea;
  readonly treatments: readonly Treatment[];
  readonly notPainted: readonly Part[];
  readonly lastStep: number;
}

const painterSpreadOf = (assumptions: Assumptions): number => logSpread(assume(assumptions, 'painter'));

interface Planning {
  readonly writeRecipe: (unit: Unit) => Recipe;
  readonly painterSpread: number;
  readonly progress: ReadonlyMap<Unit, DoneByLog>;
}

/**
 * Gives each unit its job; units that are alike get the same object, so it is worked out once. One with entries in the
 * log is like no other, but for its lines: those of the whole scheme are one list for all of a recipe, count and batch.
 */
function planJobs({ writeRecipe, painterSpread, progress }: Planning): (unit: Unit) => Job {
  const recipeOf = remember(['figure', 'scheme'], writeRecipe);
  const sizedOf = remember(['figure', 'scheme', 'count', 'batch'], (unit) =>
    sizeRecipe(recipeOf(unit), unit, painterSpread),
  );
  const alike = remember(['figure', 'scheme', 'count', 'batch', 'done'], (unit) =>
    sizeJob(sizedOf(unit), unit),
  );
  return (unit) => {
    const logged = progress.get(unit);
    return logged === undefined ? alike(unit) : sizeJob(sizedOf(unit), unit, logged);
  };
}

/** What was made for units, by one key after the other. */
interface Made<Value> {
  value?: Value;
  readonly next: Map<unknown, Made<Value>>;
}

/** Makes a value once for all units alike in the keys. No key is joined to another: for 100,000 units that is slow. */
function remember<Value>(keys: readonly (keyof Unit)[], make: (unit: Unit) => Value): (unit: Unit) => Value {
  const first: Made<Value> = { next: new Map() };
  return (unit) => {
    let made = first;
    for (const key of keys) made = made.next.get(unit[key]) ?? branch(made, unit[key]);
    made.value ??= make(unit);
    return made.value;
  };
}

function branch<Value>(made: Made<Value>, key: unknown): Made<Value> {
  const next: Made<Value> = { next: new Map() };
  made.next.set(key, next);
  return next;
}

function writeRecipe({ figure, scheme }: Unit, measured: Measured): Recipe {
  const { sheets, figures, assumptions, coats } = measured;
  const area = known(figures.get(figure), `figure ${figure}`);
  const steps = known(sheets.schemes.get(scheme), `scheme ${scheme}`).steps;
  const { zones, paints } = sheets;
  return {
    area,
    treatments: shareLeftovers(
      steps.flatMap((step) => treatFigure(step, area, { zones, paints, assumptions, coats })),
    ),
    notPainted: findUnpainted(area, steps, zones),
    lastStep: Math.max(0, ...steps.map(({ step }) => step)),
  };
}

/** The sheets stage has checked every name; one that is missing here is a mistake in the code. */
function known<Value>(value: Value | undefined, what: string): Value {
  if (value === undefined) throw new Error(`the checked sheets lack ${what}`);
  return value;
}

/** A recipe on so many figures in batches, whatever of it is done. */
interface SizedRecipe extends Recipe {
  readonly painterSpread: number;
  /** In the order of the treatments. */
  readonly lines: readonly Line[];
}

function sizeRecipe(recipe: Recipe, { count, batch }: Unit, painterSpread: number): SizedRecipe {
  const lines = recipe.treatments.map((treatment) =>
    estimateLine(treatment, painterSpread, { count, batch }),
  );
  return { ...recipe, painterSpread, lines };
}

function sizeJob(sized: SizedRecipe, unit: Unit, logged?: DoneByLog): Job {
  const { area, treatments, notPainted, lastStep, painterSpread, lines } = sized;
  const { figure, scheme, count, batch, done } = unit;
  const remaining: Line[] = [];
  treatments.forEach((treatment, index) => {
    const { step } = treatment.step;
    const left = step > done ? count - (logged?.get(doneKey(step, treatment.paint)) ?? 0) : 0;
    const whole = lines[index];
    if (left <= 0 || whole === undefined) return;
    remaining.push(left === count ? whole : estimateLine(treatment, painterSpread, { count: left, batch }));
  });
  const unfinished = done < lastStep && (logged === undefined || remaining.length > 0);
  const areaCm2 = area.withBaseCm2;
  return { figure, scheme, count, batch, done, areaCm2, unfinished, lines, remaining, notPainted };
}

function sumNeeds(jobs: Estimate['jobs'], schemes: Sheets['schemes']): Estimate['needs'] {
  const needs = new Map(
    [...paintsInUse(jobs.keys(), schemes)].map((paint) => [paint, { wholeMl: 0, remainingMl: 0 }]),
  );
  const add = (lines: readonly Line[], units: number, which: 'wholeMl' | 'remainingMl'): void => {
    for (const { paint, putOutMl } of lines) {
      const need = needs.get(paint);
      if (need !== undefined) need[which] += putOutMl * units;
    }
  };
  for (const [job, units] of jobs) {
    add(job.lines, units, 'wholeMl');
    add(job.remaining, units, 'remainingMl');
  }
  return needs;
}

/** Every paint of the schemes in use, in the order of the army and its schemes. */
function paintsInUse(jobs: Iterable<Job>, schemes: Sheets['schemes']): Set<string> {
  const inUse = new Set<string>();
  for (const { scheme } of jobs) inUse.add(scheme);
  const steps = [...inUse].flatMap((scheme) => schemes.get(scheme)?.steps ?? []);
  return new Set(steps.flatMap(({ paints }) => paints.map(({ paint }) => paint)));
}
