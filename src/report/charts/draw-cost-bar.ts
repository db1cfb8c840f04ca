// Charts: cost per figure as one stacked bar. In: a CostBar. Out: SVG; a piece's look follows its layer.
import type { CostBar } from '../view/cost-view.js';
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
  return drawFrame({ ...bar, look: 'cost-bar', high: 20 }, pieces.join(''));
}

/** The patch that stands for a layer in the key and in table heads. */
export function drawPiece(key: string): string {
  return `<svg class="patch" width="12" height="12" aria-hidden="true"><rect class="piece piece-${key}" x="1" y="1" width="10" height="10"/></svg>`;
}
