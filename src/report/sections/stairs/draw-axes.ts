// Charts: the axes of cash against figures. In: ticks, room and scale. Out: SVG texts and lines; cash upwards, something across.
import { escapeMarkup, percentOf, place } from '../../drawing/escape-markup.js';
import type { StairsRoom, StairsScale } from './draw-room.js';

export interface Tick {
  readonly share: number;
  readonly text: string;
}

/** From 0 in steps of 1, 2 or 5 times a power of ten, at most five of them. */
export function listTicks(most: number, word: (value: number) => string): Tick[] {
  const power = 10 ** Math.floor(Math.log10(most / 5));
  const step = Math.max(1, ([1, 2, 5, 10].find((of) => most / (of * power) <= 5) ?? 10) * power);
  return Array.from({ length: Math.floor(most / step) + 1 }, (_, index) => ({
    share: (index * step) / most,
    text: word(index * step),
  }));
}

/** A text at a share of the width and pixels from the top; `looks` is markup of ours. */
export const drawText = (x: number, y: number, looks: string, says: string): string =>
  `<text ${looks} x="${percentOf(x)}" y="${place(y)}">${escapeMarkup(says)}</text>`;

/** A straight line between two places. */
export const drawLine = (
  looks: string,
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
): string =>
  `<line class="${looks}" x1="${percentOf(x1)}" y1="${place(y1)}" x2="${percentOf(x2)}" y2="${place(y2)}"/>`;

interface Axes {
  readonly cashTicks: readonly Tick[];
  readonly acrossTicks: readonly Tick[];
  readonly currency: string;
  /** What goes across. */
  readonly across: string;
}

/** Rungs for the cash, notches for what goes across, and the names of both axes. */
export function drawAxes(
  { cashTicks, acrossTicks, currency, across }: Axes,
  { left }: StairsRoom,
  { x, y }: StairsScale,
): string {
  const rungs = cashTicks.map(
    ({ share, text }) =>
      drawLine('rung', [left, y(share)], [x(1), y(share)]) +
      drawText(left, y(share) + 4, 'class="tick" dx="-6" text-anchor="end"', text),
  );
  const notches = acrossTicks.map(
    ({ share, text }) =>
      drawLine('notch', [x(share), y(0)], [x(share), y(0) + 4]) +
      drawText(x(share), y(0) + 17, 'class="tick" text-anchor="middle"', text),
  );
  const names =
    drawText(left, 12, 'class="axis" dx="-6" text-anchor="end"', currency) +
    drawText(x(1), y(0) + 34, 'class="axis" text-anchor="end"', across);
  return [...rungs, ...notches, names].join('');
}
