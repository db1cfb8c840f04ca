// Summary: paint that no offer covers, as whole pots like those of the shelf. In: what is unmet, the shelf. Out: pots without a shop.
import { usableShare } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { newestPaid } from '../model/newest-paid.js';
import type { OrderNeed } from '../model/order.js';
import type { Alike } from '../model/order-sums.js';
import type { Paint } from '../model/sheets.js';
import type { PaintStock } from '../model/stock.js';
import { usualPot } from '../model/usual-pot.js';
import { sameMl } from '../model/volume.js';

/** What tells how another pot of a paint would be. */
export interface Shelf {
  readonly stock: readonly PaintStock[];
  readonly paints: ReadonlyMap<string, Pick<Paint, 'kind'>>;
  readonly assumptions: Assumptions;
  /** Paints of which the order takes what is likely, whatever its rule. */
  readonly asLikely: readonly string[];
  /** What another order already takes without a shop: its pots may hold some of this need too. */
  readonly taken?: readonly Alike[];
}

/**
 * For each need another like the newest priced pot of its paint; without a price like the newest pot; a paint never owned as
 * a pot of the usual size of its kind. So many that they hold the need, with
 * what is taken already; of those none.
 */
export function listAlike(
  unmet: readonly OrderNeed[],
  { stock, paints, assumptions, asLikely, taken = [] }: Shelf,
): Alike[] {
  const potsOf = new Map(stock.map(({ paint, pots }) => [paint, pots]));
  const takenOf = new Map(taken.map((one) => [one.paint, one]));
  const alike = unmet.map(({ paint, ml }) => {
    const ownPots = potsOf.get(paint) ?? [];
    const paid = newestPaid(ownPots);
    const own = paid ?? ownPots.at(-1);
    const { sizeMl, container } = own ?? usualPot(paints.get(paint)?.kind);
    const before = takenOf.get(paint) ?? { ml: 0, count: 0 };
    const pots = Math.ceil((before.ml + ml - sameMl) / (sizeMl * usableShare(assumptions, container)));
    return {
      ...{ paint, ml, sizeMl, container, count: pots - before.count, priceMinor: paid?.priceMinor },
      isOwned: own !== undefined,
      isAsLikely: asLikely.includes(paint),
    };
  });
  return alike.filter(({ count }) => count > 0);
}
