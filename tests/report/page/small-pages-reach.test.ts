// The pages beside the report for whoever sees, moves or reads otherwise: axe by day, by night, in forced colours and zoomed, the
// keyboard alone, hostile names, many cards on a phone; and nothing asked of the network.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { comparePlans } from '../../../src/compare/compare-plans.js';
import { drawCompare } from '../../../src/report/compare/draw-compare.js';
import { viewCompare } from '../../../src/report/compare/view-compare.js';
import { renderBench, renderShop } from '../../../src/report/page/render-report.js';
import { makeDocument, makeJob } from '../../compare/make-document.js';
import { planOfWatches, smallPlan } from '../a-small-plan.js';
import { findViolations, openPages, overflowOf, type Pages } from './open-pages.js';
import { renameAll } from './rename-all.js';

/** Markup, marks that turn the text, and 300 letters from right to left without a place to break. */
const hostile = ` "><img src=x onerror=alert(1)></script>\u202e ${'שלום\u0301'.repeat(60)}`;

function renderCompare(): Promise<string> {
  const [a, b] = [
    makeDocument(),
    makeDocument({
      currency: 'CHF',
      units: [{ unit: `Watch${hostile}`, job: 0 }],
      jobs: [makeJob({ scheme: `red line${hostile}` })],
      work: { paints: [{ paint: `brick red${hostile}`, putOutRemainingMl: 3 }] },
    }),
  ];
  return drawCompare(
    viewCompare(comparePlans(a, b), { a: { ...a, name: 'one' }, b: { ...b, name: `other${hostile}` } }),
  );
}

let pages: Pages;
const urls = new Map<string, string>();
const urlOf = (name: string): string => urls.get(name) ?? '';

beforeAll(async () => {
  pages = await openPages();
  const hostilePlan = renameAll({ ...smallPlan, paints: new Map() }, hostile);
  urls.set('shop', await pages.write('shop.html', smallPlan, renderShop));
  urls.set('hostile shop', await pages.write('hostile-shop.html', hostilePlan, renderShop));
  urls.set(
    'bench',
    await pages.write('bench.html', { ...planOfWatches(12), paints: new Map() }, renderBench),
  );
  urls.set('hostile bench', await pages.write('hostile-bench.html', hostilePlan, renderBench));
  urls.set('compare', await pages.write('compare.html', smallPlan, renderCompare));
});

afterAll(() => pages?.close());

const names = ['shop', 'hostile shop', 'bench', 'hostile bench', 'compare'];

/** A window of 1280 by 1024 at so many times the size: WCAG 2.2, 1.4.10 asks for four times. */
const zoomed = (times: number) => ({
  viewport: { width: 1280 / times, height: 1024 / times },
  deviceScaleFactor: times,
});

describe.each(names)('%s', (name) => {
  it.each([
    ['by day', {}],
    ['by night', { colorScheme: 'dark' }],
    ['in forced colours', { forcedColors: 'active' }],
    ['on a phone', { viewport: { width: 390, height: 844 } }],
    ['four times as large', zoomed(4)],
  ] as const)('fits %s, axe finds no violation, and nothing is asked or complained of', async (_, more) => {
    const url = urlOf(name);
    const { page, requests, complaints } = await pages.visit(url, { ...zoomed(1), ...more, bypassCSP: true });
    expect([requests, complaints]).toEqual([[url], []]);
    expect(await page.locator('img').count()).toBe(0);
    expect(await overflowOf(page)).toBeLessThanOrEqual(0);
    expect(await findViolations(page)).toEqual([]);
    await page.context().close();
  });

  it('keeps its own Content-Security-Policy', async () => {
    const { page, complaints } = await pages.visit(urlOf(name));
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});

interface Stop {
  readonly what: string;
  /** A ring can be seen round it. */
  readonly isRinged: boolean;
  /** Nothing lies over its middle: WCAG 2.2, 2.4.11. */
  readonly isInSight: boolean;
}

/** Where the focus stands; of what is higher than the window, the part in it. */
const stopOf = (page: Page): Promise<Stop> =>
  page.evaluate(() => {
    const element = document.activeElement ?? document.body;
    const { x, top, bottom, width } = element.getBoundingClientRect();
    const [from, to] = [Math.max(top, 0), Math.min(bottom, innerHeight)];
    const over = document.elementFromPoint(x + Math.min(width, 20) / 2, (from + to) / 2);
    const { outlineStyle, outlineWidth } = getComputedStyle(element);
    return {
      what: element.getAttribute('aria-label') ?? element.textContent ?? '',
      isRinged: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2,
      isInSight: to > from && element.contains(over),
    };
  });

describe.each(names)('by keyboard alone, %s', (name) => {
  it.each([1, 4])(
    'at %d times the size every control is reached once, in order, in sight, and used',
    async (times) => {
      const { page } = await pages.visit(urlOf(name), zoomed(times));
      const controls = page.locator('input, button, a, [tabindex="0"]').filter({ visible: true });
      const expected = await controls.evaluateAll((all) =>
        all.map((one) => one.getAttribute('aria-label') ?? one.textContent ?? ''),
      );
      expect(expected.length).toBeGreaterThan(2);
      for (const what of expected) {
        await page.keyboard.press('Tab');
        expect(await stopOf(page)).toEqual({ what, isRinged: true, isInSight: true });
        await page.keyboard.press('Space');
      }
      const boxes = page.locator('input');
      expect(await page.locator('input:checked').count()).toBe(await boxes.count());
      await page.context().close();
    },
  );
});

it('Enter takes a list’s ticks back, and leads to the report', async () => {
  const { page } = await pages.visit(urlOf('shop'));
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  expect(await page.locator('input:checked').count()).toBe(1);
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Enter');
  expect(await page.locator('input:checked').count()).toBe(0);
  await page.getByRole('link', { name: 'The report' }).focus();
  await Promise.all([page.waitForRequest(/report\.html$/), page.keyboard.press('Enter')]);
  await page.context().close();
});

it('twelve cards on a phone stand one below the other, each with its unit and boxes of names of their own', async () => {
  const { page } = await pages.visit(urlOf('bench'), { viewport: { width: 390, height: 844 } });
  const cards = await page.locator('.card').evaluateAll((all) =>
    all.map((card) => {
      const { x, y, bottom, right } = card.getBoundingClientRect();
      return { unit: card.querySelector('h2')?.textContent, x, y, bottom, right };
    }),
  );
  expect(cards.map(({ unit }) => unit)).toEqual(Array.from({ length: 12 }, (_, at) => `Watch ${at + 1}`));
  for (const [at, { x, y, right }] of cards.entries()) {
    expect([x >= 0, right <= 390]).toEqual([true, true]);
    expect(y).toBeGreaterThanOrEqual(cards[at - 1]?.bottom ?? 0);
  }
  const ticks = await page
    .locator('.box input')
    .evaluateAll((all) => all.map((box) => box.getAttribute('aria-label')));
  expect(ticks).toHaveLength(60);
  expect(new Set(ticks).size).toBe(60);
  await page.context().close();
});
