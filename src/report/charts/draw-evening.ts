// Charts: an evening as a bar. In: an EveningBar. Out: SVG; a piece's look follows its layer, waiting is left hatched.
import type { EveningBar } from '../view/time-view.js';
import { drawFrame } from './draw-frame.js';
import { escapeMarkup, percentOf } from './escape-markup.js';

/** The frame is the whole evening; pieces stand in the order in which they are painted, and name themselves. */
export function drawEvening(bar: EveningBar): string {
  let from = 0;
  const pieces = bar.pieces.map(({ key, share, title }) => {
    const x = from;
    from += share;
    const look = key === 'waiting' ? 'waiting' : `piece piece-${key}`;
    return (
      `<rect class="${look}" x="${percentOf(x)}" y="2" width="${percentOf(Math.min(share, 1 - x))}" height="16">` +
      `<title>${escapeMarkup(title)}</title></rect>`
    );
  });
  const frame = '<rect class="whole" x="0" y="2" width="100%" height="16"/>';
  return drawFrame({ ...bar, look: 'evening-bar', high: 20 }, frame + pieces.join(''));
}
