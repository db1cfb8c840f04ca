// Progress is no weighing: whatever row without an amount comes in, what other units need stays as it was.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { estimateArmy } from '../../../src/estimate/estimate-army.js';
import type { LogRow } from '../../../src/model/sheets.js';
import { learnFromLog } from '../../../src/ranges/learn/learn-from-log.js';
import { makeFigure, makePot, makeSheets, makeStep, makeUnit } from '../../make-sheets.js';

const units = ['watch', 'rowers', 'divers', 'reserve'];
const paints = ['Chalk', 'Slate', 'Shade'];
const work = makeSheets({
  figures: [makeFigure({ kit: [{ item: 'weapon', count: 1 }] })],
  steps: [
    makeStep({ step: 1, layer: 'primer', paint: 'Chalk' }),
    makeStep({ step: 2, layer: 'base coat', paint: 'Slate' }),
    makeStep({ step: 3, layer: 'wash', paint: 'Shade' }),
  ],
  pots: [makePot({ paint: 'Chalk', container: 'can', sizeMl: 400 })],
  // The last is like the first, so that both are one job until a row tells them apart.
  army: units.map((unit, at) => makeUnit({ unit, row: at + 2, count: at === 3 ? 10 : 10 + 7 * at })),
});

/** What each unit still needs, line by line, with what the log has taught. */
function needsAfter(log: readonly LogRow[]) {
  const sheets = { ...work, log };
  const estimateFirst = () => estimateArmy(sheets, registry);
  const { beliefs } = learnFromLog({ ...sheets, assumptions: registry, estimateFirst });
  const estimate = estimateArmy(sheets, beliefs.assumptions);
  return { beliefs, lines: new Map(estimate.units.map(({ unit, job }) => [unit.unit, job.remaining])) };
}

const task = {
  date: fc.constantFrom('2026-02-28', '2026-03-01', '2026-03-02'),
  unit: fc.constantFrom(...units),
  place: fc.nat(2),
  figures: fc.integer({ min: 1, max: 40 }),
};
type Task = { date: string; unit: string; place: number; figures: number };
const rowOf = ({ place, ...task }: Task, row: number): LogRow => ({
  ...task,
  ...{ row, step: place + 1, paint: paints[place] ?? '' },
});
const weighing = fc.record({ ...task, usedMl: fc.double({ min: 0.1, max: 8, noNaN: true }) });
const progress = fc.record({ ...task, weight: fc.constantFrom('none', 'beforeG', 'afterG') });

it('a row of progress never changes what any other unit needs', () => {
  fc.assert(
    fc.property(
      fc.array(weighing, { maxLength: 3 }),
      progress,
      fc.boolean(),
      (weighings, { weight, ...done }, isFirst) => {
        const before = weighings.map(({ usedMl, ...one }, at) => ({ ...rowOf(one, at + 2), usedMl }));
        const row = { ...rowOf(done, 9), ...(weight === 'none' ? {} : { [weight]: 30 }) };
        const [without, after] = [before, isFirst ? [row, ...before] : [...before, row]].map(needsAfter);
        expect(after?.beliefs).toEqual(without?.beliefs);
        for (const unit of units.filter((one) => one !== done.unit))
          expect(after?.lines.get(unit), unit).toEqual(without?.lines.get(unit));
      },
    ),
    { numRuns: 60 },
  );
});
