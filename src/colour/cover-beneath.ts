// Colour: one coat over one colour. In: a step, what lies beneath, colours, the registry. Out: coats, and what they rest on.
import { opacityName } from '../assumptions/colour.js';
import { usualMethod } from '../assumptions/layers.js';
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { CoatReason, Lab, Mix } from '../model/colour.js';
import type { Paint, Step } from '../model/sheets.js';
import { type Layer, type Method, solidLayers } from '../model/words.js';
import { coatOpacity, coatsToHide } from './count-coats.js';
import { type Colours, isClear } from './open-colours.js';

/** What coats are reckoned with. */
export interface Palette {
  readonly paints: ReadonlyMap<string, Paint>;
  readonly colours: Colours;
  readonly assumptions: Assumptions;
}

/** Layers that hide what is under them; a paste on a base top does so too. */
const hiding: readonly Layer[] = ['primer', ...solidLayers, 'basing'];
/** Methods that leave the ground open between their marks. */
const open: readonly Method[] = ['drybrush', 'sponge'];

/** Whether later coats lie on this step: a primer, base coat, midtone or paste in a closed film of no wash or medium. */
export function isCovering(step: Step, { paints }: Palette): boolean {
  const isThin = ({ paint }: { readonly paint: string }): boolean => {
    const found = paints.get(paint);
    return found === undefined || found.kind === 'wash' || isClear(found);
  };
  const method = step.method ?? usualMethod(step.layer);
  return hiding.includes(step.layer) && !open.includes(method) && !step.paints.every(isThin);
}

/** Whether the number of coats is left to the colours; a paste is laid once, whatever its colour. */
export function isLeftBlank(step: Step, palette: Palette): boolean {
  const isPaste = step.paints.some(({ paint }) => palette.paints.get(paint)?.kind === 'texture');
  return (
    step.coats === undefined && solidLayers.includes(step.layer) && !isPaste && isCovering(step, palette)
  );
}

/** A coat that may lie on many colours. */
export interface TopCoat {
  readonly over: Mix;
  readonly lab: Lab;
  /** What one coat hides, 0 to 1; undefined where an opacity is blank. */
  readonly opacity: number | undefined;
  readonly isMetallic: boolean;
  /** Names of the assumptions that `opacity` rests on. */
  readonly inputs: readonly string[];
}

interface Coating {
  readonly mix: Mix;
  readonly layer: Layer;
  /** The scheme's own thinning. */
  readonly thin: number | undefined;
}

/** The coat that a mix gives as a layer; undefined where its colour is not known. */
export function mixCoat({ mix, layer, thin }: Coating, palette: Palette): TopCoat | undefined {
  const { paints, colours, assumptions } = palette;
  const lab = colours.labOfMix(mix);
  if (lab === undefined) return undefined;
  const inputs = new Set<string>();
  const film = mix.flatMap(({ paint, share }) => {
    const found = paints.get(paint);
    if (found === undefined || isClear(found)) return [];
    const ownThin = thin ?? found.thin;
    if (ownThin === undefined) inputs.add(`${layer} thin`);
    if (found.opacity === undefined) return [undefined];
    const name = opacityName(found.opacity);
    inputs.add(name);
    const parts = ownThin ?? likely(assumptions, `${layer} thin`);
    return [{ share, opacity: likely(assumptions, name), thin: parts }];
  });
  const known = film.filter((one) => one !== undefined);
  const isMetallic = mix.every(({ paint }) => paints.get(paint)?.kind === 'metallic');
  const opacity = known.length === film.length ? coatOpacity(known) : undefined;
  return { over: mix, lab, opacity, isMetallic, inputs: [...inputs] };
}

/** Coats of one colour over another. */
export interface Cover {
  readonly coats: number;
  readonly rule: CoatReason['rule'];
  readonly dE00: number;
  readonly inputs: readonly string[];
}

/**
 * How many coats hide a colour. Metallics lie over pale colours in one coat (common practice: their flakes are opaque,
 * and what shines beneath them is not seen). Undefined where the opacity is not known, or a coat hides nothing.
 */
export function coverColour(top: TopCoat, under: Lab, { colours, assumptions }: Palette): Cover | undefined {
  const dE00 = colours.between(top.lab, under);
  if (top.isMetallic && under.l >= likely(assumptions, paleName)) {
    return { coats: 1, rule: 'metallic over pale', dE00, inputs: [paleName] };
  }
  if (top.opacity === undefined) return undefined;
  const limit = likely(assumptions, limitName);
  const coats = coatsToHide({ dE00, opacity: top.opacity, limit });
  if (coats === undefined) return undefined;
  return { coats, rule: 'shows through', dE00, inputs: [...top.inputs, limitName] };
}

const paleName = 'pale from lightness';
const limitName = 'just visible difference';
