// Assumptions: what a blank means for each layer. Names are `<layer> coats`, `... area`, `... thin`, `... dries`.
import type { Assumption, Mark } from '../model/assumption.js';
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

const memory = { mark: 'from memory', source: 'a usual batch of figures' } as const;
const practice = { mark: 'common practice', source: '' } as const;
const marked = (isPractice: boolean): { mark: Mark; source: string } => (isPractice ? practice : memory);

export const layerAssumptions: readonly Assumption[] = Object.entries(layerValues).flatMap(
  ([name, values]) => {
    return [
      define(`${name} coats`, values.coats, marked(name === 'base coat')),
      define(`${name} area`, values.area, { unit: '% of the zone', ...marked(name === 'wash') }),
      define(`${name} thin`, values.thin, { unit: 'parts of water', ...marked(name === 'wash') }),
      define(`${name} dries`, values.driesMin, {
        unit: 'min',
        // Five minutes for a coat and thirty for a wash or spray are common practice.
        ...marked(values.driesMin === 5 || values.driesMin === 30),
      }),
    ];
  },
);
