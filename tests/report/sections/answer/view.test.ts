// The first screen, from the small plan and from plans bent one way each.
import { describe, expect, it } from 'vitest';
import { exactMinor } from '../../../../src/model/money.js';
import type { Plan } from '../../../../src/model/plan.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const plainSpaces = (text: string): string => text.replaceAll('\u00a0', ' ');
const answerOf = (changes: Partial<Plan>) =>
  viewPlan(changedPlan({ budget: undefined, ...changes }), []).answer.figures.map(
    ({ question, figure, detail }) => plainSpaces(`${question} ${figure}. ${detail}`),
  );

describe('the small plan', () => {
  const [lasting, cost, cash] = answerOf({});

  it('does not last', () => {
    // On the way: 12 ml x 0.96 = 11.52. On the first evening 10 figures get coats of 6.05 / 3 ml, and 4.1 ml are there.
    expect(lasting).toBe(
      'Will the pots last? No: 1 is missing, 1 runs out. You have no Rust hush. ' +
        'Nettle coat goes first: evening 1, in First watch. 1 more may run out. The 12 ml on the way count.',
    );
  });

  it('costs at least 43 cents a figure', () => {
    // 910.3 / 21 = 43.35; 640 / 21 = 30.5; 1340 / 21 = 63.8. Wardens 43.55, the ram 39.3.
    expect(cost).toBe(
      'What does a figure cost? at least €0.43. Paint and extras, on average; usually €0.30 to €0.64. ' +
        'By unit: €0.39 (The ram) to €0.44 (Second watch). Not fully priced: Bell brass and Rust hush.',
    );
  });

  it('asks for one pot', () => {
    expect(cash).toBe(
      'What must I buy? €7.40 now. 1 pot from The Ferry Steps. In 82 of 100 armies like yours no paint on offer ' +
        'runs out. No shop sells enough Rust hush (1 pot of 17 ml, unpriced). Refilling low pots costs another €6.40.',
    );
  });

  it('tells the evenings, and what to do next', () => {
    const { evenings, next } = viewPlan(smallPlan, []).answer;
    expect(plainSpaces(evenings)).toBe('4 evenings of 2 h 30 min; The ram is finished on evening 2.');
    expect(next).toEqual({
      label: 'Next:',
      says: 'weigh your Nettle coat dropper before and after evening 1: that settles 78% of the doubt about what to buy.',
    });
  });

  it('tells the evenings alone where no unit is finished whole on them', () => {
    const units = smallPlan.time.units.map((one) => ({ ...one, doneOnEvening: undefined }));
    const plan = changedPlan({ time: { ...smallPlan.time, units } });
    expect(plainSpaces(viewPlan(plan, []).answer.evenings)).toBe('4 evenings of 2 h 30 min.');
  });

  it('names what decides the amounts, and the costs', () => {
    const { answer, costs } = viewPlan(smallPlan, []);
    const doubts = [answer, costs].map(({ trust }) => `${trust.mark}, ${trust.doubt}`);
    // The draws find brush wet film first. Of the cost, flood is 2 x 152.5 = 305, can 2 x 120 + 36 = 276, brush 2 x 130.
    expect(doubts).toEqual(['from memory, brush wet film', 'from memory, flood transfer']);
  });

  it('is plain text', () => {
    expect(answerOf({}).join('')).not.toMatch(/[<>&]/);
  });
});

const nothingOrdered = {
  ...smallPlan.order,
  status: 'nothing to buy',
  totalMinor: 0,
  postageMinor: 0,
  lines: [],
  bills: [],
} as const;

describe('other plans', () => {
  const only = (...paints: string[]) => smallPlan.stock.filter(({ paint }) => paints.includes(paint));

  it.each([
    [1, 'Yes: all 2 last', 'over 99 of 100'],
    [0.93, 'Yes: all 2 last', '93 of 100'],
    [0.9, 'Yes: all 2 last', '90 of 100'],
    [0.8999, 'Perhaps: 1 of 2 may run out', '90 of 100'],
    [0.0049, 'Perhaps: 1 of 2 may run out', 'under 1 of 100'],
  ])('all last with a chance of %d: %s', (share, figure, times) => {
    const stock = only('Kettle grey', 'Chalk light');
    const ranges = { ...smallPlan.ranges, chanceAllLast: { chance: share, error: 0.003 } };
    expect(answerOf({ stock, ranges })[0]).toBe(
      `Will the pots last? ${figure}. In ${times} armies like yours nothing runs out. Tightest: Kettle grey.`,
    );
  });

  it('joins what is not there, or not sold enough, by "or"', () => {
    const stock = smallPlan.stock.map((one) =>
      one.paint === 'Nettle coat' ? { ...one, state: 'none owned' as const } : one,
    );
    expect(answerOf({ stock })[0]).toContain('No: 2 are missing. You have no Rust hush or Nettle coat.');
    const unmet = ['Pond wash', 'Rust hush'].map((paint) => ({ paint, ml: 4 }));
    expect(answerOf({ order: { ...smallPlan.order, unmet } })[2]).toContain(
      'No shop sells enough Pond wash (1 dropper of 12 ml like yours, unpriced) or Rust hush (1 pot of 17 ml, unpriced).',
    );
  });

  it('counts what runs out where nothing is missing', () => {
    expect(answerOf({ stock: only('Nettle coat', 'Pond wash', 'Chalk light') })[0]).toBe(
      'Will the pots last? No: 1 of 3 runs out. Nettle coat goes first: evening 1, in First watch. 1 more may run out. ' +
        'The 12 ml on the way count.',
    );
  });

  it.each([
    [0.01, ' Tightest: Kettle grey.'],
    [0.0099, ''],
  ])('names a paint that runs short with a chance of %d as the tightest: %j', (chance, says) => {
    const { paints, ...ranges } = smallPlan.ranges;
    const grey = paints.get('Kettle grey');
    if (grey === undefined) throw new Error('no paint');
    const chanceShort = { chance, error: 0.001 };
    const changed = {
      ...ranges,
      chanceAllLast: { chance: 0.99, error: 0.001 },
      paints: new Map([['Kettle grey', { ...grey, chanceShort }]]),
    };
    expect(answerOf({ stock: only('Kettle grey'), ranges: changed })[0]).toBe(
      `Will the pots last? Yes: it lasts. In 99 of 100 armies like yours nothing runs out.${says}`,
    );
  });

  it('says that the offers do not reach what was asked for', () => {
    const missed = { ...smallPlan.promised, metOfOffered: { chance: 0.61, error: 0.005 } };
    expect(answerOf({ promised: missed })[2]).toContain(
      'In 24 of 100 armies like yours nothing runs out: no shop brings the 80% asked for.',
    );
  });

  it('says plainly what was kept', () => {
    const whole = { ...smallPlan.promised, metOnFreshDraws: smallPlan.promised.metOfOffered };
    expect(answerOf({ promised: whole })[2]).toContain(
      'The Ferry Steps. In 82 of 100 armies like yours nothing runs out. No shop',
    );
  });

  it('bought in goes, says what follows', () => {
    const goes = {
      aim: { policy: 'goes' },
      promised: { ...smallPlan.promised, surePercent: undefined },
    } as const;
    const start = 'What must I buy? €7.40 now. 1 pot from The Ferry Steps. ';
    const end =
      ' No shop sells enough Rust hush (1 pot of 17 ml, unpriced). Refilling low pots costs another €6.40.';
    const followed = (change: Partial<Plan['choices'][number]['follows']>) =>
      answerOf({
        ...goes,
        choices: smallPlan.choices.map((choice) => ({
          ...choice,
          follows: { ...choice.follows, ...change },
        })),
      })[2];
    const then = 'the next before Second watch is done: at least €8.71 in all.';
    expect(followed({})).toBe(`${start}Perhaps one more order, ${then}${end}`);
    const orders = (value: number) => followed({ ordersAfter: { value, error: 0 } });
    expect(orders(0.1)).toBe(`${start}Perhaps one more order, ${then}${end}`);
    expect(orders(0.0999)).toBe(`${start}No other order should follow.${end}`);
    expect(orders(0.5)).toBe(`${start}Expect one more order, ${then}${end}`);
    expect(orders(1)).toBe(`${start}Expect 1 more order, ${then}${end}`);
    expect(orders(1.3)).toBe(`${start}Expect 1 or 2 more orders, ${then}${end}`);
    expect(followed({ next: undefined })).toBe(`${start}No other order follows.${end}`);
    const none = smallPlan.choices.map((choice) => ({
      ...choice,
      follows: { ...choice.follows, next: undefined },
    }));
    expect(answerOf({ ...goes, choices: none, order: nothingOrdered, restock: undefined })[2]).toBe(
      'What must I buy? 1 pot, without a shop. No shop sells enough Rust hush (1 pot of 17 ml, unpriced).',
    );
  });

  it('says so where nothing needs buying', () => {
    // No shop offers anything, and the shelf is as sure as was asked for.
    const promised = { ...smallPlan.promised, metOnFreshDraws: { chance: 0.992, error: 0.0009 } };
    const order = { ...nothingOrdered, unmet: [] };
    const [, , cash] = answerOf({ order, promised, restock: undefined });
    expect(cash).toBe(
      'What must I buy? Nothing. Your shelf and the pots on the way should do. ' +
        'In 99 of 100 armies like yours nothing runs out.',
    );
  });

  it('does not call an unmet need nothing', () => {
    const [, , cash] = answerOf({ order: nothingOrdered, restock: undefined });
    expect(cash).toBe(
      'What must I buy? 1 pot, without a shop. In 24 of 100 armies like yours nothing runs out: no shop brings the 80% ' +
        'asked for. No shop sells enough Rust hush (1 pot of 17 ml, unpriced).',
    );
  });

  it('says how far above the best an order may lie', () => {
    const order = { ...smallPlan.order, status: 'not proved', aboveBestMinor: 140, unmet: [] } as const;
    const [, , cash] = answerOf({ order, restock: undefined });
    expect(cash).toMatch(/ At most €1\.40 above the cheapest\.$/);
  });

  const noPrice = { exactMinor: exactMinor(0), atLeast: true };

  it('says what to fill in where nothing has a price', () => {
    const [, cost] = answerOf({
      costs: { ...smallPlan.costs, useWhole: noPrice, useRemaining: noPrice },
    });
    expect(cost).toBe(
      'What does a figure cost? No prices yet. Write what your pots cost into the pots sheet, or what shops ask ' +
        'into the offers sheet.',
    );
  });

  it('asks for no paint where all is painted', () => {
    const { estimate } = smallPlan;
    const jobs = new Map([...estimate.jobs].map(([job, units]) => [{ ...job, remaining: [] }, units]));
    const [lasting] = answerOf({ estimate: { ...estimate, jobs } });
    expect(lasting).toBe('Will the pots last? Yes. Everything is painted: no paint is needed any more.');
  });

  it('survives an army of nobody', () => {
    const zero = { exactMinor: exactMinor(0), atLeast: false };
    const [lasting, cost] = answerOf({
      figureCount: 0,
      estimate: { figures: new Map(), jobs: new Map(), units: [], needs: new Map() },
      stock: [],
      costs: { ...smallPlan.costs, units: [], useWhole: zero, useRemaining: zero, unpriced: [] },
    });
    expect(lasting).toBe('Will the pots last? Yes. This army needs no paint.');
    expect(cost).toContain('€0.00. Paint and extras, on average; usually €0.00.');
  });
});
