// Promise: a way that does not quite do. In: the way, what is asked for in each draw. Out: one that does, offer by offer.
import { at } from '../../model/at.js';
import type { Offer, OfferPot } from '../../model/sheets.js';
import { sameMl } from '../../model/volume.js';
import { usableMlOf } from '../open-market.js';
import type { Asked } from './list-asked.js';
import type { Sought } from './open-promise.js';
import { type Way, wayOf } from './way.js';

/** Times that something is added to one way at the most, and lacks of a draw that are looked at for it. */
const most = { added: 100, looked: 1e8 };

/** Of an offer that is bought by the hundred, so much more at once. */
const shareAtOnce = 0.1;

/**
 * As long as too many draws fail, one more of the offer that does most for them at its price. Undefined where the offers end before,
 * or there is too much to look at.
 */
export function mendWay(way: Way, sought: Sought): Way | undefined {
  const lacking = openLacking(way, sought);
  const counts = [...way.counts];
  for (let added = 0; lacking.draws() > sought.mayFail; added++) {
    const place = findBest(way, { counts, lacking, sought });
    if (place === undefined || added === most.added || lacking.looked() > most.looked) return undefined;
    const { offer, limit } = at(way.wares, place);
    const before = at(counts, place);
    const more = Math.min(limit - before, Math.max(1, Math.floor(shareAtOnce * before)));
    counts[place] = before + more;
    lacking.take(offer, more);
  }
  return wayOf(way.wares, counts, sought);
}

interface Mending {
  readonly counts: readonly number[];
  readonly lacking: Lacking;
  readonly sought: Sought;
}

/** By price and, of a shop that is not bought from yet, its postage. */
function findBest({ wares }: Way, { counts, lacking, sought }: Mending): number | undefined {
  const used = new Set(wares.flatMap(({ offer }, place) => (at(counts, place) > 0 ? [offer.shop] : [])));
  let [best, bestWorth]: [number | undefined, number] = [undefined, 0];
  for (const [place, { offer, limit }] of wares.entries()) {
    if (at(counts, place) >= limit) continue;
    const postageMinor = used.has(offer.shop) ? 0 : (sought.market.shops.get(offer.shop)?.postageMinor ?? 0);
    const worth = lacking.doneBy(offer) / Math.max(1, offer.priceMinor + postageMinor);
    if (worth > bestWorth) [best, bestWorth] = [place, worth];
  }
  return best;
}

/** What the failing draws lack still. */
interface Lacking {
  draws(): number;
  /** What one more of an offer does: of each draw the share of its lacking paints, in part where it is not enough. */
  doneBy(offer: Offer): number;
  take(offer: Offer, count: number): void;
  looked(): number;
}

interface LackingPaint extends Pick<Asked, 'gains'> {
  /** Of each draw that fails; at or below 0: nothing. */
  readonly ml: Float64Array;
}

function openLacking({ wares, counts, fails }: Way, { asked, market }: Sought): Lacking {
  const failing = Int32Array.from([...fails.keys()].filter((draw) => fails[draw] === 1));
  const paints = new Map(
    asked.map(({ paint, lackMl, gains }): [string, LackingPaint] => [
      paint,
      { gains, ml: Float64Array.from(failing, (draw) => lackMl[draw] as number) },
    ]),
  );
  let looked = 0;
  /** Each draw that lacks some of a pot's paint: what is missing, and what so many such pots give. */
  const eachLack = (pot: OfferPot, count: number, look: Look): void => {
    const own = paints.get(pot.paint);
    if (own === undefined) return;
    const usableMl = usableMlOf(pot, market.assumptions) * pot.count * count;
    const gain = own.gains.get(pot.container);
    looked += failing.length;
    for (let row = 0; row < failing.length; row++) {
      const missingMl = own.ml[row] as number;
      if (missingMl > sameMl) look(row, missingMl, usableMl * (gain?.[failing[row] as number] ?? 1), own.ml);
    }
  };
  const take = (offer: Offer, count: number): void => {
    for (const pot of offer.pots)
      eachLack(pot, count, (row, missingMl, gotMl, ml) => {
        ml[row] = missingMl - gotMl;
      });
  };
  for (const [place, { offer }] of wares.entries()) if (at(counts, place) > 0) take(offer, at(counts, place));
  const lacks = (): Uint16Array =>
    Uint16Array.from(failing, (_, row) => {
      let times = 0;
      for (const { ml } of paints.values()) if ((ml[row] as number) > sameMl) times++;
      return times;
    });
  let times = lacks();
  return {
    draws: () => times.reduce((sum, one) => sum + (one > 0 ? 1 : 0), 0),
    doneBy: (offer) => {
      let done = 0;
      for (const pot of offer.pots)
        eachLack(pot, 1, (row, missingMl, gotMl) => {
          done += Math.min(1, gotMl / missingMl) / (times[row] as number);
        });
      return done;
    },
    take: (offer, count) => {
      take(offer, count);
      times = lacks();
    },
    looked: () => looked,
  };
}

/** A failing draw by its row, and what of a paint it lacks, what it would get, and the column of all that is lacking. */
type Look = (row: number, missingMl: number, gotMl: number, ml: Float64Array) => void;
