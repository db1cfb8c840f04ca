// Ranges tests: an army painted unit by unit by a painter by chance. In: a seed, what the painter writes down. Out: before each unit what
// the plan shows and what is true, and how often was ordered.
import { densityName, likely, usableShare } from '../../src/assumptions/look-up.js';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import { listPastWork } from '../../src/estimate/list-past-work.js';
import type { Assumptions } from '../../src/model/assumption.js';
import type { Range } from '../../src/model/ranges.js';
import type { LogRow, Sheets } from '../../src/model/sheets.js';
import { placeOrder } from '../../src/order/choose-order.js';
import { buyInGoes } from '../../src/order/policy/buy-in-goes.js';
import { openWants } from '../../src/order/policy/list-wants.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import { containersOnOffer } from '../../src/order/price-buying.js';
import { asNeeds } from '../../src/order/promise/find-promise.js';
import { openPromise } from '../../src/order/promise/open-promise.js';
import { drawArmy } from '../../src/ranges/draw-army.js';
import { drawNormals } from '../../src/ranges/draw-factors.js';
import { drawStages } from '../../src/ranges/draw-stages.js';
import { learnFromLog } from '../../src/ranges/learn/learn-from-log.js';
import { takeStock } from '../../src/stock/take-stock.js';
import {
  makeOffer,
  makePaint,
  makePot,
  makeSheets,
  makeShop,
  makeStep,
  makeUnit,
  offerPot,
} from '../make-sheets.js';
import { drawTruth } from './simulate-painter.js';

/** `neither`: only which unit was painted; `counts`: by eye what is left after each unit; `weighs`: the pot before and after. */
export type Habit = 'neither' | 'counts' | 'weighs';

export const unitNames = ['first', 'second', 'third', 'last'];
const figures = 40;
const sizeMl = 17;

const slate = makePaint({ paint: 'Slate' });
/** Some 30 ml are needed, of one paint in pots of 16 usable ml, at 2.95 with a postage of 3.95. One stands there, unopened. */
const army = makeSheets({
  steps: [makeStep({ step: 1 })],
  paints: [slate],
  pots: [makePot({ paint: 'Slate', sizeMl })],
  offers: [makeOffer({ pots: [offerPot('Slate', sizeMl)], priceMinor: 295 })],
  shops: [makeShop({ postageMinor: 395 })],
  army: unitNames.map((unit, at) => makeUnit({ unit, row: at + 2, count: figures, batch: figures })),
});
const buying = prepareBuying({ seconds: 1 });

/** All draws of what is needed and what is there, and how many pots to buy. */
async function plan(log: readonly LogRow[], seed: number) {
  const sheets: Sheets = { ...army, log };
  const estimateFirst = () => estimateArmy(sheets, registry);
  const { beliefs } = learnFromLog({ ...sheets, assumptions: registry, estimateFirst });
  const { assumptions } = beliefs;
  const estimate = estimateArmy(sheets, assumptions);
  const past = listPastWork(log, estimate, assumptions);
  const stock = takeStock({ ...sheets, past }, estimate.needs, assumptions);
  const inputs = { estimate, stock, beliefs };
  const drawn = drawArmy(inputs, { draws: 200, seed });
  const market = { offers: army.offers, shops: army.shops, assumptions };
  const floors = openWants(
    drawStages(inputs, { draws: 100, seed: seed + 1 }),
    containersOnOffer(market),
  ).nextMissing();
  const order = (needs: ReadonlyMap<string, number>) => placeOrder(asNeeds(needs), market, buying);
  const { asked } = openPromise(drawn, market);
  const { needs } = await buyInGoes(
    { asked, market, againMinor: undefined, floors },
    async (some) => (await order(some)).lines,
  );
  const pots = (await order(needs)).lines.reduce((sum, { count }) => sum + count, 0);
  const bandOf = (which: 'needMl' | 'haveMl') => drawn.paints[0]?.range[which] ?? { low: 0, high: 0 };
  return { needMl: bandOf('needMl'), haveMl: bandOf('haveMl'), pots };
}

/** Before a unit: the bands that are shown, and what is true. */
interface Stage {
  readonly needMl: { readonly band: Range; readonly trueMl: number };
  readonly haveMl: { readonly band: Range; readonly trueMl: number };
}

export interface Painted {
  /** One for each unit. */
  readonly stages: readonly Stage[];
  readonly orders: number;
}

/** What stands there in truth: usable ml of each pot with paint in it, the one in use first. */
type Shelf = readonly number[];

const sumOf = (shelf: Shelf): number => shelf.reduce((sum, ml) => sum + ml, 0);

function takeFrom(shelf: Shelf, usedMl: number): Shelf {
  const [first = 0, ...others] = shelf;
  return usedMl < first ? [first - usedMl, ...others] : takeFrom(others, usedMl - first);
}

/**
 * Before each unit the painter orders what the plan says, and it comes at once; who runs dry all the same orders one pot more, again and
 * again. A unit is one batch: what the formula gives at the truth, give or take a tenth.
 */
export async function paintInUnits(seed: number, habit: Habit): Promise<Painted> {
  const truth = drawTruth(seed);
  const unitMl = (estimateArmy(army, truth).needs.get('Slate')?.wholeMl ?? 0) / unitNames.length;
  const fullMl = sizeMl * usableShare(truth, 'dropper');
  const fresh = (pots: number): Shelf => new Array<number>(pots).fill(fullMl);
  const chance = drawNormals('units', { draws: 4 * unitNames.length, seed });
  const log: LogRow[] = [];
  const stages: Stage[] = [];
  let shelf = fresh(1);
  let orders = 0;
  for (const [at, unit] of unitNames.entries()) {
    const shown = await plan(log, seed);
    stages.push({
      needMl: { band: shown.needMl, trueMl: unitMl * (unitNames.length - at) },
      haveMl: { band: shown.haveMl, trueMl: sumOf(shelf) },
    });
    const [ofBatch = 0, ...ofReadings] = chance.subarray(4 * at);
    const usedMl = unitMl * (1 + (likely(truth, 'difference between batches') / 100) * ofBatch);
    const lackMl = usedMl - sumOf(shelf) - shown.pots * fullMl;
    const more = Math.max(0, Math.ceil(lackMl / fullMl));
    orders += Math.sign(shown.pots) + more;
    const full = [...shelf, ...fresh(shown.pots + more)];
    shelf = takeFrom(full, usedMl);
    const painted = { unit, step: 1, figures, trueMl: usedMl };
    const rows = [
      ...bought(shown.pots + more),
      ...writeDown(habit, { painted, before: full, after: shelf, truth, ofReadings }),
    ];
    log.push(
      ...rows.map((row, place) => ({
        row: log.length + place + 2,
        date: `2026-03-0${at + 1}`,
        paint: 'Slate',
        ...row,
      })),
    );
  }
  return { stages, orders };
}

type Row = Omit<LogRow, 'row' | 'date' | 'paint'>;

const bought = (pots: number): Row[] =>
  pots === 0 ? [] : [{ what: 'bought', sizeMl, pots }, { what: 'arrived' }];

interface Evening {
  readonly painted: Row & { readonly trueMl: number };
  readonly before: Shelf;
  readonly after: Shelf;
  readonly truth: Assumptions;
  /** Standard normal. */
  readonly ofReadings: readonly number[];
}

/** A count says how many pots are left; who does not count throws the empty ones away. */
function writeDown(habit: Habit, { painted, before, after, truth, ofReadings }: Evening): Row[] {
  const [first = 0, second = 0] = ofReadings;
  const { trueMl, ...use } = painted;
  const dry = before.length - after.length;
  const thrown: Row[] = dry === 0 ? [] : [{ what: 'thrown away', pots: dry }];
  if (habit === 'neither') return [use, ...thrown];
  if (habit === 'weighs') {
    const errorG = likely(truth, 'error of a scale');
    const grams = trueMl * likely(truth, densityName(slate, 'dropper'));
    return [{ ...use, beforeG: 300 + errorG * first, afterG: 300 - grams + errorG * second }, ...thrown];
  }
  const share = (after[0] ?? 0) / (sizeMl * usableShare(truth, 'dropper'));
  const seen = Math.min(1, Math.max(0, share + (likely(truth, 'error by eye') / 100) * first));
  return [use, { what: 'counted', left: { how: 'by eye', share: seen }, pots: after.length }];
}
