// Model: sums of money: what units, armies and finished figures cost, what a shelf is worth. `...Minor` is money in minor units,
// whole where it is cash.
import type { Amount, ExactMinor } from './money.js';
import type { Range } from './ranges.js';
import type { Unit } from './sheets.js';
import type { Trust } from './work.js';

/** A unit, or all units that get no row of their own. */
export interface UnitSums {
  /** Undefined for several. */
  readonly unit: Unit | undefined;
  readonly figures: number;
  readonly whole: Amount;
  /** Undefined for several units, whose ranges do not add up, and where nothing of it is in doubt. */
  readonly wholeRange: Range | undefined;
  readonly remaining: Amount;
  /** The whole less what remains. */
  readonly done: Amount;
  readonly cashMinor: number;
  /** Whole minor units, half up. */
  readonly cashPerFigureMinor: number;
  readonly figuresPrice: Amount;
}

/** Units that get a row of their own in what is read by people; the rest is summed. */
export const mostUnitRows = 1000;

/** One figure of a unit, on average. */
interface UnitFigure {
  readonly unit: string;
  readonly exactMinor: ExactMinor;
}

export interface CostSums {
  /** Of one figure, on average. */
  readonly perFigure: Amount;
  readonly perFigureRange: Range;
  /** The units whose figure costs least and most; undefined where no two differ, or one has no price. */
  readonly spread: { readonly least: UnitFigure; readonly most: UnitFigure } | undefined;
  readonly trust: Trust;
  /** The first units one by one, and in a last entry all others where there are more. */
  readonly units: readonly UnitSums[];
  readonly army: UnitSums;
  /** What the dearest figure of a unit with a row may cost at most (P90). */
  readonly dearestMinor: number;
}

/** A figure of finished units, on average. */
export interface FinishedFigure {
  readonly figure: string;
  readonly scheme: string;
  readonly figures: number;
  /** Cost of use by the estimate, and by what its paints really took; with extras. */
  readonly estimated: Amount;
  readonly really: Amount;
}

/** What one of several armies has of the plan. */
export interface ArmyShare {
  readonly army: string;
  readonly units: number;
  readonly figures: number;
  /** Of the order, postage included; the armies add up to it. */
  readonly cashMinor: number;
  /** Cost of use of all of it, and of what is still to be done. */
  readonly whole: Amount;
  readonly remaining: Amount;
  /** Paints that its remaining work needs and that run short. */
  readonly short: readonly string[];
}

export interface MoneySums {
  /** Whether anything was bought or used. */
  readonly isTold: boolean;
  /** What pots with a price hold and held: used, standing, on its way. */
  readonly paid: ExactMinor;
  readonly spentMinor: number;
  /** Those of whose paints some were measured. */
  readonly finished: readonly FinishedFigure[];
}

/** What is owned, pots on their way among it. */
export interface ShelfSums {
  readonly pots: number;
  readonly paints: number;
  /** Usable. */
  readonly haveMl: number;
  /** At what the pots cost; at least that where some have no price. */
  readonly worth: Amount;
  /** Pots without a price. */
  readonly unpriced: number;
  /** By paint, of those that are owned. */
  readonly worthOf: ReadonlyMap<string, Amount>;
}
