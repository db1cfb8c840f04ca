// Report view: where the paint goes. In: the plan, its sums. Out: ml by zone and layer, by paint (on the figure, lost,
// left over), and parts that stay unpainted.
import { splitWhole } from '../../../model/money.js';
import type { Amount, Plan } from '../../../model/plan.js';
import type { Range } from '../../../model/ranges.js';
import { layers } from '../../../model/words.js';
import { hexOf } from '../../words/hex-of.js';
import type { PaintWork, WorkSums } from '../../words/sum-work.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { nameOf } from '../../words/word-name.js';
import { listOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';
import { wordRange } from '../../words/word-sure.js';
import { viewPartCosts } from './view-part-costs.js';

export interface UseView {
  readonly lead: string;
  /** Of the table by zone and layer. */
  readonly trust: TrustView;
  readonly layers: readonly string[];
  readonly zones: readonly UseZone[];
  readonly layerTotals: readonly string[];
  readonly total: string;
  /** What the paint of each layer costs; the layers add up to `cost`, and so do the zones and the paints. */
  readonly layerCosts: readonly string[];
  readonly cost: string;
  readonly paints: readonly UsePaint[];
  readonly notPainted: readonly string[];
}

export interface UseZone {
  readonly zone: string;
  /** One for each layer; `text` is '' where the zone gets none. `share` is of the largest in its layer. */
  readonly cells: readonly { readonly text: string; readonly share: number }[];
  readonly total: string;
  readonly cost: string;
}

export interface UsePaint {
  readonly paint: string;
  readonly hex: string;
  readonly whole: string;
  /** Still to be put out, and where it goes; the three parts add up to it. */
  readonly remaining: string;
  /** Low to high of it; '' where nothing is still to be put out. */
  readonly remainingRange: string;
  readonly onFigure: string;
  readonly lost: string;
  readonly leftover: string;
  /** Of what is still to be put out; '' where nothing is. */
  readonly cost: string;
  readonly bar: UseBar;
  readonly trust: TrustView;
}

export interface UseBar {
  readonly id: string;
  readonly hex: string;
  readonly title: string;
  readonly says: string;
  readonly onFigureShare: number;
  readonly lostShare: number;
}

/** Work still to be done; finished steps show in the lead and in the paints' whole column only. */
export function viewUse({ plan, sums, words, trust }: ViewInputs): UseView {
  const used = layers.filter((layer) => [...sums.zones.values()].some((zone) => zone.has(layer)));
  const { zones, layers: layerCosts, paints } = plan.costs;
  const costOf = viewPartCosts(zones, words);
  const layerCost = viewPartCosts(layerCosts, words);
  const useCosts = [...paints].map(([paint, { useCost }]): [string, Amount] => [paint, useCost]);
  const paintCost = viewPartCosts(new Map(useCosts), words);
  const table = viewZones(sums, used, words);
  return {
    lead: wordLead(sums, words),
    trust: trust.of(sums.doubts),
    layers: used,
    ...table,
    zones: table.zones.map((zone) => ({ ...zone, cost: costOf.of(zone.zone) })),
    layerCosts: used.map(layerCost.of),
    cost: costOf.total,
    paints: [...sums.paints].map(([paint, work], index) => ({
      ...viewPaint(paint, work, { words, id: `use-${index + 1}`, hex: hexOf(plan, paint) }),
      remainingRange: wordRemaining(work, plan.ranges.paints.get(paint)?.needMl, words),
      cost: work.remainingMl > 0 ? paintCost.of(paint) : '',
      trust: trust.of(work.doubts),
    })),
    notPainted: wordUnpainted(plan),
  };
}

/** `7.3 to 22.4`, without the unit, as its column names it. */
function wordRemaining({ remainingMl }: PaintWork, range: Range | undefined, words: NumberWords): string {
  if (range === undefined || remainingMl === 0) return '';
  const digits = mlDigits(remainingMl);
  return wordRange(range, (ml) => words.bareMl(ml, digits));
}

function wordLead({ wholeMl, remainingMl }: WorkSums, words: NumberWords): string {
  const whole = `The whole scheme puts out ${words.ml(wholeMl)} of paint`;
  if (remainingMl === 0) return `${whole}; nothing of it is still to be done.`;
  return remainingMl < wholeMl
    ? `${whole}; ${words.ml(remainingMl)} of that is still to be done, and is shown here.`
    : `${whole}, all of it still to be done.`;
}

const sumMl = (layersOfZone: ReadonlyMap<string, number>): number =>
  [...layersOfZone.values()].reduce((sum, ml) => sum + ml, 0);

interface ZoneTable extends Pick<UseView, 'layerTotals' | 'total'> {
  readonly zones: readonly Omit<UseZone, 'cost'>[];
}

/** Zones with most paint first. Cells are rounded by largest remainder over the whole table, so rows and columns add up to what is shown. */
function viewZones({ zones, remainingMl }: WorkSums, used: readonly string[], words: NumberWords): ZoneTable {
  const digits = mlDigits(remainingMl / 10);
  const step = 10 ** digits;
  const byMl = [...zones].sort(([, a], [, b]) => sumMl(b) - sumMl(a));
  const raw = byMl.flatMap(([, zone]) => used.map((layer) => zone.get(layer) ?? 0));
  const parts = splitWhole(Math.round(remainingMl * step), raw);
  const largest = used.map((layer) => Math.max(...byMl.map(([, zone]) => zone.get(layer) ?? 0)));
  const text = (steps: number): string => words.bareMl(steps / step, digits);
  const cellAt = (index: number): UseZone['cells'][number] => {
    const ml = raw[index] ?? 0;
    const steps = parts[index] ?? 0;
    const shown = steps === 0 ? words.bareMl(Math.min(ml, 0.4 / step), digits) : text(steps);
    return { text: ml === 0 ? '' : shown, share: ml === 0 ? 0 : ml / (largest[index % used.length] ?? ml) };
  };
  const sum = (indexes: readonly number[]): string =>
    text(indexes.reduce((total, index) => total + (parts[index] ?? 0), 0));
  const columns = used.map((_, column) => column);
  const names = byMl.map(([name]) => name);
  return {
    zones: names.map((zone, row) => {
      const indexes = columns.map((column) => row * used.length + column);
      return { zone, cells: indexes.map(cellAt), total: sum(indexes) };
    }),
    layerTotals: columns.map((column) => sum(names.map((_, row) => row * used.length + column))),
    total: text(Math.round(remainingMl * step)),
  };
}

interface PaintLooks {
  readonly words: NumberWords;
  readonly id: string;
  readonly hex: string;
}

function viewPaint(
  paint: string,
  work: PaintWork,
  { words, id, hex }: PaintLooks,
): Omit<UsePaint, 'trust' | 'cost' | 'remainingRange'> {
  const { wholeMl, remainingMl } = work;
  const onFigureMl = Math.min(work.onFigureMl, remainingMl);
  const leftoverMl = Math.min(work.leftoverMl, remainingMl - onFigureMl);
  const lostMl = remainingMl - onFigureMl - leftoverMl;
  const digits = mlDigits(remainingMl);
  const step = 10 ** digits;
  const [onFigure = 0, lost = 0, leftover = 0] = splitWhole(Math.round(remainingMl * step), [
    onFigureMl,
    lostMl,
    leftoverMl,
  ]).map((steps) => steps / step);
  const texts = {
    whole: words.bareMl(wholeMl),
    remaining: words.bareMl(remainingMl, digits),
    onFigure: words.bareMl(onFigure, digits),
    lost: words.bareMl(lost, digits),
    leftover: words.bareMl(leftover, digits),
  };
  const bar = {
    id,
    hex,
    title: `Where ${nameOf(paint)} goes`,
    says: `${texts.onFigure} ml on the figures, ${texts.lost} ml lost on the way, ${texts.leftover} ml left over`,
    onFigureShare: remainingMl > 0 ? onFigureMl / remainingMl : 0,
    lostShare: remainingMl > 0 ? lostMl / remainingMl : 0,
  };
  return { paint, hex, ...texts, bar };
}

/** One sentence for each figure and scheme that leaves parts bare. */
function wordUnpainted({ estimate }: Plan): string[] {
  const says = new Set<string>();
  for (const { figure, scheme, notPainted } of estimate.jobs.keys()) {
    if (notPainted.length > 0) says.add(`${nameOf(figure)} in ${nameOf(scheme)}: ${listOf(notPainted, 12)}`);
  }
  return [...says];
}
