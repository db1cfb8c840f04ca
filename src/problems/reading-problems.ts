// Problems: words for what stands in one cell and cannot be taken as it is.
import type { Wording } from './wording.js';

export const readingProblems = {
  'error-value': {
    severity: 'error',
    says: '"{found}" is an error of the workbook, not a value',
    hint: 'Mend its formula, or type {expected} instead.',
  },
  'formula-without-result': {
    severity: 'error',
    says: 'the formula "{found}" has no stored result',
    hint: 'Open the workbook in a spreadsheet program and save it, or type {expected} instead.',
  },
  'date-not-wanted': {
    severity: 'error',
    says: '"{found}" is a date, where {expected} is wanted',
    hint: 'Format the cell as a number or as text, and type it again.',
  },
  'number-for-date': {
    severity: 'error',
    says: '"{found}" is a plain number, where a date is wanted',
    hint: 'Write it as 2026-03-14, or format the cell as a date.',
  },
  'not-a-volume': {
    severity: 'error',
    says: '"{found}" is not a volume',
    hint: 'Write a number of millilitres, such as 12.5.',
  },
  'not-a-weight': {
    severity: 'error',
    says: '"{found}" is not a weight',
    hint: 'Write a number of grams, such as 31.2.',
  },
  'not-a-length': {
    severity: 'error',
    says: '"{found}" is not a length',
    hint: 'Write a number of millimetres, such as {expected}.',
  },
  'not-an-area': {
    severity: 'error',
    says: '"{found}" is not an area',
    hint: 'Write a number of cm2, such as 9.5.',
  },
  'not-a-number': {
    severity: 'error',
    says: '"{found}" is not a number',
    hint: 'Write a plain number, such as {expected}.',
  },
  'not-a-count': {
    severity: 'error',
    says: '"{found}" is not a count',
    hint: 'Write a whole number, such as {expected}.',
  },
  'not-whole': {
    severity: 'error',
    says: '"{found}" is not a whole number',
    hint: 'Write a whole number, such as {expected}.',
  },
  'not-a-share': {
    severity: 'error',
    says: '"{found}" is not a share',
    hint: 'Write {expected}.',
  },
  'not-a-price': {
    severity: 'error',
    says: '"{found}" is not a price',
    hint: 'Write an amount such as {expected}.',
  },
  'ambiguous-number': {
    severity: 'error',
    says: '"{found}" can be read in two ways',
    hint: 'Write {expected}.',
  },
  negative: {
    severity: 'error',
    says: '"{found}" is below zero, and {expected} never is',
    hint: 'Write it without the minus sign.',
  },
  zero: {
    severity: 'error',
    says: '"{found}" is zero, and {expected} never is',
    hint: 'Write the true value, or take the row out.',
  },
  'too-much': {
    severity: 'error',
    says: '"{found}" is more than {expected}',
    hint: 'Check the digits and the unit.',
  },
  'too-little': {
    severity: 'error',
    says: '"{found}" is less than {expected}',
    hint: 'Check the digits and the unit.',
  },
  'over-whole': {
    severity: 'error',
    says: '"{found}" is more than the whole',
    hint: 'Write 100% at the most.',
  },
  'too-fine': {
    severity: 'error',
    says: '"{found}" has more digits after the point than {expected}',
    hint: 'Round it to the smallest coin.',
  },
  'other-currency': {
    severity: 'error',
    says: '"{found}" is not in {expected}',
    hint: 'Write every price in the currency of the settings sheet, or change it there.',
  },
  'not-a-date': { severity: 'error', says: '"{found}" is not a date', hint: 'Write it as 2026-03-14.' },
  'no-such-day': {
    severity: 'error',
    says: '"{found}" is a day that no calendar has',
    hint: 'Write it as 2026-03-14.',
  },
  'day-or-month-first': {
    severity: 'error',
    says: '"{found}" could be two days',
    hint: 'Write {expected}.',
  },
  'date-ahead': {
    severity: 'warning',
    says: '"{found}" lies after {expected}, the day of this plan',
    hint: 'Check the year and the day.',
  },
  'not-a-choice': { severity: 'error', says: '"{found}" is none of the choices', hint: 'Write {expected}.' },
  'not-a-code': {
    severity: 'warning',
    says: '"{found}" is not a code of 8, 12, 13 or 14 digits',
    hint: 'Copy the number under the bar code, as text; until then no code is shown.',
  },
  'wrong-check-digit': {
    severity: 'warning',
    says: '"{found}" has a wrong digit, as its last should be {expected}',
    hint: 'Compare it with the number under the bar code.',
  },
  'not-a-colour': {
    severity: 'error',
    says: '"{found}" is not a colour',
    hint: 'Write six hex digits, such as #8a2b2b.',
  },
  'not-a-base': {
    severity: 'error',
    says: '"{found}" is not a base',
    hint: 'Write round 25, square 20, 25x50 or oval 60x35, in millimetres.',
  },
  'not-a-box': {
    severity: 'error',
    says: '"{found}" is not a box',
    hint: 'Write length, width and height in millimetres, such as 90x30x20; of a pitched roof a fourth number, up to the ridge.',
  },
  'ridge-under-eaves': {
    severity: 'error',
    says: '"{found}" has its ridge under its eaves',
    hint: 'Write length, width, height to the eaves, height to the ridge, both from the ground, such as 80x60x40x65.',
  },
  'not-a-reading': {
    severity: 'error',
    says: '"{found}" does not say how much is left',
    hint: 'Write 60%, 7.5 ml, full, empty or a weight such as 31.2 g.',
  },
  'left-without-unit': {
    severity: 'error',
    says: '"{found}" does not say of what',
    hint: 'Write {expected}.',
  },
  'unknown-kit': {
    severity: 'error',
    says: '"{found}" is not a piece of kit',
    hint: 'Write {expected}.',
  },
  'unknown-part': {
    severity: 'error',
    says: '"{found}" is not a part of a figure',
    hint: 'Write {expected}.',
  },
  'not-a-currency': {
    severity: 'error',
    says: '"{found}" is not a currency',
    hint: 'Write the three letters of ISO 4217, such as EUR.',
  },
  'not-a-locale': {
    severity: 'error',
    says: '"{found}" is not a locale',
    hint: 'Write a language tag, such as en or de-AT.',
  },
  'not-a-range': {
    severity: 'error',
    says: '"{found}" is not a value for an assumption',
    hint: 'Write one number, or low / likely / high such as 30 / 50 / 80.',
  },
  'range-out-of-order': {
    severity: 'error',
    says: '"{found}" does not rise from low over likely to high',
    hint: 'Write the smallest first, such as 30 / 50 / 80.',
  },
} as const satisfies Record<string, Wording>;
