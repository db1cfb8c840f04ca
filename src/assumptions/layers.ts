// Assumptions: what a blank means for each layer. Names are `<layer> coats`, `... area`, `... thin`, `... dries`.
import type { Assumption } from '../model/assumption.js';
import type { Layer, Method } from '../model/words.js';
import { define } from './define-assumption.js';

interface LayerValues {
  readonly method: Method;
  /** % of the zone */
  readonly area: number;
  readonly coats: number;
  readonly thin: number;
  readonly driesMin: number;
}

const layerValues: Record<Layer, LayerValues> = {
  primer: { method: 'spray can', area: 100, coats: 1, thin: 0, driesMin: 30 },
  'base coat': { method: 'brush', area: 100, coats: 2, thin: 0, driesMin: 5 },
  midtone: { method: 'brush', area: 60, coats: 1, thin: 0, driesMin: 5 },
  wash: { method: 'flood', area: 100, coats: 1, thin: 0, driesMin: 30 },
  glaze: { method: 'brush', area: 60, coats: 2, thin: 2, driesMin: 5 },
  drybrush: { method: 'drybrush', area: 30, coats: 1, thin: 0, driesMin: 2 },
  highlight: { method: 'brush', area: 15, coats: 1, thin: 0, driesMin: 5 },
  'edge highlight': { method: 'brush', area: 5, coats: 1, thin: 0, driesMin: 5 },
  detail: { method: 'brush', area: 100, coats: 1, thin: 0, driesMin: 5 },
  'tidy-up': { method: 'brush', area: 10, coats: 1, thin: 0, driesMin: 5 },
  varnish: { method: 'spray can', area: 100, coats: 1, thin: 0, driesMin: 30 },
  basing: { method: 'spread', area: 100, coats: 1, thin: 0, driesMin: 60 },
};

/** The method that a blank `method` cell means. */
export function usualMethod(layer: Layer): Method {
  return layerValues[layer].method;
}

const memory = (source: string) => ({ mark: 'from memory', source }) as const;
const practice = (source: string) => ({ mark: 'common practice', source }) as const;

export const layerAssumptions: readonly Assumption[] = Object.entries(layerValues).flatMap(
  ([name, { coats, area, thin, driesMin }]) => [
    define(
      `${name} coats`,
      coats,
      name === 'base coat' ? practice('two thin, not one thick') : memory('as often as mostly laid'),
    ),
    define(`${name} area`, area, {
      unit: '% of the zone',
      ...(name === 'wash' ? practice('it goes over everything') : memory('as much as mostly covered')),
    }),
    define(`${name} thin`, thin, {
      unit: 'parts of water',
      ...(name === 'wash' ? practice('as it is in the pot') : memory('as far as mostly thinned')),
    }),
    define(`${name} dries`, driesMin, {
      unit: 'min',
      ...(driesMin === 5 || driesMin === 30
        ? practice('coats 5, washes and sprays 30')
        : memory('until the next coat goes on')),
    }),
  ],
);
