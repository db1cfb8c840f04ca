// Charts: small marks beside numbers. In: a share, a colour, a spread. Out: SVG that repeats what the text says,
// so readers skip it.
import { fillOf } from './draw-frame.js';
import { place } from './escape-markup.js';

/** A dab of paint, about 20 across round 0,0: no two sides alike, as a brush leaves it. */
const dab = 'M-9 -2C-8 -8 -2 -10 3 -9C9 -8 10 -2 9 3C8 9 1 10 -4 9C-9 8 -10 3 -9 -2Z';

/** Its area, not its width, stands for the share: half the paint, half the dab. A small one would only blur its number, so under a fifth there is none. */
export function drawDab(share: number): string {
  if (share < 0.2) return '';
  const scale = place(Math.sqrt(Math.min(1, share)) * 1.8);
  return `<svg class="dab" width="36" height="36" viewBox="-18 -18 36 36" aria-hidden="true"><path transform="scale(${scale})" d="${dab}"/></svg>`;
}

/** A paint's colour beside its name; hatched where no sheet gives one. */
export function drawSwatch(hex: string): string {
  const cross = hex === '' ? '<path class="unknown" d="M-5 5L5 -5"/>' : '';
  return `<svg class="swatch" width="16" height="16" viewBox="-11 -11 22 22" aria-hidden="true"><path ${fillOf(hex, 'paint')} d="${dab}"/>${cross}</svg>`;
}

const spreadWide = 72;

/** Low to high about likely, on a scale where half and twice lie equally far; four times is the edge. */
export function drawSpread({ low, high }: { readonly low: number; readonly high: number }): string {
  const at = (share: number): number =>
    Math.min(1, Math.max(-1, Math.log(Math.max(share, 1e-6)) / Math.log(4))) * (spreadWide / 2 - 4);
  return (
    `<svg class="spread" width="${spreadWide}" height="14" viewBox="${-spreadWide / 2} -7 ${spreadWide} 14" aria-hidden="true">` +
    `<line class="reach" x1="${place(at(low))}" x2="${place(at(high))}" y1="0" y2="0"/><line class="likely" x1="0" x2="0" y1="-5" y2="5"/></svg>`
  );
}
