// Summary: what comes first as the evenings are spelled out. In: evenings, stock, order, what a weighing settles. Out: the paint
// that is empty first, the unit that is finished first, the one thing to do next.
import type { Order } from '../model/order.js';
import type { Ranges } from '../model/ranges.js';
import type { PaintStock } from '../model/stock.js';
import type { Ahead, FirstOut, NextStep } from '../model/summary.js';
import type { EveningPiece, TimePlan } from '../model/time.js';
import type { Job, Line } from '../model/work.js';
import { countPots } from './sum-order.js';

interface Inputs {
  readonly time: TimePlan;
  readonly stock: readonly PaintStock[];
  readonly order: Order;
  readonly ranges: Pick<Ranges, 'remedies'>;
}

/** What a piece of an evening lays of one paint. */
interface Laid extends Pick<Line, 'paint' | 'zone'> {
  readonly evening: number;
  readonly unit: string;
  readonly ml: number;
}

/** Weighing comes first from this share of the doubt on, on an evening so near; ordering, when a paint is empty so soon. */
const [leastShare, weighWithin, orderWithin] = [0.25, 10, 3];

export function lookAhead({ time, stock, order, ranges }: Inputs): Ahead {
  const laid = listLaid(time);
  const firstOut = findFirstOut(laid, stock);
  const [first] = time.units
    .flatMap(({ unit: { unit }, doneOnEvening: evening }) =>
      evening === undefined ? [] : [{ unit, evening }],
    )
    .sort((a, b) => a.evening - b.evening);
  return {
    firstOut,
    firstFinished: first,
    next: findWeighing(laid, stock, ranges) ?? orderFirst(firstOut, order) ?? paintFirst(laid, stock),
  };
}

function listLaid({ spelledOut, units }: TimePlan): Laid[] {
  const jobs = new Map(units.map(({ unit, time }) => [unit.unit, time.job]));
  return spelledOut.flatMap(({ pieces }, at) =>
    pieces.flatMap((piece) =>
      piece.what === 'waiting' ? [] : layPiece(piece, at + 1, jobs.get(piece.unit)),
    ),
  );
}

/** A coat takes its share of what all coats of the line put out on the figures left. */
function layPiece(
  { unit, pass, figures }: Exclude<EveningPiece, { what: 'waiting' }>,
  evening: number,
  job: Job | undefined,
): Laid[] {
  const lines = job?.remaining.filter(
    ({ step, layer, zone, coats }) =>
      step === pass.step && layer === pass.layer && pass.zones.includes(zone) && pass.coat <= coats,
  );
  return (lines ?? []).map(({ paint, zone, putOutMl, coats, figures: all }) => ({
    ...{ paint, zone, evening, unit },
    ml: (putOutMl / coats / all) * figures,
  }));
}

/** Of the paints that are likely to run out; undefined where none does on these evenings. */
function findFirstOut(laid: readonly Laid[], stock: readonly PaintStock[]): FirstOut | undefined {
  const leftMl = new Map(
    stock
      .filter(({ state }) => state === 'none owned' || state === 'short')
      .map(({ paint, haveMl }) => [paint, haveMl]),
  );
  for (const { paint, evening, unit, ml } of laid) {
    const left = (leftMl.get(paint) ?? Infinity) - ml;
    if (left < 0) return { paint, evening, unit };
    leftMl.set(paint, left);
  }
  return undefined;
}

/** The weighing that settles most, if that is much and comes soon, and there is paint to weigh. */
function findWeighing(
  laid: readonly Laid[],
  stock: readonly PaintStock[],
  { remedies }: Pick<Ranges, 'remedies'>,
): NextStep | undefined {
  const most = remedies.find(({ how, share }) => how === 'weigh' && share >= leastShare);
  const evening = laid.find(({ paint }) => paint === most?.paint)?.evening;
  const pot = stock.find(({ paint }) => paint === most?.paint)?.pots.find(({ usableMl }) => usableMl > 0);
  if (most === undefined || evening === undefined || evening > weighWithin || pot === undefined)
    return undefined;
  return { what: 'weigh', paint: most.paint, container: pot.container, evening, share: most.share };
}

function orderFirst(firstOut: FirstOut | undefined, order: Order): NextStep | undefined {
  if (firstOut === undefined || firstOut.evening > orderWithin || order.lines.length === 0) return undefined;
  return { what: 'order', pots: countPots(order) };
}

/** Not with a paint of which nothing is there. */
function paintFirst([first]: readonly Laid[], stock: readonly PaintStock[]): NextStep | undefined {
  if (first === undefined || stock.find(({ paint }) => paint === first.paint)?.haveMl === 0) return undefined;
  return { what: 'paint', unit: first.unit, zone: first.zone, paint: first.paint };
}
