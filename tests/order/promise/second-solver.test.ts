// Promises by another solver (glpk.js, GNU GLPK in WebAssembly), from programs written anew with a yes-or-no for every draw.
import glpk, { type LP } from 'glpk.js/node';
import { expect, it } from 'vitest';
import { usableShare } from '../../../src/assumptions/look-up.js';
import { registry } from '../../../src/assumptions/registry.js';
import { prepareBuying } from '../../../src/order/prepare-buying.js';
import { findPromise } from '../../../src/order/promise/find-promise.js';
import { openPromise } from '../../../src/order/promise/open-promise.js';
import { makeDrawn } from '../../ranges/make-drawn.js';
import { drawFrom, drawMarket } from '../draw-market.mjs';
import type { PromiseCase } from './draw-promise.js';

const [paints, draws] = [8, 60];

/** Eight paints over sixty draws that share a factor, 16 offers with sets among them, two shops. */
function drawCase(seed: number): PromiseCase {
  const { share } = drawFrom(seed + 500);
  const market = drawMarket(seed, { paints, offers: 16, shops: 2, sets: 0.2, sizesMl: [12, 17, 24] });
  const common = Array.from({ length: draws }, () => Math.exp(1.2 * (share() + share() + share() - 1.5)));
  const lacks = market.needs.map(({ paint, ml }) => [
    paint,
    common.map((one) => Math.min(ml, 20) * one * (0.6 + 0.8 * share()) - 2),
  ]);
  return { ...market, drawn: makeDrawn(Object.fromEntries(lacks)) };
}

/** The whole program: what each draw lacks of each paint is bought, or the draw fails. */
async function leastCash({ drawn, offers, shops }: PromiseCase, sure: number): Promise<number> {
  const solver = await glpk();
  const above = (lb: number) => ({ type: solver.GLP_LO, lb, ub: 0 });
  const counts = offers.map((_, at) => `x${at}`);
  const fails = Array.from({ length: draws }, (_, draw) => `f${draw}`);
  const covers = drawn.paints.flatMap(({ paint, lackMl }) =>
    [...lackMl].flatMap((ml, draw) => {
      if (ml <= 0) return [];
      const vars = offers.flatMap(({ pots }, at) => {
        const held = pots.filter((pot) => pot.paint === paint);
        const coef = held.reduce(
          (sum, pot) => sum + pot.sizeMl * pot.count * usableShare(registry, pot.container),
          0,
        );
        return coef > 0 ? [{ name: `x${at}`, coef }] : [];
      });
      return [
        { name: `${paint} in ${draw}`, vars: [...vars, { name: `f${draw}`, coef: ml }], bnds: above(ml) },
      ];
    }),
  );
  const names = [...shops.keys()];
  const terms = names.flatMap((shop, at) => {
    const { freeFromMinor = Number.POSITIVE_INFINITY, leastOrderMinor = 0 } = shops.get(shop) ?? {};
    const goods = offers.flatMap((offer, place) =>
      offer.shop === shop ? [{ name: `x${place}`, coef: offer.priceMinor }] : [],
    );
    const used = goods.map(({ name }) => ({
      name: `${name} used`,
      vars: [
        { name: `used${at}`, coef: 60 },
        { name, coef: -1 },
      ],
      bnds: above(0),
    }));
    return [
      ...used,
      {
        name: `least ${at}`,
        vars: [...goods, { name: `used${at}`, coef: -leastOrderMinor }],
        bnds: above(0),
      },
      { name: `free ${at}`, vars: [...goods, { name: `free${at}`, coef: -freeFromMinor }], bnds: above(0) },
      {
        name: `both ${at}`,
        vars: [
          { name: `used${at}`, coef: 1 },
          { name: `free${at}`, coef: -1 },
        ],
        bnds: above(0),
      },
    ];
  });
  const postage = (shop: string): number => shops.get(shop)?.postageMinor ?? 0;
  const program: LP = {
    name: 'promise',
    objective: {
      direction: solver.GLP_MIN,
      name: 'cash',
      vars: [
        ...offers.map(({ priceMinor }, at) => ({ name: `x${at}`, coef: priceMinor })),
        ...names.flatMap((shop, at) => [
          { name: `used${at}`, coef: postage(shop) },
          { name: `free${at}`, coef: -postage(shop) },
        ]),
      ],
    },
    subjectTo: [
      ...covers,
      ...terms,
      {
        name: 'kept',
        vars: fails.map((name) => ({ name, coef: 1 })),
        bnds: { type: solver.GLP_UP, lb: 0, ub: draws - Math.ceil(sure * draws - 1e-9) },
      },
    ],
    generals: counts,
    binaries: [...fails, ...names.flatMap((_, at) => [`used${at}`, `free${at}`])],
  };
  const { result } = solver.solve(program, {
    msglev: solver.GLP_MSG_OFF,
    tmlim: 90,
    mipgap: 0,
    presol: true,
  });
  expect(result.status, 'the second solver proves its optimum').toBe(solver.GLP_OPT);
  return Math.round(result.z);
}

it.each([
  [1, 0.8],
  [2, 0.5],
  [3, 0.9],
  [4, 0.8],
] as const)(
  '8 paints, 60 draws, 16 offers, 2 shops, seed %i at %f: the same least cash',
  async (seed, sure) => {
    const one = drawCase(seed);
    const { way, leastMinor } = await findPromise(
      openPromise(one.drawn, { ...one, assumptions: registry }),
      sure,
      prepareBuying({}),
    );
    expect(leastMinor).toBe(way?.totalMinor);
    expect(way?.totalMinor).toBe(await leastCash(one, sure));
  },
);
