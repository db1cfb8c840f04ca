// Report view: the orders of a plan as one reorder list by shop. In: the plan. Out: a ReorderView, which the report,
// reorder.csv and reorder.xlsx draw.
import type { Needed, Waiting } from '../../model/choices.js';
import { minorDigits, toMajor } from '../../model/money.js';
import type { Order, OrderedPot, OrderLine, ShopBill } from '../../model/order.js';
import type { Alike, BuyingSums, OrderSums } from '../../model/order-sums.js';
import type { Plan } from '../../model/plan.js';
import { type CsvMarks, csvMarks, numberWords } from '../words/word-numbers.js';
import { reorderWords } from './words.js';

/** Pots of one row. */
export interface ReorderPot
  extends Pick<OrderedPot, 'paint' | 'sizeMl' | 'container' | 'count' | 'coversMl' | 'overMl'> {
  /** GTIN as text; '' where none is known. */
  readonly code: string;
}

export interface ReorderLine extends Pick<OrderLine, 'offer' | 'count' | 'priceMinor' | 'costMinor'> {
  /** Offers of it that could be left out and every need would still be covered. */
  readonly spare: number;
  /** How likely the last of it is needed; undefined where it is not for the army. */
  readonly needed: Needed | undefined;
  readonly pots: readonly ReorderPot[];
}

export interface ReorderShop extends Omit<ShopBill, 'belowLeastOrderMinor'> {
  readonly lines: readonly ReorderLine[];
  /** A remark such as a least order not reached; '' for none. */
  readonly note: string;
}

/** `army`: what the plan needs. `shelf`: what brings low pots back to their level. */
export interface ReorderGroup {
  readonly for: 'army' | 'shelf';
  readonly shops: readonly ReorderShop[];
  readonly totalMinor: number;
  /** Said where the order is not proved to be the cheapest; else ''. */
  readonly note: string;
  /** Paints no offer covers, as pots without a shop; the total is without them. */
  readonly unmet: readonly Alike[];
  /** Paints that it leaves out, though they may be needed. */
  readonly waits: readonly Waiting[];
}

export interface ReorderView {
  readonly date: string;
  readonly currency: string;
  /** ISO 4217 digits of the currency. */
  readonly minorDigits: number;
  readonly csv: CsvMarks;
  readonly groups: readonly ReorderGroup[];
  readonly totalMinor: number;
}

/**
 * The reorder list. A plan with nothing to buy gives the army's group without shops, one without an army no such group; the
 * shelf's group is there only where it is asked for. Shops stand in the order of their bills.
 */
export function viewReorder(plan: Plan): ReorderView {
  const { currency } = plan.settings;
  const csv = csvMarks(numberWords(plan.settings));
  const sumOf = (minor: number): string =>
    `${toMajor(minor, currency).replace('.', csv.decimal)} ${currency}`;
  const { order, restock, summary } = plan;
  const { needed, chosen, sums } = summary.buying;
  const waits = (chosen && sums.get(chosen)?.waits) ?? [];
  const groups = plan.lacking.includes('army')
    ? []
    : [viewGroup('army', { order, sums: summary.order, needed, waits, sumOf })];
  if (restock !== undefined && summary.restock !== undefined)
    groups.push(viewGroup('shelf', { ...none, order: restock, sums: summary.restock, sumOf }));
  return {
    ...{ date: plan.date, currency, minorDigits: minorDigits(currency), csv, groups },
    totalMinor: summary.cashMinor,
  };
}

/** Whole minor units as text of a note. */
type SumOf = (minor: number) => string;

/** For the shelf nothing is drawn. */
const none: Pick<GroupInputs, 'needed' | 'waits'> = { needed: new Map(), waits: [] };

interface GroupInputs {
  readonly order: Order;
  readonly sums: OrderSums;
  readonly needed: BuyingSums['needed'];
  readonly waits: readonly Waiting[];
  readonly sumOf: SumOf;
}

function viewGroup(whom: ReorderGroup['for'], inputs: GroupInputs): ReorderGroup {
  const { order, sums, waits, sumOf } = inputs;
  const linesOf = (shop: string) =>
    order.lines.filter((line) => line.shop === shop).map((line) => viewLine(line, inputs));
  return {
    for: whom,
    shops: order.bills.map((bill) => viewShop(bill, linesOf(bill.shop), sumOf)),
    totalMinor: order.totalMinor,
    note: proofNoteOf(order, sumOf),
    unmet: sums.alike,
    waits,
  };
}

const proofNoteOf = ({ aboveBestMinor }: Order, sumOf: SumOf): string =>
  aboveBestMinor === 0 ? '' : reorderWords.notProved(sumOf(aboveBestMinor));

function viewShop(bill: ShopBill, lines: readonly ReorderLine[], sumOf: SumOf): ReorderShop {
  const { shop, goodsMinor, postageMinor, totalMinor } = bill;
  return { shop, lines, goodsMinor, postageMinor, totalMinor, note: noteOf(bill, sumOf) };
}

function noteOf({ postageMinor, belowLeastOrderMinor }: ShopBill, sumOf: SumOf): string {
  const notes = [];
  if (belowLeastOrderMinor !== undefined)
    notes.push(reorderWords.belowLeastOrder(sumOf(belowLeastOrderMinor)));
  if (postageMinor < 0) notes.push(reorderWords.travelsFree);
  return notes.join('; ');
}

function viewLine(line: OrderLine, { sums, needed }: GroupInputs): ReorderLine {
  const { offer, count, priceMinor, costMinor, pots } = line;
  return {
    ...{ offer, count, priceMinor, costMinor },
    spare: sums.spare.get(line) ?? 0,
    needed: needed.get(line),
    pots: pots.map((pot) => ({
      ...{ paint: pot.paint, sizeMl: pot.sizeMl, container: pot.container, count: pot.count },
      ...{ coversMl: pot.coversMl, overMl: pot.overMl, code: pot.code ?? '' },
    })),
  };
}
