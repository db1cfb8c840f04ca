// Charts: cash against figures as a staircase, each rise in the colour of the paint that causes it. In: a StairsChart.
// Out: SVG, once for wide pages and once for narrow ones; the stylesheet shows the one that fits.

import { drawFrame } from '../../drawing/draw-frame.js';
import { escapeMarkup, percentOf, place } from '../../drawing/escape-markup.js';
import { drawAxes, drawLine, drawText } from './draw-axes.js';
import { narrow, type StairsRoom, type StairsScale, scaleOf, wide } from './draw-room.js';
import { gap, type Label, placeLabels } from './place-labels.js';
import type { Riser, StairsChart } from './view-chart.js';

/** Both drawings, one after the other. */
export function drawStairs(chart: StairsChart): string {
  return drawRoom(chart, wide) + drawRoom(chart, narrow);
}

function drawRoom(chart: StairsChart, room: StairsRoom): string {
  const scale = scaleOf(room);
  const content = [
    drawAxes({ ...chart, acrossTicks: chart.figureTicks }, room, scale),
    drawGround(chart, room, scale),
    drawArmyLine(chart, room, scale),
    ...chart.risers.map((riser) => drawRiser(riser, room, scale)),
    drawArmyDot(chart, scale),
    ...placeLabels(chart.risers, room, scale).map(drawLabel),
  ];
  const { title, says } = chart;
  const look = `stairs stairs-${room.name}`;
  return drawFrame({ title, says, look, high: room.high }, content.join(''));
}

/** Pixels, to a tenth. */
const px = (value: number): string => place(Math.round(value * 10) / 10);

/** Units of the treads' own drawing, which is stretched to its place: a path each for what may be hundreds of treads. */
const wideUnits = 1000;

/** Under each tread, lighter where a second army begins; then the treads themselves, dashed where not proved. */
function drawGround({ risers, army }: StairsChart, { left, right, high }: StairsRoom, { y }: StairsScale) {
  const treads = [{ across: 0, up: 0, proved: true }, ...risers].map((tread, at) => ({
    ...tread,
    to: risers[at]?.across ?? 1,
  }));
  const unit = (across: number): number => Math.round(across * wideUnits);
  const ground = (from: number, until: number): string =>
    treads
      .map(({ across, to, up }) => ({ from: Math.max(from, across), to: Math.min(until, to), up }))
      .filter(({ from, to, up }) => to > from && up > 0)
      .map(({ from, to, up }) => `M${unit(from)} ${px(y(up))}H${unit(to)}V${px(y(0))}H${unit(from)}z`)
      .join('');
  const steps = (wanted: boolean): string =>
    treads
      .filter(({ proved }) => proved === wanted)
      .map(({ across, to, up }) => `M${unit(across)} ${px(y(up))}H${unit(to)}`)
      .join('');
  const path = (looks: string, d: string): string => (d === '' ? '' : `<path class="${looks}" d="${d}"/>`);
  return (
    `<svg x="${percentOf(left)}" width="${percentOf(1 - left - right)}" height="${high}" viewBox="0 0 ${wideUnits} ${high}" preserveAspectRatio="none">` +
    path('ground', ground(0, army.across)) +
    path('ground beyond', ground(army.across, 1)) +
    `${path('tread', steps(true))}${path('tread unproved', steps(false))}</svg>`
  );
}

function drawArmyLine({ army }: StairsChart, { names }: StairsRoom, { x, y }: StairsScale): string {
  const at = x(army.across);
  return (
    drawLine('army-line', [at, 20], [at, y(0)]) +
    drawText(at, 13, 'class="army" text-anchor="middle"', names ? army.label : army.short)
  );
}

const drawArmyDot = ({ army }: StairsChart, { x, y }: StairsScale): string =>
  `<circle class="army-dot" cx="${percentOf(x(army.across))}" cy="${place(y(army.up))}" r="4.5"/>`;

/** Under so many pixels a stroke's colour is not to be seen. */
const leastStroke = 4;

/** A stroke of the paint, or one above the other of several, as many as have room: the table names them all. */
function drawRiser(
  { across, fromUp, up, hexes, title }: Riser,
  { names }: StairsRoom,
  { x, y }: StairsScale,
) {
  const rise = y(fromUp) - y(up);
  const colours = hexes.length === 0 ? [''] : hexes.slice(0, Math.max(1, Math.floor(rise / leastStroke)));
  const high = rise / colours.length;
  const strokes = colours.map(
    (hex, index) =>
      `<path ${hex === '' ? 'class="no-colour"' : `fill="${escapeMarkup(hex)}"`} d="M-3.5 ${px(y(up) + index * high)}h7v${px(high)}h-7z"/>`,
  );
  const named = names ? `<title>${escapeMarkup(title)}</title>` : '';
  return `<svg class="rise" x="${percentOf(x(across))}" width="1" height="1">${named}${strokes.join('')}</svg>`;
}

/** The number stands next to the riser. */
function drawLabel({ x, y, side, no, name }: Label): string {
  const number = `<tspan class="no">${escapeMarkup(no)}</tspan>`;
  const named = escapeMarkup(name);
  const [anchor, dx, says] =
    side === 'left' ? ['end', -gap, `${named} ${number}`] : ['start', gap, `${number} ${named}`];
  return `<text class="step" x="${percentOf(x)}" dx="${dx}" y="${place(y)}" text-anchor="${anchor}">${says.trim()}</text>`;
}
