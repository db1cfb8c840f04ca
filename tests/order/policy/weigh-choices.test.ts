// Ways to buy on drawn markets and armies: which is worth what, against fresh draws, and against knowing everything.
import { describe, expect, it } from 'vitest';
import type { Aim, Choice, Sampled } from '../../../src/model/choices.js';
import type { DrawnLack, StagedWork } from '../../../src/model/draws.js';
import type { Chance } from '../../../src/model/ranges.js';
import { cheapestCounts } from '../../../src/order/choose-counts.js';
import { listGoods } from '../../../src/order/policy/list-goods.js';
import { openWants } from '../../../src/order/policy/list-wants.js';
import { openRefill } from '../../../src/order/policy/open-refill.js';
import { paintOnPaper } from '../../../src/order/policy/paint-on-paper.js';
import { sumUpPaper } from '../../../src/order/policy/sum-up-paper.js';
import { type Chosen, chooseWay } from '../../../src/order/policy/weigh-choices.js';
import { prepareBuying } from '../../../src/order/prepare-buying.js';
import { containersOnOffer, isOnOffer } from '../../../src/order/price-buying.js';
import { searchAlone } from '../../../src/order/solver/search-first.js';
import { measureSupply, splitNeeds } from '../../../src/order/split-needs.js';
import { chanceMet } from '../../../src/ranges/fill-shelf.js';
import { type DrawnCase, drawCase } from './draw-work.js';

const buying = prepareBuying({ seconds: 1 });
/** A hobby's army and market. */
const sizes = { paints: 20, offers: 60, shops: 3, stages: 8 };
const againMinor = 400;

interface Weighed extends Omit<Chosen, 'weighAll'> {
  readonly choices: readonly Choice[];
}

async function weigh(one: DrawnCase, aim: Aim = { policy: 'goes' }): Promise<Weighed> {
  const { market, likelyMl } = one;
  const canBuy = isOnOffer(market);
  const fresh = one.lackOver(2000, 2);
  const offered = { ...fresh, paints: fresh.paints.filter(({ paint }) => canBuy(paint)) };
  const { weighAll, ...chosen } = await chooseWay({
    ...{ aim, market, likelyMl, againMinor, buying },
    drawn: one.lackOver(1000, 1),
    work: one.workOver(400, 3),
    metBy: (order) => chanceMet(offered, order),
  });
  return { ...chosen, choices: await weighAll() };
}

const named = ({ choices }: Weighed, policy: string, surePercent?: number): Choice => {
  const found = choices.find((one) => one.policy === policy && one.surePercent === surePercent);
  if (found === undefined) throw new Error(`no ${policy}`);
  return found;
};

/** Cash in all, and what the orders are worth beside it. */
function worthOf({ lines, follows }: Choice): Sampled {
  const { meanInAllMinor, ordersAfter } = follows;
  const orders = ordersAfter.value + (lines.length > 0 ? 1 : 0);
  return {
    value: meanInAllMinor.value + againMinor * orders,
    error: meanInAllMinor.error + againMinor * ordersAfter.error,
  };
}

/** Painting on paper without the rest. */
function openPaper({ market }: DrawnCase, work: StagedWork) {
  const names = work.paints.map(({ paint }) => paint);
  const goods = listGoods(names, market);
  const limits = { seconds: 0.005 };
  return { work, goods, refill: openRefill(goods, { solve: searchAlone, limits }) };
}

describe('twenty drawn markets and armies', () => {
  it('buying in goes is worth no less than the likely needs again and again, nor than the promise of 80 %', async () => {
    let [overLikely, overSure] = [0, 0];
    for (let seed = 1; seed <= 20; seed++) {
      const weighed = await weigh(drawCase(seed, sizes));
      const goes = worthOf(named(weighed, 'goes'));
      const likely = worthOf(named(weighed, 'likely'));
      const sure = worthOf(named(weighed, 'sure', 80));
      expect(goes.value, `${seed}, likely`).toBeLessThan(
        likely.value + 2 * Math.hypot(goes.error, likely.error),
      );
      expect(goes.value, `${seed}, 80 %`).toBeLessThan(sure.value + 2 * Math.hypot(goes.error, sure.error));
      overLikely += goes.value / likely.value / 20;
      overSure += goes.value / sure.value / 20;
    }
    expect(overLikely).toBeLessThan(1);
    expect(overSure).toBeLessThan(1);
  });
});

describe('against 20,000 fresh draws', () => {
  const near = (stated: Sampled | Chance, fresh: number, freshError: number): void => {
    const value = 'value' in stated ? stated.value : stated.chance;
    expect(Math.abs(value - fresh)).toBeLessThan(3 * Math.hypot(stated.error, freshError) + 1e-9);
  };

  it.each([3, 8, 14])('army %i: every stated chance and mean lies within three errors', async (seed) => {
    const one = drawCase(seed, sizes);
    const { choices } = await weigh(one);
    const fresh = one.workOver(20_000, 77);
    const asked = one.lackOver(20_000, 78);
    const wants = openWants(one.workOver(400, 3), containersOnOffer(one.market));
    const choice = choices.find(({ policy }) => policy === 'likely') as Choice;
    const first = { lines: choice.lines, totalMinor: choice.cashNowMinor };
    const painted = await paintOnPaper(openPaper(one, fresh), { first, wants: wants.likely() });
    const told = sumUpPaper(painted, fresh.units);
    const { follows } = choice;
    near(follows.ordersAfter, told.ordersAfter.value, told.ordersAfter.error);
    near(follows.meanInAllMinor, told.meanInAllMinor.value, told.meanInAllMinor.error);
    near(follows.leftOverMinor, told.leftOverMinor.value, told.leftOverMinor.error);
    near(
      follows.next?.cashMinor ?? { value: 0, error: 0 },
      told.next?.cashMinor.value ?? 0,
      told.next?.cashMinor.error ?? 0,
    );
    near(
      follows.next?.chance ?? { chance: 0, error: 0 },
      told.next?.chance.chance ?? 0,
      told.next?.chance.error ?? 0,
    );
    const there = painted.filter(
      ({ next }) => next !== undefined && fresh.units[next.stage] === follows.next?.unit,
    ).length;
    near(follows.next?.chanceThere ?? { chance: 0, error: 0 }, there / 20_000, 0.004);
    // Nothing runs out with the first order, and each line's own chance.
    const isMet = chanceMet(asked, first);
    for (const { met, lines, waiting } of choices) {
      expect(met.chance).toBeGreaterThanOrEqual(0);
      for (const { chanceNeeded, pots, count } of lines) {
        const [pot] = pots;
        if (pots.length > 1 || pot === undefined) continue;
        const bought = lines.flatMap((line) => line.pots).filter(({ paint }) => paint === pot.paint);
        const ml =
          bought.reduce((sum, { usableMl, count: all }) => sum + usableMl * all, 0) -
          (pot.usableMl * pot.count) / count;
        near(chanceNeeded, shareOver(asked, pot.paint, ml), 0.004);
      }
      for (const { paint, chanceNeeded } of waiting) near(chanceNeeded, shareOver(asked, paint, 0), 0.004);
    }
    near(choice.met, isMet.chance, isMet.error);
  });

  function shareOver({ paints, drawing }: DrawnLack, paint: string, ml: number): number {
    const lack = paints.find((one) => one.paint === paint)?.lackMl ?? new Float64Array();
    return lack.filter((one) => one > ml + 1e-6).length / drawing.draws;
  }
});

describe('knowing everything', () => {
  it('is never dearer than any policy, draw by draw: one order for just what is lacking', async () => {
    for (let seed = 1; seed <= 6; seed++) {
      const one = drawCase(seed, { paints: 8, offers: 20, shops: 2, stages: 5 });
      const work = one.workOver(40, seed);
      const lack = one.lackOver(40, seed);
      const canBuy = isOnOffer(one.market);
      const wants = openWants(work, containersOnOffer(one.market));
      const ways = [wants.likely(), wants.at(() => 0.3, false), wants.at(() => 0.9, true)];
      const known = Array.from({ length: 40 }, async (_, draw) => {
        const needs = lack.paints
          .filter(({ paint }) => canBuy(paint))
          .map(({ paint, lackMl }) => ({ paint, ml: lackMl[draw] ?? 0 }))
          .filter(({ ml }) => ml > 1e-6);
        const { within } = splitNeeds(needs, measureSupply(one.market));
        const { totalMinor, aboveBestMinor } = await cheapestCounts(within, one.market, buying);
        return totalMinor - aboveBestMinor;
      });
      const least = await Promise.all(known);
      for (const way of ways) {
        const painted = await paintOnPaper(openPaper(one, work), {
          first: { lines: [], totalMinor: 0 },
          wants: way,
        });
        for (const [draw, { cashMinor }] of painted.entries())
          expect(cashMinor, `${seed} ${draw}`).toBeGreaterThanOrEqual(least[draw] ?? 0);
      }
    }
  });
});

describe('side by side', () => {
  it('the chosen way is the order, with its reasons; the others stand beside it, surer ones dearer', async () => {
    const one = drawCase(5, { paints: 8, offers: 20, shops: 2, stages: 5 });
    const goes = await weigh(one);
    expect(goes.choices.map(({ policy, surePercent }) => [policy, surePercent])).toEqual([
      ...[
        ['likely', undefined],
        ['goes', undefined],
        ['wait', undefined],
      ],
      ...[50, 80, 90, 95].map((percent) => ['sure', percent]),
    ]);
    expect(named(goes, 'goes').cashNowMinor).toBe(goes.order.totalMinor);
    expect(named(goes, 'wait')).toMatchObject({ cashNowMinor: 0, lines: [] });
    const sure = await weigh(one, { policy: 'sure', surePercent: 70 });
    expect(named(sure, 'sure', 70).cashNowMinor).toBe(sure.order.totalMinor);
    const levels = sure.choices.filter(({ policy }) => policy === 'sure');
    expect(levels.map(({ surePercent }) => surePercent)).toEqual([50, 70, 80, 90, 95]);
    const cash = levels.map(({ cashNowMinor }) => cashNowMinor);
    expect(cash).toEqual([...cash].sort((a, b) => a - b));
    // Which way is chosen changes no other.
    for (const { policy, surePercent, cashNowMinor } of goes.choices)
      expect(named(sure, policy, surePercent).cashNowMinor).toBe(cashNowMinor);
  });

  it('each line of the order in goes is at or over its threshold, or the next units take it', async () => {
    const one = drawCase(9, sizes);
    const floors = openWants(one.workOver(400, 3), containersOnOffer(one.market)).nextMissing();
    const { lines, waiting } = named(await weigh(one), 'goes');
    for (const { pots, chanceNeeded, threshold } of lines) {
      const isSoon = pots.some(({ paint }) => (floors.get(paint) ?? 0) > 0);
      if (pots.length === 1 && !isSoon)
        expect(chanceNeeded.chance).toBeGreaterThanOrEqual(threshold - 3 * chanceNeeded.error);
    }
    for (const { chanceNeeded, threshold } of waiting)
      expect(chanceNeeded.chance).toBeLessThan(threshold + 3 * chanceNeeded.error);
  });

  // Nothing of it is on offer, and 7 ml are likely to be lacking: in goes they count as needed, whatever the draws say.
  it('of a paint without any price or offer takes in goes what is likely, and names it', async () => {
    const one = drawCase(3, sizes);
    const [lacking] = one.lackOver(1000, 1).paints;
    if (lacking === undefined) throw new Error('nothing is lacking');
    const moss = { ...lacking, paint: 'Moss' };
    const lackOver = (draws: number, seed: number): DrawnLack => {
      const lack = one.lackOver(draws, seed);
      return { ...lack, paints: [...lack.paints, { ...moss, lackMl: new Float64Array(draws).fill(5) }] };
    };
    const likelyMl = new Map([...one.likelyMl, ['Moss', 7]]);
    const found = await weigh({ ...one, lackOver, likelyMl });
    expect(found.toBuyMl.get('Moss')).toBe(7);
    expect(found.order.unmet.find(({ paint }) => paint === 'Moss')?.ml).toBe(7);
    const { asLikely } = named(found, 'goes');
    expect(asLikely).toContain('Moss');
    const { offers } = one.market;
    const isSold = (name: string) => offers.some(({ pots }) => pots.some(({ paint }) => paint === name));
    expect(asLikely.filter(isSold)).toEqual([]);
    // A promise is kept by what is lacking in the draws.
    expect(
      (await weigh({ ...one, lackOver, likelyMl }, { policy: 'sure', surePercent: 80 })).toBuyMl.get('Moss'),
    ).toBe(5);
    expect(named(found, 'sure', 80).asLikely).toEqual([]);
  });

  it('an army without work buys nothing, and nothing follows', async () => {
    const one = drawCase(1, sizes);
    const none = { ...one, likelyMl: new Map(), lackOver: emptyLack, workOver: emptyWork };
    const { order, choices } = await weigh(none);
    expect(order).toMatchObject({ status: 'nothing to buy', totalMinor: 0 });
    for (const { cashNowMinor, follows } of choices)
      expect([cashNowMinor, follows.meanInAllMinor.value, follows.ordersAfter.value, follows.next]).toEqual([
        0,
        0,
        0,
        undefined,
      ]);
  });

  const gainOf = () => undefined;
  const emptyLack = (draws: number, seed: number): DrawnLack => ({
    drawing: { draws, seed },
    paints: [],
    gainOf,
  });
  const emptyWork = (draws: number, seed: number): StagedWork => ({
    drawing: { draws, seed },
    paints: [],
    units: [],
    gainOf,
  });
});
