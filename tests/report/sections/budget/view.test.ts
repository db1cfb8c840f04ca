// What a budget finishes: figures, units left open, the cash that each would take, the order in short.
import { describe, expect, it } from 'vitest';
import type { Budget } from '../../../../src/model/order.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { smallBudget } from '../../a-small-climb.js';
import { changedPlan } from '../../a-small-plan.js';
import { smallOrder } from '../../a-small-shelf.js';
import { examplePlan } from '../../plan-json/plan-example.js';

const plainSpaces = (text: string): string => text.replaceAll('\u00a0', ' ');
const viewOf = (changes: Partial<Budget>) =>
  viewPlan(changedPlan({ budget: { ...smallBudget, ...changes } }), []);
const budgetOf = (changes: Partial<Budget>) => viewOf(changes).budget;

describe('eight euros', () => {
  const view = budgetOf({});

  it('finish 17 of 21 figures', () => {
    // 10 + 6 + 1 of 10 + 10 + 1; 8.00 - 7.40 = 0.60.
    expect(view).toMatchObject({
      title: 'What €8.00 finishes',
      figure: '17 of 21 figures',
      says: 'For €7.40 with postage, but for paint that no offer covers; €0.60 is left over.',
      whole: 'Finished whole: First watch (10) and The ram (1).',
    });
  });

  it('go to whole units first, at what the chosen way to buy takes', () => {
    expect(view?.lead).toContain('then whole units of the others, and last as many figures as can be had');
    expect(view?.lead).toContain(
      'What 80% sure takes over the likely needs is kept in proportion at every number of figures; by the likely needs alone pots may last longer.',
    );
  });

  it('go by the likely needs where nothing is taken over them', () => {
    const { budget } = viewPlan(changedPlan({ aim: { policy: 'likely' }, budget: smallBudget }), []);
    expect(budget?.lead).toMatch(/units cut short\.$/);
  });

  it('leave four of the second watch, for which 4.90 more would be wanted', () => {
    // 7.40 + 5.50 - 8.00 = 4.90.
    expect(view?.open).toEqual([
      { unit: 'Second watch', finished: '6 of 10', share: 0.6, left: '4', extra: '€5.50', short: '€4.90' },
    ]);
  });

  it('buy the order, told in short', () => {
    expect(view?.shops).toEqual([
      { shop: 'The Ferry Steps', offers: 'Nettle coat, dropper; postage €3.90', cash: '€7.40' },
    ]);
    expect(view?.total).toBe('€7.40');
  });

  it('do not hide that a paint can not be had', () => {
    expect(view?.notes.map(plainSpaces)).toEqual([
      'What no offer covers stands in no figure’s way here; to finish them you still need Rust hush (4.1 ml).',
    ]);
  });

  it('stand in the answer', () => {
    expect(viewOf({}).answer.figures[2].detail).toMatch(
      / A budget of €8\.00 finishes 17 of 21 figures, but for paint that no offer covers\.$/,
    );
  });
});

describe('other budgets', () => {
  it('finish everything', () => {
    const units = smallBudget.units.map((unit) => ({ ...unit, finished: unit.figures }));
    const view = viewOf({ budgetMinor: 740, units, nextSteps: [] });
    expect(view.budget).toMatchObject({
      figure: 'All 21 figures',
      says: 'For €7.40 with postage, but for paint that no offer covers; nothing is left over.',
      open: [],
    });
    expect(view.answer.figures[2].detail).toMatch(
      / A budget of €7\.40 finishes all 21 figures, but for paint that no offer covers\.$/,
    );
  });

  it('buy nothing', () => {
    const order = { ...smallOrder, lines: [], bills: [], totalMinor: 0, postageMinor: 0, unmet: [] };
    expect(budgetOf({ budgetMinor: 0, order })).toMatchObject({
      title: 'What €0.00 finishes',
      says: 'From what stands on the shelf: nothing is bought.',
      proof: '',
      shops: [],
    });
  });

  it('say where a search ended early and what was not tried', () => {
    const order = { ...smallOrder, unmet: [], status: 'not proved' as const, aboveBestMinor: 25 };
    const view = budgetOf({ proved: false, notTried: 2, order });
    expect(view?.notes).toEqual([
      'A search ended before it was proved that no more figures can be had. Plan again with more time to search, such as --seconds 60.',
      '2 units of the last priorities were not tried: what is left over may finish some of them.',
    ]);
    expect(view?.proof).toContain('at most €0.25 above the best possible');
  });

  it('price only the next steps that were worked out, by place and not by name', () => {
    const units = ['Twins', 'Twins', 'Twins'].map((unit) => ({ unit, figures: 5, finished: 0 }));
    const nextSteps = [100, 200].map((extraMinor) => ({ unit: 'Twins', figures: 5, extraMinor }));
    expect(budgetOf({ units, nextSteps })?.open.map(({ extra, short }) => [extra, short])).toEqual([
      ['€1.00', '€0.40'],
      ['€2.00', '€1.40'],
      ['', ''],
    ]);
  });

  it('list the first hundred of many open units', () => {
    const units = Array.from({ length: 130 }, (_, at) => ({ unit: `Unit ${at}`, figures: 5, finished: 1 }));
    const view = budgetOf({ units });
    expect(view?.open).toHaveLength(100);
    expect(view?.more).toBe('30 more units are left unfinished; plan.json lists each.');
  });

  it('are not there unless asked for', () => {
    const view = viewPlan(changedPlan({ budget: undefined }), []);
    expect(view.budget).toBeUndefined();
    expect(view.answer.figures[2].detail).not.toContain('budget');
  });

  it('stay within a plan by the real stages', () => {
    expect(viewPlan(examplePlan, []).budget).toMatchObject({
      title: 'What €5.00 finishes',
      figure: '13 of 33 figures',
      says: 'From what stands on the shelf, but for paint that no offer covers: nothing is bought.',
    });
  });
});
