// Model: the plan, what every stage hands on and the report draws. Lengths mm, films µm, areas cm2, volumes ml.
// Money: `...Minor` as number is whole minor units; as ExactMinor an exact, unrounded amount.
import type { Assumption } from './assumption.js';
import type { Aim, Choice } from './choices.js';
import type { Instead, PrimerComparison, SwapTaken, UndercoatAdvice } from './colour.js';
import type { Frontier } from './frontier.js';
import type { Amount, ExactMinor } from './money.js';
import type { Budget, Order, Stairs } from './order.js';
import type { Learned, Promised, Ranges } from './ranges.js';
import type { DefaultUsed, IsoDate, Paint, Settings, SheetRead, Unit } from './sheets.js';
import type { ShelfMoney } from './spent.js';
import type { PaintStock } from './stock.js';
import type { Summary } from './summary.js';
import type { TimePlan } from './time.js';
import type { Estimate, Job, UnitDemand } from './work.js';

export interface PaintCost {
  readonly paint: string;
  /** Undefined: nothing of what is used of it, from the shelf or the order, has a price. */
  readonly perMl: ExactMinor | undefined;
  /** Share of the need, 0 to 1, that has a price. */
  readonly pricedShare: number;
  /** Of the need, what is priced like the newest pot that has a price: neither a pot nor the order gives it. */
  readonly likeNewestMl: number;
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

/** What a plan can call for caution with, in the order in which it is said. */
export const cautions = ['spray can', 'airbrush', 'solvent', 'glue', 'brush'] as const;
export type Caution = (typeof cautions)[number];

/** Sheets that would bring more, in the order in which they would. */
export const lackable = ['army', 'pots', 'offers'] as const;
export type Lacking = (typeof lackable)[number];

/** What the stages found. */
export interface PlanResults {
  readonly date: IsoDate;
  readonly settings: Settings;
  readonly figureCount: number;
  /** Every paint that any sheet names: colour, kind. */
  readonly paints: ReadonlyMap<string, Paint>;
  readonly estimate: Estimate;
  /** What the units still ask for, in the order in which they are painted. */
  readonly demands: readonly UnitDemand[];
  readonly stock: readonly PaintStock[];
  /** Of each needed paint's likely need, ml that today's pots reach in all but one draw in ten. */
  readonly reachMl: ReadonlyMap<string, number>;
  readonly order: Order;
  /** For which way to buy the order is made. */
  readonly aim: Aim;
  /** The ways to buy side by side; the chosen one is among them. */
  readonly choices: readonly Choice[];
  /** Set only with `restock` shelf. */
  readonly restock: Order | undefined;
  readonly stairs: Stairs;
  /** Set only where a budget was given. */
  readonly budget: Budget | undefined;
  readonly costs: Costs;
  /** What was spent so far, and where it is. */
  readonly money: ShelfMoney;
  readonly ranges: Ranges;
  /** How often the order is enough. */
  readonly promised: Promised;
  readonly learned: Learned;
  /** Coats of another colour beneath that save more than they cost. */
  readonly undercoats: readonly UndercoatAdvice[];
  readonly primers: PrimerComparison;
  /** What the swaps sheet changed. */
  readonly swaps: readonly SwapTaken[];
  /** What may stand in for paints that are to be bought. */
  readonly instead: readonly Instead[];
  readonly frontier: Frontier;
  readonly time: TimePlan;
  readonly cautions: readonly Caution[];
  /** What no sheet says, so that parts of the answer are left out. */
  readonly lacking: readonly Lacking[];
  readonly assumptions: readonly Assumption[];
  readonly defaults: readonly DefaultUsed[];
  /** How the sheets were read; none where nobody read any. */
  readonly read: readonly SheetRead[];
}

export interface Plan extends PlanResults {
  /** What follows from all of it. */
  readonly summary: Summary;
}
