// Colour: an undercoat worth its coat. In: chosen coats, the work left, colours. Out: undercoats that save more than they cost.
import type { CoatChoice, UndercoatAdvice } from '../model/colour.js';
import type { Sheets, Step } from '../model/sheets.js';
import type { Job, Line } from '../model/work.js';
import { mixCoat } from './cover-beneath.js';
import {
  type Bench,
  type Coats,
  countCoats,
  type Shelved,
  shelfOf,
  type Weighing,
  weighUndercoat,
} from './weigh-undercoat.js';

/**
 * For each step whose coats were chosen and that is still to be done: the owned colour beneath which saves most coats,
 * where it saves more coats than it takes itself, and minutes as well. Figures alike are told together; most minutes
 * saved first. Nothing owned with hex and opacity, or nothing to save, gives an empty list.
 */
export function suggestUndercoats(sheets: Sheets, weighing: Weighing): UndercoatAdvice[] {
  const bench: Bench = { ...weighing, paints: sheets.paints, shelf: shelfOf(sheets, weighing) };
  const advice = new Map<string, UndercoatAdvice>();
  const stacks = new Map<CoatChoice, Stacked[]>();
  for (const [job, units] of weighing.jobs) {
    for (const step of sheets.schemes.get(job.scheme)?.steps ?? []) {
      const choice = bench.choices.get(step)?.get(job.figure);
      if (choice === undefined) continue;
      const stacked = stacks.get(choice) ?? stackUndercoats(step, choice, bench);
      stacks.set(choice, stacked);
      const found = adviseStep({ step, choice, stacked, job, units }, bench);
      if (found !== undefined) advice.set(keyOf(found), addUp(found, advice.get(keyOf(found))));
    }
  }
  return [...advice.values()].sort((a, b) => b.minutesSaved - a.minutesSaved || a.step - b.step);
}

/** An undercoat with the coats that it takes and leaves. */
type Stacked = Coats & { readonly shelved: Shelved };

/** The undercoats with the fewest coats in all; none where none has fewer than without. */
function stackUndercoats(step: Step, choice: CoatChoice, bench: Bench): Stacked[] {
  const { paints: mix, layer, thin } = step;
  const top = choice.coats > 2 ? mixCoat({ mix, layer, thin }, bench) : undefined;
  if (top === undefined) return [];
  const stacked = bench.shelf.flatMap((shelved) => {
    const coats = countCoats({ top, choice, shelved }, bench);
    return coats === undefined ? [] : [{ ...coats, shelved }];
  });
  const total = ({ undercoatCoats, coatsWith }: Coats): number => undercoatCoats + coatsWith;
  const fewest = stacked.reduce((least, one) => Math.min(least, total(one)), choice.coats);
  return stacked.filter((one) => total(one) === fewest);
}

function keyOf({ scheme, step, zone, layer, undercoat, ...one }: UndercoatAdvice): string {
  const names = [...one.over, ...one.under].map(({ paint, share }) => `${paint} ${share}`);
  const coats = [one.undercoatCoats, one.coatsWithout, one.coatsWith];
  return [scheme, step, zone, layer, undercoat, ...coats, ...names].join('\n');
}

interface OneStep {
  readonly step: Step;
  readonly choice: CoatChoice;
  readonly stacked: readonly Stacked[];
  readonly job: Job;
  /** How many units share the job. */
  readonly units: number;
}

function adviseStep(
  { step, choice, stacked, job, units }: OneStep,
  bench: Bench,
): UndercoatAdvice | undefined {
  const lines = stacked.length === 0 ? [] : job.remaining.filter((line) => isOfStep(line, step));
  const [first] = lines;
  if (first === undefined) return undefined;
  const weighed = stacked.flatMap(({ shelved, ...coats }) => {
    const saved = weighUndercoat({ lines, first, shelved, ...coats }, bench);
    return saved.minutesSaved > 0 ? [{ undercoat: shelved.paint, ...coats, ...saved }] : [];
  });
  const best = weighed.sort(betterFirst)[0];
  if (best === undefined) return undefined;
  const { mlSaved, minutesSaved, ...coats } = best;
  return {
    scheme: job.scheme,
    step: step.step,
    zone: step.zone,
    layer: step.layer,
    over: step.paints,
    under: choice.because.under,
    ...coats,
    coatsWithout: choice.coats,
    coatsSaved: choice.coats - coats.coatsWith - coats.undercoatCoats,
    figures: first.figures * units,
    mlSaved: mlSaved * units,
    minutesSaved: minutesSaved * units,
  };
}

const isOfStep = (line: Line, step: Step): boolean =>
  line.step === step.step &&
  line.zone === step.zone &&
  line.layer === step.layer &&
  step.paints.some(({ paint }) => paint === line.paint);

type Candidate = Coats & Pick<UndercoatAdvice, 'undercoat' | 'mlSaved' | 'minutesSaved'>;

function betterFirst(a: Candidate, b: Candidate): number {
  return b.minutesSaved - a.minutesSaved || b.mlSaved - a.mlSaved || (a.undercoat < b.undercoat ? -1 : 1);
}

function addUp(one: UndercoatAdvice, to: UndercoatAdvice | undefined): UndercoatAdvice {
  if (to === undefined) return one;
  return {
    ...to,
    figures: to.figures + one.figures,
    mlSaved: to.mlSaved + one.mlSaved,
    minutesSaved: to.minutesSaved + one.minutesSaved,
  };
}
