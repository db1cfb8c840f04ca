// English where none may be, and what only looks like it.
import type { Layer } from '../../../src/model/words.js';

type State = 'none owned' | 'enough';

export const lead = (paints: number): string => `of ${paints} paints`;
export const count = (paints: number): string => `${paints} left`;
export const caption = 'Each paint, by name';
export const heading = 'Drawn';
export const row = { 'pots owned': 'two pots' };

export const state: State = 'none owned';
export const isShort = (of: string): boolean => of === 'running short';
export const area = (likely: (name: string) => number): number => likely('skin of a person');
export const look = 'tread unproved';
export const path = (x: number, y: number): string => `M${x} ${y}H4`;
export const rise = '<g class="rise" aria-hidden="true"/>';
export const key = 'sizeMl';
export const wrong = (layer: Layer): never => {
  throw new Error(`the plan has no ${layer}`);
};
