// Charts: cost per figure as one stacked bar, low to high beneath it. In: a CostBar. Out: SVG; a piece's look follows its layer.
import type { CostBar, LowHigh } from '../view/cost-view.js';
import { drawFrame } from './draw-frame.js';
import { escapeMarkup, percentOf } from './escape-markup.js';

/** Pieces in painting order from the left; each names itself when pointed at. */
export function drawCostBar(bar: CostBar): string {
  let from = 0;
  const pieces = bar.pieces.map(({ key, part, text, share }) => {
    const x = from;
    from += share;
    return (
      `<rect class="piece piece-${key}" x="${percentOf(x)}" y="2" width="${percentOf(share)}" height="16">` +
      `<title>${escapeMarkup(`${part} ${text}`)}</title></rect>`
    );
  });
  const reach = bar.range === undefined ? '' : drawRange(bar.range);
  return drawFrame({ ...bar, look: 'cost-bar', high: 28 }, pieces.join('') + reach);
}

/** Low to high of the whole bar. */
function drawRange({ low, high }: LowHigh): string {
  const end = (share: number): string =>
    `<line class="cost-reach" x1="${percentOf(share)}" x2="${percentOf(share)}" y1="20" y2="27"/>`;
  const line = `<line class="cost-reach" x1="${percentOf(low)}" x2="${percentOf(high)}" y1="23.5" y2="23.5"/>`;
  return line + end(low) + end(high);
}

/** The patch that stands for a layer in the key and in table heads. */
export function drawPiece(key: string): string {
  return `<svg class="patch" width="12" height="12" aria-hidden="true"><rect class="piece piece-${key}" x="1" y="1" width="10" height="10"/></svg>`;
}
