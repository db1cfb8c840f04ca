// Model: whether anything is in a pot. In: a pot. Out: yes or no.
import type { Pot } from './sheets.js';

/** False of a pot that was read as empty; one on its way is full. */
export function holdsPaint({ left, ordered }: Pot): boolean {
  if (ordered) return true;
  if (left.how === 'by eye') return left.share > 0;
  return left.how === 'in ml' ? left.ml > 0 : left.grams > left.emptyGrams;
}
