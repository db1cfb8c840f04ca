// Colour: paints as colours. In: paints with hex. Out: their Lab and how far apart they are (CIEDE2000).
import type { Lab, Mix } from '../model/colour.js';
import type { Paint } from '../model/sheets.js';

/** Paints as colours, opened once for a plan. */
export interface Colours {
  /** Undefined for a paint without hex. */
  readonly labOf: (paint: string) => Lab | undefined;
  /**
   * A mix's colour: the mean of Lab by shares, a rule of thumb (two strong colours mixed turn out darker and duller).
   * Media and varnishes add no colour. Undefined where a coloured paint has no hex, or the mix holds none.
   */
  readonly labOfMix: (mix: Mix) => Lab | undefined;
  /** CIEDE2000 of two colours, the same both ways round. Sharma, Wu, Dalal 2005. */
  readonly between: (one: Lab, other: Lab) => number;
  /** CIEDE2000 of two paints; undefined without hex on both. */
  readonly distance: (one: string, other: string) => number | undefined;
}

interface Engine {
  readonly toLab: (hex: string) => Lab | undefined;
  readonly between: (one: Lab, other: Lab) => number;
}

/** The colour library takes a while to load, so it stays out where nothing has a colour. */
const colourless: Engine = { toLab: () => undefined, between: () => Number.POSITIVE_INFINITY };

/** Opens the colours of some paints. Without a hex among them nothing is loaded, and no paint has a colour. */
export async function openColours(paints: Iterable<Paint>): Promise<Colours> {
  const listed = [...paints];
  const engine = listed.some(({ hex }) => hex !== undefined) ? await loadEngine() : colourless;
  const labs = new Map<string, Lab>();
  for (const { paint, hex } of listed) {
    const lab = hex === undefined ? undefined : engine.toLab(hex);
    if (lab !== undefined) labs.set(paint, lab);
  }
  const clear = new Set(listed.filter(isClear).map(({ paint }) => paint));
  const labOf = (paint: string): Lab | undefined => labs.get(paint);
  const coloured = (mix: Mix): Mix => mix.filter(({ paint }) => !clear.has(paint));
  return {
    labOf,
    labOfMix: (mix) => meanLab(coloured(mix), labOf),
    between: engine.between,
    distance: (one, other) => {
      const [from, to] = [labOf(one), labOf(other)];
      return from === undefined || to === undefined ? undefined : engine.between(from, to);
    },
  };
}

/** Media and varnishes lay no colour, whatever their hex. */
export function isClear({ kind }: Pick<Paint, 'kind'>): boolean {
  return kind === 'medium' || kind === 'varnish';
}

async function loadEngine(): Promise<Engine> {
  // The bundle loads in a fifth of the time that the library's single files take.
  const { default: library } = await import('culori/require');
  const convert = library.converter('lab65');
  const toLab = (hex: string): Lab | undefined => {
    const lab = convert(hex);
    return lab && { mode: 'lab65', l: lab.l, a: lab.a, b: lab.b };
  };
  return { toLab, between: library.differenceCiede2000() };
}

function meanLab(mix: Mix, labOf: (paint: string) => Lab | undefined): Lab | undefined {
  const total = mix.reduce((sum, { share }) => sum + share, 0);
  if (total === 0) return undefined;
  let [l, a, b] = [0, 0, 0];
  for (const { paint, share } of mix) {
    const lab = labOf(paint);
    if (lab === undefined) return undefined;
    l += (lab.l * share) / total;
    a += (lab.a * share) / total;
    b += (lab.b * share) / total;
  }
  return { mode: 'lab65', l, a, b };
}
