// Checks: the currency that all prices bear, for sheets whose settings name none. In: tables. Out: a currency of
// ISO 4217, or undefined where none or several are meant.
import { columns } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import { columnMeant } from '../spell-headers.js';
import type { Cell, Table } from '../table.js';
import { isCurrencySign } from './read-cell/read-price.js';

/** Signs that several currencies have, and which one is meant by most. */
const usual: Readonly<Record<string, string>> = { $: 'USD', '£': 'GBP', '€': 'EUR', '¥': 'JPY', zł: 'PLN' };
/** Of a longer sheet the first rows tell enough: a price in another currency is told once it is read. */
const mostRows = 1000;
const longest = 40;

/** A sign that could be several currencies, such as `kr`, gives none. */
export function findCurrency(tables: Iterable<Table>): string | undefined {
  const signs = new Set([...tables].flatMap(signsIn));
  const found = new Set([...signs].map((sign) => currencyOf(sign)));
  const [only, ...others] = found;
  return others.length === 0 ? only : undefined;
}

function currencyOf(sign: string): string | undefined {
  return usual[sign] ?? (/^[a-z]{3}$/.test(sign) ? sign.toUpperCase() : undefined);
}

/** In small letters, those of headers and of cells. */
function signsIn(table: Table): readonly string[] {
  const { sheet, headers, rows } = table;
  const money = new Set(
    columns[sheet].flatMap(({ header, isIn }) => (isIn === 'money' ? headerKey(header) : [])),
  );
  return headers.flatMap((header, index) => {
    const meant = columnMeant(table, header);
    if (meant === undefined || !money.has(meant.key)) return [];
    const ofCells = rows.slice(0, mostRows).flatMap(({ cells }) => signOf(cells[index] ?? '') ?? []);
    return meant.currency?.isSure !== true ? ofCells : [meant.currency.sign.toLowerCase(), ...ofCells];
  });
}

function signOf(cell: Cell): string | undefined {
  if (typeof cell === 'object') return cell.kind === 'measured' ? knownSign(cell.unit) : undefined;
  if (typeof cell !== 'string' || cell.length > longest) return undefined;
  return knownSign(cell.replace(/[\d\s.,'’+-]/g, ''));
}

function knownSign(written: string): string | undefined {
  const sign = written.toLowerCase();
  return sign !== '' && isCurrencySign(sign) ? sign : undefined;
}
