// Colour: one undercoat, weighed. In: a coat, what lies beneath, an owned paint, lines. Out: coats, ml and minutes saved.
import { likely } from '../assumptions/look-up.js';
import type { CoatChoice, CoatChoices, Lab, Mix } from '../model/colour.js';
import type { Sheets } from '../model/sheets.js';
import type { Estimate, Line } from '../model/work.js';
import { coverColour, mixCoat, type Palette, type TopCoat } from './cover-beneath.js';
import { listOwned } from './list-owned.js';
import { layUndercoat, withCoats } from './resize-line.js';

/** What undercoats are weighed with besides the sheets. */
export interface Weighing extends Omit<Palette, 'paints'> {
  readonly choices: CoatChoices;
  readonly jobs: Estimate['jobs'];
  /** Minutes of all coats of a line on all its figures, each line of a mix its share. It must grow with the coats. */
  readonly minutesOf: (line: Line) => number;
}

/** An owned colour that can go beneath. */
export interface Shelved {
  readonly paint: string;
  readonly lab: Lab;
  readonly thin: number;
  /** What one coat of it hides, 0 to 1. */
  readonly opacity: number;
}

export interface Bench extends Weighing, Palette {
  readonly shelf: readonly Shelved[];
}

/** Owned colours that hide something: with hex and opacity. */
export function shelfOf({ pots, paints }: Sheets, { colours, assumptions }: Weighing): Shelved[] {
  return listOwned(pots).flatMap((paint) => {
    const found = paints.get(paint);
    const mix = [{ paint, share: 1 }];
    const coat = mixCoat({ mix, layer: 'base coat', thin: undefined }, { paints, colours, assumptions });
    if (found?.kind !== 'colour' || coat?.opacity === undefined) return [];
    const thin = found.thin ?? likely(assumptions, 'base coat thin');
    return [{ paint, lab: coat.lab, thin, opacity: coat.opacity }];
  });
}

/** Coats with an undercoat. */
export interface Coats {
  readonly undercoatCoats: number;
  /** Of what goes over it. */
  readonly coatsWith: number;
}

interface Stack {
  readonly top: TopCoat;
  readonly choice: CoatChoice;
  readonly shelved: Shelved;
}

/**
 * The fewest coats of undercoat and top together; undefined where they are no fewer than without. The undercoat need not
 * hide what is beneath it: `(1 - opacity)^n` of that still tints it, and the top goes over the tinted colour.
 */
export function countCoats({ top, choice, shelved }: Stack, bench: Bench): Coats | undefined {
  if (top.over.some(({ paint }) => paint === shelved.paint)) return undefined;
  let best: Coats | undefined;
  for (let undercoatCoats = 1; undercoatCoats + 1 < totalOf(best, choice); undercoatCoats += 1) {
    const shown = (1 - shelved.opacity) ** undercoatCoats;
    const coatsWith = coverAll(top, (under) => tint(shelved.lab, under, shown), { choice, bench });
    if (coatsWith === undefined) return best;
    const coats = { undercoatCoats, coatsWith };
    if (undercoatCoats + coatsWith < totalOf(best, choice)) best = coats;
  }
  return best;
}

const totalOf = (coats: Coats | undefined, { coats: without }: CoatChoice): number =>
  coats === undefined ? without : coats.undercoatCoats + coats.coatsWith;

/** The most coats that anything beneath asks for, once an undercoat has changed its colour. */
function coverAll(
  top: TopCoat,
  change: (under: Lab) => Lab,
  { choice, bench }: { readonly choice: CoatChoice; readonly bench: Bench },
): number | undefined {
  const coats = choice.because.beneath.map((under: Mix) => {
    const lab = bench.colours.labOfMix(under);
    return lab && coverColour(top, change(lab), bench)?.coats;
  });
  const known = coats.filter((one) => one !== undefined);
  return known.length === coats.length ? Math.max(1, ...known) : undefined;
}

/** A colour with a share of another shining through. */
function tint(colour: Lab, other: Lab, share: number): Lab {
  const between = (from: number, to: number): number => from + (to - from) * share;
  return {
    mode: 'lab65',
    l: between(colour.l, other.l),
    a: between(colour.a, other.a),
    b: between(colour.b, other.b),
  };
}

interface Weighed extends Coats {
  readonly lines: readonly Line[];
  readonly first: Line;
  readonly shelved: Shelved;
}

/** What an undercoat saves on some lines of one step, of which `first` is the first; below 0 where it costs. */
export function weighUndercoat({ lines, first, shelved, undercoatCoats, coatsWith }: Weighed, bench: Bench) {
  const painter = likely(bench.assumptions, 'painter');
  const leftoverMl = likely(bench.assumptions, `${first.method} leftover`);
  const under = { paint: shelved.paint, coats: undercoatCoats, thin: shelved.thin, leftoverMl };
  const after = [
    ...lines.map((line) => withCoats(line, coatsWith, painter)),
    layUndercoat(first, under, painter),
  ];
  const ml = (some: readonly Line[]): number => some.reduce((sum, { putOutMl }) => sum + putOutMl, 0);
  const minutes = (some: readonly Line[]): number =>
    some.reduce((sum, line) => sum + bench.minutesOf(line), 0);
  return { mlSaved: ml(lines) - ml(after), minutesSaved: minutes(lines) - minutes(after) };
}
