// Colour: which primer. In: sheets, and what the army takes with each primer. Out: all of them side by side, best first.
import type { ComparedPrimer, PrimerCandidate, PrimerComparison, PrimerTrial } from '../model/colour.js';
import type { Sheets, Step } from '../model/sheets.js';
import type { Container, Method } from '../model/words.js';
import { listOwned } from './list-owned.js';

/**
 * The army with each primer in turn, best first: least minutes, then fewest coats, least cost of use, least paint, name;
 * those without a colour last. Primers that tie in all but the name are all the best. `tryPrimer` plans changed sheets. Without
 * a primer step in use nothing is compared.
 */
export async function comparePrimers(
  sheets: Sheets,
  tryPrimer: (changed: Sheets) => Promise<PrimerTrial>,
): Promise<PrimerComparison> {
  const candidates = stepsInUse(sheets).some(isPrimerStep) ? listPrimers(sheets) : [];
  const primers: ComparedPrimer[] = [];
  for (const one of candidates) {
    primers.push({ ...one, ...(await tryPrimer(withPrimer(sheets, one.paint))) });
  }
  primers.sort(betterFirst);
  return { primers, best: findBest(primers.filter(({ hasColour }) => hasColour)) };
}

function findBest(coloured: readonly ComparedPrimer[]): string[] {
  const [first, second] = coloured;
  if (first === undefined || second === undefined) return [];
  return coloured.filter((one) => isAsGood(one, first)).map(({ paint }) => paint);
}

/** Sums of the same numbers, added up in another order, differ by this share at the most. */
const sameShare = 1e-9;

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= sameShare * Math.abs(b);

/** Alike in all that primers are compared by, and in whether all of it has a price. */
const isAsGood = (a: ComparedPrimer, b: ComparedPrimer): boolean =>
  isSame(a.minutes, b.minutes) &&
  isSame(a.coats, b.coats) &&
  isSame(a.ml, b.ml) &&
  a.useCost.atLeast === b.useCost.atLeast &&
  isSame(a.useCost.exactMinor.toNumber(), b.useCost.exactMinor.toNumber());

/** Primers owned, on offer or in use, by name. */
export function listPrimers({ paints, pots, offers, ...sheets }: Sheets): PrimerCandidate[] {
  const owned = new Set(listOwned(pots));
  const offered = new Set(offers.flatMap((offer) => offer.pots.map(({ paint }) => paint)));
  const steps = stepsInUse(sheets).filter(isPrimerStep);
  const inUse = new Set(steps.flatMap((step) => step.paints.map(({ paint }) => paint)));
  return [...paints.values()]
    .filter(
      ({ paint, kind }) =>
        inUse.has(paint) || (kind === 'primer' && (owned.has(paint) || offered.has(paint))),
    )
    .map(({ paint, hex }) => ({
      paint,
      owned: owned.has(paint),
      inUse: inUse.has(paint),
      hasColour: hex !== undefined,
    }))
    .sort((a, b) => (a.paint < b.paint ? -1 : 1));
}

const isPrimerStep = ({ layer }: Step): boolean => layer === 'primer';

function stepsInUse({ army, schemes }: Pick<Sheets, 'army' | 'schemes'>): Step[] {
  const inUse = new Set(army.map(({ scheme }) => scheme));
  return [...inUse].flatMap((scheme) => schemes.get(scheme)?.steps ?? []);
}

/**
 * Schemes with one primer in every primer step. A can is sprayed; what comes in a pot goes through the airbrush where the
 * scheme has one, else on the brush. Coats stay; thinning goes with the paint it was meant for. Steps that hold this
 * primer alone, and all other steps, stay the very same objects, and so do sheets that hold no other primer.
 */
export function withPrimer(sheets: Sheets, paint: string): Sheets {
  const containers = containersOf(sheets, paint);
  const change = (step: Step): Step => {
    const isAlready = step.paints.length === 1 && step.paints[0]?.paint === paint;
    return isPrimerStep(step) && !isAlready ? primeWith(step, paint, containers) : step;
  };
  const schemes = [...sheets.schemes].map(([name, scheme]) => {
    const steps = scheme.steps.map(change);
    const isAlike = steps.every((step, at) => step === scheme.steps[at]);
    return [name, isAlike ? scheme : { ...scheme, steps }] as const;
  });
  const isAlike = schemes.every(([name, scheme]) => scheme === sheets.schemes.get(name));
  return isAlike ? sheets : { ...sheets, schemes: new Map(schemes) };
}

function primeWith({ thin: _, ...step }: Step, paint: string, containers: ReadonlySet<Container>): Step {
  const method: Method = containers.has('can')
    ? 'spray can'
    : step.method === 'airbrush'
      ? 'airbrush'
      : 'brush';
  return { ...step, method, paints: [{ paint, share: 1 }] };
}

/** Of a paint without pot or offer the sheets say nothing: then it is a can, as primers usually are. */
function containersOf({ pots, offers }: Sheets, paint: string): Set<Container> {
  const all = [...pots, ...offers.flatMap((offer) => offer.pots)].filter((one) => one.paint === paint);
  return new Set(all.length === 0 ? ['can'] : all.map(({ container }) => container));
}

function betterFirst(a: ComparedPrimer, b: ComparedPrimer): number {
  return (
    Number(b.hasColour) - Number(a.hasColour) ||
    a.minutes - b.minutes ||
    a.coats - b.coats ||
    a.useCost.exactMinor.cmp(b.useCost.exactMinor) ||
    Number(a.useCost.atLeast) - Number(b.useCost.atLeast) ||
    a.ml - b.ml ||
    (a.paint < b.paint ? -1 : 1)
  );
}
