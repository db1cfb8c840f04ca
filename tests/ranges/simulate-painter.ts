// Ranges tests: a painter by chance. In: a seed, what is weighed. Out: a true painter drawn from the registry, the log that
// such a painter writes, and what the tool then believes.
import { assume, densityName, likely, usableShare } from '../../src/assumptions/look-up.js';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { Assumptions } from '../../src/model/assumption.js';
import type { Drawing } from '../../src/model/draws.js';
import { rangeOf } from '../../src/model/quantiles.js';
import type { Range } from '../../src/model/ranges.js';
import type { LogRow, Sheets, Unit } from '../../src/model/sheets.js';
import { drawArmy, openArmy } from '../../src/ranges/draw-army.js';
import { drawNormals } from '../../src/ranges/draw-factors.js';
import { learnFromLog } from '../../src/ranges/learn/learn-from-log.js';
import { isExact, twoPieceOf, valueAt } from '../../src/ranges/two-piece.js';
import { makeFigure, makePaint, makePot, makeSheets, makeStep, makeUnit } from '../make-sheets.js';

/** The watch is weighed as it is painted, the rest is still to come. */
const rest = makeUnit({ unit: 'rest', row: 3, count: 30, priority: 2 });

const steps = [
  makeStep({ step: 1, layer: 'primer', paint: 'Chalk' }),
  makeStep({ step: 2, layer: 'base coat', paint: 'Slate' }),
  makeStep({ step: 3, layer: 'wash', paint: 'Shade' }),
];

/** A primer from a can, a base coat, a wash; or some of them. */
function workWith(paints: readonly string[]): Sheets {
  return makeSheets({
    figures: [makeFigure({ kit: [{ item: 'weapon', count: 1 }] })],
    paints: [makePaint({ paint: 'Shade', kind: 'wash' }), makePaint({ paint: 'Chalk', kind: 'primer' })],
    steps: steps.filter((step) => step.paints.some(({ paint }) => paints.includes(paint))),
    pots: [makePot({ paint: 'Chalk', container: 'can', sizeMl: 400 })],
    army: [makeUnit({ unit: 'watch', count: 1000, batch: 20 }), rest],
  });
}

const exactly = (
  assumptions: Assumptions,
  name: string,
  value: number,
): [string, ReturnType<typeof assume>] => [
  name,
  { ...assume(assumptions, name), low: value, likely: value, high: value },
];

/** Assumptions with some values held as exact. */
export const holdExact = (assumptions: Assumptions, values: Readonly<Record<string, number>>): Assumptions =>
  new Map([
    ...assumptions,
    ...Object.entries(values).map(([name, value]) => exactly(assumptions, name, value)),
  ]);

/** A painter, figures and paints drawn from what is believed of them; each value is then exact. */
export function drawTruth(seed: number, believed: Assumptions = registry): Assumptions {
  return new Map(
    [...believed.values()].map((one) => {
      const piece = twoPieceOf(one);
      if (isExact(piece)) return [one.name, one];
      return exactly(
        believed,
        one.name,
        valueAt(piece, drawNormals(`truth of ${one.name}`, { draws: 1, seed })[0] ?? 0),
      );
    }),
  );
}

interface Weighed {
  /** Paints weighed in turn. */
  readonly paints: readonly string[];
  readonly figures: number;
  readonly rows: number;
  readonly scaleErrorG?: number;
}

/** A log row, and what was truly used. */
export type TrueRow = LogRow & { readonly trueMl: number };

/** Each row is a batch: what the formula gives at the truth, give or take a tenth, on a scale read twice. */
export function keepLog(seed: number, truth: Assumptions, weighed: Weighed): TrueRow[] {
  const { paints, figures, rows, scaleErrorG = likely(registry, 'error of a scale') } = weighed;
  const chance = drawNormals('weighings', { draws: 3 * rows, seed });
  const batch: Unit = makeUnit({ count: figures, batch: figures });
  const work = workWith(paints);
  const [job] = estimateArmy({ ...work, army: [batch] }, truth).jobs.keys();
  const lines = job?.lines ?? [];
  const batches = likely(registry, 'difference between batches') / 100;
  return Array.from({ length: rows }, (_, at) => {
    const [ofBatch = 0, ofBefore = 0, ofAfter = 0] = chance.subarray(3 * at);
    const paint = paints[at % paints.length] ?? '';
    const line = lines.find((one) => one.paint === paint);
    const trueMl = (line?.putOutMl ?? 0) * (1 + batches * ofBatch);
    const known = work.paints.get(paint) ?? makePaint({ paint });
    const isCan = paint === 'Chalk';
    // Propellant leaves a can with the paint.
    const density =
      likely(truth, densityName(known, isCan ? 'can' : 'dropper')) / (isCan ? usableShare(truth, 'can') : 1);
    return {
      ...{ row: at + 2, date: '2026-03-01', paint, unit: 'watch', step: line?.step ?? 0, figures, trueMl },
      beforeG: 300 + scaleErrorG * ofBefore,
      afterG: 300 - trueMl * density + scaleErrorG * ofAfter,
    };
  });
}

interface Believing {
  readonly paints: readonly string[];
  readonly drawing?: Drawing;
  /** Before the log. */
  readonly believed?: Assumptions;
}

/** What is believed after a log, and the need of each paint for the watch and the rest as if all were still to be done. */
export function believe(log: readonly LogRow[], { paints, drawing, believed = registry }: Believing) {
  const work = workWith(paints);
  const logged: Sheets = { ...work, log };
  const estimateFirst = () => estimateArmy(logged, believed);
  const { beliefs, learned } = learnFromLog({ ...logged, assumptions: believed, estimateFirst });
  const estimate = estimateArmy(work, beliefs.assumptions);
  const stock = paints.map((paint) => emptyStock(paint));
  const inputs = { estimate, stock, beliefs };
  const drawn = drawArmy(inputs, drawing ?? { draws: 200, seed: 1 });
  const columns = openArmy(inputs, drawn.drawing).work.map((draw) => draw());
  const needs = new Map(columns.map(({ paint, needMl }) => [paint, rangeOf(needMl)]));
  return { beliefs, learned, estimate, drawn, needs };
}

/** The shelf does not matter here. */
const emptyStock = (paint: string) => ({
  ...{ paint, pots: [], needMl: 0, haveMl: 0, orderedMl: 0, leftAfterMl: 0, toBuyMl: 0, keepMl: 0 },
  ...({ runningLow: false, mark: 'yours' } as const),
});

/** What the work truly needs of a paint, ml. */
export const trueNeed = (truth: Assumptions, paint: string): number =>
  estimateArmy(workWith([paint]), truth).needs.get(paint)?.remainingMl ?? 0;

export const logWidth = ({ low, high }: Range): number => Math.log(high / low);
