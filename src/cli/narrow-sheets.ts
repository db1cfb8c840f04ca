// Command line: --until and --without. In: their texts, checked sheets. Out: the sheets with a part of the army, and without offers
// that are sold out.
import { findDoneUnits } from '../plan-army.js';
import { joinOr, listNearest } from '../sheets/check/find-nearest.js';
import { foldName } from '../sheets/check/fold-name.js';
import { UsageError } from './end-run.js';
import type { Sheets } from './read-or-show.js';

type Unit = Sheets['army'][number];

export interface Narrowing {
  /** A unit, or a number of figures: what comes after it waits. */
  readonly until?: string | undefined;
  /** What cash there is, as written: it finishes a part of an army too. */
  readonly budget?: string | undefined;
  /** `shop: offer`, each sold out. */
  readonly without?: readonly string[] | undefined;
}

/** The sheets without what is sold out, and the part of the army to plan for. */
export function narrowSheets(sheets: Sheets, { until, budget, without = [] }: Narrowing) {
  const ofArmy = until === undefined ? budget && '--budget' : '--until';
  if (ofArmy && sheets.army.length === 0)
    throw new UsageError(`${ofArmy} is about an army, and your sheets have none.`);
  const offers = without.reduce(sellOut, sheets.offers);
  return { sheets: { ...sheets, offers }, army: until === undefined ? undefined : cutArmy(sheets, until) };
}

function sellOut(offers: Sheets['offers'], text: string): Sheets['offers'] {
  const names = offers.map(({ shop, offer }) => `${shop}: ${offer}`);
  const found = names.findIndex((name) => foldName(name) === foldName(text));
  if (found < 0) throw new UsageError(`No offer is "${text}". ${wordNear(text, names, '"Shop: offer"')}`);
  return offers.map((offer, at) => (at === found ? { ...offer, available: 0 } : offer));
}

function wordNear(text: string, names: readonly string[], shape: string): string {
  const near = listNearest(text, names).map((name) => `"${name}"`);
  return near.length === 0 ? `Write it as ${shape}, as your sheets have it.` : `Near it is ${joinOr(near)}.`;
}

/** In the order of painting: by priority, then as listed. */
function cutArmy(sheets: Sheets, until: string): readonly Unit[] {
  const { army } = sheets;
  const painted = [...army].sort((a, b) => a.priority - b.priority || a.row - b.row);
  const last = painted.findIndex(({ unit }) => foldName(unit) === foldName(until));
  if (last >= 0) {
    const unit = painted[last] as Unit;
    if (findDoneUnits(sheets).has(unit))
      throw new UsageError(`"${unit.unit}" is done: name a unit with work left in --until.`);
    const kept = new Set(painted.slice(0, last + 1));
    return army.filter((one) => kept.has(one));
  }
  if (!/^\d+$/.test(until))
    throw new UsageError(
      `No unit is "${until}". ${wordNear(
        until,
        painted.map(({ unit }) => unit),
        'a unit or a number of figures',
      )}`,
    );
  return takeFigures(army, painted, Number(until));
}

function takeFigures(army: readonly Unit[], painted: readonly Unit[], figures: number): readonly Unit[] {
  const all = army.reduce((sum, { count }) => sum + count, 0);
  if (figures < 1 || figures > all)
    throw new UsageError(`"${figures}" is no number of figures of this army. Write --until as 1 to ${all}.`);
  const counts = new Map<Unit, number>();
  let left = figures;
  for (const unit of painted) {
    counts.set(unit, Math.min(left, unit.count));
    left -= Math.min(left, unit.count);
  }
  return army.flatMap((unit) => {
    const count = counts.get(unit) ?? 0;
    return count > 0 ? [{ ...unit, count }] : [];
  });
}
