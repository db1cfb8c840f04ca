// Start: what each shop takes, kept up to date while goods come and go. In: shops' terms, goods. Out: their sum with all postage.
import { at, numberAt } from '../../model/at.js';
import type { Shop } from '../../model/sheets.js';

/** A till for each shop, and a last one for what can't be had, which is fined. Goods and sums in minor units. */
export class Tills {
  readonly #shops: readonly Shop[];
  readonly #goods: Float64Array;
  #totalMinor = 0;

  constructor(shops: readonly Shop[]) {
    this.#shops = shops;
    this.#goods = new Float64Array(shops.length + 1);
  }

  /** Goods, postage, what is missing to least orders, and fines. */
  get totalMinor(): number {
    return this.#totalMinor;
  }

  add(till: number, minor: number): void {
    const before = numberAt(this.#goods, till);
    this.#goods[till] = before + minor;
    this.#totalMinor += this.#bill(till, before + minor) - this.#bill(till, before);
  }

  /** Under a least order something more has to be bought, worth what is missing or more. */
  #bill(till: number, goods: number): number {
    if (goods === 0 || till === this.#shops.length) return goods;
    const {
      postageMinor,
      freeFromMinor = Number.POSITIVE_INFINITY,
      leastOrderMinor = 0,
    } = at(this.#shops, till);
    const paid = Math.max(goods, leastOrderMinor);
    return paid >= freeFromMinor ? paid : paid + postageMinor;
  }

  /** Whether nothing is fined and every least order reached. */
  areSound(): boolean {
    const isReached = ({ leastOrderMinor = 0 }: Shop, till: number): boolean => {
      const goods = numberAt(this.#goods, till);
      return goods === 0 || goods >= leastOrderMinor;
    };
    return this.#goods[this.#shops.length] === 0 && this.#shops.every(isReached);
  }
}
