// Reports in a real browser. In: plans or HTML. Out: pages of Chromium without a network, with all that they ask for and
// complain of.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import type { Plan } from '../../../src/model/plan.js';
import { renderBench, renderReport } from '../../../src/report/page/render-report.js';
import { viewPlan } from '../../../src/report/page/view.js';
import { findBrowser } from '../../find-browser.mjs';

export interface Visit {
  readonly page: Page;
  /** Addresses asked for, the page's own first. */
  readonly requests: readonly string[];
  /** Console, errors, dialogs; what a Content-Security-Policy refuses is on the console. */
  readonly complaints: readonly string[];
}

export interface Pages {
  readonly browser: Browser;
  /** Writes a report, or another page of a plan; gives its address. */
  readonly write: (name: string, plan: Plan, render?: (plan: Plan) => Promise<string>) => Promise<string>;
  readonly visit: (url: string, options?: BrowserContextOptions) => Promise<Visit>;
  readonly close: () => Promise<void>;
}

/** What takes longer is not there: enough for a busy machine, and less than a whole test may take. */
const longestMs = 120_000;

/** Throws with what to type where there is no browser: no test of these is ever skipped. */
export async function openPages(): Promise<Pages> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error('No Chromium for the report tests: npm run browser');
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'], timeout: longestMs });
  const folder = mkdtempSync(join(tmpdir(), 'halfpot-page-'));
  return {
    browser,
    write: async (name, plan, render = (one) => renderReport(viewPlan(one, []))) => {
      const path = join(folder, name);
      writeFileSync(path, await render(plan));
      return pathToFileURL(path).href;
    },
    visit: (url, options) => visit(browser, url, options),
    close: async () => {
      await browser.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds by WCAG 2.2 AA and good practice; the page must be visited with `bypassCSP`. */
export async function findViolations(page: Page): Promise<string[]> {
  await page.addScriptTag({ content: axe });
  return page.evaluate(async () => {
    const { axe: tool } = window as unknown as {
      axe: { run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const { violations } = await tool.run({ runOnly: { type: 'tag', values: tags } });
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

/** How many CSS pixels of the page lie beyond the window's edge; WCAG 2.2, 1.4.10 wants none at a width of 320. */
export const overflowOf = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Opens every fold. */
export const unfold = (page: Page): Promise<void> =>
  page.locator('details').evaluateAll((all) => {
    for (const one of all) one.setAttribute('open', '');
  });

async function visit(browser: Browser, url: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await browser.newContext({ offline: true, ...options });
  context.setDefaultTimeout(longestMs);
  const page = await context.newPage();
  const [requests, complaints]: [string[], string[]] = [[], []];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('dialog', (dialog) => {
    complaints.push(dialog.message());
    void dialog.dismiss();
  });
  await page.goto(url);
  return { page, requests, complaints };
}

/** Where a report's evenings lead on the cards of its plan, and the places that are there. */
export async function cardLinks(plan: Plan): Promise<{ readonly links: string[]; readonly ids: string[] }> {
  const found = (html: string, what: RegExp) => [...html.matchAll(what)].map(([, id = '']) => id);
  return {
    links: found(await renderReport(viewPlan(plan, [])), /href="bench\.html#([^"]*)"/g),
    ids: found(await renderBench(plan), / id="(c\d[^"]*)"/g),
  };
}
