// Estimate: the whole army. In: checked sheets, assumptions. Out: areas, jobs with their lines, needs per paint in ml.
import { assume, logSpread } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Estimate, FigureArea, Job } from '../model/plan.js';
import type { Sheets, Unit } from '../model/sheets.js';
import type { Part } from '../model/zones.js';
import { estimateLine } from './estimate-line.js';
import { findUnpainted } from './find-unpainted.js';
import { measureFigure } from './measure-figure.js';
import { shareLeftovers, type Treatment, treatFigure } from './treat-figure.js';

/**
 * Paint for every unit, step, zone and paint, likely values. Steps already done stay in the lines with
 * `remaining` false and ask for nothing. An empty army gives no jobs and no needs.
 */
export function estimateArmy(sheets: Sheets, assumptions: Assumptions): Estimate {
  const figures = new Map([...sheets.figures].map(([name, one]) => [name, measureFigure(one, assumptions)]));
  const jobOf = planJobs(
    (unit) => writeRecipe(unit, { sheets, figures, assumptions }),
    painterSpreadOf(assumptions),
  );
  const units = sheets.army.map((unit) => ({ unit, job: jobOf(unit) }));
  const unitsPerJob = new Map<Job, number>();
  for (const { job } of units) unitsPerJob.set(job, (unitsPerJob.get(job) ?? 0) + 1);
  return { figures, jobs: [...unitsPerJob.keys()], units, needs: sumNeeds(unitsPerJob, paintsInUse(sheets)) };
}

interface Measured {
  readonly sheets: Sheets;
  readonly figures: ReadonlyMap<string, FigureArea>;
  readonly assumptions: Assumptions;
}

/** What a figure in a scheme asks for, whatever the number of figures. */
interface Recipe {
  readonly area: FigureArea;
  readonly treatments: readonly Treatment[];
  readonly notPainted: readonly Part[];
  readonly lastStep: number;
}

const painterSpreadOf = (assumptions: Assumptions): number => logSpread(assume(assumptions, 'painter'));

/** Gives each unit its job; units that are alike get the same object, so it is worked out once. */
function planJobs(writeRecipe: (unit: Unit) => Recipe, painterSpread: number): (unit: Unit) => Job {
  const recipeOf = remember(writeRecipe, (unit) => `${unit.figure}\n${unit.scheme}`);
  return remember(
    (unit) => sizeJob(recipeOf(unit), unit, painterSpread),
    (unit) => `${unit.figure}\n${unit.scheme}\n${unit.count}\n${unit.batch}\n${unit.done}`,
  );
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
  const { sheets, figures, assumptions } = measured;
  const area = known(figures.get(figure), `figure ${figure}`);
  const steps = known(sheets.schemes.get(scheme), `scheme ${scheme}`).steps;
  const { zones, paints } = sheets;
  return {
    area,
    treatments: shareLeftovers(
      steps.flatMap((step) => treatFigure(step, area, { zones, paints, assumptions })),
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

function sizeJob({ area, treatments, notPainted, lastStep }: Recipe, unit: Unit, painterSpread: number): Job {
  const { figure, scheme, count, batch, done } = unit;
  const lines = treatments.map((treatment) => estimateLine(treatment, painterSpread, unit));
  const unfinished = done < lastStep;
  return { figure, scheme, count, batch, done, areaCm2: area.withBaseCm2, unfinished, lines, notPainted };
}

function sumNeeds(unitsPerJob: ReadonlyMap<Job, number>, paints: Iterable<string>): Estimate['needs'] {
  const needs = new Map([...paints].map((paint) => [paint, { wholeMl: 0, remainingMl: 0 }]));
  for (const [job, units] of unitsPerJob) {
    for (const line of job.lines) {
      const need = needs.get(line.paint);
      if (need === undefined) continue;
      need.wholeMl += line.putOutMl * units;
      need.remainingMl += line.remaining ? line.putOutMl * units : 0;
    }
  }
  return needs;
}

/** Every paint of the schemes in use, in the order of the army and its schemes. */
function paintsInUse({ army, schemes }: Sheets): Set<string> {
  const inUse = new Set(army.map(({ scheme }) => scheme));
  const steps = [...inUse].flatMap((scheme) => schemes.get(scheme)?.steps ?? []);
  return new Set(steps.flatMap(({ paints }) => paints.map(({ paint }) => paint)));
}
