// Ranges: the promise for other numbers of figures. In: what is promised for the army, likely needs, the shelf. Out: needs
// with the same margin.
import { remember } from '../model/remember.js';
import type { CountedStock } from '../model/stock.js';
import type { UnitDemand } from '../model/work.js';

/** Any needs, ml by paint. */
type Needs = ReadonlyMap<string, number>;

/**
 * The promised need of each paint over its likely one: what the shelf holds and what must be bought, over what the army is
 * likely to need. Paints that the army no longer needs take the ratio of all the others together; without any it is 1.
 */
export function promiseRatios(toBuyMl: Needs, stock: readonly CountedStock[]): (paint: string) => number {
  const needed = stock.filter(({ needMl }) => needMl > 0);
  const promisedOf = ({ paint, haveMl }: CountedStock): number =>
    Math.max(0, haveMl + (toBuyMl.get(paint) ?? 0));
  const ratios = new Map(needed.map((one) => [one.paint, promisedOf(one) / one.needMl]));
  const likely = needed.reduce((sum, { needMl }) => sum + needMl, 0);
  const promised = needed.reduce((sum, one) => sum + promisedOf(one), 0);
  const usual = likely === 0 ? 1 : promised / likely;
  return (paint) => ratios.get(paint) ?? usual;
}

/** Needs with the promise's margin. */
export function scaleNeeds(needs: Needs, ratioOf: (paint: string) => number): Map<string, number> {
  return new Map([...needs].map(([paint, ml]) => [paint, ml * ratioOf(paint)]));
}

/** Demands with the promise's margin. Units that share their demand share the scaled one too. */
export function scaleDemands(
  demands: readonly UnitDemand[],
  ratioOf: (paint: string) => number,
): UnitDemand[] {
  const scale = remember((ml: Needs) => scaleNeeds(ml, ratioOf));
  return demands.map((one) => ({
    ...one,
    perFigureMl: scale(one.perFigureMl),
    perSittingMl: scale(one.perSittingMl),
  }));
}
