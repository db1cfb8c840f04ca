// Promise: what a way can do without. In: a way that keeps it. Out: another, no dearer.
import { at } from '../../model/at.js';
import type { Container } from '../../model/words.js';
import { reachesLeastOrders } from '../first-order.js';
import { usableMlOf } from '../open-market.js';
import { costOfCounts } from '../write-order.js';
import type { Asked } from './list-asked.js';
import type { Sought } from './open-promise.js';
import { markPaint, type Way, wayOf } from './way.js';

/** The way without every pot that the promise does not need, the dearest tried first. */
export function takeBack(way: Way, sought: Sought): Way {
  const { wares } = way;
  const { market, mayFail } = sought;
  const places = [...wares.keys()].filter((place) => at(way.counts, place) > 0);
  places.sort((a, b) => at(wares, b).offer.priceMinor - at(wares, a).offer.priceMinor);
  const tally = openTally(way, sought);
  let kept: Pick<Way, 'counts' | 'totalMinor'> = way;
  for (const place of places) {
    for (let left = at(kept.counts, place); left > 0; left--) {
      const counts = kept.counts.map((count, one) => (one === place ? count - 1 : count));
      const totalMinor = costOfCounts(wares, counts, market);
      if (totalMinor > kept.totalMinor || !reachesLeastOrders(wares, counts, market)) break;
      const fewer = tally.count(place, counts);
      if (fewer.failing > mayFail) break;
      tally.keep(fewer);
      kept = { counts, totalMinor };
    }
  }
  return kept === way ? way : wayOf(wares, kept.counts, sought);
}

/** What changes where an offer is bought once less: the marks of its paints alone. */
interface Changed {
  readonly failing: number;
  readonly marks: ReadonlyMap<string, Uint8Array>;
  readonly paintsFailing: Uint16Array;
}

/** Draws that fail, kept paint by paint: counting all paints anew for each pot would take as long as there are paints. */
function openTally({ wares, counts: first }: Way, { asked, draws, market }: Sought) {
  const known = new Map(asked.map((one) => [one.paint, one]));
  const holders = new Map<string, number[]>();
  for (const [place, { offer }] of wares.entries())
    for (const { paint } of offer.pots) holders.set(paint, [...(holders.get(paint) ?? []), place]);

  const markOf = (one: Asked, counts: readonly number[]): Uint8Array => {
    const bought = new Map<Container, number>();
    for (const place of new Set(holders.get(one.paint)))
      for (const pot of at(wares, place).offer.pots.filter(({ paint }) => paint === one.paint)) {
        const ml = usableMlOf(pot, market.assumptions) * pot.count * at(counts, place);
        bought.set(pot.container, (bought.get(pot.container) ?? 0) + ml);
      }
    const fails = new Uint8Array(draws);
    markPaint(fails, one, [...bought]);
    return fails;
  };

  const marks = new Map(asked.map((one) => [one.paint, markOf(one, first)]));
  let paintsFailing = new Uint16Array(draws);
  for (const fails of marks.values()) addMarks(paintsFailing, fails, 1);
  return {
    count: (place: number, counts: readonly number[]): Changed => {
      const paints = new Set(at(wares, place).offer.pots.map(({ paint }) => paint));
      const changed = new Map<string, Uint8Array>();
      const failing = paintsFailing.slice();
      for (const paint of paints) {
        const [one, before] = [known.get(paint), marks.get(paint)];
        if (one === undefined || before === undefined) continue;
        const after = markOf(one, counts);
        changed.set(paint, after);
        addMarks(failing, before, -1);
        addMarks(failing, after, 1);
      }
      return { failing: failing.filter((paint) => paint > 0).length, marks: changed, paintsFailing: failing };
    },
    keep: (changed: Changed): void => {
      for (const [paint, fails] of changed.marks) marks.set(paint, fails);
      paintsFailing = changed.paintsFailing as Uint16Array<ArrayBuffer>;
    },
  };
}

function addMarks(sums: Uint16Array, marks: Uint8Array, times: 1 | -1): void {
  for (let draw = 0; draw < sums.length; draw++)
    sums[draw] = (sums[draw] as number) + times * (marks[draw] as number);
}
