// Estimate: the whole army. In: checked sheets, assumptions. Out: areas, jobs with their lines, needs per paint in ml.
import { assume, logSpread } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { CoatChoices } from '../model/colour.js';
import { countUnits } from '../model/count-units.js';
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
  const unitsPerJob = countUnits(units);
  return { figures, jobs: [...unitsPerJob.keys()], units, needs: sumNeeds(unitsPerJob, paintsInUse(sheets)) };
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
 * log is like no other.
 */
function planJobs({ writeRecipe, painterSpread, progress }: Planning): (unit: Unit) => Job {
  const recipeOf = remember(writeRecipe, (unit) => `${unit.figure}\n${unit.scheme}`);
  const alike = remember(
    (unit) => sizeJob(recipeOf(unit), unit, { painterSpread }),
    (unit) => `${unit.figure}\n${unit.scheme}\n${unit.count}\n${unit.batch}\n${unit.done}`,
  );
  return (unit) => {
    const logged = progress.get(unit);
    return logged === undefined ? alike(unit) : sizeJob(recipeOf(unit), unit, { painterSpread, logged });
  };
}

function remember<Value>(make: (unit: Unit) => Value, keyOf: (unit: Unit) => string): (unit: Unit) => Value {
  const made = new Map<string, Value>();
  return (unit) => {
    const key = keyOf(unit);
    const value = made.get(key) ?? make(unit);
    made.set(key, value);
    return value;
  };
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

interface Sizing {
  readonly painterSpread: number;
  readonly logged?: DoneByLog;
}

function sizeJob(
  { area, treatments, notPainted, lastStep }: Recipe,
  unit: Unit,
  { painterSpread, logged }: Sizing,
): Job {
  const { figure, scheme, count, batch, done } = unit;
  const lines = treatments.map((treatment) => estimateLine(treatment, painterSpread, unit));
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

function sumNeeds(unitsPerJob: ReadonlyMap<Job, number>, paints: Iterable<string>): Estimate['needs'] {
  const needs = new Map([...paints].map((paint) => [paint, { wholeMl: 0, remainingMl: 0 }]));
  const add = (lines: readonly Line[], units: number, which: 'wholeMl' | 'remainingMl'): void => {
    for (const { paint, putOutMl } of lines) {
      const need = needs.get(paint);
      if (need !== undefined) need[which] += putOutMl * units;
    }
  };
  for (const [job, units] of unitsPerJob) {
    add(job.lines, units, 'wholeMl');
    add(job.remaining, units, 'remainingMl');
  }
  return needs;
}

/** Every paint of the schemes in use, in the order of the army and its schemes. */
function paintsInUse({ army, schemes }: Sheets): Set<string> {
  const inUse = new Set(army.map(({ scheme }) => scheme));
  const steps = [...inUse].flatMap((scheme) => schemes.get(scheme)?.steps ?? []);
  return new Set(steps.flatMap(({ paints }) => paints.map(({ paint }) => paint)));
}
