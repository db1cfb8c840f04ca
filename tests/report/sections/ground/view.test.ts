// What the numbers rest on: the whole registry, marks, doubts, defaults, warnings. And the page around it.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { registry } from '../../../../src/assumptions/registry.js';
import { type Caution, cautions } from '../../../../src/model/plan.js';
import type { Problem } from '../../../../src/model/problem.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const { ground } = viewPlan(smallPlan, []);
const rows = ground.groups.flatMap((group) => group.rows);

describe('the registry', () => {
  it('is listed whole, each name once', () => {
    expect(rows.map(({ name }) => name).sort()).toEqual([...registry.keys()].sort());
    expect(new Set(rows.map(({ id }) => id)).size).toBe(registry.size);
  });

  it('shows low, likely, high, unit, mark and source', () => {
    expect(rows.find(({ name }) => name === 'brush transfer')).toMatchObject({
      low: '0.3',
      likely: '0.5',
      high: '0.7',
      unit: 'of the paint put out',
      mark: 'from memory',
      source: 'no published figure for small figures is known',
      spread: { low: 0.6, high: 1.4 },
    });
  });

  it('gives an exact value no range', () => {
    expect(rows.find(({ name }) => name === 'skin of a person')).toMatchObject({
      low: '',
      likely: '18,097.078',
      high: '',
      unit: 'cm²',
      spread: undefined,
    });
  });

  it('stands in groups by what it is about', () => {
    const groupOf = (name: string) =>
      ground.groups.find((group) => group.rows.some((row) => row.name === name))?.title;
    expect(
      ['relief', 'most catch of a spray', 'wash dries', 'wash care', 'opacity weak', 'error by eye'].map(
        groupOf,
      ),
    ).toEqual([
      'Dress, build, kit',
      'How paint goes on',
      'Layers, where a scheme says nothing',
      'How long it takes',
      'Colours',
      'Pots, readings, weighings',
    ]);
  });

  it('leads from each doubt to its row', () => {
    const linked = rows.find(({ name }) => name === 'spray can transfer')?.id;
    expect(viewPlan(smallPlan, []).use.paints[0]?.trust.doubtId).toBe(linked);
  });
});

it('says from how many weighings a value comes', () => {
  const assumptions = smallPlan.assumptions.map((one) =>
    one.name === 'brush transfer' ? { ...one, mark: 'weighed' as const, weighings: 3 } : one,
  );
  const weighed = viewPlan(changedPlan({ assumptions }), []).ground.groups.flatMap((group) => group.rows);
  expect(weighed.find(({ name }) => name === 'brush transfer')).toMatchObject({
    mark: 'weighed',
    markText: 'weighed (n = 3)',
  });
  expect(weighed.find(({ name }) => name === 'painter')?.markText).toBe('from memory');
});

it('explains each mark once, and what low and high mean', () => {
  expect(ground.marks.map(({ mark }) => mark)).toEqual([
    'weighed',
    'yours',
    'your model',
    'published',
    'open models',
    'common practice',
    'from memory',
  ]);
  expect(ground.labels.lead).toContain(
    'One time in ten a value lies below its low, one in ten above its high',
  );
});

it('lists defaults', () => {
  expect(ground.defaults).toEqual([{ where: 'pots, opened', rows: '3 rows', meaning: 'never opened' }]);
});

describe('warnings', () => {
  const warning = (row: number, severity: Problem['severity'] = 'warning'): Problem => ({
    code: 'not-a-volume',
    severity,
    file: 'pots.csv',
    sheet: 'pots',
    row,
    column: 'size ml',
    found: 'x',
    expected: '',
    hint: 'Look again.',
  });

  it('stand in row order, capped, without errors', () => {
    const problems = [9, 8, 7, 6, 5, 4, 3].map((row) => warning(row)).concat(warning(2, 'error'));
    const { warnings } = viewPlan(smallPlan, problems).ground;
    expect(warnings[0]).toBe('pots.csv row 3, "size ml": "x" is not a volume. Look again.');
    expect(warnings.slice(4)).toEqual([
      'pots.csv row 7, "size ml": "x" is not a volume. Look again.',
      'and 2 more like the last',
    ]);
  });
});

describe('the page', () => {
  it('is tagged as English, since its words are', () => {
    const langOf = (locale: string) =>
      viewPlan(changedPlan({ settings: { ...smallPlan.settings, locale } }), []).lang;
    expect(['en', 'en-US', 'de-DE', 'ar-EG', 'enm'].map(langOf)).toEqual(['en', 'en-US', 'en', 'en', 'en']);
  });

  it('opens with its facts', () => {
    const { title, facts } = viewPlan(smallPlan, []);
    expect([title, ...facts]).toEqual(['Paint for 21 figures', '3 units', '6 paints', '5 October 2026']);
  });

  it('shows only the cautions that the plan calls for', () => {
    const { blocks } = viewPlan(smallPlan, []).cautions ?? { blocks: [] };
    expect(blocks.map(({ about }) => about)).toEqual(['Spray can', 'Brush']);
    expect(viewPlan(changedPlan({ cautions: [] }), []).cautions).toBeUndefined();
  });

  const blocksOf = (called: readonly Caution[]) =>
    viewPlan(changedPlan({ cautions: called }), []).cautions?.blocks ?? [];
  const saysOf = (caution: Caution): string => blocksOf([caution])[0]?.says.join(' ') ?? '';

  it.each(cautions)('%s: label, safety data sheet and local rules come first', (caution) => {
    const lead = viewPlan(changedPlan({ cautions: [caution] }), []).cautions?.labels.lead;
    expect(lead).toContain('Labels, safety data sheets and local rules come first');
  });

  it.each(cautions.filter((caution) => caution !== 'brush'))('%s: air and fire', (caution) => {
    for (const word of [/ventilat/i, /flames/i, /sparks/i]) expect(saysOf(caution)).toMatch(word);
  });

  it('with a brush: what no word tells of goes by its label', () => {
    expect(saysOf('brush')).toContain('Anything but water thins or cleans by its label');
  });

  it('has each in the README as well', () => {
    const readme = readFileSync(new URL('../../../../README.md', import.meta.url), 'utf8');
    const blocks = blocksOf(cautions);
    expect(blocks).toHaveLength(cautions.length);
    for (const { about } of blocks) expect(readme).toContain(`\n- **${about}`);
  });
});
