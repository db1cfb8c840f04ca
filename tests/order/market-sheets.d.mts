// Types of the sheets of a drawn market.
import type { DrawnMarket } from './draw-market.mjs';

type Texts = Readonly<Record<`${string}.csv`, string>>;

export function marketSheets(market: Pick<DrawnMarket, 'offers' | 'shops'>): Texts;
export function armySheets(market: Pick<DrawnMarket, 'needs'>): Texts;
