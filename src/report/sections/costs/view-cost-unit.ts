// Costs: one unit's cost per figure, split over layers and extras. In: a unit's cost. Out: text and a stacked bar.
import type { Amount } from '../../../model/money.js';
import type { Plan, UnitCost } from '../../../model/plan.js';
import type { Range } from '../../../model/ranges.js';
import { type Layer, layers } from '../../../model/words.js';
import type { Job, Trust } from '../../../model/work.js';
import { rangeOf, shareOf } from '../../drawing/scale.js';
import type { TrustView, TrustWords } from '../../words/view-trust.js';
import { nameOf } from '../../words/word-name.js';
import type { NumberWords } from '../../words/word-numbers.js';
import { type LowHigh, wordCostRange } from '../../words/word-sure.js';

export interface CostPart {
  readonly part: string;
  /** For colours: `base-coat`. */
  readonly key: string;
}

export interface CostUnit {
  readonly unit: string;
  readonly figures: string;
  readonly figure: string;
  readonly scheme: string;
  readonly perFigure: string;
  /** Low to high of it; '' where nothing of it has a price. */
  readonly range: string;
  /** One for each of `parts`; they add up to `perFigure`. */
  readonly split: readonly string[];
  readonly bar: CostBar;
  readonly trust: TrustView;
}

export interface CostBar {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  /** Low to high of the whole bar; undefined where nothing of it has a price. */
  readonly range: LowHigh | undefined;
  /** Shares of what the dearest figure may cost at most. */
  readonly pieces: readonly (CostPart & { readonly share: number; readonly text: string })[];
}

const extras: CostPart = { part: 'extras', key: 'extras' };

/** The layers that some job has, in painting order, then extras where anything is spent on them. */
export function listCostParts(jobs: Iterable<Job>, extrasWhole: Amount): CostPart[] {
  const used = new Set<string>();
  for (const { lines } of jobs) for (const { layer } of lines) used.add(layer);
  const ofLayers = layers
    .filter((layer) => used.has(layer))
    .map((layer) => ({ part: layer, key: layer.replaceAll(' ', '-') }));
  return !extrasWhole.exactMinor.isZero() || extrasWhole.atLeast ? [...ofLayers, extras] : ofLayers;
}

/** What a row needs beside the unit itself. */
export interface CostUnitInputs {
  readonly id: string;
  /** The full width of a bar, minor units. */
  readonly dearest: number;
  /** Cost of use of one figure, minor units. */
  readonly range: Range | undefined;
  readonly words: NumberWords;
  readonly viewFigure: ReturnType<typeof viewFigureOnce>;
}

/** One unit: its name, and what its figure costs. */
export function viewCostUnit(unit: UnitCost, inputs: CostUnitInputs): CostUnit {
  const { words, viewFigure } = inputs;
  const range = rangeOf(inputs.range, inputs.dearest);
  const { parts, texts, perFigure, trust } = viewFigure(unit);
  return {
    unit: unit.unit.unit,
    figures: words.count(unit.unit.count),
    figure: unit.unit.figure,
    scheme: unit.unit.scheme,
    perFigure,
    range: range === undefined || inputs.range === undefined ? '' : wordCostRange(inputs.range, words),
    split: texts,
    bar: drawnBar(parts, { ...inputs, range, title: `${nameOf(unit.unit.unit)}: ${perFigure} a figure` }),
    trust,
  };
}

interface FigureInputs {
  readonly parts: readonly CostPart[];
  readonly jobs: Plan['summary']['jobs'];
  readonly words: NumberWords;
  readonly trust: TrustWords;
}

/** Cost of use of one figure, worded once for all units whose lines cost the same. */
export function viewFigureOnce(inputs: FigureInputs): (unit: UnitCost) => FigureView {
  const known = new Map<UnitCost['use']['lines'], FigureView>();
  return (unit) => {
    const figure = known.get(unit.use.lines) ?? viewFigure(unit, inputs);
    known.set(unit.use.lines, figure);
    return figure;
  };
}

interface FigureView extends Pick<CostUnit, 'perFigure' | 'trust'> {
  /** Those that the figure has. */
  readonly parts: readonly (CostPart & { readonly text: string; readonly exact: number })[];
  readonly texts: readonly string[];
}

/** The split is by largest remainder, so it adds up to the cent. */
function viewFigure({ job, use }: UnitCost, { parts, jobs, words, trust }: FigureInputs): FigureView {
  const { costByLayer, trust: doubt = noDoubt } = jobs.get(job) ?? {};
  const amountOf = ({ part }: CostPart): Amount | undefined =>
    part === extras.part ? use.extrasPerFigure : costByLayer?.get(part as Layer);
  const amounts = parts.map(amountOf);
  const texts = words.split(use.perFigure, amounts);
  return {
    parts: parts.flatMap((part, at) => {
      const [amount, text] = [amounts[at], texts[at] ?? ''];
      return amount === undefined ? [] : [{ ...part, text, exact: amount.exactMinor.toNumber() }];
    }),
    texts,
    perFigure: words.amount(use.perFigure),
    trust: trust.of(doubt),
  };
}

const noDoubt: Trust = { mark: 'weighed', biggestDoubt: '' };

interface BarInputs {
  readonly id: string;
  readonly dearest: number;
  readonly title: string;
  readonly range: CostBar['range'];
}

function drawnBar(parts: FigureView['parts'], { id, dearest, title, range }: BarInputs): CostBar {
  return {
    id,
    title,
    range,
    says: parts.map(({ part, text }) => `${part} ${text}`).join(', '),
    pieces: parts.map(({ part, key, text, exact }) => ({ part, key, text, share: shareOf(exact, dearest) })),
  };
}
