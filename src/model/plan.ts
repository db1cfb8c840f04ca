// Model: the plan, what every stage hands on and the report draws. Lengths mm, films µm, areas cm2, volumes ml.
// Money: `...Minor` as number is whole minor units; as ExactMinor an exact, unrounded amount.
import type { Assumption, Mark } from './assumption.js';
import type { ExactMinor } from './money.js';
import type { Budget, Order, Stairs } from './order.js';
import type { Learned, Promised, Ranges } from './ranges.js';
import type { DefaultUsed, Figure, IsoDate, Paint, Settings, Unit } from './sheets.js';
import type { Container, Layer, Method } from './words.js';
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
  readonly jobs: readonly Job[];
  /** In the army sheet's order. */
  readonly units: readonly { readonly unit: Unit; readonly job: Job }[];
  /** Per paint, army wide. Every paint of a scheme in use has an entry, 0 where no figure has its zone. */
  readonly needs: ReadonlyMap<string, { readonly wholeMl: number; readonly remainingMl: number }>;
}

export type StockState = 'none owned' | 'short' | 'tight' | 'enough';

/** One pot on the shelf, in the order in which pots are used up. */
export interface ShelfPot {
  readonly row: number;
  readonly sizeMl: number;
  readonly container: Container;
  /** Usable paint left in it. */
  readonly usableMl: number;
  /** Usable paint in a full one of its kind: what its price pays for. */
  readonly fullUsableMl: number;
  readonly priceMinor?: number;
  readonly ordered: boolean;
  /** Standard deviation of the reading, ml of the labelled volume; 0 for a pot that is full for sure. */
  readonly readingErrorMl: number;
  readonly mark: Mark;
  readonly place?: string;
}

/** Stock stage: one entry for each paint that is owned or needed. */
export interface PaintStock {
  readonly paint: string;
  readonly pots: readonly ShelfPot[];
  readonly needMl: number;
  readonly haveMl: number;
  /** Part of `haveMl` that is on its way. */
  readonly orderedMl: number;
  /** From what is owned today, before buying; never below 0. */
  readonly leftAfterMl: number;
  /** What the promise needs beyond what is there. */
  readonly toBuyMl: number;
  readonly keepMl: number;
  readonly state: StockState;
  /** `leftAfterMl` is under `keepMl`; a paint without a pot has a level only where the painter names one. */
  readonly runningLow: boolean;
  readonly mark: Mark;
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

/** An amount and whether something in it had no price: then the true sum is higher. */
export interface Amount {
  readonly exactMinor: ExactMinor;
  readonly atLeast: boolean;
}

export interface PaintCost {
  readonly paint: string;
  /** Undefined: nothing of what is used of it, from the shelf or the order, has a price. */
  readonly perMl: ExactMinor | undefined;
  /** True where only part of the paint needed has a price. */
  readonly partlyUnpriced: boolean;
  /** Share of the need, 0 to 1, that has a price. */
  readonly pricedShare: number;
  /** Remaining work, army wide. */
  readonly useCost: Amount;
}

/** Cost of use of one job; the same for every unit that shares it. */
export interface JobCost {
  /** In the order of `job.lines`. */
  readonly lines: readonly Amount[];
  /** In the order of `job.remaining`. */
  readonly remainingLines: readonly Amount[];
  /** Whole scheme on one figure, with extras. */
  readonly perFigure: Amount;
  /** Of `perFigure`, the extras. */
  readonly extrasPerFigure: Amount;
  /** Whole scheme on every figure of the job, with extras. */
  readonly whole: Amount;
  /** Work still to be done on the whole job, with extras while unfinished. */
  readonly remaining: Amount;
}

export interface UnitCost {
  readonly unit: Unit;
  readonly job: Job;
  readonly use: JobCost;
  /** Its share of the army's order (postage included); the units add up to the order's total. */
  readonly cashMinor: number;
  /** The unpainted figures, undefined where unpriced. */
  readonly figuresPriceMinor: number | undefined;
}

/** Cost stage. */
export interface Costs {
  readonly paints: ReadonlyMap<string, PaintCost>;
  /** Paint of the remaining work by zone, and by layer; each adds up to `useRemaining` less extras. */
  readonly zones: ReadonlyMap<string, Amount>;
  readonly layers: ReadonlyMap<string, Amount>;
  readonly units: readonly UnitCost[];
  /** Whole scheme, all units, with extras. */
  readonly useWhole: Amount;
  readonly useRemaining: Amount;
  readonly extrasWhole: Amount;
  /** Cash for the army's order, postage included. */
  readonly cashMinor: number;
  /** Cash for bringing low pots back to their level, apart. */
  readonly restockCashMinor: number;
  readonly figuresPrice: Amount;
  /** Paints of the plan without a price, wholly or in part. */
  readonly unpriced: readonly string[];
}

/** Which cautions the plan calls for. */
export type Caution = 'spray can' | 'airbrush' | 'solvent' | 'brush';

export interface Plan {
  readonly date: IsoDate;
  readonly settings: Settings;
  readonly figureCount: number;
  /** Every paint that any sheet names: colour, kind. */
  readonly paints: ReadonlyMap<string, Paint>;
  readonly estimate: Estimate;
  readonly stock: readonly PaintStock[];
  readonly order: Order;
  /** Set only with `restock` shelf. */
  readonly restock: Order | undefined;
  readonly stairs: Stairs;
  /** Set only where a budget was given. */
  readonly budget: Budget | undefined;
  readonly costs: Costs;
  readonly ranges: Ranges;
  /** What the order is made for. */
  readonly promised: Promised;
  readonly learned: Learned;
  readonly cautions: readonly Caution[];
  readonly assumptions: readonly Assumption[];
  readonly defaults: readonly DefaultUsed[];
}
