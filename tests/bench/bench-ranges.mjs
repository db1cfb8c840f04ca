// Bench: the draws against a bare loop over typed arrays, their growth, the sample's ranges. In: armies made here, the
// sample. Out: rows of a table.
import { spawnSync } from 'node:child_process';
import { execPath } from 'node:process';
import { likely as likelyOf } from '../../.halfpot/modules/assumptions/look-up.js';
import { registry } from '../../.halfpot/modules/assumptions/registry.js';
import { estimateArmy } from '../../.halfpot/modules/estimate/estimate-army.js';
import { drawArmy, openArmy } from '../../.halfpot/modules/ranges/draw-army.js';
import { drawFactors } from '../../.halfpot/modules/ranges/draw-factors.js';

const beliefs = { assumptions: registry, joint: undefined };
const layers = ['base coat', 'wash', 'drybrush', 'highlight', 'detail'];
const zones = ['whole', 'tunic', 'legs', 'skin', 'weapon'];
const builds = ['true scale', 'heroic mild', 'heroic', 'heroic strong', 'stocky'];
const dresses = ['bare', 'clothed', 'armoured'];

/** So many units of fifteen figures in one scheme of so many steps: a can, then 24 paints by five methods. */
function makeWork(units, steps) {
  const figures = builds.flatMap((build) =>
    dresses.map((dress) => ({
      ...{ figure: `${build} ${dress}`, eyeMm: 28, build, dress, kit: [{ item: 'weapon', count: 1 }] },
      ...{ baseHighMm: 3, perBase: 1 },
    })),
  );
  const scheme = Array.from({ length: steps }, (_, at) => ({
    ...{ row: at + 2, step: at + 1, zone: at === 0 ? 'whole' : zones[at % 5] },
    ...{ layer: at === 0 ? 'primer' : layers[at % 5], paints: [{ paint: `paint ${at % 25}`, share: 1 }] },
  }));
  const army = Array.from({ length: units }, (_, at) => ({
    ...{ row: at + 2, unit: `unit ${at}`, figure: figures[at % 15].figure, scheme: 'plain', priority: at },
    ...{ count: 1 + (at % 97), batch: 1 + (at % 11), done: 0 },
  }));
  const sheets = { pots: [], zones: [], log: [], paints: new Map(), army };
  const estimate = estimateArmy(
    {
      ...sheets,
      figures: new Map(figures.map((figure) => [figure.figure, figure])),
      schemes: new Map([['plain', { scheme: 'plain', steps: scheme }]]),
    },
    registry,
  );
  const paints = [...new Set(scheme.map(({ paints: [{ paint }] }) => paint))];
  return { estimate, stock: paints.map((paint) => ({ paint, pots: [] })), lines: units * steps };
}

/** The groups that the bare loop multiplies: lines alike in paint, method, target and factors, added up beforehand. */
function groupLines({ jobs, figures }) {
  const groups = new Map();
  const leftovers = new Map();
  for (const { figure, remaining } of jobs.keys()) {
    for (const { paint, method, surface, onFigureMl, leftoverMl } of remaining) {
      const target = method === 'spray can' ? figure : '';
      for (const { factors, share } of surface) {
        const key = `${paint}\n${method}\n${target}\n${factors}`;
        const { withBaseCm2, surface: whole } = figures.get(figure);
        const group = groups.get(key) ?? { paint, method, target, factors, withBaseCm2, whole, ml: 0 };
        groups.set(key, group);
        group.ml += onFigureMl * share;
      }
      const key = `${paint}\n${method}`;
      leftovers.set(key, { paint, method, ml: (leftovers.get(key)?.ml ?? 0) + leftoverMl });
    }
  }
  return { groups: [...groups.values()], leftovers: [...leftovers.values()] };
}

const likely = (name) => likelyOf(registry, name);

/** Factors drawn by the tool's own streams, then the formula group by group with nothing around it. */
function runBare({ groups, leftovers }, paints, names, drawing) {
  const { draws } = drawing;
  const columns = drawFactors(names, beliefs, drawing);
  const ones = new Float64Array(draws).fill(1);
  const over = (name) => columns.get(name)?.values.map((value) => value / likely(name)) ?? ones;
  const ratios = new Map(names.map((name) => [name, over(name)]));
  const needs = new Map(paints.map((paint) => [paint, new Float64Array(draws)]));
  const full = likely('full target of a spray');
  for (const { paint, method, target, factors, withBaseCm2, whole, ml } of groups) {
    const need = needs.get(paint);
    const film = ratios.get(`${method} wet film`);
    const transfer = columns.get(`${method} transfer`).values;
    const area = new Float64Array(draws).fill(ml);
    for (const ratio of factors.flatMap((name) => ratios.get(name) ?? []))
      for (let draw = 0; draw < draws; draw++) area[draw] *= ratio[draw];
    if (target === '') {
      for (let draw = 0; draw < draws; draw++)
        need[draw] += (area[draw] * film[draw]) / Math.min(1, transfer[draw]);
      continue;
    }
    const surfaces = whole.map(({ factors: of, share }) => ({
      share,
      of: of.map((name) => ratios.get(name) ?? ones),
    }));
    for (let draw = 0; draw < draws; draw++) {
      let cm2 = 0;
      for (const { share, of } of surfaces) {
        let part = share * withBaseCm2;
        for (const ratio of of) part *= ratio[draw];
        cm2 += part;
      }
      const caught = Math.min(2, Math.max(0.2, Math.sqrt(cm2 / full)));
      need[draw] += (area[draw] * film[draw]) / Math.min(1, transfer[draw] * caught);
    }
  }
  for (const { paint, method, ml } of leftovers) {
    const [need, ratio] = [needs.get(paint), ratios.get(`${method} leftover`)];
    for (let draw = 0; draw < draws; draw++) need[draw] += ml * ratio[draw];
  }
  const painter = ratios.get('painter');
  for (const need of needs.values()) for (let draw = 0; draw < draws; draw++) need[draw] *= painter[draw];
  return needs;
}

const timeOf = (work) => {
  const started = performance.now();
  work();
  return performance.now() - started;
};
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Both in turn in one process, after a round that compiles them; throws where they disagree. */
export function benchDraws(rounds = 9) {
  const { estimate, stock } = makeWork(500, 20);
  const drawing = { draws: 10_000, seed: 1 };
  const groups = groupLines(estimate);
  const drawn = openArmy({ estimate, stock, beliefs }, drawing);
  const names = [...drawn.factors.keys()];
  const paints = stock.map(({ paint }) => paint);
  const bare = runBare(groups, paints, names, drawing);
  for (const draw of drawn.work) {
    const { paint, needMl } = draw();
    const off = needMl.reduce((most, ml, at) => Math.max(most, Math.abs(ml / bare.get(paint)[at] - 1)), 0);
    if (off > 1e-9) throw new Error(`${paint}: the bare loop is off by ${off}`);
  }
  const ratios = Array.from({ length: rounds }, () => {
    const ours = timeOf(() => drawArmy({ estimate, stock, beliefs }, drawing));
    return ours / timeOf(() => runBare(groups, paints, names, drawing));
  });
  return { ratio: median(ratios), groups: groups.groups.length };
}

/** The least time of three at each size, over that of the size before. */
function growthOf(sizes) {
  const runs = sizes.map(({ work: { estimate, stock }, draws }) => {
    const run = () => drawArmy({ estimate, stock, beliefs }, { draws, seed: 1 });
    run();
    return Math.min(...Array.from({ length: 3 }, () => timeOf(run)));
  });
  return runs.slice(1).map((ms, at) => ms / runs[at]);
}

/** How the time grows from 1,000 to 10,000 to 100,000 draws, and from 1,000 to 10,000 to 100,000 lines. */
export function benchGrowth() {
  const middle = makeWork(500, 20);
  return {
    draws: growthOf([1_000, 10_000, 100_000].map((draws) => ({ work: middle, draws }))),
    lines: growthOf([50, 500, 5_000].map((units) => ({ work: makeWork(units, 20), draws: 10_000 }))),
  };
}

/** The sample's ranges, each time once and cold in a fresh process; the least of `runs`, since other work only adds. */
export function benchSampleRanges(runs = 7) {
  const times = Array.from({ length: runs }, () => {
    const { stdout } = spawnSync(execPath, ['tests/bench/time-ranges.mjs'], { encoding: 'utf8' });
    return JSON.parse(stdout);
  });
  const [fastest] = times.sort((a, b) => a.all - b.all);
  return fastest;
}
