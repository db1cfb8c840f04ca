// Ranges: a quantity of paint as what the draws multiply. In: lines and how often each counts. Out: few terms, however
// many lines lie behind them.

import type { Method } from '../model/words.js';
import type { Line, Surface } from '../model/work.js';

/** Paint that ends on figures, ml at the likely values, by what it goes with in proportion. */
export interface FilmTerm {
  readonly method: Method;
  /** For sprays: the figure, whose size decides what it catches; else blank. */
  readonly target: string;
  readonly factors: readonly string[];
  onFigureMl: number;
}

/** A quantity: `painter x (sum of film / transfer + leftovers)`. */
export interface Terms {
  readonly films: readonly FilmTerm[];
  /** Likely leftovers, ml, by method. */
  readonly leftovers: ReadonlyMap<Method, number>;
}

/** Adds lines up to terms. */
export interface TermSum {
  /** Counts a line so many times; a fraction where only part of it is meant, a price where money is. */
  add(line: Line, figure: string, times: number): void;
  readonly terms: Terms;
}

/**
 * Lines of one surface object are one kind of work, so each is looked up once by its object; kinds of the same method,
 * target and factors then are one term.
 */
export function sumTerms(): TermSum {
  const films = new Map<string, FilmTerm>();
  const leftovers = new Map<Method, number>();
  const known = new Map<Surface, readonly { readonly term: FilmTerm; readonly share: number }[]>();
  const termsOf = ({ surface, method }: Line, figure: string) =>
    surface.map(({ factors, share }) => {
      const target = method === 'spray can' || method === 'airbrush' ? figure : '';
      const key = `${method}\n${target}\n${factors.join('\n')}`;
      const term = films.get(key) ?? { method, target, factors, onFigureMl: 0 };
      films.set(key, term);
      return { term, share };
    });
  return {
    add(line, figure, times) {
      const parts = known.get(line.surface) ?? termsOf(line, figure);
      known.set(line.surface, parts);
      for (const { term, share } of parts) term.onFigureMl += line.onFigureMl * share * times;
      leftovers.set(line.method, (leftovers.get(line.method) ?? 0) + line.leftoverMl * times);
    },
    terms: {
      get films() {
        return [...films.values()];
      },
      leftovers,
    },
  };
}

/** Every assumption that some terms rest on. */
export function factorsOf({ films, leftovers }: Terms, targets: ReadonlyMap<string, Surface>): Set<string> {
  const names = new Set<string>();
  for (const { method, target, factors } of films) {
    for (const name of [...factors, `${method} wet film`, `${method} transfer`]) names.add(name);
    for (const part of targets.get(target) ?? []) for (const name of part.factors) names.add(name);
  }
  for (const method of leftovers.keys()) names.add(`${method} leftover`);
  return names.add('painter');
}
