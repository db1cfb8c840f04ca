// Solver: an integer program through HiGHS. In: columns, rows, limits. Out: values, and whether they are proved best.
import { cachedDataVersionTag, setFlagsFromString } from 'node:v8';
import type { CallbackData, Highs, Model, ModelData } from 'highs';
import type { Found, IntegerProgram, Limits, OnProgress, Solution, Solve } from './integer-program.js';
import { clockFor, paceOf } from './pace.js';

let loading: Promise<Highs> | undefined;

/**
 * V8 recompiles hot WebAssembly in the background, which for searches of less than some seconds costs more than it
 * gives: with this budget it waits until a search is long. It changes no result.
 */
const patientBudget = 300_000_000;

/** V8's own: in Node 20, and in 22 and 24. */
const ownBudgets = [1_800_000, 13_000_000];

/** Loads the solver once, when it is first needed. */
function loadSolver(): Promise<Highs> {
  loading ??= openSolver();
  return loading;
}

/**
 * The budget is read while the solver is made. Afterwards V8's own is put back, by the mark of all flags together: the
 * flags are those of the whole process, and code that was compiled under others is of no use to the next run.
 */
async function openSolver(): Promise<Highs> {
  const solver = await import('highs');
  const flags = cachedDataVersionTag();
  setBudget(patientBudget);
  try {
    // The package's types describe its CommonJS form; the module that Node imports is the loader itself.
    return await (solver.default as unknown as () => Promise<Highs>)();
  } finally {
    ownBudgets.some((budget) => {
      setBudget(budget);
      return cachedDataVersionTag() === flags;
    });
  }
}

const setBudget = (budget: number): void => setFlagsFromString(`--wasm-tiering-budget=${budget}`);

/**
 * Solves in this thread. The gap settings are zero, since the solver's own would call a plan within a ten
 * thousandth of the best optimal. Integer values come back rounded.
 */
export const solveProgram: Solve = async (program, limits, onProgress) => {
  const highs = await loadSolver();
  return highs.withModel(modelOf(program, highs), (model) =>
    run(highs, model, { program, limits, onProgress }),
  );
};

/** Programs of fewer columns are solved sooner than they are simplified. */
const smallColumns = 100;

/** Looks for better solutions less than it would (its default effort is 0.05), and not in programs of their own. */
const forProof = {
  mip_heuristic_effort: 0.02,
  mip_heuristic_run_rins: false,
  mip_heuristic_run_rens: false,
};

interface Job {
  readonly program: IntegerProgram;
  readonly limits: Limits;
  readonly onProgress: OnProgress | undefined;
}

function run(highs: Highs, model: Model, { program, limits, onProgress }: Job): Solution {
  const pace = paceOf(program);
  const mostIterations = pace.iterationsIn(limits.seconds);
  const isMip = program.columns.some(({ integer }) => integer);
  model.options.set({
    output_flag: false,
    presolve: program.columns.length < smallColumns || program.isStartNear ? 'off' : 'choose',
    ...(program.isStartNear === true ? forProof : {}),
    // It looks for a first solution at length, where one is known.
    mip_heuristic_run_feasibility_jump: program.start === undefined,
    mip_rel_gap: 0,
    mip_abs_gap: 1e-6,
    ...(isMip ? {} : { simplex_iteration_limit: mostIterations }),
    time_limit: clockFor(limits.seconds),
  });
  if (program.start !== undefined) model.setSolution({ colValue: Float64Array.from(program.start) });
  const { mipInterrupt, mipLogging } = highs.constants.callbackType;
  model.run({
    [mipInterrupt]: (event) => {
      if (Number(event.data.mip_total_lp_iterations ?? 0) >= mostIterations) event.interrupt();
    },
    ...(onProgress === undefined ? {} : { [mipLogging]: ({ data }) => void onProgress(progressOf(data)) }),
  });
  // What it may do is looked at now and then, and may be passed.
  const spent = pace.secondsOf(Number(model.info.get('simplex_iteration_count')));
  const seconds = Math.min(spent, limits.seconds);
  return { ...readSolution(highs, model, program, isMip), seconds };
}

const progressOf = (data: CallbackData): Parameters<OnProgress>[0] => ({
  best: data.mip_primal_bound ?? Number.POSITIVE_INFINITY,
  bound: data.mip_dual_bound ?? Number.NEGATIVE_INFINITY,
  seconds: data.running_time ?? 0,
});

function readSolution(highs: Highs, model: Model, { columns }: IntegerProgram, isMip: boolean): Found {
  const status = model.getModelStatus();
  const { optimal, infeasible, unboundedOrInfeasible } = highs.constants.modelStatus;
  if (status === infeasible || status === unboundedOrInfeasible) return { state: 'impossible' };
  const feasible = Number(model.info.get('primal_solution_status')) === 2;
  if (!feasible) return { state: 'none found' };
  const values = [...model.getSolution().colValue].map((value, index) =>
    columns[index]?.integer ? Math.round(value) + 0 : value,
  );
  const bound = Number(isMip ? model.info.get('mip_dual_bound') : model.getObjectiveValue());
  return { state: status === optimal ? 'proved' : 'not proved', values, bound };
}

/** The program as sparse columns. */
function modelOf({ columns, rows }: IntegerProgram, highs: Highs): ModelData {
  const infinite = (value: number): number =>
    Number.isFinite(value) ? value : Math.sign(value) * highs.infinity;
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { terms } of rows) {
    for (const [column, coefficient] of terms) {
      indices.push(column);
      values.push(coefficient);
    }
    starts.push(indices.length);
  }
  return {
    sense: highs.constants.objectiveSense.minimize,
    numCols: columns.length,
    numRows: rows.length,
    colCost: Float64Array.from(columns, ({ cost }) => cost),
    colLower: Float64Array.from(columns, ({ lower }) => infinite(lower)),
    colUpper: Float64Array.from(columns, ({ upper }) => infinite(upper)),
    rowLower: Float64Array.from(rows, ({ lower }) => infinite(lower)),
    rowUpper: Float64Array.from(rows, ({ upper }) => infinite(upper)),
    matrix: {
      format: 'csr',
      numCols: columns.length,
      numRows: rows.length,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(indices),
      values: Float64Array.from(values),
    },
    integrality: Int32Array.from(columns, ({ integer }) => (integer ? 1 : 0)),
  };
}
