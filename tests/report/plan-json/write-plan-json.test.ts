import { describe, expect, it } from 'vitest';
import type { PlanDescription } from '../../../src/report/plan-json/describe-plan.js';
import type { EntryList } from '../../../src/report/plan-json/describe-work.js';
import { writePlanJson } from '../../../src/report/plan-json/write-plan-json.js';
import { exampleDescription, textOf } from './plan-example.js';

/** Spells every entry out one by one, the slow way. */
function spellOut({ units, lines, time, ...rest }: PlanDescription): unknown {
  const entries = (list: typeof units | typeof lines | typeof time.units) =>
    [...(list as EntryList<object, object>)].flatMap(({ own, shared }) =>
      shared.map((one) => ({ ...own, ...one })),
    );
  return {
    ...rest,
    units: entries(units),
    lines: entries(lines),
    time: { ...time, units: entries(time.units) },
  };
}

describe('writePlanJson', () => {
  it('writes what a plain JSON writer would', () => {
    expect(JSON.parse(textOf(exampleDescription))).toEqual(
      JSON.parse(JSON.stringify(spellOut(exampleDescription))),
    );
  });

  it('keeps the order of keys and gives each entry a line', () => {
    const text = textOf(exampleDescription);
    expect(Object.keys(JSON.parse(text))).toEqual(Object.keys(exampleDescription));
    const lines = text.split('\n');
    expect(lines.filter((line) => line.startsWith('{"unit":"watch","scheme":'))).toHaveLength(4);
    expect(lines.filter((line) => line.startsWith('{"unit":"watch","cash":'))).toHaveLength(1);
    expect(text.endsWith('\n}\n')).toBe(true);
  });

  it('writes empty lists', () => {
    const text = textOf({ ...exampleDescription, units: [], lines: [], problems: [] });
    expect(JSON.parse(text)).toMatchObject({ units: [], lines: [], problems: [] });
    const done = [...exampleDescription.lines].filter(({ shared }) => shared.length === 0);
    expect(done).toHaveLength(1);
    expect(JSON.parse(textOf({ ...exampleDescription, lines: done }))).toMatchObject({ lines: [] });
  });

  it('hands on chunks of about 64 KB, in time and memory for a million lines', () => {
    const [unit] = exampleDescription.units;
    const [line] = exampleDescription.lines;
    if (unit === undefined || line === undefined) throw new Error('the example has no units');
    const many = 100_000;
    const big = {
      ...exampleDescription,
      units: Array.from({ length: many }, (_, at) => ({ ...unit, own: { ...unit.own, unit: `unit ${at}` } })),
      lines: Array.from({ length: many }, (_, at) => ({ ...line, own: { unit: `unit ${at}` } })),
    };
    let length = 0;
    let longest = 0;
    for (const chunk of writePlanJson(big)) {
      length += chunk.length;
      longest = Math.max(longest, chunk.length);
    }
    expect(length).toBeGreaterThan(100_000_000);
    expect(longest).toBeLessThan(80_000);
  });
});
