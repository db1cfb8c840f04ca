// Use: where the paint goes. In: the plan's sums. Out: ml by zone and layer, by paint (on the figure, lost, left over), and
// parts that stay unpainted.
import { at } from '../../../model/at.js';
import type { Amount } from '../../../model/money.js';
import type { Plan } from '../../../model/plan.js';
import type { Range } from '../../../model/ranges.js';
import type { PaintWork, WorkSums } from '../../../model/summary.js';
import { type Layer, layers } from '../../../model/words.js';
import { shareOf } from '../../drawing/scale.js';
import { hexOf } from '../../words/hex-of.js';
import { roundMlTable, splitMl } from '../../words/round-ml.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { mlDigits, type NumberWords } from '../../words/word-numbers.js';
import { wordRange } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';
import { viewPartCosts } from './view-part-costs.js';
import { type UseWords, useWords } from './words.js';

export interface UseView {
  readonly labels: UseWords['labels'];
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

interface UseZone {
  readonly zone: string;
  /** One for each layer; `text` is '' where the zone gets none. `share` is of the largest in its layer. */
  readonly cells: readonly { readonly text: string; readonly share: number }[];
  readonly total: string;
  readonly cost: string;
}

interface UsePaint {
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
  readonly hex: string;
  readonly onFigureShare: number;
  readonly lostShare: number;
}

/** Work still to be done; finished steps show in the lead and in the paints' whole column only. */
export function viewUse({ plan, words, trust }: ViewInputs): UseView {
  const { work } = plan.summary;
  const used = layers.filter((layer) => work.zones.some(({ layersMl }) => layersMl.has(layer)));
  const { zones, layers: layerCosts, paints } = plan.costs;
  const texts = useWords(words);
  const costOf = viewPartCosts(zones, words);
  const layerCost = viewPartCosts(layerCosts, words);
  const useCosts = [...paints].map(([paint, { useCost }]): [string, Amount] => [paint, useCost]);
  const paintCost = viewPartCosts(new Map(useCosts), words);
  const table = viewZones(work, used, words);
  return {
    labels: texts.labels,
    lead: texts.lead(work),
    trust: trust.of(work.trust),
    layers: used.map((layer) => sharedWords.layers[layer]),
    ...table,
    zones: table.zones.map((zone) => ({ ...zone, cost: costOf.of(zone.zone) })),
    layerCosts: used.map(layerCost.of),
    cost: costOf.total,
    paints: [...work.paints].map(([paint, of]) => ({
      ...viewPaint(paint, of, hexOf(plan, paint), words),
      remainingRange: wordRemaining(of, plan.ranges.paints.get(paint)?.needMl, words),
      cost: of.remainingMl > 0 ? paintCost.of(paint) : '',
      trust: trust.of(of.trust),
    })),
    notPainted: listUnpainted(plan, texts),
  };
}

/** `7.3 to 22.4`, without the unit, as its column names it. */
function wordRemaining({ remainingMl }: PaintWork, range: Range | undefined, words: NumberWords): string {
  if (range === undefined || remainingMl === 0) return '';
  const digits = mlDigits(remainingMl);
  return wordRange(range, (ml) => words.bareMl(ml, digits));
}

interface ZoneTable extends Pick<UseView, 'layerTotals' | 'total'> {
  readonly zones: readonly Omit<UseZone, 'cost'>[];
}

/** Zones with most paint first; a drop's size is its share of the largest in its layer. */
function viewZones({ zones, remainingMl }: WorkSums, used: readonly Layer[], words: NumberWords): ZoneTable {
  const rowsMl = zones.map(({ layersMl }) => used.map((layer) => layersMl.get(layer) ?? 0));
  const largestMl = used.map((_, column) => Math.max(...rowsMl.map((row) => at(row, column))));
  const { cells, rowTotals, columnTotals, total } = roundMlTable(rowsMl, remainingMl, words);
  return {
    zones: zones.map(({ zone }, row) => ({
      zone,
      cells: used.map((_, column) => ({
        text: at(at(cells, row), column),
        share: shareOf(at(at(rowsMl, row), column), at(largestMl, column)),
      })),
      total: at(rowTotals, row),
    })),
    layerTotals: columnTotals,
    total,
  };
}

function viewPaint(
  paint: string,
  { wholeMl, remainingMl, onFigureMl, lostMl, leftoverMl }: PaintWork,
  hex: string,
  words: NumberWords,
): Omit<UsePaint, 'trust' | 'cost' | 'remainingRange'> {
  const digits = mlDigits(remainingMl);
  const parts = splitMl(remainingMl, [onFigureMl, lostMl, leftoverMl], digits, words);
  const [onFigure = '', lost = '', leftover = ''] = parts;
  return {
    paint,
    hex,
    whole: words.bareMl(wholeMl),
    remaining: words.bareMl(remainingMl, digits),
    ...{ onFigure, lost, leftover },
    bar: {
      hex,
      onFigureShare: shareOf(onFigureMl, remainingMl),
      lostShare: shareOf(lostMl, remainingMl),
    },
  };
}

/** One sentence for each figure and scheme that leaves parts bare. */
function listUnpainted({ estimate }: Plan, texts: UseWords): string[] {
  const bare = [...estimate.jobs.keys()].filter(({ notPainted }) => notPainted.length > 0);
  return [...new Set(bare.map(texts.unpainted))];
}
