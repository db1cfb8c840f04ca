// Charts: where a paint goes. In: a UseBar. Out: SVG: solid on the figures, spattered on the way, blank left over. Its row
// says the same in numbers, so readers skip it.
import { fillOf } from '../../drawing/draw-frame.js';
import { percentOf } from '../../drawing/escape-markup.js';
import type { UseBar } from './view.js';

/** The whole bar is the paint put out; nothing to be put out draws nothing. */
export function drawUseBar({ hex, onFigureShare, lostShare }: UseBar): string {
  const reached = onFigureShare + lostShare;
  if (reached === 0) return '';
  const content =
    part(0, reached, fillOf(hex, 'paint')) +
    part(onFigureShare, lostShare, 'class="lost"') +
    part(reached, Math.max(0, 1 - reached), 'class="leftover"');
  return `<svg class="use-bar" height="16" aria-hidden="true">${content}</svg>`;
}

const part = (from: number, share: number, looks: string): string =>
  `<rect ${looks} x="${percentOf(from)}" width="${percentOf(share)}"/>`;
