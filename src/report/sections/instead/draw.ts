// Charts: cash against the colour difference allowed, as a line that steps down. In: a FrontierChart. Out: SVG, once for
// wide pages and once for narrow ones; the stylesheet shows the one that fits.
import { drawAxes, drawLine } from '../../drawing/draw-axes.js';
import { drawFrame } from '../../drawing/draw-frame.js';
import { escapeMarkup, percentOf, place } from '../../drawing/escape-markup.js';
import {
  type StairsRoom,
  type StairsScale,
  scaleOf,
  narrow as stairsNarrow,
  wide as stairsWide,
} from '../../drawing/stairs-room.js';
import type { FrontierChart, Level } from './view-frontier-chart.js';

const wide: StairsRoom = { ...stairsWide, right: 0.04, high: 270 };
const narrow: StairsRoom = { ...stairsNarrow, right: 0.06, high: 240 };

/** Both drawings, one after the other. */
export function drawFrontier(chart: FrontierChart): string {
  return drawRoom(chart, wide) + drawRoom(chart, narrow);
}

function drawRoom(chart: FrontierChart, room: StairsRoom): string {
  const scale = scaleOf(room);
  const { title, says, levels } = chart;
  const content = [
    drawAxes({ ...chart, acrossTicks: chart.differenceTicks }, room, scale),
    ...levels.map((level, at) => drawLevel(level, levels[at + 1], scale)),
    ...levels.map((level) => drawDot(level, scale)),
    ...placeNames(levels, room, scale),
  ];
  const look = `frontier frontier-${room.name}`;
  return drawFrame({ title, says, look, high: room.high }, content.join(''));
}

/** Level till the next begins, then down to it. What is not proved, or can't be met, is dashed. */
function drawLevel({ across, up, firm }: Level, next: Level | undefined, { x, y }: StairsScale): string {
  const to = next?.across ?? 1;
  const looks = firm ? 'tread' : 'tread unproved';
  const fall = next === undefined ? '' : drawLine('riser', [x(to), y(up)], [x(to), y(next.up)]);
  return drawLine(looks, [x(across), y(up)], [x(to), y(up)]) + fall;
}

const drawDot = ({ across, up, firm, title }: Level, { x, y }: StairsScale): string =>
  `<circle class="${firm ? 'level-dot' : 'level-dot open'}" cx="${percentOf(x(across))}" cy="${place(y(up))}" r="4.5"><title>${escapeMarkup(title)}</title></circle>`;

interface Placed {
  readonly left: number;
  readonly right: number;
  readonly y: number;
}

/**
 * Numbers stand over the dots. Behind each the name of what is swapped, as far as there is room: the line falls, so
 * all is empty above it, but for the labels before.
 */
function placeNames(
  levels: readonly Level[],
  { leastWidth, names }: StairsRoom,
  { x, y }: StairsScale,
): string[] {
  const numbers = levels.map(({ across, up }) => boxOf(x(across) * leastWidth - 4, 8, y(up) - 10));
  const placed: Placed[] = [...numbers];
  return levels.map(({ across, up, no, name }, at) => {
    const number = numbers[at];
    const box = boxOf((number?.right ?? 0) + 6, 4 + 7 * [...name].length, y(up) - 10);
    const fits =
      names &&
      name !== '' &&
      box.right <= leastWidth &&
      placed.every((one) => one === number || !meets(one, box));
    if (fits) placed.push(box);
    const behind = fits ? ` ${escapeMarkup(name)}` : '';
    return `<text class="step" x="${percentOf(x(across))}" dx="-4" y="${place(y(up) - 10)}"><tspan class="no">${escapeMarkup(no)}</tspan>${behind}</text>`;
  });
}

const boxOf = (left: number, width: number, y: number): Placed => ({ left, right: left + width, y });

const meets = (a: Placed, b: Placed): boolean =>
  a.left < b.right && b.left < a.right && Math.abs(a.y - b.y) < 15;
