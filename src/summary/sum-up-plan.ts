// Summary: all that report and plan.json say beyond the stages' own results. In: these results. Out: sums and comparisons.
import type { PlanResults } from '../model/plan.js';
import type { Summary } from '../model/summary.js';
import { judgeLasting } from './judge-lasting.js';
import { judgePromise } from './judge-promise.js';
import { lookAhead } from './look-ahead.js';
import { sumArmies } from './sum-armies.js';
import { sumBench } from './sum-bench.js';
import { sumBudget } from './sum-budget.js';
import { sumChoices } from './sum-choices.js';
import { sumCoats } from './sum-coats.js';
import { sumColours } from './sum-colours.js';
import { sumCosts } from './sum-costs.js';
import { sumDoubts } from './sum-doubts.js';
import { sumJobs } from './sum-jobs.js';
import { sumMoney } from './sum-money.js';
import { sumOrder } from './sum-order.js';
import { sumShelf } from './sum-shelf.js';
import { sumStairs } from './sum-stairs.js';
import { sumWork } from './sum-work.js';
import { trustTime } from './trust-time.js';

/** Reckons nothing that a stage knows: it adds up, compares and ranks. */
export function sumUpPlan(results: PlanResults): Summary {
  const { estimate, costs, ranges, order, restock, learned, assumptions, defaults } = results;
  const work = sumWork(estimate);
  const buying = sumChoices(results);
  const shelf = {
    ...results,
    assumptions: new Map(assumptions.map((one) => [one.name, one])),
    asLikely: buying.chosen?.asLikely ?? [],
  };
  const ofOrder = sumOrder(order, shelf);
  const ofShelf = { ...shelf, asLikely: [], taken: ofOrder.alike };
  const sums = {
    order: ofOrder,
    restock: restock === undefined ? undefined : sumOrder(restock, ofShelf),
  };
  const [first] = [...estimate.units].sort(
    (a, b) => a.unit.priority - b.unit.priority || a.unit.row - b.unit.row,
  );
  return {
    work,
    jobs: sumJobs(estimate.jobs.keys(), costs.units),
    costs: sumCosts(results),
    money: sumMoney(results),
    armies: sumArmies(results),
    shelf: sumShelf(results.stock),
    lasting: judgeLasting({ ...results, work }),
    ahead: lookAhead(results),
    promise: judgePromise(results),
    buying,
    ...sums,
    cashMinor: order.totalMinor + (restock?.totalMinor ?? 0),
    pots: sums.order.pots + (sums.restock?.pots ?? 0),
    stairs: sumStairs(results.stairs, order, results.figureCount),
    budget: sumBudget(results.budget),
    coats: sumCoats({ ...results, jobs: estimate.jobs.keys() }),
    colours: sumColours(results),
    doubts: sumDoubts(ranges, learned),
    bench: sumBench(shelf),
    timeTrust: trustTime(estimate.jobs, assumptions),
    firstUnit: first?.unit,
    isPostageKnown: !defaults.some(({ sheet, column }) => sheet === 'shops' && column === 'postage'),
  };
}
