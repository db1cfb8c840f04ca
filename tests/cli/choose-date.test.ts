import { describe, expect, it } from 'vitest';
import { checkDate, today } from '../../src/cli/choose-date.js';

describe('--date', () => {
  // Leap years by ISO 8601 and the Gregorian calendar: 2000 and 2024 are, 1900 and 2025 are not.
  it.each(['2026-03-14', '2024-02-29', '2000-02-29', '0099-12-31', '9999-12-31'])('takes %s', (day) => {
    expect(checkDate(day)).toBe(day);
  });

  // What a date cell may be, by the README.
  it.each([
    ['2026/3/14', '2026-03-14'],
    ['2026-4-1', '2026-04-01'],
    ['14.3.2026', '2026-03-14'],
    ['1. 3. 2026', '2026-03-01'],
    [' 2026-03-14 ', '2026-03-14'],
    // One of the two numbers can be no month.
    ['3/14/2026', '2026-03-14'],
    ['17/05/2026', '2026-05-17'],
  ])('takes %s for %s', (text, day) => {
    expect(checkDate(text)).toBe(day);
  });

  it('asks what 3/4/2026 is', () => {
    expect(() => checkDate('3/4/2026')).toThrow(
      '"3/4/2026" could be two days. Write --date as 2026-03-04 or 2026-04-03.',
    );
  });

  it.each([
    '2025-02-29',
    '1900-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-04-31',
    '31.4.2026',
    '14.3.26',
    '20260314',
    '0000-01-01',
    '2026-03-14T00:00',
    '',
    'today',
  ])('refuses %j', (text) => {
    expect(() => checkDate(text)).toThrow(`"${text}" is not a day`);
  });

  it('takes the local day where none is given', () => {
    expect(today(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
    expect(today(new Date(2026, 11, 31, 0, 0))).toBe('2026-12-31');
  });
});
