// Charts: cost per figure as one stacked bar, low to high beneath it. In: a CostBar. Out: SVG; a piece's look follows its layer.
import { drawPieces, wide } from '../../drawing/draw-pieces.js';
import { escapeMarkup } from '../../drawing/escape-markup.js';
import type { LowHigh } from '../../words/word-sure.js';
import type { CostBar } from './view-cost-unit.js';

/** Pieces in painting order from the left. What each costs stands in the table of layers. */
export function drawCostBar({ title, pieces, range }: CostBar): string {
  const reach = range === undefined ? '' : drawRange(range);
  return (
    `<svg class="cost-bar" height="28" viewBox="0 0 ${wide} 28" preserveAspectRatio="none" role="img" aria-label="${escapeMarkup(title)}">` +
    `${drawPieces(pieces, 2)}${reach}</svg>`
  );
}

/** Low to high of the whole bar. */
function drawRange({ low, high }: LowHigh): string {
  const [from, to] = [Math.round(low * wide), Math.round(high * wide)];
  return `<path class="reach" d="M${from} 20v7M${from} 23.5H${to}M${to} 20v7"/>`;
}

/** The patch that stands for a layer in the key and in table heads. */
export function drawPiece(key: string): string {
  return `<svg class="patch" width="12" height="12" aria-hidden="true"><path class="${key}" d="M1 1h10v10h-10z"/></svg>`;
}
