// The page on paper: how many sheets, where sections begin, the list to buy on a page of its own with boxes to tick.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { smallPlan } from '../a-small-plan.js';
import { openPages, type Pages, type Visit } from './open-pages.js';

let pages: Pages;
let pageUrl: string;

beforeAll(async () => {
  pages = await openPages();
  pageUrl = await pages.write('small.html', smallPlan);
});

afterAll(() => pages?.close());

interface Mark {
  readonly title: string;
  /** From 0. */
  readonly page: number;
  /** Points from the bottom. */
  readonly y: number;
}

/** Chromium writes objects of a PDF as plain text; kids of the page tree stand in order of pages. */
function readPdf(pdf: Buffer): { pages: number; marks: Mark[] } {
  const text = pdf.toString('latin1');
  const objects = new Map(
    [...text.matchAll(/(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, no, body]) => [Number(no), body ?? '']),
  );
  const order: number[] = [];
  const walk = (no: number): void => {
    const kids = /\/Kids \[([^\]]*)\]/.exec(objects.get(no) ?? '')?.[1];
    if (kids === undefined) order.push(no);
    else for (const [, kid] of kids.matchAll(/(\d+) 0 R/g)) walk(Number(kid));
  };
  walk(Number(/\/Type \/Catalog[\s\S]*?\/Pages (\d+) 0 R/.exec(text)?.[1]));
  const titled = /\/Title \(((?:\\.|[^)\\])*)\)\s*\/Dest \[(\d+) 0 R \/XYZ [\d.]+ ([\d.]+)/g;
  const marks = [...text.matchAll(titled)].map(([, title = '', no, y]) => ({
    ...{ title, page: order.indexOf(Number(no)), y: Number(y) },
  }));
  return { pages: order.length, marks };
}

describe.each([
  ['A4', 842],
  ['Letter', 792],
] as const)('on %s', (format, high) => {
  let visit: Visit;
  let printed: ReturnType<typeof readPdf>;
  let short: ReturnType<typeof readPdf>;
  const print = async (): Promise<ReturnType<typeof readPdf>> =>
    readPdf(await visit.page.pdf({ format, printBackground: true, outline: true, tagged: true }));
  beforeAll(async () => {
    visit = await pages.visit(pageUrl);
    short = await print();
    await visit.page.goto(`${pageUrl}#everything`);
    printed = await print();
  });
  afterAll(() => visit?.page.context().close());

  it('the answers, the list to buy and the pots go on paper, and the pots have a page of their own', () => {
    const titles = short.marks.map(({ title }) => title);
    expect(titles).toEqual(
      expect.arrayContaining(['What must I buy?', 'What to buy', 'How long your pots last']),
    );
    for (const left of ['Other ways to buy', 'How many evenings', 'What painting costs', 'Should last'])
      expect(titles).not.toContain(left);
    const pots = short.marks.find(({ title }) => title === 'How long your pots last');
    expect(pots?.y).toBeGreaterThan(high * 0.88);
    expect(short.pages).toBeLessThanOrEqual(3);
    expect(visit.complaints).toEqual([]);
  });

  it('everything is of so many sheets', () => {
    expect(printed.pages).toBeGreaterThanOrEqual(8);
    expect(printed.pages).toBeLessThanOrEqual(20);
  });

  it('no heading of a section is left alone at the foot of a page', async () => {
    const sections = await visit.page.locator('main h2:not(.unseen)').allTextContents();
    const heads = printed.marks.filter(({ title }) => sections.includes(title));
    expect(heads).toHaveLength(8);
    expect(heads.filter(({ y }) => y < high * 0.1)).toEqual([]);
  });
});

it('what is folded on the screen stands on paper where everything is asked for, tools do not', async () => {
  const { page } = await pages.visit(`${pageUrl}#everything`);
  await page.emulateMedia({ media: 'print' });
  const hidden = page.locator('details:not([open]) td').filter({ visible: false });
  expect(await page.locator('details:not([open]) td').count()).toBeGreaterThan(50);
  // One column is left to its numbers: the assumptions' low to high is not drawn on paper.
  expect(await hidden.filter({ hasText: /\S/ }).count()).toBe(0);
  expect(await page.locator('nav, .tools, .skip').filter({ visible: true }).count()).toBe(0);
  const box = page.locator('.box input').first();
  expect(await box.evaluate((one) => getComputedStyle(one).borderTopWidth)).not.toBe('0px');
  await page.context().close();
});

it('a list of one way to buy goes on paper alone where a link leads to it, and else not at all', async () => {
  const { page } = await pages.visit(pageUrl);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.buy-list').filter({ visible: true }).count()).toBe(0);
  await page.goto(`${pageUrl}#buy-sure90`);
  expect(await page.locator('main section, .masthead').filter({ visible: true }).count()).toBe(1);
  expect(await page.locator('.buy-list').filter({ visible: true }).textContent()).toContain(
    '90% sure: €12.90',
  );
  expect(await page.locator('h3, h4').filter({ visible: true }).count()).toBe(1);
  await page.context().close();
});
