// Bench: the order against the bare solver on the same matrix. In: seeded markets, the sample. Out: rows of tables.
import { spawnSync } from 'node:child_process';
import { execPath } from 'node:process';
import loadSolver from 'highs';
import { registry } from '../../.halfpot/modules/assumptions/registry.js';
import { cheapestCounts } from '../../.halfpot/modules/order/choose-counts.js';
import { findFirstOrder } from '../../.halfpot/modules/order/first-order.js';
import { findHolders, listWares } from '../../.halfpot/modules/order/list-wares.js';
import { prepareBuying } from '../../.halfpot/modules/order/prepare-buying.js';
import { solveProgram } from '../../.halfpot/modules/order/solver/solve-program.js';
import { costOfCounts } from '../../.halfpot/modules/order/write-order.js';
import { drawMarket } from '../order/draw-market.mjs';

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

async function timeOf(work) {
  const started = performance.now();
  const result = await work();
  return { ms: performance.now() - started, result };
}

/** The program as the solver's own LP text, solved with nothing of ours around it but the greedy start. */
function solveBare(highs, { columns, rows, start }) {
  const infinite = (value) => (Number.isFinite(value) ? value : Math.sign(value) * highs.infinity);
  const starts = [0];
  const terms = rows.flatMap((row) => {
    starts.push(starts.at(-1) + row.terms.length);
    return row.terms;
  });
  const model = highs.createModel({
    sense: highs.constants.objectiveSense.minimize,
    numCols: columns.length,
    numRows: rows.length,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(({ lower }) => lower),
    colUpper: columns.map(({ upper }) => infinite(upper)),
    rowLower: rows.map(({ lower }) => infinite(lower)),
    rowUpper: rows.map(({ upper }) => infinite(upper)),
    matrix: {
      format: 'csr',
      numCols: columns.length,
      numRows: rows.length,
      starts,
      indices: terms.map(([column]) => column),
      values: terms.map(([, coefficient]) => coefficient),
    },
    integrality: Int32Array.from(columns, () => 1),
  });
  model.options.set({
    output_flag: false,
    mip_rel_gap: 0,
    mip_abs_gap: 1e-6,
    mip_heuristic_run_feasibility_jump: false,
    time_limit: 60,
  });
  model.setSolution({ colValue: Float64Array.from(start) });
  model.run();
  const cost = Math.round(model.getObjectiveValue());
  model.dispose();
  return cost;
}

async function proveOne(highs, seed) {
  const { needs, ...shelves } = drawMarket(seed, { paints: 300, offers: 440, shops: 5 });
  const market = { ...shelves, assumptions: registry };
  let program;
  const solve = (asked, limits) => {
    program = asked;
    return solveProgram(asked, limits);
  };
  const buying = prepareBuying({ solve, seconds: 60 });
  const runs = [];
  for (let run = 0; run < 3; run++) {
    const ours = await timeOf(() => cheapestCounts(needs, market, buying));
    const bare = await timeOf(() => solveBare(highs, program));
    runs.push({ ours, bare });
  }
  const { totalMinor, aboveBestMinor } = runs[0].ours.result;
  const bareMinor = runs[0].bare.result;
  if (aboveBestMinor !== 0 || bareMinor !== totalMinor) {
    console.error(
      `seed ${seed}: ${totalMinor}, ${aboveBestMinor} open, against ${bareMinor} of the bare solver`,
    );
  }
  const least = (of) => Math.min(...runs.map((run) => run[of].ms));
  const wares = listWares(needs, market);
  const first = findFirstOrder(
    needs,
    { wares, holders: findHolders(wares), held: wares.map(() => 0) },
    market,
  );
  const gap = costOfCounts(wares, first, market) / totalMinor - 1;
  return { ours: least('ours'), bare: least('bare'), gap };
}

/** 12 markets of 300 paints, 440 offers, 5 shops: to proof, and the bare solver on the same matrix. */
export async function benchProofs() {
  const highs = await loadSolver();
  await proveOne(highs, 100);
  const runs = [];
  for (let seed = 1; seed <= 12; seed++) runs.push(await proveOne(highs, seed));
  const sum = (of) => runs.reduce((total, run) => total + run[of], 0);
  return {
    seconds: runs.map(({ ours }) => ours / 1000),
    overhead: sum('ours') / sum('bare') - 1,
    firstGap: median(runs.map(({ gap }) => gap)),
    worstFirstGap: Math.max(...runs.map(({ gap }) => gap)),
  };
}

/** Markets of 600 paints and 1,000 offers, ten seconds each: how far above the best possible the order may lie. */
export async function benchLargeOrders(seeds = [1, 2, 3, 4]) {
  const gaps = [];
  for (const seed of seeds) {
    const { needs, ...shelves } = drawMarket(seed, { paints: 600, offers: 1_000, shops: 5, sets: 0.28 });
    const buying = prepareBuying({
      solve: solveProgram,
      seconds: 10,
    });
    const chosen = await cheapestCounts(needs, { ...shelves, assumptions: registry }, buying);
    gaps.push(chosen.aboveBestMinor / chosen.totalMinor);
  }
  return gaps;
}

/** The sample's order step in a fresh process, the solver's start included; medians of `runs`. */
export function benchSampleOrder(runs = 5) {
  const times = Array.from({ length: runs }, () => {
    const { stdout } = spawnSync(execPath, ['tests/bench/time-order.mjs'], { encoding: 'utf8' });
    return JSON.parse(stdout);
  });
  const middle = (of) => median(times.map((time) => time[of]));
  return { order: middle('order'), step: middle('step'), stairs: middle('stairs') };
}
