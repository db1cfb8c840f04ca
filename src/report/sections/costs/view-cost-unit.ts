// Report view: one unit's cost per figure, split over layers and extras. In: a unit's cost. Out: text and a stacked bar.
import { exactMinor, roundMinor, splitWhole, zeroMinor } from '../../../model/money.js';
import type { Amount, UnitCost } from '../../../model/plan.js';
import type { Range } from '../../../model/ranges.js';
import { layers } from '../../../model/words.js';
import type { Job } from '../../../model/work.js';
import { doubtCost } from '../../words/sum-work.js';
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
  return extrasWhole.exactMinor.gt(0) || extrasWhole.atLeast ? [...ofLayers, extras] : ofLayers;
}

/** What a row needs beside the unit itself. */
export interface CostUnitInputs {
  readonly id: string;
  /** What the dearest figure shown may cost at most (P90), minor units: the full width of a bar. */
  readonly dearest: number;
  /** Cost of use of one figure, minor units. */
  readonly range: Range | undefined;
  readonly words: NumberWords;
  readonly viewFigure: ReturnType<typeof viewFigureOnce>;
}

/** One unit: its name, and what its figure costs. */
export function viewCostUnit(unit: UnitCost, inputs: CostUnitInputs): CostUnit {
  const { words, viewFigure } = inputs;
  const range = openRange(inputs.range);
  const { split, texts, perFigure, trust } = viewFigure(unit);
  return {
    unit: unit.unit.unit,
    figures: words.count(unit.unit.count),
    figure: unit.unit.figure,
    scheme: unit.unit.scheme,
    perFigure,
    range: range === undefined ? '' : wordCostRange(range, words),
    split: texts,
    bar: drawnBar(split, texts, { ...inputs, title: `${nameOf(unit.unit.unit)}: ${perFigure} a figure` }),
    trust,
  };
}

interface FigureInputs {
  readonly parts: readonly CostPart[];
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
  readonly split: readonly SplitPart[];
  readonly texts: readonly string[];
}

/** The split is by largest remainder, so it adds up to the cent. */
function viewFigure(unit: UnitCost, { parts, words, trust }: FigureInputs): FigureView {
  const split = splitPerFigure(unit, parts);
  return {
    split,
    texts: split.map(({ minor, exact, atLeast, used }) =>
      used ? words.pricedPart(minor, atLeast, exact) : '',
    ),
    perFigure: words.amount(unit.use.perFigure),
    trust: trust.of(doubtCost(unit)),
  };
}

/** Where nothing has a price there is no range either. */
const openRange = (range: Range | undefined): Range | undefined =>
  range !== undefined && range.low < range.high ? range : undefined;

interface SplitPart extends CostPart {
  /** Rounded share of the figure's cost. */
  readonly minor: number;
  /** Unrounded, in minor units. */
  readonly exact: number;
  readonly atLeast: boolean;
  /** False where the figure has no such layer. */
  readonly used: boolean;
}

function splitPerFigure({ job, use }: UnitCost, parts: readonly CostPart[]): SplitPart[] {
  const sums = new Map<string, Amount>([['extras', use.extrasPerFigure]]);
  job.lines.forEach((line, index) => {
    const cost = use.lines[index];
    if (cost === undefined || job.count === 0) return;
    const sum = sums.get(line.layer) ?? { exactMinor: zeroMinor, atLeast: false };
    sums.set(line.layer, {
      exactMinor: sum.exactMinor.plus(exactMinor(cost.exactMinor).div(job.count)),
      atLeast: sum.atLeast || cost.atLeast,
    });
  });
  const exact = parts.map(({ part }) => sums.get(part)?.exactMinor.toNumber() ?? 0);
  const minors = splitWhole(roundMinor(use.perFigure.exactMinor), exact);
  return parts.map((one, index) => ({
    ...one,
    minor: minors[index] ?? 0,
    exact: exact[index] ?? 0,
    atLeast: sums.get(one.part)?.atLeast ?? false,
    used: sums.has(one.part),
  }));
}

function drawnBar(
  split: readonly SplitPart[],
  texts: readonly string[],
  { id, dearest, title, range }: CostUnitInputs & { readonly title: string },
): CostBar {
  const pieces = split
    .map(({ part, key, exact }, index) => ({
      part,
      key,
      text: texts[index] ?? '',
      share: dearest > 0 ? exact / dearest : 0,
    }))
    .filter(({ text }) => text !== '');
  const share = (minor: number): number => (dearest > 0 ? minor / dearest : 0);
  const open = openRange(range);
  return {
    id,
    title,
    range: open === undefined ? undefined : { low: share(open.low), high: share(open.high) },
    says: pieces.map(({ part, text }) => `${part} ${text}`).join(', '),
    pieces,
  };
}
