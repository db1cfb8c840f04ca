// Reorder view: the code of an offer as a whole. In: its line. Out: the code.
import type { ReorderLine } from './view-reorder.js';

/** Of a set whose pots all bear one code, that one; '' where each pot shows its own. */
export function codeOfSet({ pots }: ReorderLine): string {
  const [first, ...others] = pots;
  if (first === undefined || others.length === 0) return '';
  return others.every(({ code }) => code === first.code) ? first.code : '';
}
