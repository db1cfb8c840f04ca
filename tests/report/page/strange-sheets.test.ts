// Pages of sheets that a stranger might have: 60 units, every name 300 letters from right to left, no colour known. Made by the
// command, opened in a real browser; and beside them a larger army with prices in francs.
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { planVersion } from '../../../src/report/plan-json/plan-version.js';
import { runHalfpot } from '../../cli/run-halfpot.js';
import { writeSheets } from '../../problems/problem-case.js';
import { openPages, overflowOf, type Pages, unfold } from './open-pages.js';

/** 300 letters without a place to break; `of` tells it from others. */
const named = (of: string): string => `${of}${'ש'.repeat(300 - of.length)}`;
const [unit, red, wash, guard, scheme, shop] = ['יחידה', 'אדום', 'שטיפה', 'שומר', 'סדר', 'חנות'].map(named);

function sheetsOf(currency: string, figures: number): Readonly<Record<string, string>> {
  const units = Array.from({ length: 60 }, (_, at) => `${unit}${at + 1},${guard},${scheme},${figures}`);
  return {
    'pots.csv': `paint,size ml,left\n${red},17,5%\n${wash},24,empty\n`,
    'figures.csv': `figure,eye mm\n${guard},28\n`,
    'schemes.csv': `scheme,step,zone,layer,paint\n${scheme},1,whole,base coat,${red}\n${scheme},2,whole,wash,${wash}\n`,
    'army.csv': `unit,figure,scheme,count\n${units.join('\n')}\n`,
    'offers.csv': `shop,offer,price,paint,size ml\n${shop},${named('סט')},2.95,${red},17\n${shop},${named('בק')},3.10,${wash},24\n`,
    'settings.csv': `setting,value\ncurrency,${currency}\n`,
  };
}

const folder = mkdtempSync(join(tmpdir(), 'halfpot-strange-'));
let pages: Pages;

function run(...args: string[]): void {
  const done = runHalfpot([...args, '--date', '2026-11-02', '--seconds', '2'], { cwd: folder });
  expect(done).toMatchObject({ code: 0 });
}

beforeAll(async () => {
  for (const [currency, figures] of [
    ['EUR', 4],
    ['CHF', 5],
  ] as const) {
    mkdirSync(join(folder, currency));
    writeSheets(join(folder, currency), sheetsOf(currency, figures));
  }
  run('plan', 'EUR', '--out', 'planned');
  run('compare', 'planned', 'CHF', '--out', 'compared');
  pages = await openPages();
});

afterAll(async () => {
  await pages?.close();
  rmSync(folder, { recursive: true, force: true });
});

const urlOf = (path: string): string => pathToFileURL(join(folder, ...path.split('/'))).href;

/**
 * Texts with letters from right to left that could turn what stands beside them (UAX #9): neither alone in their line, nor in an
 * element that keeps its direction to itself, nor between isolating marks.
 */
const unfenced = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found: string[] = [];
    for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
      const open = (text.textContent ?? '').replace(/\u2068[^\u2068\u2069]*\u2069/g, '');
      const box = text.parentElement?.closest('bdi, [dir], script, td, th, li, p, h2, h4, title');
      if (
        /[\u05d0-\u05ea]/.test(open) &&
        box?.matches('bdi, [dir], script') === false &&
        box.textContent !== open
      )
        found.push(box.outerHTML.slice(0, 80));
    }
    return [...new Set(found)];
  });

describe.each(['planned/report.html', 'planned/shop.html', 'planned/bench.html', 'compared/compare.html'])(
  '%s',
  (path) => {
    it.each([320, 1280])('fits at %d pixels and complains of nothing', async (width) => {
      const { page, complaints } = await pages.visit(urlOf(path), { viewport: { width, height: 844 } });
      await unfold(page);
      expect(await overflowOf(page)).toBeLessThanOrEqual(0);
      expect(complaints).toEqual([]);
      await page.context().close();
    });

    it('keeps the direction of each name to the name', async () => {
      const { page } = await pages.visit(urlOf(path));
      expect(await unfenced(page)).toEqual([]);
      const turned = page.locator('bdi').filter({ hasText: /^[\u05d0-\u05ea]{100}/ });
      expect(await turned.count()).toBeGreaterThan(1);
      const directions = await turned.evaluateAll((all) => all.map((one) => getComputedStyle(one).direction));
      expect([...new Set(directions)]).toEqual(['rtl']);
      await page.context().close();
    });
  },
);

it('60 units are 60 cards, and on paper none is too full', async () => {
  const { page } = await pages.visit(urlOf('planned/bench.html'));
  await page.emulateMedia({ media: 'print' });
  const full = await page
    .locator('.card')
    .evaluateAll((all) => all.map((card) => card.scrollHeight - card.clientHeight));
  expect(full).toHaveLength(60);
  expect(Math.max(...full)).toBeLessThanOrEqual(1);
  await page.context().close();
});

it('euros and francs are not set off against each other, and that is told', async () => {
  const { page } = await pages.visit(urlOf('compared/compare.html'));
  const note = page.getByText('A is in EUR, B in CHF: no difference in money is made.', { exact: true });
  expect(await note.isVisible()).toBe(true);
  const cash = page.getByRole('row', { name: 'Cash now' }).getByRole('cell');
  const [a = '', b = '', difference] = await cash.allTextContents();
  expect([a.slice(0, 1), b.slice(0, 3), difference]).toEqual(['€', 'CHF', '']);
  await page.context().close();
});

it('a real plan.json of an older version is told with its remedy, and no page is written', () => {
  mkdirSync(join(folder, 'older'));
  const text = readFileSync(join(folder, 'planned', 'plan.json'), 'utf8');
  writeFileSync(
    join(folder, 'older', 'plan.json'),
    text.replace(`"version":${planVersion}`, `"version":${planVersion - 1}`),
  );
  expect(runHalfpot(['compare', 'older', 'EUR', '--out', 'none'], { cwd: folder })).toEqual({
    code: 2,
    out: '',
    err:
      `halfpot: ${join('older', 'plan.json')} was written by an older Halfpot. ` +
      'Plan its sheets again, or name the sheets instead of older.\n',
  });
  expect(existsSync(join(folder, 'none'))).toBe(false);
});
