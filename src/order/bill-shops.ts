// Order: what each shop charges. In: order lines, shops. Out: goods, postage, least orders missed, in minor units.
import type { OrderLine, ShopBill } from '../model/order.js';
import type { Shop } from '../model/sheets.js';

/**
 * One bill for each shop that the lines buy from, in the order of the lines. Goods at or above `free from`
 * travel free; a shop without a row charges no postage. No lines, no bills.
 */
export function billShops(
  lines: readonly Pick<OrderLine, 'shop' | 'costMinor'>[],
  shops: ReadonlyMap<string, Shop>,
): ShopBill[] {
  const goods = new Map<string, number>();
  for (const { shop, costMinor } of lines) goods.set(shop, (goods.get(shop) ?? 0) + costMinor);
  return [...goods].map(([shop, goodsMinor]) => billShop(shop, goodsMinor, shops.get(shop)));
}

function billShop(name: string, goodsMinor: number, shop: Shop | undefined): ShopBill {
  const free = goodsMinor >= (shop?.freeFromMinor ?? Number.POSITIVE_INFINITY);
  const least = shop?.leastOrderMinor ?? 0;
  const postageMinor = free ? 0 : (shop?.postageMinor ?? 0);
  return {
    shop: name,
    goodsMinor,
    postageMinor,
    totalMinor: goodsMinor + postageMinor,
    ...(goodsMinor < least ? { belowLeastOrderMinor: least } : {}),
  };
}
