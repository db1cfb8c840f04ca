// Sample: the folder and the workbook are the same army. A difference means that `npm run sample-workbook` is due.
import { expect, it } from 'vitest';
import { planArmy } from '../../src/plan-army.js';
import { describePlan } from '../../src/report/plan-json/describe-plan.js';
import { writePlanJson } from '../../src/report/plan-json/write-plan-json.js';
import { readSample, today } from './read-sample.js';

it('reads the same sheets from the folder and from the workbook', async () => {
  const [folder, workbook] = [await readSample('folder'), await readSample('workbook')];
  // A sheet and a log row know their file, which is the workbook here and log.csv there.
  const unfiled = ({ sheets }: typeof folder) => ({
    ...sheets,
    read: sheets.read.map(({ file: _, ...one }) => one),
    log: sheets.log.map(({ file: _, ...row }) => row),
  });
  expect(unfiled(workbook), 'run `npm run sample-workbook`').toEqual(unfiled(folder));
  expect([folder.problems, workbook.problems]).toEqual([[], []]);
});

it('plans the same from both, to the last digit', async () => {
  const [folder, workbook] = await Promise.all(
    (['folder', 'workbook'] as const).map(async (kind) => {
      const { sheets, problems } = await readSample(kind);
      const plan = await planArmy({ ...sheets, read: [] }, today, { seconds: 300 });
      return [...writePlanJson(describePlan(plan, problems))].join('');
    }),
  );
  expect(folder).toContain('"Toll Riders"');
  expect(workbook).toBe(folder);
});
