// compare.html in a real browser: no network, no overflow, no violation that axe-core finds.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { comparePlans } from '../../../src/compare/compare-plans.js';
import { drawCompare } from '../../../src/report/compare/draw-compare.js';
import { viewCompare } from '../../../src/report/compare/view-compare.js';
import { makeDocument, makeJob } from '../../compare/make-document.js';
import { openPages, type Pages } from '../page/open-pages.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const hostile = `"><img src=x onerror=alert(1)></script>\u202eאבג${'unbroken'.repeat(40)}`;

let pages: Pages;
let folder: string;
let url: string;
beforeAll(async () => {
  pages = await openPages();
  folder = mkdtempSync(join(tmpdir(), 'halfpot-compare-'));
  const a = makeDocument();
  const b = makeDocument({
    currency: 'CHF',
    units: [{ unit: hostile, job: 0 }],
    jobs: [makeJob({ scheme: hostile })],
    work: { paints: [{ paint: hostile, putOutRemainingMl: 3 }] },
  });
  const view = viewCompare(comparePlans(a, b), { a: { ...a, name: 'one' }, b: { ...b, name: hostile } });
  const path = join(folder, 'compare.html');
  writeFileSync(path, await drawCompare(view));
  url = pathToFileURL(path).href;
});
afterAll(async () => {
  await pages?.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('compare.html', () => {
  it.each([320, 390, 1280])('at %d pixels asks for nothing, complains of nothing and fits', async (width) => {
    const { page, requests, complaints } = await pages.visit(url, { viewport: { width, height: 900 } });
    expect([requests, complaints]).toEqual([[url], []]);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    expect(await page.locator('tbody tr').count()).toBe(6 + 2 + 3);
    expect(await page.getByText(hostile, { exact: true }).count()).toBeGreaterThan(0);
    await page.context().close();
  });

  it.each(['light', 'dark'] as const)('has no violation that axe finds, %s', async (colorScheme) => {
    const { page } = await pages.visit(url, { colorScheme, bypassCSP: true });
    await page.addScriptTag({ content: axe });
    const violations = await page.evaluate(async () => {
      const { axe: tool } = window as unknown as {
        axe: { run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      };
      const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
      const { violations } = await tool.run({ runOnly: { type: 'tag', values: tags } });
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
    });
    expect(violations).toEqual([]);
    await page.context().close();
  });
});
