// The answer in three figures, from the small plan and from plans bent one way each.
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
    // On the way: 12 ml x 0.96 = 11.52.
    expect(lasting).toBe(
      'Will the pots last? No. The chance that today’s pots last for the whole army is 0%: there is no pot of Rust hush. ' +
        '6 paints needed: 1 none owned, 1 short, 1 tight and 3 enough. ' +
        'May run short: Nettle coat (97%), Pond wash (21%) and Kettle grey (8%). ' +
        'This counts 11.5 ml that is still on the way.',
    );
  });

  it('costs at least 43 cents a figure', () => {
    // 910.3 / 21 = 43.35; 640 / 21 = 30.5; 1340 / 21 = 63.8
    expect(cost).toBe(
      'What does a figure cost? at least €0.43. In paint and extras used, on average; low to high €0.30 to €0.64 ' +
        '(one time in ten less, one time in ten more). For all 21 figures at least €9.10 (€6.40 to €13.40), ' +
        'of which at least €8.74 is still to be used. Not all priced: Bell brass and Rust hush.',
    );
  });

  it('asks for one pot', () => {
    expect(cash).toBe(
      'What must I buy? €7.40. 1 whole pot from The Ferry Steps, postage of €3.90 included. ' +
        'Asked for: 80% sure. Of paints on offer nothing runs out in 82.1% ± 0.4% of armies like this, ' +
        'of all in 23.8% ± 0.4%. In goes it would be €7.40 now and at least €8.71 in all, on average. ' +
        'No offer covers Rust hush (4.1 ml more for that: 1 pot of 17 ml, unpriced). Another €6.40 would fill low pots up to their level.',
    );
  });

  it('names what decides each figure', () => {
    // The draws find brush wet film first. Of the cost, flood is 2 x 152.5 = 305, can 2 x 120 + 36 = 276, brush 2 x 130.
    const doubts = viewPlan(smallPlan, []).answer.figures.map(({ trust }) => `${trust.mark}, ${trust.doubt}`);
    expect(doubts).toEqual([
      'from memory, brush wet film',
      'from memory, flood transfer',
      'from memory, brush wet film',
    ]);
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
    [1, 'Yes: over 99% sure'],
    [0.93, 'Yes: 93% sure'],
    [0.9, 'Yes: 90% sure'],
    [0.8999, 'Likely: 90% sure'],
    [0.5, 'Likely: 50% sure'],
    [0.4999, 'Hardly: 50% sure'],
    [0.1, 'Hardly: 10% sure'],
    [0.0999, 'No: only 10% sure'],
    [0.005, 'No: only 1% sure'],
    [0.0049, 'No: under 1% sure'],
    [0, 'No: under 1% sure'],
  ])('lasts with a chance of %d: %s', (share, figure) => {
    const stock = only('Kettle grey', 'Chalk light');
    const ranges = { ...smallPlan.ranges, chanceAllLast: { chance: share, error: 0.003 } };
    expect(answerOf({ stock, ranges })[0]).toBe(
      `Will the pots last? ${figure}. That is the chance that today’s pots last for the whole army. ` +
        '2 paints needed: 2 enough. May run short: Kettle grey (8%).',
    );
  });

  it.each([
    [0.01, ' May run short: Kettle grey (1%).'],
    [0.0099, ''],
  ])('names a paint that runs short with a chance of %d as one that may: %j', (chance, says) => {
    const stock = only('Kettle grey');
    const { paints, ...ranges } = smallPlan.ranges;
    const grey = paints.get('Kettle grey');
    if (grey === undefined) throw new Error('no paint');
    const chanceShort = { chance, error: 0.001 };
    const changed = { ...ranges, paints: new Map([['Kettle grey', { ...grey, chanceShort }]]) };
    expect(answerOf({ stock, ranges: changed })[0]).toMatch(
      new RegExp(`1 paint needed: 1 enough\\.${says.replaceAll(/[.()]/g, '\\$&')}$`),
    );
  });

  it('says that the offers do not reach what was asked for', () => {
    const { promised } = smallPlan;
    const missed = { ...promised, metOfOffered: { chance: 0.61, error: 0.005 } };
    expect(answerOf({ promised: missed })[2]).toContain(
      'Asked for: 80% sure. The offers do not reach that: nothing runs out in 23.8% ± 0.4% of armies like this. In goes',
    );
  });

  it('says plainly what was kept', () => {
    const whole = { ...smallPlan.promised, metOnFreshDraws: smallPlan.promised.metOfOffered };
    const kept = 'sure. Nothing runs out in 82.1% ± 0.4% of armies like this. In goes';
    expect(answerOf({ promised: whole })[2]).toContain(`Asked for: 80% ${kept}`);
    expect(answerOf({ promised: { ...whole, surePercent: 82.5 } })[2]).toContain(`Asked for: 82.5% ${kept}`);
  });

  it('bought in goes, says what follows', () => {
    const goes = {
      aim: { policy: 'goes' },
      promised: { ...smallPlan.promised, surePercent: undefined },
    } as const;
    const start = 'What must I buy? €7.40. 1 whole pot from The Ferry Steps, postage of €3.90 included. ';
    const end =
      ' No offer covers Rust hush (4.1 ml more for that: 1 pot of 17 ml, unpriced). Another €6.40 would fill low pots up to their level.';
    expect(answerOf(goes)[2]).toBe(
      `${start}With 0.2 more orders, on average, it is at least €8.71 in all, one time in ten over €14.80. The next most likely falls before Second watch is done (12%), for about €7.40.${end}`,
    );
    const choices = smallPlan.choices.map((choice) => ({
      ...choice,
      follows: { ...choice.follows, next: undefined },
    }));
    expect(answerOf({ ...goes, choices })[2]).toBe(`${start}No other order follows.${end}`);
  });

  it('says so where nothing needs buying', () => {
    // No shop offers anything, and the shelf is as sure as was asked for.
    const promised = { ...smallPlan.promised, metOnFreshDraws: { chance: 0.992, error: 0.0009 } };
    const order = { ...nothingOrdered, unmet: [] };
    const [, , cash] = answerOf({ order, promised, restock: undefined });
    expect(cash).toBe(
      'What must I buy? Nothing. What stands on the shelf is enough for this army. Asked for: 80% sure. ' +
        'Nothing runs out in 99.2% ± 0.1% of armies like this.',
    );
  });

  it('does not call an unmet need nothing', () => {
    const [, , cash] = answerOf({ order: nothingOrdered, restock: undefined });
    expect(cash).toBe(
      'What must I buy? Nothing on offer. Asked for: 80% sure. No offer helps to that: nothing runs ' +
        'out in 23.8% ± 0.4% of armies like this. No offer covers Rust hush (4.1 ml more for that: 1 pot of 17 ml, unpriced).',
    );
  });

  it('asks for another like yours where no shop has it', () => {
    // Two droppers of 17 ml x 0.94 = 15.98 usable hold 20 ml, at 2.95 each.
    const stock = smallPlan.stock.map((one) => ({
      ...one,
      pots: one.pots.map((pot) => ({ ...pot, priceMinor: 295 })),
    }));
    const nettle = { paint: 'Nettle coat', ml: 20 };
    const figureOf = (...unmet: readonly { paint: string; ml: number }[]) =>
      answerOf({ stock, order: { ...nothingOrdered, unmet }, restock: undefined })[2];
    expect(figureOf(nettle)).toMatch(/^What must I buy\? €5\.90, without a shop\. /);
    expect(figureOf(nettle, { paint: 'Rust hush', ml: 1 })).toMatch(
      /^What must I buy\? at least €5\.90, without a shop\. /,
    );
  });

  it('says how far above the best an order may lie', () => {
    const order = { ...smallPlan.order, status: 'not proved', aboveBestMinor: 140, unmet: [] } as const;
    const [, , cash] = answerOf({ order, restock: undefined });
    expect(cash).toMatch(/ Not proved: at most €1\.40 above the best possible\.$/);
  });

  const noPrice = { exactMinor: exactMinor(0), atLeast: true };

  it('says what to fill in where nothing has a price', () => {
    const [, cost] = answerOf({
      costs: { ...smallPlan.costs, useWhole: noPrice, useRemaining: noPrice },
    });
    expect(cost).toBe(
      'What does a figure cost? No prices yet. None of the paint that this army needs has a price. Write what your ' +
        'pots cost into the price column of the pots sheet, or what shops ask into the offers sheet.',
    );
  });

  it('says so where only what is still to be used has no price', () => {
    const [, cost] = answerOf({ costs: { ...smallPlan.costs, useRemaining: noPrice } });
    expect(cost).toContain(
      'For all 21 figures at least €9.10 (€6.40 to €13.40). What is still to be used has no price yet. Not all priced: ',
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
    expect(cost).toContain('€0.00. In paint and extras used, on average; low to high €0.00 (');
  });
});
