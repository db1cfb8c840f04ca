// Model: what colours decide. In: nothing. Out: types of coats, undercoats, primers and what is owned instead.
import type { ExactMinor } from './money.js';
import type { Step } from './sheets.js';
import type { Layer, Opacity } from './words.js';

/** A colour in CIE Lab under D65; `l` is 0 to 100. */
export interface Lab {
  readonly mode: 'lab65';
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** CIEDE2000 from which a difference is just visible, plain, another colour: from memory. */
export const differenceBands = { visible: 2, plain: 5, other: 10 } as const;

/** Paints of one treatment with their shares, 0 to 1. */
export type Mix = Step['paints'];

/** The paint with the largest share; of equal ones the first. */
export const mostOf = (mix: Mix): Mix[number] | undefined => mix.toSorted((a, b) => b.share - a.share)[0];

/** Why a number of coats was chosen. */
export interface CoatReason {
  /** `shows through`: by colours and opacity. `metallic over pale`: one coat, whatever the colours. */
  readonly rule: 'shows through' | 'metallic over pale';
  readonly over: Mix;
  /** What asks for the most coats of all that lies beneath. */
  readonly under: Mix;
  /** All that lies beneath, specks left out. */
  readonly beneath: readonly Mix[];
  /** Opacity of the paint on top as its sheet says; absent for a mix, and where the rule asks for none. */
  readonly opacity?: Opacity;
  /** What one coat hides of the colour beneath, 0 to 1, after thinning and mixing; absent where the rule asks for none. */
  readonly coatOpacity?: number;
  /** CIEDE2000 between `over` and `under`. */
  readonly dE00: number;
  /** Of three coats or more: the owned paint over which the fewest would do, where that is fewer. */
  readonly better?: { readonly undercoat: string; readonly coats: number };
}

/** The coats of one step on one figure where the sheet leaves them blank. */
export interface CoatChoice {
  /** Whole, 1 or more. */
  readonly coats: number;
  readonly because: CoatReason;
  /** Names of the assumptions that the choice rests on. */
  readonly inputs: readonly string[];
}

/** By step (the object itself) and name of the figure. No entry: the layer's default stands. */
export type CoatChoices = ReadonlyMap<Step, ReadonlyMap<string, CoatChoice>>;

/** One more coat of another colour beneath, that saves more coats than it costs; for figures alike. */
export interface UndercoatAdvice {
  readonly scheme: string;
  readonly step: number;
  readonly zone: string;
  readonly layer: Layer;
  readonly over: Mix;
  readonly under: Mix;
  readonly undercoat: string;
  readonly undercoatCoats: number;
  readonly coatsWithout: number;
  /** Fewer with it in all, its own counted. */
  readonly coatsSaved: number;
  /** Of `over`, with the undercoat beneath. */
  readonly coatsWith: number;
  /** Figures still to be painted that it serves. */
  readonly figures: number;
  /** All paints together; below 0 where the undercoat's leftovers take more than the coats save. */
  readonly mlSaved: number;
  /** Above 0. */
  readonly minutesSaved: number;
}

/** A paint that may stand in for one that is short or not owned. */
export interface Substitute {
  readonly paint: string;
  /** True where one of the two is also called by the other's name, or both by a third. */
  readonly sameByName: boolean;
  /** CIEDE2000; absent without hex on both. */
  readonly dE00?: number;
  /** Usable ml of it that the army leaves over. */
  readonly spareMl: number;
  /** Whether that does for all that is promised of the paint. */
  readonly isEnough: boolean;
}

/** What is owned instead of a paint; best first. */
export interface Instead {
  readonly paint: string;
  readonly toBuyMl: number;
  /** The whole promised need: what is there and what is to be bought. */
  readonly neededMl: number;
  readonly by: readonly Substitute[];
}

/** A swap of the swaps sheet that changed a scheme in use. */
export interface SwapTaken {
  readonly scheme: string;
  /** Rising. */
  readonly steps: readonly number[];
  /** As the scheme names it. */
  readonly paint: string;
  /** What goes on. */
  readonly by: string;
  /** CIEDE2000; absent without hex on both. */
  readonly dE00?: number;
}

/** A primer that is owned, on offer or in a scheme. */
export interface PrimerCandidate {
  readonly paint: string;
  readonly owned: boolean;
  /** Some scheme in use has it now. */
  readonly inUse: boolean;
  /** Without a colour the coats over it are the layers' defaults, and comparing it says little. */
  readonly hasColour: boolean;
}

/** What the whole scheme on the whole army takes. */
export interface PrimerTrial {
  readonly coats: number;
  readonly ml: number;
  readonly useCost: { readonly exactMinor: ExactMinor; readonly atLeast: boolean };
  readonly minutes: number;
}

export type ComparedPrimer = PrimerCandidate & PrimerTrial;

export interface PrimerComparison {
  /** Best first. */
  readonly primers: readonly ComparedPrimer[];
  /** Those that nothing tells apart from the first; none where no two primers with a colour can be compared. */
  readonly best: readonly string[];
}
