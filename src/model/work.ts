// Model: the estimate, work as lines of paint. In: nothing. Out: its types. Lengths mm, films µm, areas cm2, volumes ml.
import type { Mark } from './assumption.js';
import type { CoatReason } from './colour.js';
import type { Figure } from './figure.js';
import type { Unit } from './sheets.js';
import type { Layer, Method } from './words.js';
import type { Part } from './zones.js';

/** Mark and main doubt of a result. */
export interface Trust {
  readonly mark: Mark;
  /** Name of the assumption that causes most of the doubt; blank where every input is exact. */
  readonly biggestDoubt: string;
}

/**
 * Which doubtful factors a surface rests on: shares of it, above 0 to 1, each with the assumptions that it goes with in
 * proportion. Shares sum to 1 unless the surface is empty.
 */
export type Surface = readonly { readonly factors: readonly string[]; readonly share: number }[];

/** One paint of one step on one zone, for some figures of a job. */
export interface Line extends Trust {
  /** How many figures it stands for. */
  readonly figures: number;
  readonly step: number;
  readonly zone: string;
  readonly layer: Layer;
  readonly method: Method;
  readonly paint: string;
  /** The zone on one figure, before the area share. */
  readonly areaCm2: number;
  /** What the zone rests on; one object for all lines of a figure, scheme, step, zone and paint. */
  readonly surface: Surface;
  /** 0 to 1 */
  readonly areaShare: number;
  readonly coats: number;
  /** Why so many, where colours decided it. */
  readonly coatsBecause?: CoatReason;
  readonly thin: number;
  /** This paint's share of the mix, 0 to 1. */
  readonly mixShare: number;
  readonly sittings: number;
  readonly onFigureMl: number;
  /** What palette, brush, cup or nozzle keep. */
  readonly leftoverMl: number;
  readonly putOutMl: number;
}

/** A piece of work. Units alike in figure, scheme, count, batch and what is done share one, so it is computed once. */
export interface Job {
  readonly figure: string;
  readonly scheme: string;
  readonly count: number;
  readonly batch: number;
  readonly done: number;
  /** One figure with its base. */
  readonly areaCm2: number;
  /** True while a step of the scheme is still to be done. */
  readonly unfinished: boolean;
  /** The whole scheme on every figure, in step order. */
  readonly lines: readonly Line[];
  /** What is still to be done, in the same order: the very lines that are untouched, others for the figures left. */
  readonly remaining: readonly Line[];
  /** Parts that no step but primer, wash and varnish reaches. */
  readonly notPainted: readonly Part[];
}

/** Areas of one figure. */
export interface FigureArea extends Trust {
  readonly figure: Figure;
  readonly parts: ReadonlyMap<Part, number>;
  /** Body and kit, or hull. */
  readonly wholeCm2: number;
  readonly withBaseCm2: number;
  /** Of the figure with its base. */
  readonly surface: Surface;
}

/** Estimate stage: how much paint the work puts out. */
export interface Estimate {
  readonly figures: ReadonlyMap<string, FigureArea>;
  /** Each job with how many units share it, in the order in which jobs are met. */
  readonly jobs: ReadonlyMap<Job, number>;
  /** In the army sheet's order. */
  readonly units: readonly { readonly unit: Unit; readonly job: Job }[];
  /** Per paint, army wide. Every paint of a scheme in use has an entry, 0 where no figure has its zone. */
  readonly needs: ReadonlyMap<string, { readonly wholeMl: number; readonly remainingMl: number }>;
}

/** What each figure of a unit asks for, in the order in which units are painted. */
export interface UnitDemand {
  readonly unit: string;
  readonly priority: number;
  readonly figures: number;
  readonly batch: number;
  /** Paint that each figure takes from the pots, by paint. */
  readonly perFigureMl: ReadonlyMap<string, number>;
  /** Paint that each sitting leaves over, by paint. */
  readonly perSittingMl: ReadonlyMap<string, number>;
}
