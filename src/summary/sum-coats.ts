// Summary: reasons for coats, alike ones together, and primers side by side. In: the army's jobs, paints, assumptions.
// Out: each reason once, with every place.
import type { Assumption } from '../model/assumption.js';
import type { CoatReason, Mix, PrimerComparison } from '../model/colour.js';
import type { Paint } from '../model/sheets.js';
import type { CoatSums, ReasonedCoats } from '../model/summary.js';
import { solidLayers } from '../model/words.js';
import type { Job, Line, Trust } from '../model/work.js';
import { noDoubts, noteDoubt, trustOf } from './doubts.js';

interface Inputs {
  readonly jobs: Iterable<Job>;
  readonly paints: ReadonlyMap<string, Paint>;
  readonly assumptions: readonly Assumption[];
  readonly primers: PrimerComparison;
}

export function sumCoats({ jobs, paints, assumptions, primers }: Inputs): CoatSums {
  const all = [...jobs];
  const reasons = listReasons(all);
  return {
    reasons,
    trust: trustCoats(reasons, assumptions),
    unknown: listUnknown(all, paints),
    primerExtraMin: comparePrimers(primers),
  };
}

interface GrowingReason extends ReasonedCoats {
  readonly places: Map<string, Map<string, Pick<Line, 'step' | 'zone'>>>;
}

/** A reason that figures share is met once. */
function listReasons(jobs: readonly Job[]): ReasonedCoats[] {
  const seen = new Set<CoatReason>();
  const sums = new Map<string, GrowingReason>();
  for (const { scheme, lines } of jobs) {
    for (const { coatsBecause, coats, step, zone } of lines) {
      if (coatsBecause === undefined || seen.has(coatsBecause)) continue;
      seen.add(coatsBecause);
      const key = keyOf(coats, coatsBecause);
      const sum = sums.get(key) ?? openReason(coats, coatsBecause);
      const ofScheme = sum.places.get(scheme) ?? new Map<string, Pick<Line, 'step' | 'zone'>>();
      ofScheme.set(`${step}\n${zone}`, { step, zone });
      sum.places.set(scheme, ofScheme);
      sums.set(key, sum);
    }
  }
  return [...sums.values()].sort((a, b) => b.coats - a.coats || b.because.dE00 - a.because.dE00);
}

/** Each coat lets a share of the difference beneath it through. */
function openReason(coats: number, because: CoatReason): GrowingReason {
  const { coatOpacity, dE00 } = because;
  const leftDE00 = coatOpacity === undefined ? undefined : dE00 * (1 - coatOpacity) ** coats;
  return { coats, because, leftDE00, places: new Map() };
}

function keyOf(coats: number, { rule, over, under, beneath, coatOpacity, better }: CoatReason): string {
  const mixes = [over, under, ...beneath].map(keyOfMix);
  return [coats, rule, coatOpacity ?? '', better?.undercoat ?? '', ...mixes].join('\n\n');
}

const keyOfMix = (mix: Mix): string => mix.map(({ paint, share }) => `${paint}\n${share}`).join('\n');

/** Opacities weigh by the coats that rest on them. */
function trustCoats(reasons: readonly ReasonedCoats[], assumptions: readonly Assumption[]): Trust {
  const marks = new Map(assumptions.map(({ name, mark }) => [name, mark]));
  const doubts = noDoubts();
  const note = (name: string, weight: number): void => {
    const mark = marks.get(name);
    if (mark !== undefined) noteDoubt(doubts, { mark, biggestDoubt: name }, weight);
  };
  note('just visible difference', 0);
  for (const { because, coats } of reasons) {
    if (because.opacity !== undefined) note(`opacity ${because.opacity}`, coats);
  }
  return trustOf(doubts);
}

function listUnknown(jobs: readonly Job[], paints: ReadonlyMap<string, Paint>): string[] {
  const unknown = new Set<string>();
  for (const { lines } of jobs) {
    if (lines.every((line) => !isSolid(line) || line.coatsBecause !== undefined)) continue;
    for (const line of lines) if (lacksColour(line, paints)) unknown.add(line.paint);
  }
  return [...unknown];
}

/** Its coats are the colours' to decide. */
const isSolid = ({ layer }: Line): boolean => solidLayers.includes(layer);

function lacksColour(line: Line, paints: ReadonlyMap<string, Paint>): boolean {
  const paint = paints.get(line.paint);
  const kind = paint?.kind ?? 'colour';
  if (kind === 'wash' || kind === 'medium' || kind === 'varnish' || kind === 'texture') return false;
  if (line.layer === 'primer') return paint?.hex === undefined;
  if (!isSolid(line) || line.coatsBecause !== undefined) return false;
  return paint?.hex === undefined || paint.opacity === undefined;
}

/** Minutes against those of the one primer that the schemes have now. */
function comparePrimers({ primers }: PrimerComparison): Map<string, number> {
  const used = primers.filter(({ inUse }) => inUse);
  const [only] = used;
  if (only === undefined || used.length > 1) return new Map();
  return new Map(primers.map(({ paint, minutes }) => [paint, minutes - only.minutes]));
}
