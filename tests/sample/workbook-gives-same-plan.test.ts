// Sample: the folder and the workbook are the same army. A difference means that `npm run sample-workbook` is due.
import { expect, it } from 'vitest';
import { planArmy } from '../../src/plan-army.js';
import { describePlan } from '../../src/report/plan-json/describe-plan.js';
import { writePlanJson } from '../../src/report/plan-json/write-plan-json.js';
import { readSample, today } from './read-sample.js';

it('reads the same sheets from the folder and from the workbook', async () => {
  const [folder, workbook] = [await readSample('folder'), await readSample('workbook')];
  // A log row knows its file, which is the workbook here and log.csv there.
  const unfiled = ({ sheets }: typeof folder) => ({
    ...sheets,
    log: sheets.log.map(({ file: _, ...row }) => row),
  });
  expect(unfiled(workbook), 'run `npm run sample-workbook`').toEqual(unfiled(folder));
  expect([folder.problems, workbook.problems]).toEqual([[], []]);
});

it('plans the same from both, to the last digit', async () => {
  const [folder, workbook] = await Promise.all(
    (['folder', 'workbook'] as const).map(async (kind) => {
      const { sheets, problems } = await readSample(kind);
      return [...writePlanJson(describePlan(await planArmy(sheets, today, { seconds: 300 }), problems))].join(
        '',
      );
    }),
  );
  expect(folder).toContain('"Toll Riders"');
  expect(workbook).toBe(folder);
});
