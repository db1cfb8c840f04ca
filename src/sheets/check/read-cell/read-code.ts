// Checks: codes under bar codes. In: a cell. Out: the digits as text, or a mistake; a wrong check digit is told apart.
import { type CellKind, Mistake, type Written } from './cell-kind.js';

/** Lengths of GTIN-8, GTIN-12, GTIN-13 and GTIN-14 (GS1 General Specifications). */
const gtin = /^(?:\d{8}|\d{12,14})$/;

/** Blanks and hyphens between the digits do not count; zeros in front do, so a code stays text. */
function readCode(cell: Written): string | Mistake {
  const text = String(cell).replace(/[\s-]/g, '');
  return gtin.test(text) ? text : new Mistake('not-a-code');
}

/**
 * The check digit that belongs behind some digits: weights 3 and 1 from the right, up to the next ten.
 * `checkDigit('37610425002123456')` is 9, as in the example of GS1 General Specifications, 7.9.1.
 */
function checkDigit(digits: string): number {
  let sum = 0;
  for (let index = 0; index < digits.length; index += 1) {
    sum += Number(digits[index]) * ((digits.length - index) % 2 === 1 ? 3 : 1);
  }
  return (10 - (sum % 10)) % 10;
}

/** The digit that should be the last of a code, or undefined where it is. */
export function rightCheckDigit(code: string): number | undefined {
  const right = checkDigit(code.slice(0, -1));
  return code.endsWith(String(right)) ? undefined : right;
}

export const codeKind: CellKind<string> = { noun: 'a code', read: readCode };
