// Model: what follows from the plan's results, summed and compared for report and plan.json. Volumes ml; `...Minor` is money
// in minor units, whole where it is cash; shares and chances 0 to 1.
import type { BenchSums } from './bench.js';
import type { CoatReason } from './colour.js';
import type { ArmyShare, CostSums, MoneySums, ShelfSums } from './cost-sums.js';
import type { FrontierChoice, FrontierPoint } from './frontier.js';
import type { Amount } from './money.js';
import type { BudgetSums, BuyingSums, OrderSums, PromiseSums, StairSums } from './order-sums.js';
import type { Chance, PaintRange } from './ranges.js';
import type { Unit } from './sheets.js';
import type { PaintStock, StockState } from './stock.js';
import type { Container, Layer } from './words.js';
import type { Job, Line, Trust } from './work.js';

/** Paint put out for the whole scheme, and for what of it is still to be done. */
export interface PutOut {
  readonly wholeMl: number;
  readonly remainingMl: number;
}

/** Where the paint that is still to be put out ends; the three parts add up to `remainingMl`. */
export interface PaintWork extends PutOut {
  readonly onFigureMl: number;
  readonly lostMl: number;
  /** What palette, brush, cup or nozzle keep. */
  readonly leftoverMl: number;
  readonly trust: Trust;
}

/** Still to be put out on one zone. */
export interface ZoneWork {
  readonly zone: string;
  readonly remainingMl: number;
  readonly layersMl: ReadonlyMap<Layer, number>;
}

/** All work of the army. */
export interface WorkSums extends PutOut {
  /** Of what is still to be put out, what ends on the figures; 0 where nothing is. */
  readonly onFigureShare: number;
  /** Most paint first. */
  readonly zones: readonly ZoneWork[];
  /** In the order in which they first go on. */
  readonly paints: ReadonlyMap<string, PaintWork>;
  readonly trust: Trust;
}

/** One job, beside its lines and costs. */
export interface JobSummary extends PutOut {
  /** Cost of use of the whole scheme on one figure; with the extras they add up to `perFigure` of its cost. */
  readonly costByLayer: ReadonlyMap<Layer, Amount>;
  readonly costByZone: ReadonlyMap<string, Amount>;
  /** Of its cost. */
  readonly trust: Trust;
  /** Steps in all, and those that every figure has had. */
  readonly steps: number;
  readonly stepsFinished: number;
  /** Steps that some figures have had: how many. */
  readonly begun: readonly { readonly step: number; readonly figures: number }[];
  /** False where nothing is done of it. */
  readonly isBegun: boolean;
  /** Share of its paint that is put out already. */
  readonly doneShare: number;
}

/** The paint that is empty first by likely use, when the evenings go as spelled out. */
export interface FirstOut {
  readonly paint: string;
  /** From 1. */
  readonly evening: number;
  readonly unit: string;
}

/** The one thing to do next that is worth most. */
export type NextStep =
  | {
      readonly what: 'weigh';
      readonly paint: string;
      readonly container: Container;
      /** On which the paint is used first, from 1. */
      readonly evening: number;
      /** Of the doubt about the cash, what it settles, 0 to 1. */
      readonly share: number;
    }
  | { readonly what: 'order'; readonly pots: number }
  | { readonly what: 'paint'; readonly unit: string; readonly zone: string; readonly paint: string };

/** What the evenings, as they are spelled out, say of pots and units. */
export interface Ahead {
  /** Undefined where no paint that is likely to run out does so on an evening spelled out. */
  readonly firstOut: FirstOut | undefined;
  readonly firstFinished: { readonly unit: string; readonly evening: number } | undefined;
  /** Undefined where nothing is left to be painted. */
  readonly next: NextStep | undefined;
}

/** How the chance that today's pots last for the whole army is to be taken. */
export type Verdict = 'yes' | 'likely' | 'hardly' | 'no';

/** How far a paint's pots last, figures counted in the order in which they are painted, those that are done among them. */
export interface Reach {
  /** The last that it lasts for; 0: not for one. */
  readonly figures: number;
  /** In which it runs out. */
  readonly unit: string;
  /** Of that unit, the figures it lasts for. */
  readonly ofUnit: number;
}

/** Undefined: for all. */
export interface PaintReach {
  readonly likely: Reach | undefined;
  /** One time in ten it lasts no farther. */
  readonly low: Reach | undefined;
}

export interface Lasting {
  readonly verdict: Verdict;
  /** Needed paints by state, the worst first; states without any are left out. */
  readonly states: readonly { readonly state: StockState; readonly paints: readonly PaintStock[] }[];
  /** Owned paints that may run short, the most likely first. */
  readonly risky: readonly { readonly paint: string; readonly chanceShort: Chance }[];
  /** Needed paint that is on its way, and of how many paints. */
  readonly onWayMl: number;
  readonly onWayPaints: number;
  /** Low paints that the army does not need. */
  readonly unusedLow: readonly PaintStock[];
  /** Of whether the pots last, and of what to buy. */
  readonly trust: Trust;
  /** Of each paint's need and shelf. */
  readonly paintTrust: ReadonlyMap<string, Trust>;
  /** Of each needed paint. */
  readonly reach: ReadonlyMap<string, PaintReach>;
}

/** Coats alike in colours and number. */
export interface ReasonedCoats {
  readonly coats: number;
  readonly because: CoatReason;
  /** What is left of the colour difference after all coats; undefined where the rule asks for none. */
  readonly leftDE00: number | undefined;
  /** Steps with their zones, by scheme; each place once. */
  readonly places: ReadonlyMap<string, ReadonlyMap<string, Pick<Line, 'step' | 'zone'>>>;
}

export interface CoatSums {
  /** Most coats first, then the greatest difference. */
  readonly reasons: readonly ReasonedCoats[];
  readonly trust: Trust;
  /** Paints without which a coat over them, or of them, keeps its layer's number. */
  readonly unknown: readonly string[];
  /** Minutes of each primer against the only one in use; empty where several are, or none. */
  readonly primerExtraMin: ReadonlyMap<string, number>;
}

/** Points of the frontier that are alike in all but the difference allowed. */
export interface FrontierLevel extends FrontierPoint {
  /** The largest difference at which it still holds. */
  readonly toDE00: number;
}

export interface ColourSums {
  /** Paints of which something is to be bought. */
  readonly toBuy: number;
  readonly levels: readonly FrontierLevel[];
  /** The fewest pots, where that is fewer than at the largest difference. */
  readonly fewest: FrontierChoice | undefined;
  /** What the largest difference saves; below 0: it costs more. */
  readonly savedMinor: number;
  /** True where that is enough of the cash to be spoken of, or covers what no offer does. */
  readonly isWorthwhile: boolean;
}

export interface DoubtSums {
  /** Paints that may last or not and of which a doubt is known, the most likely to run short first. */
  readonly paints: readonly { readonly paint: string; readonly range: PaintRange }[];
  /** Used over expected, in the order of the weighings; undefined where nothing was expected. */
  readonly times: readonly (number | undefined)[];
}

export interface Summary {
  readonly work: WorkSums;
  readonly jobs: ReadonlyMap<Job, JobSummary>;
  readonly costs: CostSums;
  readonly money: MoneySums;
  /** In the order in which they are painted; none where only one is planned. */
  readonly armies: readonly ArmyShare[];
  readonly shelf: ShelfSums;
  readonly lasting: Lasting;
  readonly ahead: Ahead;
  readonly promise: PromiseSums;
  readonly buying: BuyingSums;
  readonly order: OrderSums;
  /** Undefined without a restocking order. */
  readonly restock: OrderSums | undefined;
  /** Both orders together. */
  readonly cashMinor: number;
  readonly pots: number;
  /** Undefined for an army of nobody. */
  readonly stairs: StairSums | undefined;
  readonly budget: BudgetSums | undefined;
  readonly coats: CoatSums;
  readonly colours: ColourSums;
  readonly doubts: DoubtSums;
  readonly bench: BenchSums;
  /** Of the minutes. */
  readonly timeTrust: Trust;
  /** The unit that is painted first; undefined for an army of nobody. */
  readonly firstUnit: Unit | undefined;
  /** False where no shops sheet says what shops ask for sending. */
  readonly isPostageKnown: boolean;
}

/** Whether work is still to be done with a paint. */
export const isNeeded = ({ paints }: WorkSums, paint: string): boolean =>
  (paints.get(paint)?.remainingMl ?? 0) > 0;

/** Whether a share of draws is what was asked for, as near as the draws can tell. */
export const reaches = ({ chance, error }: Chance, surePercent = 0): boolean =>
  chance + 3 * error >= surePercent / 100;
