// Charts as golden SVG: look at the files in golden/ when one changes, then `npx vitest run tests/report/drawing --update`.
import { describe, expect, it } from 'vitest';
import { drawDab, drawSpread, drawSwatch } from '../../../src/report/drawing/draw-dab.js';
import { drawOver, drawPair } from '../../../src/report/drawing/draw-over.js';
import { fullShare } from '../../../src/report/drawing/draw-shapes.js';
import { drawShareBar } from '../../../src/report/drawing/draw-share-bar.js';
import { escapeMarkup, percentOf, place } from '../../../src/report/drawing/escape-markup.js';
import { drawPalette } from '../../../src/report/page/draw-palette.js';
import { viewPlan } from '../../../src/report/page/view.js';
import { drawCostBar, drawPiece } from '../../../src/report/sections/costs/draw.js';
import { drawPotAxis, drawPotBar } from '../../../src/report/sections/pots/draw.js';
import type { PotBar } from '../../../src/report/sections/pots/view.js';
import { drawDoneBar } from '../../../src/report/sections/progress/draw.js';
import { drawStairs } from '../../../src/report/sections/stairs/draw.js';
import { drawEvening } from '../../../src/report/sections/time/draw.js';
import { drawUseBar } from '../../../src/report/sections/use/draw.js';
import { smallPlan } from '../a-small-plan.js';

const view = viewPlan(smallPlan, []);
const barOf = (paint: string): PotBar => {
  const row = view.pots.groups.flatMap(({ paints }) => paints).find((one) => one.paint === paint);
  if (row === undefined) throw new Error(`no bar for ${paint}`);
  return row.bar;
};

/** One element a line, so that a change shows where it is. */
const byLine = (svg: string): string => `${svg.replaceAll('><', '>\n<')}\n`;

const goldens: readonly (readonly [name: string, svg: string])[] = [
  ['pot-none-owned', drawPotBar(barOf('Rust hush'))],
  ['pot-short', drawPotBar(barOf('Nettle coat'))],
  ['pot-tight-on-the-way', drawPotBar(barOf('Pond wash'))],
  ['pot-cut-off', drawPotBar(barOf('Chalk light'))],
  ['pot-without-colour', drawPotBar(barOf('Bell brass'))],
  ['pot-low-unused', drawPotBar(barOf('Lamp white'))],
  ['pot-axis-needed', drawPotAxis(view.pots.groups[0]?.axis ?? [])],
  ['pot-axis-keep-level', drawPotAxis(view.pots.groups.at(-1)?.axis ?? [])],
  ['palette', drawPalette(view.palette)],
  ['palette-empty', drawPalette({ title: 'Palette', says: 'No paints', bands: [] })],
  ['cost-bar', view.costs.units[0] === undefined ? '' : drawCostBar(view.costs.units[0].bar)],
  ['use-bar', view.use.paints[0] === undefined ? '' : drawUseBar(view.use.paints[0].bar)],
  ['done-bar', drawDoneBar(0.6)],
  ['share-bar', drawShareBar({ share: 0.4, isOwn: false })],
  ['share-bar-own', drawShareBar({ share: 0.4 })],
  ['stairs', view.stairs?.chart === undefined ? '' : drawStairs(view.stairs.chart)],
  ['evening', view.time?.first[0] === undefined ? '' : drawEvening(view.time.first[0].bar)],
  ['over', drawOver({ over: '#5d7a3a', under: '#8d9196' })],
  ['over-unknown', drawOver({ over: '', under: '' })],
  ['pair', drawPair({ hex: '#5d7a3a', byHex: '' })],
  ['piece', drawPiece('base-coat')],
  ['dab-quarter', drawDab(0.25)],
  ['swatch', drawSwatch('#5d7a3a')],
  ['swatch-unknown', drawSwatch('')],
  ['spread', drawSpread({ low: 0.6, high: 1.4 })],
];

it.each(goldens)('%s', async (name, svg) => {
  await expect(byLine(svg)).toMatchFileSnapshot(`golden/${name}.svg`);
});

/** x and width of the rect with a class, in percent. */
function spanOf(svg: string, look: string): [number, number] {
  const rect = new RegExp(`<rect [^>]*class="${look}[^>]*>`).exec(svg)?.[0] ?? '';
  const read = (name: string) => Number(new RegExp(` ${name}="([\\d.]+)%"`).exec(rect)?.[1] ?? Number.NaN);
  return [read('x'), read('width')];
}

describe('a pot bar', () => {
  it('fills as far as the paint goes, and leaves what is to be bought open', () => {
    const svg = drawPotBar(barOf('Nettle coat'));
    const percent = (ml: number) => expect.closeTo(((ml / 12.1) * 100) / fullShare, 2);
    expect(spanOf(svg, 'paint')).toEqual([0, percent(4.08)]);
    expect(spanOf(svg, 'to-buy')).toEqual([percent(4.08), percent(8.02)]);
  });

  it('draws low to high of need and shelf, with an arrow where one lies beyond the drawing', () => {
    const svg = drawPotBar(barOf('Nettle coat'));
    const reach = (look: string) =>
      new RegExp(`class="${look}" x1="([\\d.]+)%" x2="([\\d.]+)%"`).exec(svg)?.slice(1).map(Number);
    const percent = (ml: number) => expect.closeTo(((ml / 12.1) * 100) / fullShare, 2);
    expect(reach('need-reach')).toEqual([percent(7.3), percent(22.4)]);
    expect(reach('have-reach')).toEqual([percent(2), percent(6.2)]);
    const beyond = drawPotBar({ ...barOf('Nettle coat'), need: { low: 0.6, high: 7 } });
    expect(beyond).toMatch(/class="need-reach past" x1="25%" x2="100%"/);
    expect(svg).not.toContain('past');
  });

  it('never runs out of its frame', () => {
    const svg = drawPotBar({ ...barOf('Pond wash'), hereShare: 1.7, orderedShare: Number.POSITIVE_INFINITY });
    const [x, width] = spanOf(svg, 'ordered');
    expect(x + width).toBeCloseTo(100, 2);
    expect(svg).not.toMatch(/NaN|Infinity/);
  });

  it('leaves nothing open where nothing is to be bought', () => {
    expect(drawPotBar(barOf('Pond wash'))).not.toContain('to-buy');
  });
});

/** Where each piece of a bar of 1,000 units begins and ends, from the left. */
const spansOf = (svg: string): [number, number][] =>
  [...svg.matchAll(/M(\d+) \d+H(\d+)V\d+H\1z/g)]
    .map(([, from, to]): [number, number] => [Number(from), Number(to)])
    .sort(([a], [b]) => a - b);

/** The last piece's end; each piece must begin where the one before it ends. */
function endOf(spans: readonly [number, number][], pieces: number): number {
  expect(spans).toHaveLength(pieces);
  return spans.reduce((end, [from, to]) => {
    expect(from).toBe(end);
    return to;
  }, 0);
}

it('cost pieces follow one another; what the dearest figure may cost at most fills the width', () => {
  const bar = view.costs.units[0]?.bar;
  if (bar === undefined) throw new Error('no unit');
  const end = endOf(spansOf(drawCostBar(bar)), bar.pieces.length);
  // A warden costs 43.55, the ram at most 68.9.
  expect(end).toBeCloseTo((43.55 / 68.9) * 1000, -1);
});

it('dabs by area: four times the paint, twice as wide', () => {
  const scaleOf = (share: number) => Number(/scale\(([\d.]+)\)/.exec(drawDab(share))?.[1]);
  expect(scaleOf(1) / scaleOf(0.25)).toBeCloseTo(2, 2);
  expect(drawDab(0)).toBe('');
});

it('an evening holds its pieces one after the other, and never runs over its end', () => {
  const bar = view.time?.first[0]?.bar;
  if (bar === undefined) throw new Error('no evening');
  const end = endOf(spansOf(drawEvening(bar)), bar.pieces.length);
  expect(end).toBe(Math.round((147.4 / 150) * 1000));
  const [piece] = bar.pieces;
  if (piece === undefined) throw new Error('no piece');
  const over = drawEvening({
    ...bar,
    pieces: [
      { ...piece, share: 0.8 },
      { ...piece, share: 0.8 },
    ],
  });
  expect(spansOf(over)).toEqual([
    [0, 800],
    [800, 1000],
  ]);
});

describe('texts and numbers in SVG', () => {
  it('are escaped', () => {
    expect(escapeMarkup(`"><script>alert('x')</script>&`)).toBe(
      '&quot;&gt;&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&amp;',
    );
    const hostile = drawPotBar({ ...barOf('Nettle coat'), title: '</title><script>' });
    expect(hostile).not.toMatch(/<script/);
  });

  it.each([
    [1 / 3, '0.333'],
    [-0.0001, '0'],
    [12, '12'],
    [Number.NaN, '0'],
    [Number.POSITIVE_INFINITY, '0'],
  ])('%d is written %s', (value, text) => expect(place(value)).toBe(text));

  it('keeps shares within the drawing', () => {
    expect([-1, 0.5, 7].map(percentOf)).toEqual(['0%', '50%', '100%']);
  });
});
