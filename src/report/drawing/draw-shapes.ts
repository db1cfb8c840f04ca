// Charts: shapes that stand once at the top of the page. In: nothing. Out: SVG that shows nothing by itself: drawings copy
// from it, and the stylesheet sets its ends on their lines.
import { percentOf } from './escape-markup.js';

/** The full width of a pot's bar: so many times its line. Beyond it a bar is drawn cut off. */
export const fullShare = 2.4;

/** A dab of paint, about 20 across round 0,0: no two sides alike, as a brush leaves it. */
const dab = 'M-9 -2C-8 -8 -2 -10 3 -9C9 -8 10 -2 9 3C8 9 1 10 -4 9C-9 8 -10 3 -9 -2Z';

const upright = (looks: string, share: number): string => {
  const x = percentOf(share / fullShare);
  return `<line class="${looks}" x1="${x}" x2="${x}" y1="1" y2="29"/>`;
};

/** The end of a range: a short stroke across it, or an arrow where it lies beyond the drawing. */
const end = (id: string, d: string): string =>
  `<marker id="${id}" markerUnits="userSpaceOnUse" overflow="visible"><path d="${d}"/></marker>`;

const [across, arrow] = ['M0 -4V4', 'M-6 -4L0 0L-6 4'];

/** Paper with holes: laid over a paint, it leaves stripes or spatters of it. */
const patterns =
  '<pattern id="stripes" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="bare" d="M3 0h3v6h-3z"/></pattern>' +
  '<pattern id="spatter" width="7" height="7" patternUnits="userSpaceOnUse"><path class="bare" fill-rule="evenodd" d="M0 0h7v7h-7zM.7 2a1.3 1.3 0 1 0 2.6 0a1.3 1.3 0 1 0-2.6 0M4.5 5.2a.9 .9 0 1 0 1.8 0a.9 .9 0 1 0-1.8 0"/></pattern>';

/** `dab` round 0,0; `swatch` the same in a square of 16; `needed` and `keep` the lines across a pot's bar. */
export const drawShapes = (): string =>
  `<svg class="shapes" width="0" height="0" aria-hidden="true"><defs><path id="dab" d="${dab}"/>` +
  `<path id="swatch" transform="translate(8 8) scale(.73)" d="${dab}"/>` +
  `<g id="needed">${upright('twice', 2)}${upright('halo', 1)}${upright('need-line', 1)}</g>` +
  `<g id="keep">${upright('halo', 1)}${upright('keep-line', 1)}</g>` +
  `${end('end', across)}${end('halo-end', across)}${end('beyond', arrow)}${end('halo-beyond', arrow)}${patterns}</defs></svg>`;
