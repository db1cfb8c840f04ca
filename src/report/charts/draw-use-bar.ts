// Charts: where a paint goes. In: a UseBar. Out: SVG: solid on the figures, spattered on the way, blank left over.
import type { UseBar } from '../view/report-view.js';
import { drawFrame, fillOf } from './draw-frame.js';
import { percentOf } from './escape-markup.js';

/** The whole bar is the paint put out; nothing to be put out draws nothing. */
export function drawUseBar(bar: UseBar): string {
  const { id, hex, onFigureShare, lostShare } = bar;
  if (onFigureShare + lostShare === 0) return '';
  const reached = onFigureShare + lostShare;
  const content =
    spatter(id, hex) +
    part(0, onFigureShare, fillOf(hex, 'paint')) +
    part(onFigureShare, lostShare, `class="lost" fill="url(#${id}-lost)"`) +
    part(reached, Math.max(0, 1 - reached), 'class="leftover"');
  return drawFrame({ ...bar, look: 'use-bar', high: 16 }, content);
}

const part = (from: number, share: number, looks: string): string =>
  `<rect ${looks} x="${percentOf(from)}" y="1" width="${percentOf(share)}" height="14"/>`;

const spatter = (id: string, hex: string): string =>
  `<pattern id="${id}-lost" width="7" height="7" patternUnits="userSpaceOnUse">` +
  `<circle ${fillOf(hex, 'spatter')} cx="2" cy="2" r="1.3"/><circle ${fillOf(hex, 'spatter')} cx="5.4" cy="5.2" r="0.9"/></pattern>`;
