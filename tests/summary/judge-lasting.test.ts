// Whether today's pots last: the small army on its shelf. By hand.
import { describe, expect, it } from 'vitest';
import type { Ranges } from '../../src/model/ranges.js';
import type { PaintStock } from '../../src/model/stock.js';
import { judgeLasting } from '../../src/summary/judge-lasting.js';
import { sumWork } from '../../src/summary/sum-work.js';
import { ram, wardens } from '../report/a-small-army.js';
import { smallRanges } from '../report/a-small-doubt.js';
import { smallPlan } from '../report/a-small-plan.js';
import { smallStock } from '../report/a-small-shelf.js';

const work = sumWork({
  jobs: new Map([
    [wardens, 2],
    [ram, 1],
  ]),
});
const judge = (ranges: Partial<Ranges> = {}, stock = smallStock) =>
  judgeLasting({ ...smallPlan, stock, ranges: { ...smallRanges, ...ranges }, work });
const owned = smallStock.filter(({ state }) => state !== 'none owned');

describe('the verdict', () => {
  it.each([
    [0.9, 'yes'],
    [0.899, 'likely'],
    [0.5, 'likely'],
    [0.499, 'hardly'],
    [0.1, 'hardly'],
    [0.099, 'no'],
  ])('at a chance of %d: %s', (chance, verdict) => {
    expect(judge({ chanceAllLast: { chance, error: 0 } }, owned).verdict).toBe(verdict);
  });

  it('is no where a needed paint is not owned, whatever the chance', () => {
    expect(judge({ chanceAllLast: { chance: 1, error: 0 } }).verdict).toBe('no');
  });
});

it('sorts needed paints by state, the most likely to run short first', () => {
  expect(judge().states.map(({ state, paints }) => [state, paints.map(({ paint }) => paint)])).toEqual([
    ['none owned', ['Rust hush']],
    ['short', ['Nettle coat']],
    ['tight', ['Pond wash']],
    ['enough', ['Kettle grey', 'Bell brass', 'Chalk light']],
  ]);
});

it('of paints as likely to run short puts the least covered first', () => {
  // Chalk 16.32 / 0.9 = 18.1 times, brass 3.264 / 0.14 = 23.3 times.
  const { states } = judge({ paints: new Map() });
  expect(states.at(-1)?.paints.map(({ paint }) => paint)).toEqual([
    'Kettle grey',
    'Chalk light',
    'Bell brass',
  ]);
});

describe('risky paints', () => {
  it('are owned and needed ones', () => {
    expect(judge().risky.map(({ paint }) => paint)).toEqual(['Nettle coat', 'Pond wash', 'Kettle grey']);
  });

  it('begin at one in a hundred', () => {
    const brass = smallRanges.paints.get('Bell brass');
    if (brass === undefined) throw new Error('no paint');
    const at = (chance: number) =>
      judge({ paints: new Map([['Bell brass', { ...brass, chanceShort: { chance, error: 0 } }]]) }).risky;
    expect([at(0.01).length, at(0.0099).length]).toEqual([1, 0]);
  });
});

// Ten wardens take 0.6 ml of Nettle coat each and 0.05 ml for the sitting: 4.08 ml are 6 (3.65), 2 ml 3 (1.85).
it('knows to which figure each needed paint lasts, likely and one time in ten', () => {
  const { reach } = judge();
  expect(reach.get('Nettle coat')).toEqual({
    likely: { figures: 6, unit: 'First watch', ofUnit: 6 },
    low: { figures: 3, unit: 'First watch', ofUnit: 3 },
  });
  // 6.1 ml for ten; of 10.1 ml 4 are left, 6 at 0.6 and 0.1.
  expect(reach.get('Pond wash')).toEqual({
    likely: undefined,
    low: { figures: 16, unit: 'Second watch', ofUnit: 6 },
  });
  expect([...reach.keys()]).not.toContain('Lamp white');
});

it('counts what is on its way: 11.52 ml of one paint', () => {
  expect(judge()).toMatchObject({ onWayMl: 11.52, onWayPaints: 1 });
});

it('knows low paints that the army does not need', () => {
  expect(judge().unusedLow.map(({ paint }) => paint)).toEqual(['Lamp white']);
});

describe('trust', () => {
  it('names what the draws found greatest', () => {
    expect(judge().trust).toEqual({ mark: 'from memory', biggestDoubt: 'brush wet film' });
    expect(judge().paintTrust.get('Pond wash')?.biggestDoubt).toBe('flood wet film');
  });

  it('without draws names that of the paints that are missing, else of those that are tight, else of all', () => {
    const trustOf = (stock: readonly PaintStock[]) => judge({ doubts: [] }, stock).trust.biggestDoubt;
    const bought = smallStock.map((one) => ({ ...one, toBuyMl: 0 }));
    const enough = bought.map((one) => ({ ...one, state: 'enough' as const }));
    expect([smallStock, bought, enough].map(trustOf)).toEqual([
      'brush wet film',
      'flood transfer',
      'spray can transfer',
    ]);
  });

  it('of a paint that is not needed is only its reading’s mark', () => {
    expect(judge().paintTrust.get('Lamp white')).toEqual({ mark: 'from memory', biggestDoubt: '' });
  });
});
