// The whole job on one screen: checked sheets in, plan out. Each line is a stage; a stage knows none of the others.
import { overrideAssumptions } from './assumptions/override-assumptions.js';
import { registry } from './assumptions/registry.js';
import { applySwaps } from './colour/apply-swaps.js';
import { comparePrimers } from './colour/compare-primers.js';
import { decideCoats } from './colour/decide-coats.js';
import { findInstead } from './colour/find-instead.js';
import { listCandidates } from './colour/list-candidates.js';
import { listSwaps } from './colour/list-swaps.js';
import { type Colours, openColours } from './colour/open-colours.js';
import { suggestUndercoats } from './colour/suggest-undercoats.js';
import { costArmy, costWhole } from './cost/cost-army.js';
import { pricesOfUse } from './cost/prices-of-use.js';
import { addUpDemands } from './estimate/add-up-demands.js';
import { cutArmy } from './estimate/cut-army.js';
import { estimateArmy, measureFigures, remainingNeeds } from './estimate/estimate-army.js';
import { findCautions } from './estimate/find-cautions.js';
import { listDemands, listDemandsAnew } from './estimate/list-demands.js';
import { listPastWork } from './estimate/list-past-work.js';
import { sumCoats, sumMl } from './estimate/sum-coats.js';
import { findDone } from './estimate/track-progress.js';
import type { Assumptions } from './model/assumption.js';
import { type CoatChoices, differenceBands } from './model/colour.js';
import { potsThere } from './model/follow-pots.js';
import type { Order } from './model/order.js';
import { type Lacking, lackable, type Plan, type PlanResults } from './model/plan.js';
import type { IsoDate, Sheets, Unit } from './model/sheets.js';
import type { CountedStock, PaintStock } from './model/stock.js';
import type { Estimate, Line, UnitDemand } from './model/work.js';
import type { Buying } from './order/choose-counts.js';
import { placeOrder, priceNeeds } from './order/choose-order.js';
import { climbStairs } from './order/climb-stairs.js';
import { drawFrontier } from './order/frontier/draw-frontier.js';
import type { Market } from './order/open-market.js';
import { orderRestock } from './order/order-restock.js';
import { aimOf } from './order/policy/aim-of.js';
import { type Chosen, chooseWay } from './order/policy/weigh-choices.js';
import { prepareBuying, type Search } from './order/prepare-buying.js';
import { isOnOffer, openPrices } from './order/price-buying.js';
import { sharing } from './order/share-time.js';
import { spendBudget } from './order/spend-budget.js';
import { drawArmy, drawingFor, drawLack } from './ranges/draw-army.js';
import { drawStages, stagesDrawing } from './ranges/draw-stages.js';
import { chanceMet } from './ranges/fill-shelf.js';
import { findReach } from './ranges/find-reach.js';
import { learnFromLog } from './ranges/learn/learn-from-log.js';
import { promiseRatios, scaleDemands, scaleNeeds } from './ranges/scale-to-promise.js';
import { chancesShort, sumUpArmy } from './ranges/sum-up-army.js';
import { onlyPaints, sumUpPromise } from './ranges/sum-up-promise.js';
import { compareUse } from './stock/compare-use.js';
import { judgeStock } from './stock/judge-stock.js';
import { findLacking, findMissing, findShort, haveMlOf, takeStock } from './stock/take-stock.js';
import { valueShelf } from './stock/value-shelf.js';
import { sumUpPlan } from './summary/sum-up-plan.js';
import { minutesOfLine } from './time/minutes-of-coat.js';
import { planTime } from './time/plan-time.js';
import { sumBrushMinutes } from './time/sum-brush-minutes.js';

export { registry } from './assumptions/registry.js';
export { applySwaps } from './colour/apply-swaps.js';
export { likenFigure } from './estimate/liken-figure.js';
export { stepsOfUnit } from './estimate/steps-of-unit.js';
export { potsThere } from './model/follow-pots.js';
export { holdsPaint } from './model/holds-paint.js';
export { openSolver } from './order/solver/open-solver.js';

/** How the order is searched for, what may be spent, and how many draws say how sure; each has its default. */
export interface PlanOptions extends Search {
  /** Whole minor units: what does this cash finish? Left out: no such question. */
  readonly budgetMinor?: number | undefined;
  /** Default 10,000, fewer where over 300 paints are needed. */
  readonly draws?: number | undefined;
  /** The part of the army to plan for; left out: all of it. What weighings teach comes of all of it in any case. */
  readonly army?: Sheets['army'] | undefined;
  /** Told what comes next, before it begins. */
  readonly onStage?: ((stage: PlanStage) => void) | undefined;
  /** Told the army's order once it is found; what follows does not change it. */
  readonly onOrder?: ((order: Order) => void) | undefined;
}

/** What takes long, in the order in which it comes; `beside`: all questions that come after the order, side by side. */
export const planStages = ['draws', 'order', 'beside'] as const;
export type PlanStage = (typeof planStages)[number];

/** Units with nothing left to do. */
export const findDoneUnits = (sheets: Sheets): ReadonlySet<Unit> => findDone(applySwaps(sheets));

/** Plans an army on a day: how much paint, what is missing, what to buy, what it costs, how sure. Repeatable. */
export async function planArmy(given: Sheets, today: IsoDate, options: PlanOptions = {}): Promise<Plan> {
  const all = { ...applySwaps(given), pots: potsThere(given) };
  const { settings, paints } = all;
  const colours = await openColours(paints.values());
  const assumed = { colours, assumptions: overrideAssumptions(registry, settings.overrides) };
  const estimateFirst = () => estimateWork(all, assumed).estimate;
  const { beliefs, learned } = learnFromLog({ ...all, ...assumed, pots: given.pots, estimateFirst });
  const sheets = { ...all, army: options.army ?? all.army };
  const { assumptions } = beliefs;
  const { estimate, coats } = estimateWork(sheets, { colours, assumptions });

  const shown = { colours, assumptions, estimate };
  const takeShelf = openShelf(given, all, { ...shown, army: options.army });
  const counted = takeShelf(sheets, estimate.needs);
  const { drawn, fresh, work } = drawAll({ estimate, stock: counted, beliefs }, options);

  const market = { offers: sheets.offers, shops: sheets.shops, assumptions };
  const buying = prepareBuying(options);
  const canBuy = isOnOffer(market);
  const freshOffered = onlyPaints(fresh, canBuy);
  const aim = aimOf(settings);
  options.onStage?.('order');
  const { order, toBuyMl, weighAll } = await chooseWay({
    ...{ aim, drawn, work, market, buying, againMinor: settings.againMinor, likelyMl: findLacking(counted) },
    metBy: (found) => chanceMet(freshOffered, found),
  });
  options.onOrder?.(order);
  options.onStage?.('beside');
  const stock = judgeStock(counted, { chancesShort: chancesShort(drawn), toBuyMl });
  const demands = listDemands(estimate, assumptions);
  const table: Table = { ...shown, sheets, market, buying, coats, demands, stock, takeShelf };
  const lacking = listLacking(all);
  const isRestocking = settings.restock === 'shelf' || lacking.includes('army');
  const ordered = { order, weighAll, isRestocking, marginOf: promiseRatios(toBuyMl, counted) };
  const beside = await askBeside(table, ordered, options);
  const { choices, restock } = beside;
  const promised = sumUpPromise({ aim, order, choices, drawn, fresh, canBuy });
  const costs = costArmy(sheets, { estimate, stock, order, restock });
  const buyPerMl = openPrices(order, market, stock);
  const ranges = sumUpArmy({ drawn, estimate, assumptions, buyPerMl, ...pricesOfUse(costs) });

  const results: PlanResults = {
    ...{ settings, paints, estimate, demands, stock, order, aim },
    ...{ ...beside, costs, ranges, promised, learned, reachMl: findReach(work) },
    ...{ swaps: listSwaps(given, colours), time: planTime(estimate, assumptions, all.army) },
    ...{ date: settings.date ?? today, figureCount: countFigures(sheets) },
    money: tellMoney({ ...all, pots: given.pots }, { stock, estimate }, assumptions),
    cautions: findCautions(estimate, sheets, [order, restock]),
    assumptions: [...assumptions.values()],
    ...{ defaults: sheets.defaults, read: sheets.read, lacking },
  };
  return { ...results, summary: sumUpPlan(results) };
}

/** What the army may lack, once more to check promises by, and as it is painted unit by unit. */
function drawAll(inputs: Parameters<typeof drawArmy>[0], { draws, onStage }: PlanOptions) {
  onStage?.('draws');
  const paints = inputs.estimate.needs.size;
  const drawing = drawingFor(paints, draws);
  return {
    drawn: drawArmy(inputs, drawing),
    fresh: drawLack(inputs, { ...drawing, seed: drawing.seed + 1 }),
    work: drawStages(inputs, stagesDrawing(paints)),
  };
}

/** How each paint of the shelf stands on a day, at the likely values before any weighing. */
export async function takeShelfNow(given: Sheets): Promise<CountedStock[]> {
  const all = { ...applySwaps(given), pots: potsThere(given) };
  const assumptions = overrideAssumptions(registry, all.settings.overrides);
  const colours = await openColours(all.paints.values());
  const { estimate } = estimateWork(all, { colours, assumptions });
  return openShelf(given, all, { colours, assumptions, estimate, army: undefined })(all, estimate.needs);
}

function tellMoney(
  sheets: Sheets,
  shelf: Pick<Table, 'stock' | 'estimate'>,
  assumptions: Assumptions,
): Plan['money'] {
  const useBeside = compareUse(sheets, shelf, assumptions);
  return { ...valueShelf(sheets, shelf.stock, assumptions), useBeside };
}

/** What the further questions are asked of, once the army is planned. */
interface Table {
  readonly sheets: Sheets;
  readonly colours: Colours;
  readonly assumptions: Assumptions;
  readonly market: Market;
  readonly buying: Buying;
  readonly estimate: Estimate;
  readonly coats: CoatChoices;
  readonly demands: readonly UnitDemand[];
  readonly stock: readonly PaintStock[];
  readonly takeShelf: TakeShelf;
}

/** The shelf against some needs, whatever paints are changed. */
type TakeShelf = (sheets: Sheets, needs: Estimate['needs']) => CountedStock[];

/** Pots as they were given, since the log moves them; units that are not planned for have lowered them all the same. */
function openShelf(
  { pots }: Sheets,
  all: Sheets,
  given: Pick<Table, 'colours' | 'assumptions' | 'estimate'> & Pick<PlanOptions, 'army'>,
): TakeShelf {
  const { assumptions, army } = given;
  const isPart = army !== undefined && all.log.length > 0;
  const past = listPastWork(
    all.log,
    isPart ? estimateWork(all, given).estimate : given.estimate,
    assumptions,
  );
  return (sheets, needs) => takeStock({ ...sheets, pots, past }, needs, assumptions);
}

/** Promised need over likely need of a paint. */
type MarginOf = (paint: string) => number;

/** Areas first, then the coats that colours ask for on them, then the paint. */
function estimateWork(sheets: Sheets, { colours, assumptions }: Pick<Table, 'colours' | 'assumptions'>) {
  const figures = measureFigures(sheets, assumptions);
  const coats = decideCoats(sheets, { areas: figures, colours, assumptions });
  return { estimate: estimateArmy(sheets, assumptions, { figures, coats }), coats };
}

interface Ordered extends Pick<Chosen, 'order' | 'weighAll'> {
  readonly marginOf: MarginOf;
  readonly isRestocking: boolean;
}

/** What follows the order and does not change it, side by side: other ways to buy, the shelf, more figures and fewer, other colours. */
async function askBeside(
  table: Table,
  { order, weighAll, marginOf, isRestocking }: Ordered,
  options: PlanOptions,
) {
  const { stock, market, buying } = table;
  const ofShelf = { stock, army: order, marginOf };
  const [choices, restock, otherSizes, otherColours] = await Promise.all([
    weighAll(),
    isRestocking ? orderRestock(ofShelf, market, sharing('shelf', buying)) : undefined,
    askOtherSizes(table, marginOf, options),
    askColours(table, marginOf),
  ]);
  return { choices, restock, ...otherSizes, ...otherColours };
}

/** More figures and fewer: the staircase, and what a budget finishes, at the promise's margin. */
async function askOtherSizes(table: Table, marginOf: MarginOf, { budgetMinor }: PlanOptions) {
  const { sheets, assumptions, market, buying, estimate, stock } = table;
  const demands = scaleDemands(table.demands, marginOf);
  const demandsAnew = scaleDemands(listDemandsAnew(estimate, assumptions), marginOf);
  const needsAt = addUpDemands([...demands, ...demandsAnew]);
  const toBuyAt = (figures: number) => findMissing(needsAt(figures), stock);
  const again = sharing('again', buying);
  const planAgain = (finished: readonly number[]) => {
    const fewer = { ...sheets, army: cutArmy(demands, finished, sheets.army) };
    const needs = remainingNeeds(estimateWork(fewer, table).estimate);
    return placeOrder(findMissing(scaleNeeds(needs, marginOf), stock), market, again);
  };
  const spending = { demands, haveMl: haveMlOf(stock), market, buying, planAgain };
  const [stairs, budget] = await Promise.all([
    climbStairs({ toBuyAt, figures: countFigures(sheets), market, buying }),
    spendBudget(budgetMinor, spending),
  ]);
  return { stairs, budget };
}

/** Other colours: beneath, as primer, instead of what is missing, and cash against colour difference. */
async function askColours(table: Table, marginOf: MarginOf) {
  const { sheets, colours, assumptions, market, buying, estimate, coats, stock } = table;
  const { paints } = sheets;
  const palette = { paints, colours, assumptions };
  const minutesOf = (line: Line) => minutesOfLine(line, assumptions) * line.figures;
  const undercoats = suggestUndercoats(sheets, {
    ...palette,
    choices: coats,
    jobs: estimate.jobs,
    minutesOf,
  });
  const pricing = { ...table, buying: sharing('primers', buying) };

  const haveMl = haveMlOf(stock);
  const canBuy = isOnOffer(market);
  const promised = scaleNeeds(remainingNeeds(estimate), marginOf);
  const needs = [...promised].flatMap(([paint, ml]) => (ml > 0 ? [{ paint, ml }] : []));
  const atHand = [...paints.keys()].filter((paint) => haveMl.has(paint) || canBuy(paint));
  const reach = { needed: promised.keys(), atHand, limit: differenceBands.other };
  const candidates = listCandidates(reach, palette);
  const [primers, frontier] = await Promise.all([
    comparePrimers(sheets, (changed) => tryPrimer(changed, pricing)),
    drawFrontier({ needs, haveMl, candidates, market, buying }),
  ]);
  return { undercoats, primers, instead: findInstead(stock, palette), frontier };
}

/** The whole army with another primer, as far as primers are compared. */
async function tryPrimer(changed: Sheets, { market, buying, ...table }: Table) {
  const { assumptions, takeShelf } = table;
  const estimate = changed === table.sheets ? table.estimate : estimateWork(changed, table).estimate;
  const stock = takeShelf(changed, estimate.needs);
  const order = await priceNeeds(findShort(stock), market, buying);
  const useCost = costWhole(changed, { estimate, stock, order });
  const minutes = sumBrushMinutes(estimate, assumptions);
  return { coats: sumCoats(estimate), ml: sumMl(estimate), useCost, minutes };
}

/** Without an army there is only the shelf to speak of; without pots all is from scratch. */
const listLacking = (sheets: Sheets): Lacking[] => lackable.filter((sheet) => sheets[sheet].length === 0);

const countFigures = ({ army }: Sheets): number => army.reduce((total, { count }) => total + count, 0);
