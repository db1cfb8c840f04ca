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
}

/**
 * For each need another like the newest priced pot of its paint; without a price like the newest pot; a paint never owned as
 * a pot of the usual size of its kind. So many that they hold the need.
 */
export function listAlike(
  unmet: readonly OrderNeed[],
  { stock, paints, assumptions, asLikely }: Shelf,
): Alike[] {
  const potsOf = new Map(stock.map(({ paint, pots }) => [paint, pots]));
  return unmet.map(({ paint, ml }) => {
    const pots = potsOf.get(paint) ?? [];
    const paid = newestPaid(pots);
    const own = paid ?? pots.at(-1);
    const { sizeMl, container } = own ?? usualPot(paints.get(paint)?.kind);
    const count = Math.ceil((ml - sameMl) / (sizeMl * usableShare(assumptions, container)));
    return {
      ...{ paint, ml, sizeMl, container, count, priceMinor: paid?.priceMinor },
      isOwned: own !== undefined,
      isAsLikely: asLikely.includes(paint),
    };
  });
}
