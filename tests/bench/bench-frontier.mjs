// Bench: cash against colour, the four differences that have words, of 60 needs among 200 paints. In: seeded markets. Out: seconds, and how many
// points were proved.
import { registry } from '../../.halfpot/modules/assumptions/registry.js';
import { openColours } from '../../.halfpot/modules/colour/open-colours.js';
import { drawFrontier } from '../../.halfpot/modules/order/frontier/draw-frontier.js';
import { prepareBuying } from '../../.halfpot/modules/order/prepare-buying.js';
import { openSolver } from '../../.halfpot/modules/order/solver/open-solver.js';
import { drawFrom, drawMarket } from '../order/draw-market.mjs';

const farthest = 10;

/** Colours in families, as a range of paints has them: each paint some steps off one of 25 strong colours. */
function drawColours(seed, paints) {
  const { whole } = drawFrom(seed);
  const families = Array.from({ length: 25 }, () => [whole(0, 255), whole(0, 255), whole(0, 255)]);
  const near = (value) => Math.min(255, Math.max(0, value + whole(-50, 50)));
  const hex = (value) => value.toString(16).padStart(2, '0');
  return paints.map((paint) => {
    const family = families[whole(0, families.length - 1)];
    return { paint, kind: 'colour', alsoCalled: [], hex: `#${family.map(near).map(hex).join('')}` };
  });
}

/** 200 paints, 300 offers, 5 shops; a quarter of the paints on the shelf with up to 20 ml; 60 needs. */
async function drawFrontierCase(seed) {
  const { needs: all, offers, shops } = drawMarket(seed, { paints: 200, offers: 300, shops: 5 });
  const { share, chance } = drawFrom(seed + 1000);
  const names = all.map(({ paint }) => paint);
  const colours = await openColours(drawColours(seed + 2000, names));
  const candidates = new Map(
    names.map((paint) => [
      paint,
      names
        .filter((by) => by !== paint)
        .map((by) => ({ by, dE00: colours.distance(paint, by) }))
        .filter(({ dE00 }) => dE00 <= farthest),
    ]),
  );
  const haveMl = new Map(names.filter(() => chance(0.25)).map((paint) => [paint, share() * 20]));
  const needs = all.filter((_, index) => index % 10 < 3);
  return { needs, haveMl, candidates, market: { offers, shops, assumptions: registry } };
}

/** Each of some markets once, the solver in its own thread and started before. */
export async function benchFrontier(seeds = [1, 2, 3, 4, 5, 6]) {
  const solver = openSolver();
  const runs = [];
  for (const seed of [0, ...seeds]) {
    const drawing = await drawFrontierCase(seed);
    const started = performance.now();
    const { points } = await drawFrontier({ ...drawing, buying: prepareBuying({ solve: solver.solve }) });
    const seconds = (performance.now() - started) / 1000;
    const gaps = points.map(({ aboveBestMinor, cashMinor }) => aboveBestMinor / Math.max(1, cashMinor));
    runs.push({ seconds, points: points.length, proved: gaps.filter((gap) => gap === 0).length, gaps });
  }
  await solver.close();
  const [, ...counted] = runs;
  const sum = (of) => counted.reduce((total, run) => total + run[of], 0);
  return {
    seconds: counted.map(({ seconds }) => seconds),
    points: sum('points'),
    proved: sum('proved'),
    worstGap: Math.max(...counted.flatMap(({ gaps }) => gaps)),
  };
}
