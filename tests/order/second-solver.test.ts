// The order of 60 paints by another solver (glpk.js, GNU GLPK in WebAssembly), from programs written anew: one for
// every choice of shops to buy from and of postage to save, so that they hold no yes-or-no columns.
import glpk, { type GLPK, type LP } from 'glpk.js/node';
import { expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { chooseOrder } from '../../src/order/choose-order.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import { solveProgram } from '../../src/order/solver/solve-program.js';
import { type DrawnMarket, drawMarket } from './draw-market.mjs';

/** Usable ml of a pot that is no can, 0.94 of its label: every pot of these markets holds 17 ml. */
const usableMl = 17 * 0.94;

type Way = ReadonlyMap<string, 'postage' | 'free'>;

/** Every shop left out, paid postage to, or bought from for nothing: 3 to the power of the shops. */
function waysOf(shops: readonly string[]): Way[] {
  const [first, ...rest] = shops;
  if (first === undefined) return [new Map()];
  return waysOf(rest).flatMap((way) => [
    way,
    new Map([...way, [first, 'postage'] as const]),
    new Map([...way, [first, 'free'] as const]),
  ]);
}

/** Least goods for one way, or undefined where it can't cover the needs; whole counts only. */
function leastGoods(solver: GLPK, { needs, offers, shops }: DrawnMarket, way: Way): number | undefined {
  const open = offers.flatMap((offer, at) => (way.has(offer.shop) ? [{ offer, name: `x${at}` }] : []));
  const above = (lb: number) => ({ type: solver.GLP_LO, lb, ub: 0 });
  const covers = needs.map(({ paint, ml }, at) => ({
    name: `need ${at}`,
    vars: open.flatMap(({ offer: { pots }, name }) => {
      const held = pots.filter((pot) => pot.paint === paint).reduce((sum, { count }) => sum + count, 0);
      return held > 0 ? [{ name, coef: held }] : [];
    }),
    bnds: above(Math.ceil(ml / usableMl)),
  }));
  if (covers.some(({ vars }) => vars.length === 0)) return undefined;
  const sums = [...way].map(([shop, how]) => {
    const { leastOrderMinor = 0, freeFromMinor = 0 } = shops.get(shop) ?? {};
    const vars = open
      .filter(({ offer }) => offer.shop === shop)
      .map(({ offer, name }) => ({ name, coef: offer.priceMinor }));
    return {
      name: `sum ${shop}`,
      vars,
      bnds: above(how === 'free' ? Math.max(leastOrderMinor, freeFromMinor) : leastOrderMinor),
    };
  });
  const vars = open.map(({ offer, name }) => ({ name, coef: offer.priceMinor }));
  const program: LP = {
    name: 'order',
    objective: { direction: solver.GLP_MIN, name: 'goods', vars },
    subjectTo: [...covers, ...sums],
    generals: open.map(({ name }) => name),
  };
  const { result } = solver.solve(program, {
    msglev: solver.GLP_MSG_OFF,
    tmlim: 60,
    mipgap: 0,
    presol: true,
  });
  if (result.status === solver.GLP_NOFEAS || result.status === solver.GLP_UNDEF) return undefined;
  expect(result.status, 'the second solver proves its optimum').toBe(solver.GLP_OPT);
  return Math.round(result.z);
}

async function leastCash(market: DrawnMarket): Promise<number> {
  const solver = await glpk();
  const costs = waysOf([...market.shops.keys()]).flatMap((way) => {
    const goods = leastGoods(solver, market, way);
    const paid = [...way].filter(([, how]) => how === 'postage');
    const postage = paid.reduce((sum, [shop]) => sum + (market.shops.get(shop)?.postageMinor ?? 0), 0);
    return goods === undefined ? [] : [goods + postage];
  });
  return Math.min(...costs);
}

const buying = prepareBuying({});
const bySolver = { ...buying, solve: solveProgram };

it.each([
  ['our own search first', 1, buying],
  ['our own search first', 2, buying],
  ['the solver alone', 2, bySolver],
  ['the solver alone', 3, bySolver],
] as const)('60 paints, 90 offers, 3 shops, by %s, seed %i: the same least cash', async (_, seed, by) => {
  const market = drawMarket(seed, { paints: 60, offers: 90, shops: 3, sizesMl: [17] });
  const order = await chooseOrder(market.needs, { ...market, assumptions: registry }, by);
  expect(order.status).toBe('proved');
  expect(order.totalMinor).toBe(await leastCash(market));
});

it('64 paints, 105 offers, many of them sets, 2 shops, begun with swapped sets: the same least cash', async () => {
  const market = drawMarket(1, { paints: 64, offers: 105, shops: 2, sets: 0.3, sizesMl: [17] });
  let begun = 0;
  const counting = prepareBuying({
    solve: (program, limits) => {
      begun++;
      return solveProgram(program, limits);
    },
  });
  const order = await chooseOrder(market.needs, { ...market, assumptions: registry }, counting);
  expect(begun).toBeGreaterThan(0);
  expect(order.status).toBe('proved');
  expect(order.totalMinor).toBe(await leastCash(market));
});
