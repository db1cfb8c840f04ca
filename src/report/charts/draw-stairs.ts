// Charts: cash against figures as a staircase, each rise in the colour of the paint that causes it. In: a StairsChart.
// Out: SVG, once for wide pages and once for narrow ones; the stylesheet shows the one that fits.
import type { Riser, StairsChart } from '../view/stairs-view.js';
import { drawFrame, fillOf } from './draw-frame.js';
import { escapeMarkup, percentOf, place } from './escape-markup.js';
import { gap, type Label, placeLabels } from './place-labels.js';
import { narrow, type StairsRoom, type StairsScale, scaleOf, wide } from './stairs-room.js';

/** Both drawings, one after the other. */
export function drawStairs(chart: StairsChart): string {
  return drawRoom(chart, wide) + drawRoom(chart, narrow);
}

function drawRoom(chart: StairsChart, room: StairsRoom): string {
  const scale = scaleOf(room);
  const content = [
    drawTicks(chart, room, scale),
    drawGround(chart, scale),
    drawArmyLine(chart, room, scale),
    ...chart.risers.map((riser) => drawRiser(riser, scale)),
    drawArmyDot(chart, scale),
    ...placeLabels(chart.risers, room, scale).map(drawLabel),
  ];
  const { title, says } = chart;
  const look = `stairs stairs-${room.name}`;
  return drawFrame({ id: `stairs-${room.name}`, title, says, look, high: room.high }, content.join(''));
}

const text = (x: number, y: number, looks: string, says: string): string =>
  `<text ${looks} x="${percentOf(x)}" y="${place(y)}">${escapeMarkup(says)}</text>`;

const line = (looks: string, [x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]) =>
  `<line class="${looks}" x1="${percentOf(x1)}" y1="${place(y1)}" x2="${percentOf(x2)}" y2="${place(y2)}"/>`;

function drawTicks(
  { cashTicks, figureTicks, currency }: StairsChart,
  { left }: StairsRoom,
  { x, y }: StairsScale,
) {
  const cash = cashTicks.map(
    ({ share, text: says }) =>
      line('rung', [left, y(share)], [x(1), y(share)]) +
      text(left, y(share) + 4, 'class="tick" dx="-6" text-anchor="end"', says),
  );
  const figures = figureTicks.map(
    ({ share, text: says }) =>
      line('notch', [x(share), y(0)], [x(share), y(0) + 4]) +
      text(x(share), y(0) + 17, 'class="tick" text-anchor="middle"', says),
  );
  const names =
    text(left, 12, 'class="axis" dx="-6" text-anchor="end"', currency) +
    text(x(1), y(0) + 34, 'class="axis" text-anchor="end"', 'figures');
  return [...cash, ...figures, names].join('');
}

/** Under each tread, lighter where a second army begins; then the treads themselves. */
function drawGround({ risers, army }: StairsChart, { x, y }: StairsScale): string {
  const treads = [{ across: 0, up: 0, proved: true }, ...risers];
  return treads
    .map(({ across, up, proved }, index) => {
      const to = treads[index + 1]?.across ?? 1;
      const middle = Math.min(to, Math.max(across, army.across));
      const fill = (from: number, until: number, looks: string): string =>
        until <= from || up === 0
          ? ''
          : `<rect class="${looks}" x="${percentOf(x(from))}" y="${place(y(up))}" width="${percentOf(x(until) - x(from))}" height="${place(y(0) - y(up))}"/>`;
      return (
        fill(across, middle, 'ground') +
        fill(middle, to, 'ground beyond') +
        line(proved ? 'tread' : 'tread unproved', [x(across), y(up)], [x(to), y(up)])
      );
    })
    .join('');
}

function drawArmyLine({ army }: StairsChart, { names }: StairsRoom, { x, y }: StairsScale): string {
  const at = x(army.across);
  return (
    line('army-line', [at, 20], [at, y(0)]) +
    text(at, 13, 'class="army" text-anchor="middle"', names ? army.label : army.short)
  );
}

const drawArmyDot = ({ army }: StairsChart, { x, y }: StairsScale): string =>
  `<circle class="army-dot" cx="${percentOf(x(army.across))}" cy="${place(y(army.up))}" r="4.5"/>`;

/** A stroke of the paint, or one above the other of several. */
function drawRiser({ across, fromUp, up, hexes, title }: Riser, { x, y }: StairsScale): string {
  const colours = hexes.length === 0 ? [''] : hexes;
  const high = (y(fromUp) - y(up)) / colours.length;
  const strokes = colours.map(
    (hex, index) =>
      `<rect ${fillOf(hex, 'riser')} x="-3.5" y="${place(y(up) + index * high)}" width="7" height="${place(high)}"/>`,
  );
  return `<svg class="rise" x="${percentOf(x(across))}" width="1" height="1"><title>${escapeMarkup(title)}</title>${strokes.join('')}</svg>`;
}

/** The number stands next to the riser. */
function drawLabel({ x, y, side, no, name }: Label): string {
  const number = `<tspan class="no">${escapeMarkup(no)}</tspan>`;
  const named = escapeMarkup(name);
  const [anchor, dx, says] =
    side === 'left' ? ['end', -gap, `${named} ${number}`] : ['start', gap, `${number} ${named}`];
  return `<text class="step" x="${percentOf(x)}" dx="${dx}" y="${place(y)}" text-anchor="${anchor}">${says.trim()}</text>`;
}
