// Readers: a list that is not called as a sheet is. In: its rows. Out: whether they are pots, by its headers.
import { namesColumn } from './find-header-row.js';
import type { Grid } from './grid.js';

/** Both columns that pots need, under no shop: an offer or an order has one. */
export function listsPots({ rows, called }: Pick<Grid, 'rows' | 'called'>): boolean {
  const names = (column: string): boolean => namesColumn(rows, { sheet: 'pots', called }, column);
  return names('paint') && names('sizeml') && !namesColumn(rows, { sheet: 'offers' }, 'shop');
}
