// What the page's script adds, in a real browser: sorting, finding, ticks that last, folds that open; the policy that lets in
// this script and no other; and a page that stands without it.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/model/plan.js';
import { changedPlan, smallPlan } from '../a-small-plan.js';
import { openPages, type Pages, unfold } from './open-pages.js';

let pages: Pages;
let pageUrl: string;
let manyUrl: string;
let germanUrl: string;
const [watch] = smallPlan.time.units;
if (watch === undefined) throw new Error('no unit');
const manyUnits: Plan = changedPlan({
  time: {
    ...smallPlan.time,
    units: Array.from({ length: 14 }, (_, at) => ({
      ...watch,
      unit: { ...watch.unit, unit: `Watch ${at + 1}` },
    })),
  },
});
const german: Plan = changedPlan({ settings: { ...smallPlan.settings, locale: 'de-DE' } });

beforeAll(async () => {
  pages = await openPages();
  pageUrl = await pages.write('small.html', smallPlan);
  manyUrl = await pages.write('many.html', manyUnits);
  germanUrl = await pages.write('german.html', german);
});

afterAll(() => pages?.close());

/** Runs a test on a page, and asks that it complained of nothing. */
async function on(url: string, act: (page: Page) => Promise<void>, options = {}): Promise<void> {
  const { page, complaints } = await pages.visit(url, { viewport: { width: 1280, height: 900 }, ...options });
  await act(page);
  expect(complaints).toEqual([]);
  await page.context().close();
}

/** Own text of a column's cells, without ranges and marks beneath. */
const columnOf = (page: Page, table: string, column: number): Promise<string[]> =>
  page.locator(`${table} tbody tr`).evaluateAll(
    (rows, at) =>
      rows.map((row) => {
        const cell = row.children[at]?.cloneNode(true) as Element;
        for (const aside of cell.querySelectorAll('.range, .rests, .where')) aside.remove();
        return (cell.textContent ?? '').replace(/\s+/g, ' ').trim();
      }),
    column,
  );

describe('sorting', () => {
  it('every head that can be pressed sorts its table one way, the other way, and back', () =>
    on(pageUrl, async (page) => {
      const presses = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLTableElement>('table.sorts')].flatMap((table) => {
          const rows = () => [...(table.tBodies[0]?.rows ?? [])].map(({ textContent }) => textContent ?? '');
          const asWritten = rows();
          return [...table.querySelectorAll<HTMLButtonElement>('button.sort')].map((button) => {
            const seen = [1, 2, 3].map(() => {
              button.click();
              return { way: button.closest('th')?.getAttribute('aria-sort') ?? 'none', rows: rows() };
            });
            return { head: `${table.className}: ${button.textContent}`, asWritten, seen };
          });
        }),
      );
      expect(presses.length).toBeGreaterThan(60);
      for (const { head, asWritten, seen } of presses) {
        expect(seen.map(({ way }) => way).toSorted(), head).toEqual(['ascending', 'descending', 'none']);
        expect(seen[2]?.rows, head).toEqual(asWritten);
        for (const { rows } of seen) expect(rows.toSorted(), head).toEqual(asWritten.toSorted());
      }
    }));

  it.each([
    ['with points', () => pageUrl, '.'],
    ['with commas', () => germanUrl, ','],
  ])('reads numbers as the page writes them, %s', (_, url, mark) =>
    on(url(), async (page) => {
      const numberOf = (text: string) =>
        Number.parseFloat(text.replace(mark, '_').replaceAll(/[.,]/g, '').replace('_', '.'));
      await unfold(page);
      await page.locator('.paints').getByRole('button', { name: 'whole scheme' }).click();
      const values = (await columnOf(page, '.paints', 6)).map(numberOf);
      expect(values[0]).toBe(69);
      expect(values.at(-1)).toBe(0.14);
      expect(values).toEqual(values.toSorted((a, b) => b - a));
    }),
  );

  it('puts hours before minutes, and what has no number last', () =>
    on(pageUrl, async (page) => {
      await unfold(page);
      await page.locator('.unit-times').getByRole('button', { name: 'still to be done' }).click();
      expect(await columnOf(page, '.unit-times', 4)).toEqual(['2 h 34 min', '2 h 34 min', '60 min']);
      const cost = page.locator('.paints').getByRole('button', { name: 'cost' });
      await cost.click();
      expect((await columnOf(page, '.paints', 7)).at(-1)).not.toMatch(/\d/);
      await cost.click();
      expect((await columnOf(page, '.paints', 7)).at(-1)).not.toMatch(/\d/);
    }));

  it('has a list in place of heads on a phone', () =>
    on(
      pageUrl,
      async (page) => {
        await unfold(page);
        await page.locator('#paints').getByLabel('Sort').selectOption('whole scheme');
        expect((await columnOf(page, '.paints', 6))[0]).toMatch(/^69/);
        expect(await page.locator('.paints button.sort').first().isDisabled()).toBe(true);
      },
      { viewport: { width: 390, height: 800 } },
    ));
});

it('finding shows the rows that hold the words, says how many, and forgets', () =>
  on(manyUrl, async (page) => {
    await unfold(page);
    const rows = page.locator('.unit-times tbody tr');
    const field = page.locator('#unit-times').getByLabel('Find');
    await field.fill('wátch 13');
    expect(await rows.filter({ visible: true }).count()).toBe(1);
    expect(await page.locator('#unit-times output').textContent()).toBe('1 of 14');
    await page.evaluate(() => {
      location.hash = '#everything';
    });
    await page.emulateMedia({ media: 'print' });
    expect(await rows.filter({ visible: true }).count()).toBe(14);
    await page.emulateMedia({ media: 'screen' });
    await field.fill('');
    expect(await rows.filter({ visible: true }).count()).toBe(14);
  }));

it('long tables are folded at first, and hold every row', () =>
  on(manyUrl, async (page) => {
    const fold = page.locator('details', { has: page.locator('.unit-times') });
    expect(await fold.getAttribute('open')).toBeNull();
    expect(await fold.locator('tbody tr').count()).toBe(14);
    await fold.locator('summary').click();
    expect(await fold.locator('tbody tr').first().isVisible()).toBe(true);
  }));

describe('ticks', () => {
  it('last as long as the list stays the same', () =>
    on(pageUrl, async (page) => {
      const boxes = page.locator('.box input');
      await unfold(page);
      await boxes.nth(1).check();
      const says = `1 of ${await boxes.count()} bought`;
      expect(await page.getByRole('status').filter({ hasText: 'bought' }).textContent()).toBe(says);
      await page.reload();
      expect(await boxes.nth(1).isChecked()).toBe(true);
      expect(await page.locator('.is-bought').count()).toBe(1);
      await page.evaluate(() => {
        const key = Object.keys(localStorage)[0] ?? '';
        localStorage.setItem(
          key,
          (localStorage.getItem(key) ?? '').replace('listed":"', 'listed":"another list '),
        );
      });
      await page.reload();
      expect(await page.locator('.box input:checked').count()).toBe(0);
    }));

  it('stand in the page without a script', () =>
    on(
      pageUrl,
      async (page) => {
        await page.locator('.box input').first().check();
        expect(await page.locator('.box input:checked').count()).toBe(1);
        expect(await page.locator('button, input[type=search], select').count()).toBe(0);
        await page.locator('summary').last().click();
        expect(await page.locator('details').last().getAttribute('open')).toBe('');
      },
      { javaScriptEnabled: false },
    ));
});

it('every link leads to something that is then in sight', () =>
  on(pageUrl, async (page) => {
    await unfold(page);
    const links = await page
      .locator('a[href^="#"]:visible')
      .evaluateAll((all) => [...new Set(all.map((one) => one.getAttribute('href') ?? ''))]);
    expect(links.length).toBeGreaterThan(20);
    for (const link of links) {
      await page.evaluate((hash) => {
        for (const one of document.querySelectorAll('details')) one.removeAttribute('open');
        location.hash = hash;
      }, link);
      const target = page.locator(link);
      await expect.poll(() => target.isVisible(), { message: link }).toBe(true);
      const box = await target.boundingBox();
      expect((box?.y ?? -1) + (box?.height ?? 0), link).toBeGreaterThan(0);
      expect(box?.y ?? 1e9, link).toBeLessThan(900);
    }
  }));

it('the policy refuses any other script, style or address', async () => {
  const { page, complaints } = await pages.visit(pageUrl);
  await page.evaluate(() => {
    document.body.append(
      Object.assign(document.createElement('script'), { textContent: 'window.entered = 1' }),
    );
    document.body.append(
      Object.assign(document.createElement('style'), { textContent: 'body { color: red }' }),
    );
    document.body.append(Object.assign(document.createElement('img'), { src: 'file:///etc/hostname' }));
  });
  await expect
    .poll(() => complaints.filter((one) => one.includes('Content Security Policy')).length)
    .toBeGreaterThan(2);
  expect(await page.evaluate(() => 'entered' in window)).toBe(false);
  expect(await page.evaluate(() => getComputedStyle(document.body).color)).not.toBe('rgb(255, 0, 0)');
  expect(complaints.some((one) => one.includes('hostname'))).toBe(true);
  await page.context().close();
});
