// Cost: what the draws need to know of money. In: the costs. Out: plain numbers of minor units.
import type { Costs } from '../model/plan.js';

export interface PricesOfUse {
  /** Minor units a ml of paint used; what has no price counts nothing, as in the costs. */
  readonly usePerMl: (paint: string) => number;
  /** Extras of one figure, of the army, and of what is unfinished. */
  readonly extras: { readonly perFigure: number; readonly whole: number; readonly remaining: number };
}

/** Prices as numbers: draws are rough by nature, so exact decimals would be lost on them. */
export function pricesOfUse({ paints, units, extrasWhole }: Costs): PricesOfUse {
  const perMl = new Map(
    [...paints].map(([paint, { perMl: price, pricedShare }]) => [
      paint,
      (price?.toNumber() ?? 0) * pricedShare,
    ]),
  );
  const perFigure = units[0]?.use.extrasPerFigure.exactMinor.toNumber() ?? 0;
  const unfinished = units.reduce((sum, { job }) => sum + (job.unfinished ? job.count : 0), 0);
  return {
    usePerMl: (paint) => perMl.get(paint) ?? 0,
    extras: {
      perFigure,
      whole: extrasWhole.exactMinor.toNumber(),
      remaining: perFigure * unfinished,
    },
  };
}
