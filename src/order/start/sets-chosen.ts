// Start: an order as the sets that it holds, and the cheapest pots for what they leave. In: needs, wares, sets. Out: its cost, kept
// up to date while sets come and go.
import { at, indexAt, numberAt } from '../../model/at.js';
import type { OrderNeed } from '../../model/order.js';
import type { Market } from '../open-market.js';
import type { Shelves } from '../pare-order.js';
import { type Filling, FillUp, plPerMl } from './fill-up.js';
import { Tills } from './tills.js';

/** What one of a ware holds of the needs, by their places. */
type Holding = readonly (readonly [need: number, pl: number])[];

/** What a filling is that was not known, in paints of sets looked at: about as long as these take. */
const touchedByFilling = 300;

export class SetsChosen {
  /** The columns of the wares that hold several needed paints. */
  readonly sets: readonly number[];
  /** How many of each ware, pots that fill up left out. */
  readonly #counts: Int32Array;
  readonly #shelves: Shelves;
  readonly #holdings: readonly Holding[];
  readonly #tillOf: Int32Array;
  readonly #tills: Tills;
  readonly #fillUps: readonly FillUp[];
  readonly #restPl: Float64Array;
  readonly #fillings: Filling[];
  #changed = 0;

  /** At first what the order must hold and no other set; a need that can't be covered costs `fineMinor`. */
  constructor(needs: readonly OrderNeed[], shelves: Shelves, { shops }: Market, fineMinor: number) {
    const { wares, held } = shelves;
    const names = [...new Set(wares.map(({ offer }) => offer.shop))];
    this.#shelves = shelves;
    this.#holdings = holdingsOf(needs, shelves);
    this.sets = this.#holdings.flatMap(({ length }, column) => (length > 1 ? [column] : []));
    this.#tillOf = Int32Array.from(wares, ({ offer }) => names.indexOf(offer.shop));
    this.#tills = new Tills(names.map((shop) => shops.get(shop) ?? { shop, postageMinor: 0 }));
    this.#counts = new Int32Array(wares.length);
    this.#restPl = Float64Array.from(needs, ({ ml }) => Math.round(ml * plPerMl));
    this.#fillUps = this.#openFillUps(needs, [[names.length, fineMinor]]);
    this.#fillings = this.#fillUps.map((fillUp, need) => fillUp.find(numberAt(this.#restPl, need)));
    for (const { takings } of this.#fillings) this.#take(takings, 1);
    for (const [column, count] of held.entries()) if (count > 0) this.change(column, count);
  }

  #openFillUps(needs: readonly OrderNeed[], fine: Filling['takings']): FillUp[] {
    const { wares, holders, held } = this.#shelves;
    return needs.map(({ paint }) => {
      const alone = (holders.get(paint) ?? []).filter(
        ({ column }) => at(this.#holdings, column).length === 1,
      );
      const packs = alone.map(({ column, ml }) => {
        const { offer, pots, limit } = at(wares, column);
        const [till, left] = [indexAt(this.#tillOf, column), limit - at(held, column)];
        return { column, till, ml, priceMinor: offer.priceMinor, pots, limit: Math.max(0, left) };
      });
      return new FillUp(packs, fine);
    });
  }

  /** So many more of a set, or fewer, and other pots for what that leaves. */
  change(column: number, by: number): void {
    const holding = at(this.#holdings, column);
    this.#counts[column] = this.countOf(column) + by;
    this.#tills.add(indexAt(this.#tillOf, column), by * at(this.#shelves.wares, column).offer.priceMinor);
    for (const [need, pl] of holding) this.#fill(need, by * pl);
    this.#changed += holding.length;
  }

  #fill(need: number, pl: number): void {
    const rest = numberAt(this.#restPl, need) - pl;
    const before = at(this.#fillings, need);
    const after = at(this.#fillUps, need).find(rest);
    this.#restPl[need] = rest;
    if (after === before) return;
    this.#take(before.takings, -1);
    this.#take(after.takings, 1);
    this.#fillings[need] = after;
  }

  #take(takings: Filling['takings'], sign: 1 | -1): void {
    for (const [till, minor] of takings) this.#tills.add(till, sign * minor);
  }

  countOf(column: number): number {
    return indexAt(this.#counts, column);
  }

  get totalMinor(): number {
    return this.#tills.totalMinor;
  }

  get isSound(): boolean {
    return this.#tills.areSound();
  }

  /** What was looked at so far, in paints of sets. */
  get touched(): number {
    return this.#changed + touchedByFilling * this.#fillUps.reduce((sum, { looked }) => sum + looked, 0);
  }

  /** Of each set, in their order, the others that share a paint with it. */
  neighbours(): number[][] {
    const byNeed = this.#fillUps.map((): number[] => []);
    for (const set of this.sets) for (const [need] of at(this.#holdings, set)) at(byNeed, need).push(set);
    return this.sets.map((set) => {
      const near = new Set(at(this.#holdings, set).flatMap(([need]) => at(byNeed, need)));
      near.delete(set);
      return [...near];
    });
  }

  /** Counts of all wares. */
  counts(): number[] {
    const counts = [...this.#counts];
    for (const [need, filling] of this.#fillings.entries()) {
      for (const [place, { column }] of at(this.#fillUps, need).packs.entries())
        counts[column] = at(counts, column) + (filling.counts[place] ?? 0);
    }
    return counts;
  }
}

function holdingsOf(needs: readonly OrderNeed[], { wares }: Shelves): Holding[] {
  const placeOf = new Map(needs.map(({ paint }, need) => [paint, need]));
  return wares.map(({ mlOf }) =>
    [...mlOf].flatMap(([paint, ml]) => {
      const need = placeOf.get(paint);
      return need === undefined ? [] : [[need, Math.round(ml * plPerMl)] as const];
    }),
  );
}
