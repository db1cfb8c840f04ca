// What is done: steps finished and begun, and how the need has shrunk.
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/model/plan.js';
import type { Job } from '../../../../src/model/work.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { ram, smallUnits, wardens } from '../../a-small-army.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const progressOf = (changes: Partial<Plan>) => viewPlan(changedPlan({ ...changes }), []).progress;
const withJobs = (...jobs: readonly Job[]) => {
  const units = jobs.map((job, at) => ({ unit: { ...smallUnits[0].unit, unit: `unit ${at + 1}` }, job }));
  return progressOf({
    estimate: { ...smallPlan.estimate, jobs: new Map(jobs.map((job) => [job, 1])), units },
  });
};

describe('the small army', () => {
  const view = progressOf({});

  it('needs less than at first', () => {
    // Whole 2 x 42.67 + 13.05 = 98.39; the ram's primer of 9 is done.
    expect(view?.lead.replaceAll('\u00a0', ' ')).toBe(
      'What the army needs has shrunk from 98.4 ml to 89.4 ml.',
    );
  });

  it('has one step of the ram done', () => {
    expect(view?.rows.map(({ unit, steps, begun }) => [unit, steps, begun])).toEqual([
      ['First watch', '0 of 5', ''],
      ['Second watch', '0 of 5', ''],
      ['The ram', '1 of 2', ''],
    ]);
    expect(view?.rows.map(({ doneShare }) => doneShare)).toEqual([0, 0, expect.closeTo(9 / 13.05)]);
    expect(view?.showBegun).toBe(false);
  });
});

describe('other armies', () => {
  it('tell steps that some figures have had', () => {
    // Six of ten have the primer, by the log.
    const remaining = wardens.remaining.map((line) =>
      line.step === 1 ? { ...line, figures: 4, putOutMl: 12 } : line,
    );
    const view = withJobs({ ...wardens, remaining });
    expect(view?.rows[0]).toMatchObject({ steps: '0 of 5', begun: 'step 1 on 6 of 10' });
    expect(view?.rows[0]?.doneShare).toBeCloseTo(18 / 42.67);
    expect(view?.showBegun).toBe(true);
  });

  it('tell what is finished', () => {
    const view = withJobs({ ...ram, remaining: [], unfinished: false }, wardens);
    expect(view?.rows[0]).toMatchObject({ steps: '2 of 2', remaining: 'nothing', doneShare: 1 });
    expect(view?.lead).toContain('1 unit of 2 is finished.');
  });

  it('of which nothing is done have nothing to tell', () => {
    expect(withJobs(wardens)).toBeUndefined();
  });

  it('of many units are cut short, and that is said', () => {
    const view = withJobs(...Array.from({ length: 1001 }, () => ram));
    expect(view?.rows).toHaveLength(1000);
    expect(view?.more).toContain('The first 1,000 units');
  });
});
