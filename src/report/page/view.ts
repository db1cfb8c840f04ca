// Report view: the plan as the page shows it. In: a plan, the problems of its sheets. Out: a ReportView, plain data;
// all rounding and wording happens in this folder.
import type { Plan } from '../../model/plan.js';
import type { Problem } from '../../model/problem.js';
import { viewReorder } from '../reorder/view-reorder.js';
import { type AnswerView, viewAnswer } from '../sections/answer/view.js';
import { type ArmiesView, viewArmies } from '../sections/armies/view.js';
import { type BudgetView, viewBudget } from '../sections/budget/view.js';
import { type BuyingView, viewBuying } from '../sections/buying/view.js';
import { type CautionsView, viewCautions } from '../sections/cautions/view.js';
import { type CoatsView, viewCoats } from '../sections/coats/view.js';
import { type CostsView, viewCosts } from '../sections/costs/view.js';
import { type GroundView, viewGround } from '../sections/ground/view.js';
import { type InsteadView, viewInstead } from '../sections/instead/view.js';
import { type MoneyView, viewMoney } from '../sections/money/view.js';
import { type PotsView, viewPots } from '../sections/pots/view.js';
import { type ProgressView, viewProgress } from '../sections/progress/view.js';
import { type SheetsView, viewSheets } from '../sections/sheets/view.js';
import { type ShoppingView, viewShopping } from '../sections/shopping/view.js';
import { type StairsView, viewStairs } from '../sections/stairs/view.js';
import { type TimeView, viewTime } from '../sections/time/view.js';
import { type UseView, viewUse } from '../sections/use/view.js';
import { viewWeigh, type WeighView } from '../sections/weigh/view.js';
import { viewInputs } from '../words/view-inputs.js';
import { type Numerals, wordNumerals } from '../words/word-numbers.js';
import { type PaletteView, viewPalette } from './view-palette.js';
import { type PageWords, pageWords } from './words.js';

export interface ReportView {
  /** Language of the page: the locale where it is English, else `en`, for the words are English. */
  readonly lang: string;
  /** How the page writes numbers, for whoever reads them back out of it. */
  readonly numerals: Numerals;
  /** Texts of the page around its sections. */
  readonly frame: PageWords['frame'];
  readonly title: string;
  /** Facts under the title: units, paints, date. */
  readonly facts: readonly string[];
  /** The paints of the army in the order in which they first go on. */
  readonly palette: PaletteView;
  /** Whether there are pots, and an army: sections are left out that speak of what is not there. */
  readonly has: { readonly pots: boolean; readonly army: boolean };
  /** What would bring more, a line each. */
  readonly more: readonly string[];
  readonly answer: AnswerView;
  /** Undefined where no budget was given. */
  readonly budget: BudgetView | undefined;
  readonly pots: PotsView;
  readonly shopping: ShoppingView;
  /** Undefined for an army that needs no paint any more. */
  readonly buying: BuyingView | undefined;
  readonly weigh: WeighView;
  /** Undefined where nothing is to be bought and nothing is swapped, and without pots and offers. */
  readonly instead: InsteadView | undefined;
  /** Undefined for an army of nobody. */
  readonly stairs: StairsView | undefined;
  /** Undefined where one army is planned alone. */
  readonly armies: ArmiesView | undefined;
  readonly costs: CostsView;
  /** Undefined where nothing was bought and nothing used. */
  readonly money: MoneyView | undefined;
  /** Undefined where nothing is done yet. */
  readonly progress: ProgressView | undefined;
  /** Undefined where nothing is said of coats, and no primers are compared. */
  readonly coats: CoatsView | undefined;
  readonly use: UseView;
  /** Undefined where nothing is left to be painted. */
  readonly time: TimeView | undefined;
  readonly ground: GroundView;
  /** Undefined where no sheets were read. */
  readonly sheets: SheetsView | undefined;
  /** Undefined where the plan calls for none. */
  readonly cautions: CautionsView | undefined;
}

/** Nothing is owned and nothing on offer: no colour can stand for another. */
const isBare = ({ lacking }: Plan): boolean => lacking.includes('pots') && lacking.includes('offers');

/**
 * The whole report. Only warnings of `problems` are shown, since errors stop a plan. An empty army gives a page
 * of zeros. Throws where locale or currency is none: the sheets have checked both.
 */
export function viewPlan(plan: Plan, problems: readonly Problem[]): ReportView {
  const inputs = viewInputs(plan);
  const { words, lang } = inputs;
  const texts = pageWords(words);
  return {
    lang,
    numerals: wordNumerals(words),
    frame: texts.frame,
    title: texts.title(plan),
    facts: texts.facts(plan, lang),
    has: { pots: !plan.lacking.includes('pots'), army: !plan.lacking.includes('army') },
    more: plan.lacking.map((sheet) => texts.more[sheet]),
    palette: viewPalette(plan, texts.palette),
    answer: viewAnswer(inputs),
    budget: viewBudget(inputs),
    pots: viewPots(inputs),
    shopping: viewShopping(inputs, viewReorder(plan)),
    buying: viewBuying(inputs),
    weigh: viewWeigh(inputs),
    instead: isBare(plan) ? undefined : viewInstead(inputs),
    stairs: viewStairs(inputs),
    armies: viewArmies(inputs),
    costs: viewCosts(inputs),
    money: viewMoney(inputs),
    progress: viewProgress(inputs),
    coats: viewCoats(inputs),
    use: viewUse(inputs),
    time: viewTime(inputs),
    ground: viewGround({ ...inputs, problems }),
    sheets: viewSheets(inputs),
    cautions: viewCautions(plan.cautions),
  };
}
