// Charts: one paint's bar. In: a PotBar. Out: SVG: what is here, what is on the way, what is to be bought, the line that it
// must reach, low to high of need and shelf, and the tick of the keep level.
import type { LowHigh } from '../view/cost-view.js';
import type { PotBar } from '../view/report-view.js';
import { drawFrame, fillOf } from './draw-frame.js';
import { percentOf } from './escape-markup.js';

/** The bar's full width: so many times the line. Beyond it a bar is drawn cut off. */
export const fullShare = 2.4;

const top = 11;
const high = 15;
const ground = top + high;

const at = (share: number): string => percentOf(share / fullShare);

/** All bars have the line at the same place, whatever the size of the pots. */
export function drawPotBar(bar: PotBar): string {
  const have = bar.hereShare + bar.orderedShare;
  const reach = have + bar.buyShare;
  const content = [
    `<line class="shelf" x1="0" x2="100%" y1="${ground}" y2="${ground}"/>`,
    bar.buyShare > 0 ? block(have, reach, 'class="to-buy"') : '',
    bar.hereShare > 0 ? block(0, bar.hereShare, fillOf(bar.hex, 'paint')) : '',
    bar.orderedShare > 0 ? drawOrdered(bar) : '',
    reach > fullShare ? cutOff : '',
    bar.line === 'needed' ? tick(2, `class="twice"`) : '',
    tick(1, 'class="halo"'),
    tick(1, `class="${bar.line === 'needed' ? 'need-line' : 'keep-line'}"`),
    bar.need === undefined ? '' : drawReach(bar.need, 5, 'need-reach'),
    bar.have === undefined
      ? ''
      : drawReach(bar.have, top + high / 2, 'reach-halo') + drawReach(bar.have, top + high / 2, 'have-reach'),
    bar.keepShare !== undefined && bar.keepShare <= fullShare ? keepMark(bar.keepShare) : '',
  ];
  return drawFrame({ ...bar, look: 'pot-bar', high: 37 }, content.join(''));
}

/** Low to high as a line with an end at each side; an end that lies beyond the drawing is an arrow. */
function drawReach({ low, high }: LowHigh, y: number, looks: string): string {
  if (low > fullShare) return '';
  const end = (share: number): string =>
    `<line class="${looks}" x1="${at(share)}" x2="${at(share)}" y1="${y - 4}" y2="${y + 4}"/>`;
  const beyond = `<svg class="${looks}" x="100%" y="${y}" width="1" height="1"><path d="M-6 -4L0 0L-6 4"/></svg>`;
  return (
    `<line class="${looks}" x1="${at(low)}" x2="${at(high)}" y1="${y}" y2="${y}"/>` +
    end(low) +
    (high > fullShare ? beyond : end(high))
  );
}

function block(from: number, to: number, looks: string): string {
  const width = Math.min(to, fullShare) - Math.min(from, fullShare);
  return width <= 0
    ? ''
    : `<rect ${looks} x="${at(from)}" y="${top}" width="${at(width)}" height="${high}"/>`;
}

/** Hatched, so that it is told apart without colour. */
function drawOrdered({ id, hex, hereShare, orderedShare }: PotBar): string {
  const pattern =
    `<pattern id="${id}-way" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">` +
    `<rect ${fillOf(hex, 'hatch')} width="3" height="6"/></pattern>`;
  return pattern + block(hereShare, hereShare + orderedShare, `class="ordered" fill="url(#${id}-way)"`);
}

const tick = (share: number, looks: string): string =>
  `<line ${looks} x1="${at(share)}" x2="${at(share)}" y1="1" y2="${ground + 3}"/>`;

const keepMark = (share: number): string =>
  `<svg class="keep-mark" x="${at(share)}" y="${ground + 1}" width="1" height="1"><path d="M0 1L4.5 9H-4.5Z"/></svg>`;

const cutOff = `<svg class="cut-off" x="100%" y="${top}" width="1" height="1"><path d="M-15 18L-9 -3M-9 18L-3 -3"/></svg>`;

/** What the lines across the bars mean, drawn once above each group. */
export function drawPotAxis(line: PotBar['line']): string {
  const label = (share: number, text: string): string => `<text x="${at(share)}" y="11">${text}</text>`;
  const labels = line === 'needed' ? label(1, 'likely need') + label(2, 'twice') : label(1, 'keep level');
  return `<svg class="pot-axis" width="100%" height="16" aria-hidden="true">${labels}</svg>`;
}
