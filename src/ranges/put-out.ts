// Ranges: the formula of the estimate over many draws at once. In: a column of values for each factor. Out: a column of
// ml put out for any terms. Columns of what is shared (a surface, a way to lay paint) are made once.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { groupBy } from '../model/group-by.js';
import { remember } from '../model/remember.js';
import type { FigureArea } from '../model/work.js';
import type { FilmTerm, Terms } from './list-terms.js';

/** A factor's value in each draw; undefined where it is held as exact. */
export type ColumnOf = (name: string) => Float64Array | undefined;

/** What the columns are made from. */
export interface PutOutInputs {
  readonly assumptions: Assumptions;
  readonly figures: ReadonlyMap<string, FigureArea>;
  readonly columnOf: ColumnOf;
  /** Length of every column. */
  readonly draws: number;
}

/**
 * `painter x (sum of on the figure / transfer + leftover)` in each draw, ml; film, transfer, area and leftover
 * each go with their drawn values over the likely ones. What a spray catches goes with the drawn size of its target, and
 * ends where the estimate's does.
 */
export function openPutOut(inputs: PutOutInputs): (terms: Terms) => Float64Array {
  const { assumptions, columnOf, draws } = inputs;
  const surfaces = remember((key: string) => multiply(key === '' ? [] : key.split('\n'), inputs));
  const ways = remember((key: string) => wayOf(key, surfaces, inputs));
  return (terms) => {
    const sum = new Float64Array(draws);
    for (const [way, films] of groupByWay(terms.films)) {
      const onFigure = new Float64Array(draws);
      for (const { factors, onFigureMl } of films)
        addTimes(onFigure, onFigureMl, surfaces(factors.join('\n')));
      addProduct(sum, onFigure, ways(way));
    }
    for (const [method, ml] of terms.leftovers) {
      const name = `${method} leftover`;
      const usual = likely(assumptions, name);
      addTimes(sum, usual === 0 ? ml : ml / usual, columnOf(name) ?? usualColumn(usual, draws));
    }
    const painter = columnOf('painter') ?? usualColumn(likely(assumptions, 'painter'), draws);
    for (let draw = 0; draw < draws; draw++) sum[draw] = at(sum, draw) * at(painter, draw);
    return sum;
  };
}

const at = (column: Float64Array, draw: number): number => column[draw] as number;

const usualColumn = (value: number, draws: number): Float64Array => new Float64Array(draws).fill(value);

const groupByWay = (films: readonly FilmTerm[]): Map<string, FilmTerm[]> =>
  groupBy(films, ({ method, target }) => `${method}\n${target}`);

function addTimes(sum: Float64Array, times: number, column: Float64Array): void {
  for (let draw = 0; draw < sum.length; draw++) sum[draw] = at(sum, draw) + times * at(column, draw);
}

function addProduct(sum: Float64Array, one: Float64Array, other: Float64Array): void {
  for (let draw = 0; draw < sum.length; draw++) sum[draw] = at(sum, draw) + at(one, draw) * at(other, draw);
}

/** The product of some factors, each over its likely value; of none, or of exact ones, 1. */
function multiply(names: readonly string[], { assumptions, columnOf, draws }: PutOutInputs): Float64Array {
  const product = usualColumn(1, draws);
  for (const name of names) {
    const column = columnOf(name);
    const usual = likely(assumptions, name);
    if (column === undefined || usual === 0) continue;
    for (let draw = 0; draw < draws; draw++) product[draw] = (at(product, draw) * at(column, draw)) / usual;
  }
  return product;
}

/** Paint put out for a ml on the figure at the likely film: drawn film over the likely one, over the drawn transfer. */
function wayOf(key: string, surfaces: (key: string) => Float64Array, inputs: PutOutInputs): Float64Array {
  const { assumptions, columnOf, draws } = inputs;
  const [method = '', target = ''] = key.split('\n');
  const way = multiply([`${method} wet film`], inputs);
  const usual = likely(assumptions, `${method} transfer`);
  const transfer = columnOf(`${method} transfer`) ?? usualColumn(usual, draws);
  const caught = target === '' ? usualColumn(1, draws) : catchOf(target, surfaces, inputs);
  const most = method === 'airbrush' ? likely(assumptions, 'most transfer of an airbrush') : 1;
  for (let draw = 0; draw < draws; draw++) {
    const plain = at(transfer, draw);
    way[draw] = at(way, draw) / Math.min(1, Math.max(most, plain), plain * at(caught, draw));
  }
  return way;
}

/** What of the transfer a figure of the drawn size catches: `sqrt(target / full target)`, held between least and most. */
function catchOf(
  figure: string,
  surfaces: (key: string) => Float64Array,
  inputs: PutOutInputs,
): Float64Array {
  const { assumptions, figures, draws } = inputs;
  const area = figures.get(figure);
  const drawnCm2 = new Float64Array(draws);
  for (const { factors, share } of area?.surface ?? []) {
    addTimes(drawnCm2, share * (area?.withBaseCm2 ?? 0), surfaces(factors.join('\n')));
  }
  const fullCm2 = likely(assumptions, 'full target of a spray');
  const least = likely(assumptions, 'least catch of a spray');
  const most = likely(assumptions, 'most catch of a spray');
  return drawnCm2.map((cm2) => Math.min(most, Math.max(least, Math.sqrt(cm2 / fullCm2))));
}
