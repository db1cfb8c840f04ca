// Charts: cash against the colour difference allowed, as a line that steps down. In: a FrontierChart. Out: SVG, once for
// wide pages and once for narrow ones; the stylesheet shows the one that fits.
import type { FrontierChart, Level } from '../view/instead-view.js';
import { drawFrame } from './draw-frame.js';
import { escapeMarkup, percentOf, place } from './escape-markup.js';
import {
  type StairsRoom,
  type StairsScale,
  scaleOf,
  narrow as stairsNarrow,
  wide as stairsWide,
} from './stairs-room.js';

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
    drawTicks(chart, room, scale),
    ...levels.map((level, at) => drawLevel(level, levels[at + 1], scale)),
    ...levels.map((level) => drawDot(level, scale)),
    ...placeNames(levels, room, scale),
  ];
  const look = `frontier frontier-${room.name}`;
  return drawFrame({ title, says, look, high: room.high }, content.join(''));
}

const text = (x: number, y: number, looks: string, says: string): string =>
  `<text ${looks} x="${percentOf(x)}" y="${place(y)}">${escapeMarkup(says)}</text>`;

const line = (looks: string, [x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]) =>
  `<line class="${looks}" x1="${percentOf(x1)}" y1="${place(y1)}" x2="${percentOf(x2)}" y2="${place(y2)}"/>`;

function drawTicks(
  { cashTicks, differenceTicks, currency }: FrontierChart,
  { left }: StairsRoom,
  { x, y }: StairsScale,
): string {
  const cash = cashTicks.map(
    ({ share, text: says }) =>
      line('rung', [left, y(share)], [x(1), y(share)]) +
      text(left, y(share) + 4, 'class="tick" dx="-6" text-anchor="end"', says),
  );
  const differences = differenceTicks.map(
    ({ share, text: says }) =>
      line('notch', [x(share), y(0)], [x(share), y(0) + 4]) +
      text(x(share), y(0) + 17, 'class="tick" text-anchor="middle"', says),
  );
  const names =
    text(left, 12, 'class="axis" dx="-6" text-anchor="end"', currency) +
    text(x(1), y(0) + 34, 'class="axis" text-anchor="end"', 'colour difference allowed');
  return [...cash, ...differences, names].join('');
}

/** Level till the next begins, then down to it. What is not proved, or can't be met, is dashed. */
function drawLevel({ across, up, firm }: Level, next: Level | undefined, { x, y }: StairsScale): string {
  const to = next?.across ?? 1;
  const looks = firm ? 'tread' : 'tread unproved';
  const fall = next === undefined ? '' : line('riser', [x(to), y(up)], [x(to), y(next.up)]);
  return line(looks, [x(across), y(up)], [x(to), y(up)]) + fall;
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
