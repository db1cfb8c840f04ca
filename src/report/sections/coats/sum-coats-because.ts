// Report view: reasons for coats, alike ones together. In: the army's jobs. Out: each reason once, with every place.
import type { CoatReason, Mix } from '../../../model/colour.js';
import type { Job, Line } from '../../../model/work.js';

/** Alike in colours and number of coats. */
export interface ReasonedCoats {
  readonly coats: number;
  readonly because: CoatReason;
  /** Steps with their zones, by scheme; each place once. */
  readonly places: Map<string, Map<string, Pick<Line, 'step' | 'zone'>>>;
}

/** Most coats first, then the greatest difference. A reason that figures share is met once. */
export function sumCoatsBecause(jobs: Iterable<Job>): ReasonedCoats[] {
  const seen = new Set<CoatReason>();
  const sums = new Map<string, ReasonedCoats>();
  for (const { scheme, lines } of jobs) {
    for (const { coatsBecause, coats, step, zone } of lines) {
      if (coatsBecause === undefined || seen.has(coatsBecause)) continue;
      seen.add(coatsBecause);
      const key = keyOf(coats, coatsBecause);
      const sum = sums.get(key) ?? { coats, because: coatsBecause, places: new Map() };
      const ofScheme = sum.places.get(scheme) ?? new Map<string, Pick<Line, 'step' | 'zone'>>();
      ofScheme.set(`${step}\n${zone}`, { step, zone });
      sum.places.set(scheme, ofScheme);
      sums.set(key, sum);
    }
  }
  return [...sums.values()].sort((a, b) => b.coats - a.coats || b.because.dE00 - a.because.dE00);
}

function keyOf(coats: number, { rule, over, under, beneath, coatOpacity, better }: CoatReason): string {
  const mixes = [over, under, ...beneath].map(keyOfMix);
  return [coats, rule, coatOpacity ?? '', better?.undercoat ?? '', ...mixes].join('\n\n');
}

const keyOfMix = (mix: Mix): string => mix.map(({ paint, share }) => `${paint}\n${share}`).join('\n');
