// The page in a real browser: nothing asked of the network, no overflow, dark mode, accessibility, paper.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Stairs } from '../../../src/model/order.js';
import { changedPlan, smallPlan } from '../a-small-plan.js';
import { findViolations, openPages, overflowOf, type Pages, unfold, type Visit } from './open-pages.js';
import { renameAll } from './rename-all.js';

const hostileText = ` "><img src=x onerror=alert(1)></script>\u202e\u05d0\u05d1\u05d2 ${'unbroken'.repeat(12)}`;

/** Sixty steps: long treads, low rises, many close together round the army's size, some not proved. */
const steepStairs: Stairs = {
  steps: Array.from({ length: 61 }, (_, at) => ({
    figures: at < 20 ? at : at < 50 ? 180 + Math.floor(at * 0.8) : at * 7,
    cashMinor: at === 0 ? 0 : 500 + at * (at % 3 === 0 ? 330 : 300) - (at % 3 === 0 ? 30 * (at - 1) : 0),
    because: at === 0 ? [] : [at % 2 === 0 ? 'Nettle coat' : 'Pond wash'],
    proved: at % 7 !== 6,
  })),
  mostFigures: 440,
  everyStep: false,
};

let pages: Pages;
let pageUrl: string;
let hostileUrl: string;
let stairsUrl: string;
const visit: Pages['visit'] = (url, options): Promise<Visit> => pages.visit(url, options);

/** One page for each address, loaded anew at each width: a page of its own every time takes three times as long. */
const opened = new Map<string, Visit>();

/** Requests and complaints are those of all widths so far. */
async function visitAt(width: number, url: string): Promise<Visit> {
  const one = opened.get(url) ?? (await visit(url));
  opened.set(url, one);
  await one.page.setViewportSize({ width, height: 900 });
  await one.page.reload();
  return one;
}

beforeAll(async () => {
  pages = await openPages();
  pageUrl = await pages.write('small.html', smallPlan);
  hostileUrl = await pages.write('hostile.html', renameAll(smallPlan, hostileText));
  stairsUrl = await pages.write('stairs.html', changedPlan({ figureCount: 220, stairs: steepStairs }));
});

afterAll(() => pages?.close());

const background = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor);

describe.each([390, 768, 1024, 1280, 1600])('at %d pixels', (width) => {
  it.each([
    ['the small report', () => pageUrl],
    ['a report of hostile names', () => hostileUrl],
  ])('%s asks for nothing, complains of nothing, and fits', async (_, url) => {
    const { page, requests, complaints } = await visitAt(width, url());
    expect([...new Set(requests)]).toEqual([url()]);
    expect(complaints).toEqual([]);
    expect(await overflowOf(page)).toBeLessThanOrEqual(0);
  });
});

/** Pairs of labels in the drawing that is shown, of which one lies over the other. */
const overlapsOf = (page: Page) =>
  page.evaluate(() => {
    const labels = [...document.querySelectorAll('.stairs :is(.step, .army, .tick)')]
      .filter((label) => label.checkVisibility())
      .map((label) => ({ text: label.textContent, box: label.getBoundingClientRect() }));
    const pairs = labels.flatMap((a, at) =>
      labels
        .slice(at + 1)
        .filter(
          ({ box }) =>
            a.box.left < box.right &&
            box.left < a.box.right &&
            a.box.top < box.bottom &&
            box.top < a.box.bottom,
        )
        .map((b) => `${a.text} / ${b.text}`),
    );
    return { labels: labels.length, pairs };
  });

describe.each([320, 390, 700, 820, 1280])('the staircase at %d pixels', (width) => {
  it('is drawn once, and no label lies over another', async () => {
    const { page } = await visitAt(width, stairsUrl);
    await unfold(page);
    expect(await page.locator('.stairs:visible').count()).toBe(1);
    const { labels, pairs } = await overlapsOf(page);
    expect(labels).toBeGreaterThan(15);
    expect(pairs).toEqual([]);
  });
});

it('shows hostile names as they are written, and makes nothing of them', async () => {
  const { page } = await visit(hostileUrl);
  expect(await page.evaluate(() => document.querySelectorAll('img, iframe, object').length)).toBe(0);
  expect(await page.locator('script').count()).toBe(1);
  await unfold(page);
  expect(await page.textContent('#pots .pot-name bdi')).toBe(`Rust hush${hostileText}`);
  expect(await page.getByRole('rowheader', { name: hostileText.trim() }).count()).toBeGreaterThan(3);
  const handlers = await page.evaluate(
    () =>
      [...document.querySelectorAll('*')].filter((element) =>
        element.getAttributeNames().some((name) => name.startsWith('on')),
      ).length,
  );
  expect(handlers).toBe(0);
  await page.context().close();
});

it('is light by day and dark by night', async () => {
  const seen = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    const { page } = await visit(pageUrl, { colorScheme });
    seen.push(await background(page));
    await page.context().close();
  }
  const brightness = seen.map((colour) =>
    [...colour.matchAll(/\d+/g)].reduce((sum, [part]) => sum + Number(part), 0),
  );
  expect(brightness[0]).toBeGreaterThan(650);
  expect(brightness[1]).toBeLessThan(120);
});

it('takes the colours of a forced palette', async () => {
  const { page } = await visit(pageUrl, { forcedColors: 'active' });
  const [paper, line] = await page.evaluate(() => [
    getComputedStyle(document.body).backgroundColor,
    getComputedStyle(document.querySelector('.need-line') ?? document.body).stroke,
  ]);
  expect(line).not.toBe(paper);
  await page.context().close();
});

describe.each([
  ['light', 1280],
  ['dark', 1280],
  ['light', 390],
  ['dark', 390],
] as const)('axe, %s, %d pixels', (colorScheme, width) => {
  it('finds no violation', async () => {
    const viewport = { width, height: 900 };
    const { page } = await visit(pageUrl, { colorScheme, viewport, bypassCSP: true });
    await unfold(page);
    expect(await findViolations(page)).toEqual([]);
    await page.context().close();
  });
});

it('can be ticked and walked by keyboard', async () => {
  const { page } = await visit(pageUrl);
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to the answer');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => location.hash)).toBe('#answer');
  const box = page.getByRole('checkbox', { name: 'Bought: Nettle coat, dropper' });
  await box.check();
  expect(await box.isChecked()).toBe(true);
  await page.context().close();
});
