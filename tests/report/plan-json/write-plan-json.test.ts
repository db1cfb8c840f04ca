import { describe, expect, it } from 'vitest';
import { writePlanJson } from '../../../src/report/plan-json/write-plan-json.js';
import { exampleDescription, textOf } from './plan-example.js';

describe('writePlanJson', () => {
  it('writes what a plain JSON writer would', () => {
    const plain = { ...exampleDescription, units: [...exampleDescription.units] };
    expect(JSON.parse(textOf(exampleDescription))).toEqual(JSON.parse(JSON.stringify(plain)));
  });

  it('keeps the order of keys and gives each entry a line', () => {
    const text = textOf(exampleDescription);
    expect(Object.keys(JSON.parse(text))).toEqual(Object.keys(exampleDescription));
    const lines = text.split('\n');
    expect(lines.filter((line) => line.startsWith('{"unit":"watch","job":0'))).toHaveLength(1);
    expect(lines.filter((line) => line.startsWith('{"figure":"guard","scheme":'))).toHaveLength(2);
    expect(text.endsWith('\n}\n')).toBe(true);
  });

  it('writes empty lists', () => {
    const text = textOf({ ...exampleDescription, units: [], jobs: [], problems: [] });
    expect(JSON.parse(text)).toMatchObject({ units: [], jobs: [], problems: [] });
  });

  it('tells 100,000 units of a hundred jobs in under 60 MB, no piece of it long', () => {
    const [unit] = [...exampleDescription.units];
    const [job] = exampleDescription.jobs;
    const [line] = job?.lines ?? [];
    if (unit === undefined || job === undefined || line === undefined)
      throw new Error('the example is empty');
    const big = {
      ...exampleDescription,
      units: Array.from({ length: 100_000 }, (_, at) => ({ ...unit, unit: `Upper Gate Watch ${at}` })),
      jobs: Array.from({ length: 100 }, () => ({ ...job, lines: Array.from({ length: 100 }, () => line) })),
    };
    let length = 0;
    let longest = 0;
    for (const piece of writePlanJson(big)) {
      length += piece.length;
      longest = Math.max(longest, piece.length);
    }
    expect(length).toBeLessThan(60_000_000);
    expect(longest).toBeLessThan(80_000);
  });
});
