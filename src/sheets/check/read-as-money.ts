// Checks: whether cells could be prices. In: cells that hold something. Out: yes or no.
import type { Cell } from '../table.js';
import { isCurrencySign } from './read-cell/read-price.js';

const longest = 20;
/** A number with a sign or code of a currency before or behind it, or without. */
const priced = /^(\p{Sc}|[A-Z]{3} )? ?(\d+)([.,]\d{1,4})? ?(\p{Sc}|[A-Z]{3})?$/u;

/**
 * Whether two of three cells could be prices, and any has a currency or a fraction; whole numbers may be much else, unless the
 * header speaks of money. Another currency than that of the settings is asked about once the column is read.
 */
export function readsAsMoney({
  cells,
  isCalledSo,
}: {
  readonly cells: readonly Cell[];
  readonly isCalledSo: boolean;
}): boolean {
  const signs = cells.map(signOf).filter((sign) => sign !== undefined);
  const isTelling = isCalledSo || signs.some((sign) => sign !== '');
  return isTelling && signs.length > 0 && signs.length * 3 >= cells.length * 2;
}

/** What tells that a cell is a price: `€`, `USD`, the fraction; '' for a bare whole number, undefined for no number. */
function signOf(cell: Cell): string | undefined {
  if (typeof cell === 'object')
    return cell.kind === 'measured' && isCurrencySign(cell.unit.toLowerCase()) ? cell.unit : undefined;
  const text = String(cell);
  const [, before = '', whole, fraction = '', after = ''] =
    (text.length <= longest && priced.exec(text)) || [];
  const sign = before.trim() || after;
  if (whole === undefined || sign === '') return whole === undefined ? undefined : fraction;
  return isCurrencySign(sign.toLowerCase()) ? sign : undefined;
}
