// Report view: the contract between plan and page. Every text here is plain text, rounded and worded; templates and
// charts add nothing but drawing. Lengths of drawn things are shares (1 = the whole, or what the army needs).

import type { BudgetView } from './budget-view.js';
import type { CoatsView } from './coats-view.js';
import type { CostsView, LowHigh } from './cost-view.js';
import type { InsteadView } from './instead-view.js';
import type { ProgressView } from './progress-view.js';
import type { PromiseView } from './promise-view.js';
import type { ShoppingView } from './shopping-view.js';
import type { StairsView } from './stairs-view.js';
import type { TimeView } from './time-view.js';
import type { TrustView } from './trust-view.js';
import type { WeighView } from './weigh-view.js';

export interface ReportView {
  /** Language of the page: the locale where it is English, else `en`, for the words are English. */
  readonly lang: string;
  /** How the page writes numbers, for whoever reads them back out of it. */
  readonly numerals: Numerals;
  readonly title: string;
  /** Facts under the title: units, paints, date, currency. */
  readonly facts: readonly string[];
  /** The paints of the army in the order in which they first go on. */
  readonly palette: PaletteView;
  readonly answer: readonly [AnswerFigure, AnswerFigure, AnswerFigure];
  /** Undefined where no budget was given. */
  readonly budget: BudgetView | undefined;
  readonly pots: PotsView;
  readonly shopping: ShoppingView;
  /** Undefined for an army that needs no paint any more. */
  readonly promise: PromiseView | undefined;
  readonly weigh: WeighView;
  /** Undefined where nothing is to be bought and nothing is swapped. */
  readonly instead: InsteadView | undefined;
  /** Undefined for an army of nobody. */
  readonly stairs: StairsView | undefined;
  readonly costs: CostsView;
  /** Undefined where nothing is done yet. */
  readonly progress: ProgressView | undefined;
  /** Undefined where nothing is said of coats, and no primers are compared. */
  readonly coats: CoatsView | undefined;
  readonly use: UseView;
  /** Undefined where nothing is left to be painted. */
  readonly time: TimeView | undefined;
  readonly ground: GroundView;
  readonly cautions: readonly CautionView[];
}

export interface Numerals {
  readonly decimal: string;
  /** The digits from 0 to 9. */
  readonly digits: string;
}

/** One of the three figures that the page opens with; the console prints the same. */
export interface AnswerFigure {
  readonly question: string;
  readonly figure: string;
  readonly detail: string;
  readonly trust: TrustView;
}

export interface PaletteView {
  readonly says: string;
  readonly bands: readonly { readonly paint: string; readonly hex: string; readonly share: number }[];
}

/** What stands where: a label and its text. */
export interface Amounts {
  readonly label: string;
  readonly text: string;
}

export interface PotsView {
  readonly lead: string;
  /** What low and high mean. */
  readonly ranges: string;
  /** By state, the worst first; states without a paint are left out. */
  readonly groups: readonly PotGroup[];
}

export interface PotGroup {
  /** For looks: `none owned`, `short`, `tight`, `enough`, `low`. */
  readonly state: string;
  readonly title: string;
  /** What the state means, said once. */
  readonly meaning: string;
  /** What the line across each bar stands for. */
  readonly line: 'needed' | 'keep level';
  readonly paints: readonly PotRow[];
}

export interface PotRow {
  readonly paint: string;
  readonly runningLow: boolean;
  readonly amounts: readonly Amounts[];
  readonly bar: PotBar;
  readonly trust: TrustView;
}

/** A paint's bar. Shares are of the line: 1 is what the army needs (or the keep level). */
export interface PotBar {
  /** Unique within the page, letters, digits and hyphens only. */
  readonly id: string;
  /** `#rrggbb`, or '' where no sheet gives the colour. */
  readonly hex: string;
  readonly line: 'needed' | 'keep level';
  readonly hereShare: number;
  /** On its way, beyond what is here. */
  readonly orderedShare: number;
  /** What is to be bought, beyond what is here and on its way. */
  readonly buyShare: number;
  /** Low and high of the need, and of what is here and on its way; undefined where they are exact. */
  readonly need: LowHigh | undefined;
  readonly have: LowHigh | undefined;
  /** Where the paint must reach to stay at its keep level; undefined: not ticked. */
  readonly keepShare: number | undefined;
  readonly title: string;
  readonly says: string;
}

export interface UseView {
  readonly lead: string;
  /** Of the table by zone and layer. */
  readonly trust: TrustView;
  readonly layers: readonly string[];
  readonly zones: readonly UseZone[];
  readonly layerTotals: readonly string[];
  readonly total: string;
  /** What the paint of each layer costs; the layers add up to `cost`, and so do the zones and the paints. */
  readonly layerCosts: readonly string[];
  readonly cost: string;
  readonly paints: readonly UsePaint[];
  readonly notPainted: readonly string[];
}

export interface UseZone {
  readonly zone: string;
  /** One for each layer; `text` is '' where the zone gets none. `share` is of the largest in its layer. */
  readonly cells: readonly { readonly text: string; readonly share: number }[];
  readonly total: string;
  readonly cost: string;
}

export interface UsePaint {
  readonly paint: string;
  readonly hex: string;
  readonly whole: string;
  /** Still to be put out, and where it goes; the three parts add up to it. */
  readonly remaining: string;
  /** Low to high of it; '' where nothing is still to be put out. */
  readonly remainingRange: string;
  readonly onFigure: string;
  readonly lost: string;
  readonly leftover: string;
  /** Of what is still to be put out; '' where nothing is. */
  readonly cost: string;
  readonly bar: UseBar;
  readonly trust: TrustView;
}

export interface UseBar {
  readonly id: string;
  readonly hex: string;
  readonly title: string;
  readonly says: string;
  readonly onFigureShare: number;
  readonly lostShare: number;
}

export interface GroundView {
  readonly lead: string;
  readonly marks: readonly { readonly mark: string; readonly meaning: string }[];
  readonly groups: readonly { readonly title: string; readonly rows: readonly AssumptionRow[] }[];
  readonly defaults: readonly { readonly where: string; readonly rows: string; readonly meaning: string }[];
  readonly warnings: readonly string[];
}

export interface AssumptionRow {
  readonly id: string;
  readonly name: string;
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly unit: string;
  readonly mark: string;
  /** `weighed (n = 3)`: the mark, and from how many weighings it comes. */
  readonly markText: string;
  readonly source: string;
  /** Low and high as shares of likely; undefined where the value is held as exact. */
  readonly spread: LowHigh | undefined;
}

export interface CautionView {
  readonly about: string;
  readonly says: readonly string[];
}
