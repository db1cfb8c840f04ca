// Costs: one unit's cost per figure, split over layers and extras. In: a unit's cost. Out: text and a stacked bar.
import type { Amount } from '../../../model/money.js';
import type { Plan, UnitCost } from '../../../model/plan.js';
import type { Range } from '../../../model/ranges.js';
import { remember } from '../../../model/remember.js';
import { type Layer, layers } from '../../../model/words.js';
import type { Job, Trust } from '../../../model/work.js';
import { rangeOf, shareOf } from '../../drawing/scale.js';
import type { TrustView, TrustWords } from '../../words/view-trust.js';
import type { NumberWords } from '../../words/word-numbers.js';
import { type LowHigh, wordCostRange } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';
import type { CostWords } from './words.js';

export interface CostPart {
  /** Undefined for extras. */
  readonly layer: Layer | undefined;
  readonly part: string;
  /** For colours: `base-coat`. */
  readonly key: string;
}

export interface CostUnit {
  readonly unit: string;
  readonly perFigure: string;
  /** Low to high of it; '' where nothing of it has a price. */
  readonly range: string;
  /** One for each of `parts`; they add up to `perFigure`. */
  readonly split: readonly string[];
  readonly bar: CostBar;
  readonly trust: TrustView;
}

export interface CostBar {
  readonly title: string;
  /** Low to high of the whole bar; undefined where nothing of it has a price. */
  readonly range: LowHigh | undefined;
  /** Shares of what the dearest figure may cost at most. */
  readonly pieces: readonly { readonly key: string; readonly share: number }[];
}

/** The layers that some job has, in painting order, then extras where anything is spent on them. */
export function listCostParts(jobs: Iterable<Job>, extrasWhole: Amount, { extras }: CostWords): CostPart[] {
  const used = new Set<string>();
  for (const { lines } of jobs) for (const { layer } of lines) used.add(layer);
  const ofLayers = layers
    .filter((layer) => used.has(layer))
    .map((layer) => ({ layer, part: sharedWords.layers[layer], key: layer.replaceAll(' ', '-') }));
  const isSpent = !extrasWhole.exactMinor.isZero() || extrasWhole.atLeast;
  return isSpent ? [...ofLayers, { layer: undefined, part: extras, key: 'extras' }] : ofLayers;
}

/** What a row needs beside the unit itself. */
export interface CostUnitInputs {
  /** The full width of a bar, minor units. */
  readonly dearest: number;
  /** Cost of use of one figure, minor units. */
  readonly range: Range | undefined;
  readonly texts: CostWords;
  readonly words: NumberWords;
  readonly viewFigure: ReturnType<typeof viewFigureOnce>;
}

/** One unit: its name, and what its figure costs. */
export function viewCostUnit({ unit, ...costs }: UnitCost, inputs: CostUnitInputs): CostUnit {
  const { dearest, texts, words, viewFigure } = inputs;
  const range = rangeOf(inputs.range, dearest);
  const { parts, split, perFigure, trust } = viewFigure(costs);
  return {
    unit: unit.unit,
    perFigure,
    range: range === undefined || inputs.range === undefined ? '' : wordCostRange(inputs.range, words),
    split,
    bar: {
      title: texts.barTitle(unit.unit, perFigure),
      range,
      pieces: parts.map(({ key, exact }) => ({ key, share: shareOf(exact, dearest) })),
    },
    trust,
  };
}

interface FigureInputs {
  readonly parts: readonly CostPart[];
  readonly jobs: Plan['summary']['jobs'];
  readonly words: NumberWords;
  readonly trust: TrustWords;
}

type CostedJob = Pick<UnitCost, 'job' | 'use'>;

/** Cost of use of one figure, worded once for all units whose lines cost the same. */
export const viewFigureOnce = (inputs: FigureInputs) =>
  remember(
    (costed: CostedJob): FigureView => viewFigure(costed, inputs),
    ({ use }) => use.lines,
  );

interface FigureView extends Pick<CostUnit, 'perFigure' | 'split' | 'trust'> {
  /** Those that the figure has. */
  readonly parts: readonly { readonly key: string; readonly exact: number }[];
}

/** The split is by largest remainder, so it adds up to the cent. */
function viewFigure({ job, use }: CostedJob, { parts, jobs, words, trust }: FigureInputs): FigureView {
  const { costByLayer, trust: doubt = noDoubt } = jobs.get(job) ?? {};
  const amounts = parts.map(({ layer }): Amount | undefined =>
    layer === undefined ? use.extrasPerFigure : costByLayer?.get(layer),
  );
  return {
    parts: parts.flatMap(({ key }, at) => {
      const amount = amounts[at];
      return amount === undefined ? [] : [{ key, exact: amount.exactMinor.toNumber() }];
    }),
    split: words.split(use.perFigure, amounts),
    perFigure: words.amount(use.perFigure),
    trust: trust.of(doubt),
  };
}

const noDoubt: Trust = { mark: 'weighed', biggestDoubt: '' };
