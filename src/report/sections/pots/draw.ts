// Charts: one paint's bar. In: a PotBar. Out: SVG: what is here, what is on the way, what is to be bought, the line that it
// must reach, low to high of need and shelf, and the tick of the keep level.
import { drawFrame, fillOf } from '../../drawing/draw-frame.js';
import { fullShare } from '../../drawing/draw-shapes.js';
import { escapeMarkup, percentOf } from '../../drawing/escape-markup.js';
import type { LowHigh } from '../../words/word-sure.js';
import type { PotBar, PotMark } from './view.js';

const top = 11;
const high = 15;
const ground = top + high;

const at = (share: number): string => percentOf(share / fullShare);

/** All bars have the line at the same place, whatever the size of the pots. Its amounts stand below it in words. */
export function drawPotBar(bar: PotBar): string {
  const have = bar.hereShare + bar.orderedShare;
  const reach = have + bar.buyShare;
  const content = [
    bar.buyShare > 0 ? block(have, reach, 'class="to-buy"') : '',
    bar.hereShare > 0 ? block(0, bar.hereShare, fillOf(bar.hex, 'paint')) : '',
    bar.orderedShare > 0 ? drawOrdered(bar) : '',
    reach > fullShare ? cutOff : '',
    `<use href="#${bar.line}"/>`,
    bar.need === undefined ? '' : drawReach(bar.need, 5, 'need-reach'),
    bar.have === undefined
      ? ''
      : drawReach(bar.have, top + high / 2, 'reach-halo') + drawReach(bar.have, top + high / 2, 'have-reach'),
    bar.keepShare !== undefined && bar.keepShare <= fullShare ? keepMark(bar.keepShare) : '',
  ];
  return drawFrame({ title: bar.title, says: '', look: 'pot-bar', high: 37 }, content.join(''));
}

/** Low to high as a line; the stylesheet sets its ends, an arrow where one lies beyond the drawing. */
function drawReach({ low, high }: LowHigh, y: number, looks: string): string {
  if (low > fullShare) return '';
  const beyond = high > fullShare ? ' past' : '';
  return `<line class="${looks}${beyond}" x1="${at(low)}" x2="${at(high)}" y1="${y}" y2="${y}"/>`;
}

function block(from: number, to: number, looks: string): string {
  const width = Math.min(to, fullShare) - Math.min(from, fullShare);
  return width <= 0
    ? ''
    : `<rect ${looks} x="${at(from)}" y="${top}" width="${at(width)}" height="${high}"/>`;
}

/** Hatched, so that it is told apart without colour. */
function drawOrdered({ hex, hereShare, orderedShare }: PotBar): string {
  const over = (looks: string): string => block(hereShare, hereShare + orderedShare, looks);
  return over(fillOf(hex, 'paint')) + over('class="ordered"');
}

const keepMark = (share: number): string =>
  `<svg class="keep-mark" x="${at(share)}" y="${ground + 1}" width="1" height="1"><path d="M0 1L4.5 9H-4.5Z"/></svg>`;

const cutOff = `<svg class="cut-off" x="100%" y="${top}" width="1" height="1"><path d="M-15 18L-9 -3M-9 18L-3 -3"/></svg>`;

/** What the lines across the bars mean, drawn once above each group. */
export function drawPotAxis(marks: readonly PotMark[]): string {
  const labels = marks.map(({ share, text }) => `<text x="${at(share)}" y="11">${escapeMarkup(text)}</text>`);
  return `<svg class="pot-axis" height="16" aria-hidden="true">${labels.join('')}</svg>`;
}
