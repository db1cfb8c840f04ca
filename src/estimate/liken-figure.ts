// Estimate: which figure has about so much surface. In: an area, a height, the assumptions. Out: the nearest, and how near.

import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Figure } from '../model/figure.js';
import { usualBuild } from '../model/usual-build.js';
import { dresses, type KitItem } from '../model/words.js';
import { measureFigure } from './measure-figure.js';

export interface Likeness {
  /** `a clothed person with a round shield` */
  readonly words: string;
  /** The area over that of this figure. */
  readonly ratio: number;
}

/** What a person of that height may carry; mounts would make it higher. */
const kits: readonly (readonly KitItem[])[] = [
  [],
  ['weapon'],
  ['bow'],
  ['cloak'],
  ['small shield'],
  ['round shield'],
  ['large shield'],
  ['weapon', 'round shield'],
  ['weapon', 'large shield'],
  ['weapon', 'cloak'],
  ['weapon', 'large shield', 'cloak'],
];

const article: Readonly<Record<Figure['dress'], string>> = {
  none: 'a',
  bare: 'a',
  clothed: 'a',
  armoured: 'an',
};

/** By so much, as a logarithm, each piece of kit has to bring the figure nearer to be named. */
const plainer = 0.04;

/** Of a person as high as `highMm` from soles to crown, with cm2 of surface: the nearest, plainer ones preferred. */
export function likenFigure(areaCm2: number, highMm: number, assumptions: Assumptions): Likeness {
  const eyeMm = highMm * likely(assumptions, 'eye level');
  const persons = dresses
    .filter((dress) => dress !== 'none')
    .flatMap((dress) =>
      kits.map((kit): Likeness & { readonly apart: number } => {
        const ratio = areaCm2 / measureFigure(personOf(eyeMm, dress, kit), assumptions).wholeCm2;
        const words = `${article[dress]} ${dress} person${kit.length === 0 ? '' : ` with a ${kit.join(' and a ')}`}`;
        return { words, ratio, apart: Math.abs(Math.log(ratio)) + plainer * kit.length };
      }),
    );
  return persons.reduce((nearest, one) => (one.apart < nearest.apart ? one : nearest));
}

function personOf(eyeMm: number, dress: Figure['dress'], kit: readonly KitItem[]): Figure {
  return {
    figure: '',
    eyeMm,
    build: usualBuild(eyeMm),
    dress,
    kit: kit.map((item) => ({ item, count: 1 })),
    baseHighMm: 0,
    perBase: 1,
  };
}
