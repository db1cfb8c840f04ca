// Problems: words for what stands in one cell and cannot be taken as it is.
import { error, warning } from './wording.js';

export const readingProblems = {
  'error-value': error(
    '"{found}" is an error of the workbook, not a value',
    'Mend its formula, or type {expected} instead.',
  ),
  'formula-without-result': error(
    'the formula "{found}" has no stored result',
    'Open the workbook in a spreadsheet program and save it, or type {expected} instead.',
  ),
  'date-not-wanted': error(
    '"{found}" is a date, where {expected} is wanted',
    'Format the cell as a number or as text, and type it again.',
  ),
  'number-for-date': error(
    '"{found}" is a plain number, where a date is wanted',
    'Write it as 2026-03-14, or format the cell as a date.',
  ),
  'not-a-volume': error('"{found}" is not a volume', 'Write a number of millilitres, such as 12.5.'),
  'not-a-weight': error('"{found}" is not a weight', 'Write a number of grams, such as 31.2.'),
  'not-a-length': error('"{found}" is not a length', 'Write a number of millimetres, such as {expected}.'),
  'not-an-area': error('"{found}" is not an area', 'Write a number of cm2, such as 9.5.'),
  'not-a-number': error('"{found}" is not a number', 'Write a plain number, such as {expected}.'),
  'not-a-count': error('"{found}" is not a count', 'Write a whole number, such as {expected}.'),
  'not-whole': error('"{found}" is not a whole number', 'Write a whole number, such as {expected}.'),
  'not-a-share': error('"{found}" is not a share', 'Write {expected}.'),
  'not-a-price': error('"{found}" is not a price', 'Write an amount such as {expected}.'),
  'ambiguous-number': error('"{found}" can be read in two ways', 'Write {expected}.'),
  negative: error('"{found}" is below zero, and {expected} never is', 'Write it without the minus sign.'),
  zero: error('"{found}" is zero, and {expected} never is', 'Write the true value, or take the row out.'),
  'no-pots': error(
    '"{found}" is zero, and {expected} never is',
    'Write how many there are; of pots that are gone write a row into the log with thrown away in what.',
  ),
  'too-much': error('"{found}" is more than {expected}', 'Check the digits and the unit.'),
  'too-little': error('"{found}" is less than {expected}', 'Check the digits and the unit.'),
  'over-whole': error('"{found}" is more than the whole', 'Write 100% at the most.'),
  'too-fine': error(
    '"{found}" has more digits after the point than {expected}',
    'Round it to the smallest coin.',
  ),
  'other-currency': error(
    '"{found}" is not in {expected}',
    'Write every price in the currency of the settings sheet, or change it there.',
  ),
  'not-a-date': error('"{found}" is not a date', 'Write it as 2026-03-14.'),
  'no-such-day': error('"{found}" is a day that no calendar has', 'Write it as 2026-03-14.'),
  'day-or-month-first': error('"{found}" could be two days', 'Write {expected}.'),
  'date-ahead': warning(
    '"{found}" lies after {expected}, the day of this plan',
    'Check the year and the day.',
  ),
  'not-a-choice': error('"{found}" is none of the choices', 'Write {expected}.'),
  'not-a-code': warning(
    '"{found}" is not a code of 8, 12, 13 or 14 digits',
    'Copy the number under the bar code, as text; until then no code is shown.',
  ),
  'wrong-check-digit': warning(
    '"{found}" has a wrong digit, as its last should be {expected}',
    'Compare it with the number under the bar code.',
  ),
  'not-a-colour': error('"{found}" is not a colour', 'Write six hex digits, such as #8a2b2b.'),
  'not-a-base': error(
    '"{found}" is not a base',
    'Write round 25, square 20, 25x50 or oval 60x35, in millimetres.',
  ),
  'not-a-box': error(
    '"{found}" is not a box',
    'Write length, width and height in millimetres, such as 90x30x20; of a pitched roof a fourth number, up to the ridge.',
  ),
  'ridge-under-eaves': error(
    '"{found}" has its ridge under its eaves',
    'Write length, width, height to the eaves, height to the ridge, both from the ground, such as 80x60x40x65.',
  ),
  'not-a-reading': error(
    '"{found}" does not say how much is left',
    'Write 60%, 7.5 ml, full, empty or a weight such as 31.2 g.',
  ),
  'left-without-unit': error('"{found}" does not say of what', 'Write {expected}.'),
  'unknown-kit': error('"{found}" is not a piece of kit', 'Write {expected}.'),
  'unknown-part': error('"{found}" is not a part of a figure', 'Write {expected}.'),
  'not-a-currency': error('"{found}" is not a currency', 'Write the three letters of ISO 4217, such as EUR.'),
  'not-a-locale': error('"{found}" is not a locale', 'Write a language tag, such as en or de-AT.'),
  'not-a-range': error(
    '"{found}" is not a value for an assumption',
    'Write one number, or low / likely / high such as 30 / 50 / 80.',
  ),
  'range-out-of-order': error(
    '"{found}" does not rise from low over likely to high',
    'Write the smallest first, such as 30 / 50 / 80.',
  ),
};
