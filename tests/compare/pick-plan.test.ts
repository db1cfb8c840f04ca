import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pickPlan } from '../../src/compare/pick-plan.js';
import { planVersion } from '../../src/report/plan-json/plan-version.js';
import { makeDocument } from './make-document.js';

describe('a plan.json to compare', () => {
  it('is taken as it is, that of the sample too', () => {
    const text = readFileSync(new URL('../../reports/low-sluice/plan.json', import.meta.url), 'utf8');
    for (const value of [makeDocument(), JSON.parse(text)]) expect(pickPlan(value)).toBe(value);
  });

  it.each([
    ['older', { version: planVersion - 1 }],
    ['newer', { version: planVersion + 1 }],
    ['damaged', { version: '3' }],
    ['damaged', { currency: 'euro' }],
    ['damaged', { settings: { locale: 'not a locale', restock: 'army' } }],
    ['damaged', { costs: { use: 'ten', useAtLeast: false, cash: '1.00' } }],
    ['damaged', { units: [{ unit: 'first spears' }] }],
    ['damaged', { jobs: {} }],
    ['damaged', { time: null }],
  ])('is %s with %j', (fault, change) => {
    expect(pickPlan({ ...makeDocument(), ...change })).toBe(fault);
  });

  it.each([[undefined], [null], ['text'], [[]], [{}]])('%j is none', (value) => {
    expect(pickPlan(value)).toBe('damaged');
  });
});
