// The small pages in a real browser: ticks that last, links, paper.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { renderBench, renderShop } from '../../../src/report/page/render-report.js';
import { changedPlan, planOfWatches, smallPlan } from '../a-small-plan.js';
import { cardLinks, openPages, type Pages } from './open-pages.js';
import { renameAll } from './rename-all.js';

const longName = ` "><img src=x onerror=alert(1)>\u202e\u05d0\u05d1\u05d2 ${'unbroken'.repeat(36)}`;
const hostilePlan = renameAll({ ...smallPlan, paints: new Map() }, longName);

let pages: Pages;
const urls = new Map<string, string>();
const urlOf = (name: string): string => urls.get(name) ?? '';

beforeAll(async () => {
  pages = await openPages();
  urls.set('report', await pages.write('report.html', smallPlan));
  urls.set('shop', await pages.write('shop.html', smallPlan, renderShop));
  urls.set('bench', await pages.write('bench.html', smallPlan, renderBench));
  urls.set('hostile bench', await pages.write('hostile-bench.html', hostilePlan, renderBench));
  urls.set('bench of 60', await pages.write('bench-60.html', planOfWatches(60), renderBench));
  urls.set('hostile shop', await pages.write('hostile-shop.html', hostilePlan, renderShop));
});

afterAll(() => pages?.close());

describe.each(['shop', 'hostile shop', 'bench', 'hostile bench'])('%s', (name) => {
  it('has boxes as large as a finger', async () => {
    const { page } = await pages.visit(urlOf(name));
    for (const box of await page.locator('.box').all()) {
      const { width = 0, height = 0 } = (await box.boundingBox()) ?? {};
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
    }
    await page.context().close();
  });
});

describe('the list to take along', () => {
  const still = (page: Page) => page.locator('.still > span').textContent();

  // 3.50 and 3.90 postage for one dropper, then 6.40 for two that travel free.
  it('counts down to nothing, postage with the last tick of its shop; the report has the same ticks', async () => {
    const { page } = await pages.visit(urlOf('shop'), { locale: 'en-GB' });
    expect(await still(page)).toBe('Still to pay €13.80, 3 pots');
    await page.getByLabel('Bought: Lamp white twin box').check();
    expect(await still(page)).toBe('Still to pay €7.40, 1 pot');
    await page.goto(urlOf('report'));
    expect(await page.getByLabel('Bought: Lamp white twin box').isChecked()).toBe(true);
    await page.getByLabel('Bought: Nettle coat, dropper').check();
    await page.goto(urlOf('shop'));
    expect(await still(page)).toBe('Still to pay €0.00, 0 pots');
    await page.getByRole('button', { name: 'Untick all' }).click();
    expect(await still(page)).toBe('Still to pay €13.80, 3 pots');
    await page.reload();
    expect(await page.locator('.box input:checked').count()).toBe(0);
    await page.context().close();
  });

  it('postage stays while anything of the shop is unticked', async () => {
    const [line] = smallPlan.order.lines;
    if (line === undefined) throw new Error('the small order has no line');
    const two = { ...smallPlan.order, lines: [line, { ...line, offer: 'Nettle coat, tube' }] };
    const url = await pages.write('two.html', { ...smallPlan, order: two, restock: undefined }, renderShop);
    const { page } = await pages.visit(url);
    await page.getByLabel('Bought: Nettle coat, tube').check();
    expect(await still(page)).toBe('Still to pay €7.40, 1 pot');
    await page.getByLabel('Bought: Nettle coat, dropper').check();
    expect(await still(page)).toBe('Still to pay €0.00, 0 pots');
    await page.context().close();
  });

  it('stays in sight, and takes a tick from the whole line', async () => {
    const { page } = await pages.visit(urlOf('shop'), { viewport: { width: 390, height: 300 } });
    await page.locator('.shop').last().scrollIntoViewIfNeeded();
    await page.getByText('Lamp white', { exact: true }).click();
    expect(await page.locator('.still').boundingBox()).toMatchObject({ y: 0 });
    expect(await still(page)).toBe('Still to pay €7.40, 1 pot');
    await page.context().close();
  });

  it('is a plain list without script', async () => {
    const { page } = await pages.visit(urlOf('shop'), { javaScriptEnabled: false });
    expect(await still(page)).toBe('Still to pay €13.80, 3 pots');
    expect(await page.getByRole('button').count()).toBe(0);
    expect(await page.getByRole('checkbox').count()).toBe(2);
    await page.context().close();
  });

  it('says what one of two costs', async () => {
    const [line] = smallPlan.order.lines;
    if (line === undefined) throw new Error('no line');
    const order = { ...smallPlan.order, lines: [{ ...line, count: 2, costMinor: 2 * line.priceMinor }] };
    expect(await renderShop({ ...smallPlan, order })).toContain('2 at €3.50');
  });

  it('counts nothing where no shop has what is missing', async () => {
    const order = { ...smallPlan.order, totalMinor: 0, lines: [], bills: [] };
    const url = await pages.write('nothing.html', changedPlan({ order, restock: undefined }), renderShop);
    const { page, complaints } = await pages.visit(url);
    expect(await page.locator('main').textContent()).toMatch(
      /^\s*No shop in your sheets has what is missing\.\s+Without a shop\s/,
    );
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('is small', async () => {
    expect(Buffer.byteLength(await renderShop(smallPlan))).toBeLessThan(60_000);
  });
});

describe('an evening’s link', () => {
  it.each([
    ['the small army', smallPlan],
    ['hostile names', hostilePlan],
  ])('of %s leads to a card that is there', async (_, plan) => {
    const { links, ids } = await cardLinks(plan);
    expect(links.length).toBeGreaterThan(4);
    expect(links.filter((link) => !ids.includes(link))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('brings the card into sight', async () => {
    const { page } = await pages.visit(urlOf('report'), { viewport: { width: 390, height: 844 } });
    await page.locator('#time').getByRole('link', { name: 'The ram' }).click();
    expect(new URL(page.url()).hash).toBe('#c3-2');
    await expect.poll(() => page.getByRole('heading', { name: 'The ram' }).isVisible()).toBe(true);
    const { y = -1 } = (await page.getByRole('heading', { name: 'The ram' }).boundingBox()) ?? {};
    expect(y).toBeGreaterThanOrEqual(0);
    expect(y).toBeLessThan(844);
    await page.context().close();
  });
});

describe('cards for the bench', () => {
  it('keeps ticks of its own', async () => {
    const { page } = await pages.visit(urlOf('bench'));
    const box = page.getByLabel('First watch, step 2: tunic, base coat');
    await box.check();
    await page.goto(urlOf('shop'));
    expect(await page.locator('.box input:checked').count()).toBe(0);
    await page.goto(urlOf('bench'));
    expect(await box.isChecked()).toBe(true);
    expect(await page.locator('.is-ticked').count()).toBe(1);
    await page.context().close();
  });

  // A4 is 210 by 297 mm, A6 a quarter of it (ISO 216).
  it.each([
    ['bench', 3, 1],
    ['bench of 60', 60, 15],
    ['hostile bench', 3, 1],
  ])('%s prints %d cards of A6 on %d sheets of A4, and none is too full', async (name, cards, sheets) => {
    const { page } = await pages.visit(urlOf(name));
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(sheets);
    await page.emulateMedia({ media: 'print' });
    const seen = await page.locator('.card').evaluateAll((all) =>
      all.map((card) => {
        const { width, height } = card.getBoundingClientRect();
        const isFull = card.scrollHeight > card.clientHeight + 1 || card.scrollWidth > card.clientWidth + 1;
        return { width: Math.round((width * 25.4) / 96), high: (height * 25.4) / 96, isFull };
      }),
    );
    expect(seen).toHaveLength(cards);
    for (const { width, high, isFull } of seen) {
      expect([width, isFull]).toEqual([105, false]);
      expect(high).toBeLessThanOrEqual(148.5);
    }
    await page.context().close();
  });

  it('none is too full with a scheme of forty steps of long names', async () => {
    const { bench } = hostilePlan.summary;
    const cards = bench.cards.map((card) => ({
      ...card,
      bench: { ...card.bench, steps: Array.from({ length: 8 }, () => card.bench.steps).flat() },
    }));
    const plan = { ...hostilePlan, summary: { ...hostilePlan.summary, bench: { ...bench, cards } } };
    const { page } = await pages.visit(await pages.write('long.html', plan, renderBench));
    await page.emulateMedia({ media: 'print' });
    const full = await page
      .locator('.card')
      .evaluateAll((all) => all.map((card) => card.scrollHeight - card.clientHeight));
    expect(full.length).toBeGreaterThan(6);
    expect(Math.max(...full)).toBeLessThanOrEqual(1);
    await page.context().close();
  });
});
