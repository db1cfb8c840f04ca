// Ranges: needs and shelf of the whole army over many draws. In: estimate, stock, beliefs, seed. Out: columns of ml for each
// paint that is needed; one draw of a factor serves every line that uses it.
import type { Drawing, DrawnLack, LackingPaint } from '../model/draws.js';
import { chanceOf, rangeAbout } from '../model/quantiles.js';
import type { PaintRange } from '../model/ranges.js';
import type { CountedStock } from '../model/stock.js';
import { sameMl } from '../model/volume.js';
import type { Container } from '../model/words.js';
import type { Estimate, Surface } from '../model/work.js';
import { type Beliefs, type DrawnFactor, drawFactors } from './draw-factors.js';
import { type DrawnShelf, drawShelf, openGains, type ShelfInputs } from './draw-shelf.js';
import { factorsOf, sumTerms, type TermSum, type Terms } from './list-terms.js';
import { openPutOut } from './put-out.js';

/** Ten thousand draws: a chance of one half is then sure to half a per cent. */
const usualDrawing: Drawing = { draws: 10_000, seed: 1 };

/** Numbers drawn of needs at the most, so that memory stays bounded: 300 paints have all ten thousand draws. */
const mostDrawn = 3_000_000;

/** Ten thousand draws, fewer for very many paints: chances are then less sure, and say so. Or as many as are asked for. */
export function drawingFor(paints: number, draws = drawsFor(paints)): Drawing {
  return { ...usualDrawing, draws };
}

const drawsFor = (paints: number): number =>
  Math.max(1, Math.min(usualDrawing.draws, Math.floor(mostDrawn / Math.max(1, paints))));

export interface DrawInputs {
  readonly estimate: Estimate;
  readonly stock: readonly CountedStock[];
  readonly beliefs: Beliefs;
}

/** One paint over all draws, usable ml. */
interface DrawnPaint extends DrawnShelf, LackingPaint {
  readonly needMl: Float64Array;
  /** Without drawing. */
  readonly likely: Pick<CountedStock, 'needMl' | 'haveMl' | 'unmeasured'>;
}

/** What stays of it: columns only of what is set against the order. */
export interface SummedPaint extends LackingPaint, Pick<DrawnPaint, 'readings' | 'likely'> {
  readonly range: Omit<PaintRange, 'doubts'>;
}

export interface DrawnArmy extends DrawnLack {
  readonly paints: readonly SummedPaint[];
  readonly factors: ReadonlyMap<string, DrawnFactor>;
  /** Any other quantity in the same draws. */
  readonly putOut: (terms: Terms) => Float64Array;
}

/** What the army lacks in other draws, of which nothing else is kept. */
export function drawLack(inputs: DrawInputs, drawing: Drawing): DrawnLack {
  const { gainOf, work } = openArmy(inputs, drawing);
  const paints = work.map((draw) => {
    const { paint, lackMl, container } = draw();
    return { paint, lackMl, container };
  });
  return { drawing, paints, gainOf };
}

/** Draws the work still to be done, and the shelf. An army without work has no paints. */
export function drawArmy(inputs: DrawInputs, drawing: Drawing): DrawnArmy {
  const { work, shelf: _, ...army } = openArmy(inputs, drawing);
  return { ...army, paints: work.map((draw) => sumUpPaint(draw())) };
}

function sumUpPaint({ needMl, haveMl, ...kept }: DrawnPaint): SummedPaint {
  const { likely, lackMl } = kept;
  const range = {
    needMl: rangeAbout(likely.needMl, needMl),
    haveMl: rangeAbout(likely.haveMl, haveMl),
    chanceShort: chanceShortOf(lackMl),
  };
  return { ...kept, range };
}

function chanceShortOf(lackMl: Float64Array) {
  let short = 0;
  for (let draw = 0; draw < lackMl.length; draw++) if ((lackMl[draw] as number) > sameMl) short++;
  return chanceOf(short, lackMl.length);
}

/** The army before its paints are drawn, one by one. */
interface OpenArmy extends Omit<DrawnArmy, 'paints'> {
  readonly work: readonly (() => DrawnPaint)[];
  /** What shelves are drawn from. */
  readonly shelf: ShelfInputs;
}

export function openArmy({ estimate, stock, beliefs }: DrawInputs, drawing: Drawing): OpenArmy {
  const terms = termsByPaint(estimate);
  const surfaces = new Map<string, Surface>(
    [...estimate.figures].map(([name, area]) => [name, area.surface]),
  );
  const names = factorsOf(termsOfAll(estimate, stock), surfaces);
  for (const name of ['usable share of a can', 'usable share of a pot']) names.add(name);
  for (const { density } of takesOf(stock)) names.add(density);
  const factors = drawFactors(names, beliefs, drawing);
  const columnOf = (name: string): Float64Array | undefined => factors.get(name)?.values;
  const { assumptions } = beliefs;
  const putOut = openPutOut({ assumptions, figures: estimate.figures, columnOf, draws: drawing.draws });
  const shelf = { assumptions, columnOf, drawing, putOut };
  const work = stock.flatMap((one) => {
    const sum = terms.get(one.paint);
    return sum === undefined ? [] : [() => drawPaint(one, sum.terms, { putOut, shelf })];
  });
  return { drawing, work, factors, putOut, shelf, gainOf: openGains(shelf) };
}

function drawPaint(
  one: CountedStock,
  terms: Terms,
  { putOut, shelf }: Pick<DrawnArmy, 'putOut'> & { readonly shelf: ShelfInputs },
): DrawnPaint {
  const needMl = putOut(terms);
  const drawn = drawShelf(one, shelf);
  const lackMl = subtract(needMl, drawn.haveMl);
  return { paint: one.paint, needMl, lackMl, container: containerOf(one, terms), likely: one, ...drawn };
}

function subtract(from: Float64Array, column: Float64Array): Float64Array {
  const rest = from.slice();
  for (let draw = 0; draw < rest.length; draw++)
    rest[draw] = (rest[draw] as number) - (column[draw] as number);
  return rest;
}

function containerOf({ pots }: CountedStock, { films }: Terms): Container {
  const isSprayed = films.some(({ method }) => method === 'spray can');
  return pots[0]?.container ?? (isSprayed ? 'can' : 'pot');
}

const takesOf = (stock: readonly CountedStock[]) =>
  stock.flatMap(({ unmeasured, weighed }) => (unmeasured ?? weighed)?.takes ?? []);

/** Every line of the whole scheme, whose cost is drawn too, and of the work that has lowered the shelf. */
function termsOfAll({ jobs }: Estimate, stock: readonly CountedStock[]): Terms {
  const sum = sumTerms();
  for (const job of jobs.keys()) for (const line of job.lines) sum.add(line, job.figure, 1);
  for (const { lines, figure } of takesOf(stock).flatMap(({ work }) => work))
    for (const line of lines) sum.add(line, figure, 1);
  return sum.terms;
}

/** The remaining work by paint. */
function termsByPaint({ jobs }: Estimate): Map<string, TermSum> {
  const sums = new Map<string, TermSum>();
  for (const [job, units] of jobs) {
    for (const line of job.remaining) {
      const sum = sums.get(line.paint) ?? sumTerms();
      sums.set(line.paint, sum);
      sum.add(line, job.figure, units);
    }
  }
  return sums;
}
