// Cards for the bench in words: the small army's next batches. Amounts stand in the tests of the summary.
import { describe, expect, it } from 'vitest';
import { at } from '../../../../src/model/at.js';
import type { BenchStep } from '../../../../src/model/bench.js';
import type { Plan } from '../../../../src/model/plan.js';
import { viewBench } from '../../../../src/report/sections/bench/view.js';
import { quoteName } from '../../../../src/report/words/quote-name.js';
import { viewInputs } from '../../../../src/report/words/view-inputs.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const viewOf = (plan: Plan) => viewBench(viewInputs(plan));
const view = viewOf(smallPlan);
const [ram, first] = view.cards;

/** The first watch with its steps changed. */
function stepsOf(change: (step: BenchStep) => BenchStep, copies = 1) {
  const { bench } = smallPlan.summary;
  const cards = bench.cards.slice(1, 2).map((card) => {
    const steps = Array.from({ length: copies }, () => card.bench.steps.map(change)).flat();
    return { ...card, bench: { ...card.bench, steps } };
  });
  return viewOf({ ...smallPlan, summary: { ...smallPlan.summary, bench: { ...bench, cards } } }).cards;
}

describe('a card', () => {
  it('names the unit, its batch, its evening, what to type', () => {
    expect(ram).toMatchObject({
      unit: 'The ram',
      batch: 'Pole ram: 1 figure',
      finished: 'Finished on evening 2',
      caution: '',
      commands: ['halfpot log SHEETS --unit "The ram" --steps 2 --figures 1'],
    });
    expect(first).toMatchObject({
      batch: 'Reed warden: 10 figures',
      finished: '',
      commands: ['halfpot log SHEETS --unit "First watch" --steps 1-5 --figures 10'],
    });
  });

  it('has no step written down that is not on it', () => {
    const [card] = stepsOf((step) => (step.step === 3 ? { ...step, step: 2 } : step));
    expect(card?.commands).toEqual(['halfpot log SHEETS --unit "First watch" --steps 1-2,4-5 --figures 10']);
  });

  it('has no more figures written down than its steps are on', () => {
    const [card] = stepsOf((step) => (step.step === 2 ? { ...step, figures: 4 } : step));
    expect(card?.commands).toEqual([
      'halfpot log SHEETS --unit "First watch" --steps 1,3-5 --figures 10',
      'halfpot log SHEETS --unit "First watch" --steps 2 --figures 4',
    ]);
  });

  it('has a step written down paint by paint where they are on more figures or fewer', () => {
    const [card] = stepsOf((step) => {
      if (step.step !== 2) return step;
      const paints = ['Nettle coat', 'Pond wash'].map((paint, index) => ({
        ...{ ...at(step.paints, 0), paint, figures: index === 0 ? 4 : 10 },
      }));
      return { ...step, isParted: true, paints };
    });
    expect(card?.commands).toEqual([
      'halfpot log SHEETS --unit "First watch" --steps 1,3-5 --figures 10',
      'halfpot log SHEETS --unit "First watch" --step 2 --paint "Nettle coat" --figures 4',
      'halfpot log SHEETS --unit "First watch" --step 2 --paint "Pond wash" --figures 10',
    ]);
  });

  it('says each step', () => {
    expect(first?.steps.map(({ no, zone, layer, coats, dries }) => [no, zone, layer, coats, dries])).toEqual([
      [1, 'all', 'primer', '1 coat', 'dries 30\u00a0min: start the next batch here'],
      [2, 'tunic', 'base coat', '3 coats', 'dries 5\u00a0min'],
      [3, 'whole', 'wash', '1 coat', 'dries 30\u00a0min: start the next batch here'],
      [4, 'tunic', 'highlight', '1 coat', 'dries 5\u00a0min'],
      [5, 'belt', 'detail', '1 coat', 'dries 5\u00a0min'],
    ]);
  });

  it('says how much, of sprays in ml alone', () => {
    expect(first?.steps.map(({ paints }) => paints[0]?.amount)).toEqual([
      '30.0\u00a0ml; to be sure 48.0\u00a0ml',
      'a coat: 40 drops, 2.0\u00a0ml; to be sure 64 drops',
      '122 drops, 6.1\u00a0ml; to be sure 194 drops',
      '9 drops, 0.45\u00a0ml; to be sure 17 drops',
      '1 drop, 0.07\u00a0ml; to be sure 3 drops',
    ]);
  });

  it('warns of what is sprayed on it', () => {
    expect(first?.caution).toMatch(/^Spray outdoors or with good ventilation/);
    expect(stepsOf((step) => ({ ...step, method: 'brush' }))[0]?.caution).toBe('');
  });

  it('says how thin, and on how many of the batch', () => {
    const [card] = stepsOf((step) => ({ ...step, thin: 2, figures: 4 }));
    expect(card?.steps[1]).toMatchObject({ coats: '3 coats, 2 parts of water', layer: 'base coat, on 4' });
  });

  it('is followed by another where its steps take more lines than fit', () => {
    const cards = stepsOf((step) => step, 5);
    expect(cards.map(({ batch }) => batch)).toEqual([
      'Reed warden: 10 figures',
      'Reed warden: 10 figures, continued',
    ]);
    expect(cards.flatMap(({ steps }) => steps)).toHaveLength(25);
  });

  it('counts batches where there are several', () => {
    const { bench } = smallPlan.summary;
    const cards = bench.cards.map((card) => ({ ...card, bench: { ...card.bench, batch: 2, batches: 4 } }));
    const more = { ...smallPlan.summary, bench: { ...bench, cards, more: 7 } };
    const { cards: seen, more: says } = viewOf({ ...smallPlan, summary: more });
    expect(seen[0]?.batch).toBe('Pole ram: batch 2 of 4, 1 figure');
    expect(says).toBe('7 more units: their cards come once some of these are painted.');
  });
});

it('a painted army has none', () => {
  const units = smallPlan.estimate.units.map((one) => ({ ...one, job: { ...one.job, remaining: [] } }));
  const { nothing, cards } = viewOf(changedPlan({ estimate: { ...smallPlan.estimate, units } }));
  expect([nothing, cards]).toEqual(['Everything is painted: no paint is needed any more.', []]);
});

// POSIX, Shell Command Language 2.2: within double quotes the dollar sign, backquote and backslash keep their meaning, within
// single quotes nothing does; a single quote ends them.
it.each([
  ['Upper Gate Watch', '"Upper Gate Watch"'],
  ["Bargee's", '"Bargee\'s"'],
  ['$(rm x)', "'$(rm x)'"],
  ['`x`', "'`x`'"],
  ['say "a"', '\'say "a"\''],
  ["it's $5", "'it'\\''s $5'"],
])('%s is typed as %s', (name, quoted) => expect(quoteName(name)).toBe(quoted));
