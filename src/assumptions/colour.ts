// Assumptions: what one coat hides, which differences are seen, how far a substitute may be off.
import type { Assumption } from '../model/assumption.js';
import type { Opacity } from '../model/words.js';
import { define } from './define-assumption.js';

const memory = (source: string) => ({ mark: 'from memory', source }) as const;

const opacities: Record<Opacity, readonly [number, number, number]> = {
  strong: [0.9, 0.95, 0.98],
  fair: [0.8, 0.87, 0.93],
  weak: [0.55, 0.7, 0.8],
};

/** Registry name of what one coat of a paint of this opacity hides. */
export function opacityName(opacity: Opacity): string {
  return `opacity ${opacity}`;
}

export const colourAssumptions: readonly Assumption[] = [
  ...Object.entries(opacities).map(([name, values]) =>
    define(opacityName(name as Opacity), values, {
      unit: 'hidden by one coat',
      ...memory('one unthinned coat by brush'),
    }),
  ),
  define('just visible difference', [1, 2, 3], {
    unit: 'dE00',
    ...memory('CIEDE2000 is published; from where on it is seen is not'),
  }),
  define('pale from lightness', 70, {
    unit: 'of 100',
    ...memory('bone and light grey are paler, a mid grey primer is darker'),
  }),
  define('speck beneath a coat', 5, {
    unit: '% of the zone',
    ...memory('less of another colour beneath asks for no coat more'),
  }),
  define('farthest substitute', 10, {
    unit: 'dE00',
    ...memory('the same sort of colour, though seen to be another side by side'),
  }),
];
