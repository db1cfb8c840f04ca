// Export: the rows of the reorder workbook. In: a ReorderView. Out: rows in sheet order, the first of which stands in
// row 2; costs are formulas over the rows above, with their results.
import { majorNumber, roundMl } from './format-amount.js';
import type { ReorderGroup, ReorderLine, ReorderShop, ReorderView } from './view-reorder.js';

/** A formula without its equals sign, and what it gives. */
interface Formula {
  readonly formula: string;
  readonly result: number;
}

/** One row; what is left out stays blank. */
export interface SheetRow {
  readonly for?: string;
  readonly shop?: string;
  readonly offer?: string;
  readonly paint?: string;
  readonly sizeMl?: number;
  readonly container?: string;
  readonly pots?: number;
  readonly offers?: number;
  readonly price?: number;
  readonly cost?: number | Formula;
  readonly code?: string;
  readonly coversMl?: number;
  readonly overMl?: number;
  readonly note?: string;
  /** Sums stand out. */
  readonly strong?: boolean;
}

const firstRow = 2;

/** Every row under the header. Nothing to buy gives a total of 0. */
export function listReorderRows(view: ReorderView): SheetRow[] {
  const list = new RowList(view.minorDigits);
  const totals = view.groups.map((group) => addGroup(list, group));
  if (view.groups.length > 1)
    list.add({ for: 'both', offer: 'Total', cost: list.sum(totals, view.totalMinor), strong: true });
  return list.rows;
}

/** Rows written so far, and formulas over them. */
class RowList {
  readonly rows: SheetRow[] = [];
  readonly #digits: number;

  constructor(digits: number) {
    this.#digits = digits;
  }

  /** Adds a row and gives the number it has in the sheet. */
  add(row: SheetRow): number {
    this.rows.push(row);
    return this.rows.length + firstRow - 1;
  }

  get nextRow(): number {
    return this.rows.length + firstRow;
  }

  major(minor: number): number {
    return majorNumber(minor, this.#digits);
  }

  formula(formula: string, resultMinor: number): Formula {
    return { formula, result: this.major(resultMinor) };
  }

  /** The costs of these rows added up; of none, plain 0. */
  sum(rows: readonly number[], resultMinor: number): Formula | number {
    const terms = rows.map((row) => `J${row}`);
    return terms.length === 0 ? this.major(resultMinor) : this.formula(terms.join('+'), resultMinor);
  }
}

function addGroup(list: RowList, group: ReorderGroup): number {
  const totals = group.shops.map((shop) => addShop(list, group.for, shop));
  const cost = list.sum(totals, group.totalMinor);
  const totalRow = list.add({ for: group.for, offer: 'Total', cost, note: group.note, strong: true });
  for (const { paint, ml } of group.unmet)
    list.add({ for: group.for, paint, note: `No offer: ${roundMl(ml)} ml missing` });
  return totalRow;
}

function addShop(list: RowList, whom: string, of: ReorderShop): number {
  const place = { for: whom, shop: of.shop };
  const first = list.nextRow;
  for (const line of of.lines) addLine(list, place, line);
  const goods = list.add({
    ...place,
    offer: 'Goods',
    cost: list.formula(`SUM(J${first}:J${list.nextRow - 1})`, of.goodsMinor),
  });
  const postage = list.add({ ...place, offer: 'Postage', cost: list.major(of.postageMinor) });
  const cost = list.sum([goods, postage], of.totalMinor);
  return list.add({ ...place, offer: 'Shop total', cost, note: of.note, strong: true });
}

/** A set takes one row a pot; offers, price and cost stand on the first. */
function addLine(list: RowList, place: Pick<SheetRow, 'for' | 'shop'>, line: ReorderLine): void {
  const row = list.nextRow;
  const once: SheetRow = {
    offers: line.count,
    price: list.major(line.priceMinor),
    cost: list.formula(`H${row}*I${row}`, line.costMinor),
  };
  for (const [index, pot] of line.pots.entries())
    list.add({
      ...place,
      offer: line.offer,
      paint: pot.paint,
      sizeMl: pot.sizeMl,
      container: pot.container,
      pots: pot.count,
      code: pot.code,
      coversMl: roundMl(pot.coversMl),
      overMl: roundMl(pot.overMl),
      ...(index === 0 ? once : {}),
    });
}
