// How the page looks, coarsely: mean lightness in a grid of 32 by 24, beside one on file. Fonts and versions of the browser
// move a line or two, so a cell may also be like its neighbours. Renewed with `--update`, and only where it differs.
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { smallPlan } from '../a-small-plan.js';
import { openPages, type Pages, unfold } from './open-pages.js';

const [columns, rows] = [32, 24];
/** Lightness is 0 to 255: mean of all cells, and the share of cells that are far off. */
const [mostMean, farOff, mostFarOff] = [2, 20, 0.02];

let pages: Pages;
let pageUrl: string;
let blank: Page;

beforeAll(async () => {
  pages = await openPages();
  pageUrl = await pages.write('small.html', smallPlan);
  blank = (await pages.visit('about:blank')).page;
});

afterAll(() => pages?.close());

/** One line a row, two hexadecimal digits a cell. */
async function gridOf(page: Page): Promise<string> {
  const png = (await page.screenshot()).toString('base64');
  const cells = await blank.evaluate(
    async ([source, wide, high]) => {
      const picture = new Image();
      picture.src = `data:image/png;base64,${source}`;
      await picture.decode();
      const canvas = Object.assign(document.createElement('canvas'), {
        width: picture.width,
        height: picture.height,
      });
      const pen = canvas.getContext('2d');
      pen?.drawImage(picture, 0, 0);
      const [cellWide, cellHigh] = [Math.floor(picture.width / wide), Math.floor(picture.height / high)];
      return Array.from({ length: wide * high }, (_, at) => {
        const { data = [] } =
          pen?.getImageData((at % wide) * cellWide, Math.floor(at / wide) * cellHigh, cellWide, cellHigh) ??
          {};
        let sum = 0;
        for (let byte = 0; byte < data.length; byte += 4)
          sum += 0.2126 * (data[byte] ?? 0) + 0.7152 * (data[byte + 1] ?? 0) + 0.0722 * (data[byte + 2] ?? 0);
        return Math.round((sum * 4) / data.length);
      });
    },
    [png, columns, rows] as const,
  );
  const hex = cells.map((cell) => cell.toString(16).padStart(2, '0'));
  return Array.from(
    { length: rows },
    (_, row) => `${hex.slice(row * columns, (row + 1) * columns).join(' ')}\n`,
  ).join('');
}

const cellsOf = (grid: string): number[][] =>
  grid
    .trimEnd()
    .split('\n')
    .map((line) => line.split(' ').map((cell) => Number.parseInt(cell, 16)));

/** How far each cell lies from the nearest of its nine on file. */
function distances(seen: string, kept: string): number[] {
  const reference = cellsOf(kept);
  const near = (row: number, column: number): number[] =>
    [-1, 0, 1]
      .flatMap((down) => [-1, 0, 1].map((right) => reference[row + down]?.[column + right]))
      .filter((cell) => cell !== undefined);
  return cellsOf(seen).flatMap((line, row) =>
    line.map((cell, column) => Math.min(...near(row, column).map((other) => Math.abs(other - cell)))),
  );
}

/** Both ways round, so that what is gone counts as what is new. */
function isAlike(seen: string, kept: string): boolean {
  return [distances(seen, kept), distances(kept, seen)].every((all) => {
    const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
    return mean <= mostMean && all.filter((one) => one > farOff).length / all.length <= mostFarOff;
  });
}

/** Where the drawing fills the view: how text wraps hangs on the machine's fonts. */
const views = [
  ['desk', { viewport: { width: 1280, height: 960 } }, '#answer'],
  ['desk-dark', { viewport: { width: 1280, height: 960 }, colorScheme: 'dark' }, '#answer'],
  ['phone', { viewport: { width: 384, height: 312 } }, '.climb'],
  ['pots', { viewport: { width: 1280, height: 960 } }, '#pots'],
  ['stairs', { viewport: { width: 1280, height: 960 } }, '.climb'],
] as const;

type View = readonly [name: string, options: BrowserContextOptions, place: string];

const pathOf = (name: string): string => fileURLToPath(new URL(`golden/looks/${name}.txt`, import.meta.url));

/** Opened once each: a page of its own for every look takes far longer than the look. */
const opened = new Map<string, Page>();

async function open([name, options]: View): Promise<Page> {
  const page = opened.get(name) ?? (await pages.visit(pageUrl, { ...options, bypassCSP: true })).page;
  opened.set(name, page);
  return page;
}

/** With another style while it looks, if any is given. */
async function look(view: View, change?: string): Promise<string> {
  const place = view[2];
  const page = await open(view);
  const style = change === undefined ? undefined : await page.addStyleTag({ content: change });
  if (place === '.climb') await unfold(page);
  if (place !== '#answer')
    await page
      .locator(place)
      .first()
      .evaluate((one) => one.scrollIntoView());
  const grid = await gridOf(page);
  await style?.evaluate((tag) => (tag as Element).remove());
  return grid;
}

it.each(views)('%s looks as it did', async (...view) => {
  const [name] = view;
  const seen = await look(view);
  const kept = existsSync(pathOf(name)) ? readFileSync(pathOf(name), 'utf8') : '';
  await expect(kept !== '' && isAlike(seen, kept) ? kept : seen).toMatchFileSnapshot(pathOf(name));
});

describe('the comparison', () => {
  it.each(views)('of %s does not mind another font', async (...view) => {
    const [name] = view;
    for (const font of ['DejaVu Sans', 'serif']) {
      const seen = await look(view, `:root { --sans: "${font}"; --serif: "${font}" }`);
      expect(isAlike(seen, readFileSync(pathOf(name), 'utf8')), font).toBe(true);
    }
  });

  it.each([
    ['colours gone wrong', ':root { --paper: #c8ccc8 }'],
    ['strokes of paint gone', '.palette { visibility: hidden }'],
    ['an answer gone', '.answer-part { visibility: hidden }'],
    [
      'columns under one another',
      '.answer.answer { display: block } .answer-part { margin-block-end: 4rem }',
    ],
    ['no stylesheet to speak of', '* { all: revert }'],
  ])('tells %s', async (_, change) => {
    const seen = await look(views[0], change);
    expect(isAlike(seen, readFileSync(pathOf('desk'), 'utf8'))).toBe(false);
  });
});
