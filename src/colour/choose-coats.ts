// Colour: the coats of one step. In: what it lies on with areas, colours, the registry. Out: coats and why.
import { likely } from '../assumptions/look-up.js';
import type { CoatChoice, CoatReason, Lab, Mix } from '../model/colour.js';
import type { Paint, Sheets, Step } from '../model/sheets.js';
import { type Cover, coverColour, mixCoat, type Palette, type TopCoat } from './cover-beneath.js';
import { listOwned } from './list-owned.js';

/** Everything that a single choice needs. */
export interface Desk extends Palette {
  /** Owned paints that could lie beneath, with their colour. */
  readonly undercoats: readonly { readonly paint: string; readonly lab: Lab }[];
}

/** The desk of a plan. */
export function makeDesk({ paints, pots }: Sheets, sight: Omit<Palette, 'paints'>): Desk {
  const undercoats = listOwned(pots).flatMap((paint) => {
    const lab = sight.colours.labOf(paint);
    return lab !== undefined && isPlain(paints.get(paint)) ? [{ paint, lab }] : [];
  });
  return { ...sight, paints, undercoats };
}

const isPlain = (paint: Paint | undefined): boolean => paint?.kind === 'colour' || paint?.kind === 'primer';

/** A colour that a coat lies on. */
export interface Under {
  /** Undefined: bare. */
  readonly mix: Mix | undefined;
  readonly areaCm2: number;
}

/**
 * The coats of a step over all that it lies on: those of the worst of it. Undefined where something beneath, more than a
 * speck, has no known colour, or the step itself has none.
 */
export function chooseCoats(step: Step, unders: readonly Under[], desk: Desk): CoatChoice | undefined {
  const { paints: mix, layer, thin } = step;
  const top = mixCoat({ mix, layer, thin }, desk);
  if (top === undefined) return undefined;
  const total = unders.reduce((sum, { areaCm2 }) => sum + areaCm2, 0);
  const speckCm2 = (total * likely(desk.assumptions, speckName)) / 100;
  const kept = unders.filter(({ areaCm2 }) => areaCm2 >= speckCm2 && areaCm2 > 0);
  const covers = kept.map(({ mix }) => mix && coverMix(top, mix, desk));
  const known = covers.filter((one) => one !== undefined);
  const worst = known.toSorted((a, b) => b.coats - a.coats || b.dE00 - a.dE00)[0];
  if (worst === undefined || known.length < covers.length) return undefined;
  const better = findBetter(top, worst, desk);
  const specks = kept.length < unders.length ? [speckName] : [];
  return {
    coats: worst.coats,
    because: {
      ...reasonOf(top, worst, desk),
      beneath: known.map(({ under }) => under),
      ...(better && { better }),
    },
    inputs: [...worst.inputs, ...specks],
  };
}

const speckName = 'speck beneath a coat';

interface CoverMix extends Cover {
  readonly under: Mix;
}

function coverMix(top: TopCoat, under: Mix, desk: Desk): CoverMix | undefined {
  const lab = desk.colours.labOfMix(under);
  const cover = lab && coverColour(top, lab, desk);
  return cover && { ...cover, under };
}

function reasonOf(
  top: TopCoat,
  { rule, dE00, under }: CoverMix,
  { paints }: Desk,
): Omit<CoatReason, 'beneath'> {
  const [only, ...more] = top.over;
  const reason = { rule, over: top.over, under, dE00 };
  if (rule === 'metallic over pale' || top.opacity === undefined) return reason;
  const opacity = only && more.length === 0 ? paints.get(only.paint)?.opacity : undefined;
  return { ...reason, coatOpacity: top.opacity, ...(opacity && { opacity }) };
}

/**
 * The owned paint over which the fewest coats would do, the nearest in colour of several; none where none saves one, nor of
 * two coats, since the one that it takes itself is all that it could save.
 */
function findBetter(top: TopCoat, now: Cover, desk: Desk): CoatReason['better'] {
  if (now.coats <= 2) return undefined;
  let best: { undercoat: string; coats: number; dE00: number } | undefined;
  for (const { paint, lab } of desk.undercoats) {
    if (top.over.some((one) => one.paint === paint)) continue;
    const cover = coverColour(top, lab, desk);
    if (cover === undefined || cover.coats >= now.coats) continue;
    const isBetter =
      best === undefined ||
      cover.coats < best.coats ||
      (cover.coats === best.coats && cover.dE00 < best.dE00);
    if (isBetter) best = { undercoat: paint, coats: cover.coats, dE00: cover.dE00 };
  }
  return best && { undercoat: best.undercoat, coats: best.coats };
}
