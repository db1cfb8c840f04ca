// The scorecard itself: what counts as right, asked, left and wrong, by hand.
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../../src/model/problem.js';
import { readFloors, worseThan, writeFloors } from './floors.js';
import type { Answer, AnswerSheet } from './read-answer.js';
import type { Reading } from './reading.js';
import { isAlike, scoreReading } from './score-reading.js';

const reading: Reading = {
  says: 'two pots',
  paths: ['shelf.xlsx'],
  sheets: [
    {
      is: 'pots',
      headerRow: 2,
      columns: { A: 'paint', C: 'left' },
      rows: { '3': ['Lock brick', '60%'], '4': ['Weir foam', '?'], '6': ['Oat', ''] },
    },
  ],
};

const pots: AnswerSheet = {
  is: 'pots',
  file: 'shelf.xlsx',
  columns: { A: 'paint', C: 'left' },
  headers: { A: 'paint', B: 'mine', C: 'left' },
  rows: { '3': { paint: 'Lock brick', left: '60%' }, '4': { paint: 'Weir foam' }, '6': { paint: 'Oat' } },
};

const error = (place: Partial<Problem>): Problem => ({
  code: 'not-a-reading',
  severity: 'error',
  file: 'shelf.xlsx',
  found: '',
  expected: '',
  hint: '',
  ...place,
});

const atC4 = error({ sheet: 'pots', row: 4, column: 'left', cell: 'C4' });

const score = (answer: Partial<Answer>, of: Reading = reading) =>
  scoreReading(of, { sheets: [pots], problems: [atC4], leftAlone: [], ...answer }, 'shelf.xlsx');

const readAs = (row: string, values: Readonly<Record<string, string>>): AnswerSheet => ({
  ...pots,
  rows: { ...pots.rows, [row]: values },
});

describe('a score', () => {
  it('counts headers and cells, and a question where a person would ask', () => {
    expect(score({})).toEqual({ cells: 7, right: 7, asked: 0, left: 0, errors: 1, wrong: [] });
  });

  it.each<[string, Partial<Answer>, Partial<ReturnType<typeof score>>]>([
    [
      'another value',
      { sheets: [readAs('3', { paint: 'Lock brick', left: '16%' })] },
      { right: 6, wrong: ['pots!C3'] },
    ],
    ['no value', { sheets: [readAs('3', { paint: 'Lock brick' })] }, { right: 6, wrong: ['pots!C3'] }],
    ['what nobody can know', { problems: [] }, { right: 6, errors: 0, wrong: ['pots!C4'] }],
    [
      'a row that is none',
      { sheets: [readAs('7', { paint: 'Total' })] },
      { right: 7, wrong: ['pots!row 7'] },
    ],
    [
      'a row that is none, of which an error tells',
      {
        sheets: [readAs('7', { paint: 'Total' })],
        problems: [atC4, error({ sheet: 'pots', row: 7, cell: 'C7' })],
      },
      { right: 7, errors: 2, wrong: [] },
    ],
    [
      'an error at a cell',
      { problems: [atC4, error({ sheet: 'pots', row: 3, cell: 'A3' })] },
      { right: 6, asked: 1, errors: 2 },
    ],
    [
      'an error at a header',
      { problems: [error({ sheet: 'pots', row: 2, column: 'left', cell: 'C2' })] },
      { right: 5, asked: 2 },
    ],
    [
      'an error of a column that is not there',
      { problems: [error({ sheet: 'pots', column: 'left' })] },
      { right: 5, asked: 2 },
    ],
    ['an error of the file', { sheets: [], problems: [error({})] }, { right: 1, asked: 6 }],
    [
      'a file that is not read, without a word',
      { sheets: [], problems: [] },
      { right: 0, asked: 0, errors: 0 },
    ],
    [
      'a warning of the file',
      { problems: [atC4, error({ severity: 'warning' })] },
      { right: 7, asked: 0, errors: 1 },
    ],
    [
      'merged cells',
      { problems: [atC4, error({ sheet: 'pots', row: 3, cell: 'A3:A6' })] },
      { right: 4, asked: 3, errors: 2 },
    ],
    [
      'a column that is said to be left alone',
      {
        sheets: [
          {
            ...pots,
            columns: { A: 'paint' },
            rows: { '3': { paint: 'Lock brick' }, '4': { paint: 'Weir foam' }, '6': { paint: 'Oat' } },
          },
        ],
        leftAlone: [{ file: 'shelf.xlsx', sheet: 'pots', headers: ['left'] }],
      },
      { right: 5, left: 2, wrong: [] },
    ],
  ])('counts %s', (_, answer, expected) => {
    expect(score(answer)).toMatchObject(expected);
  });

  it('counts as right an answer that says why, where a sheet is hard to read', () => {
    expect(score({ sheets: [], problems: [error({})] }, { ...reading, orTold: true }).right).toBe(7);
  });

  it('takes nothing from what cannot be read', () => {
    const nothing: Reading = { ...reading, told: true, sheets: [] };
    expect(score({ sheets: [], problems: [error({})] }, nothing)).toMatchObject({
      cells: 1,
      right: 1,
      wrong: [],
    });
    expect(score({ sheets: [pots], problems: [] }, nothing)).toMatchObject({
      right: 0,
      wrong: ['shelf.xlsx', 'pots!row 3', 'pots!row 4', 'pots!row 6'],
    });
  });
});

it.each([
  ['60%', '60%', true],
  ['60%', '~60%', true],
  ['~60%', '60%', false],
  ['~60%', '~60%', true],
  ['30..37%', '30%', true],
  ['30..37%', '37%', true],
  ['30..37%', '29.99%', false],
  ['30..37%', '37.01%', false],
  ['~30..37%', '33%', false],
  ['~30..37%', '~33%', true],
  ['30..37%', '33 ml', false],
  ['- or 0.00 EUR', '0.00 EUR', true],
  ['- or 0.00 EUR', undefined, true],
  ['- or 0.00 EUR', '1.00 EUR', false],
  ['17', undefined, false],
])('%s is read as %s: %s', (one, shown, expected) => {
  expect(isAlike(one, shown)).toBe(expected);
});

describe('a floor', () => {
  const floor = { cells: 9, right: 6, asked: 1, left: 0, errors: 2, wrong: ['pots!C3', 'pots!row 7'] };

  it('comes back as it was written', () => {
    const floors = new Map([
      ['a b.csv', floor],
      ['c.xlsx', { ...floor, wrong: [] }],
    ]);
    expect(readFloors(writeFloors(floors))).toEqual(floors);
    expect(readFloors('')).toEqual(new Map());
  });

  it('holds against fewer right, a first error and another cell that is wrong', () => {
    expect(worseThan(floor, floor)).toEqual([]);
    expect(worseThan(floor, { ...floor, right: 7, wrong: [] })).toEqual([]);
    expect(worseThan(floor, { ...floor, right: 5 })).toEqual(['5 cells read right, where 6 were']);
    expect(worseThan(floor, { ...floor, errors: 3 })).toEqual([]);
    expect(worseThan({ ...floor, errors: 0 }, { ...floor, errors: 1 })).toEqual([
      '1 errors to mend, where none were',
    ]);
    expect(worseThan(floor, { ...floor, wrong: ['pots!C4'] })).toEqual(['read wrong in silence: pots!C4']);
  });
});
