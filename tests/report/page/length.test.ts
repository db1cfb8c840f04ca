// How much is read: an army of 14 units and 36 paints, made of the sample's. Words that stand open in a real browser, sheets of
// paper, how easily the first screen reads.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readSheets } from '../../../src/library.js';
import type { Plan } from '../../../src/model/plan.js';
import { planArmy } from '../../../src/plan-army.js';
import { cardLinks, openPages, type Pages, type Visit } from './open-pages.js';

const sample = fileURLToPath(new URL('../../../sample-data/low-sluice', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'halfpot-length-'));

type Row = Record<string, string>;

const read = (name: string): Row[] =>
  Papa.parse<Row>(readFileSync(join(sample, `${name}.csv`), 'utf8'), { header: true, skipEmptyLines: true })
    .data;

/** Paints that both halves of the army share. */
const shared = ['Towpath primer', 'Drizzle dull varnish'];
const far = (paint: string | undefined): string =>
  shared.includes(paint ?? '') ? (paint ?? '') : `Far ${paint}`;

/** Rows and their like, with other names. */
function twice(name: string, rename: (row: Row) => Row): void {
  const rows = read(name);
  writeFileSync(join(folder, `${name}.csv`), Papa.unparse([...rows, ...rows.map(rename)]));
}

/** The sample's eight units, and six more in schemes of their own, with pots, paints and offers of their own. */
function writeArmy(): void {
  cpSync(sample, folder, { recursive: true });
  twice('schemes', (row) => ({ ...row, scheme: `far ${row.scheme}`, paint: far(row.paint) }));
  const own = (row: Row) => !shared.includes(row.paint ?? '');
  for (const name of ['paints', 'pots']) {
    const rows = read(name);
    const others = rows
      .filter(own)
      .map((row) => ({ ...row, paint: far(row.paint), code: '', 'also called': '' }));
    writeFileSync(join(folder, `${name}.csv`), Papa.unparse([...rows, ...others]));
  }
  const offers = read('offers');
  const farOffers = offers
    .filter((row) => own(row) && row.paint !== '')
    .map((row) => ({ ...row, offer: `Far ${row.offer}`, paint: far(row.paint), code: '' }));
  writeFileSync(join(folder, 'offers.csv'), Papa.unparse([...offers, ...farOffers]));
  const army = read('army');
  const farUnits = army
    .slice(0, 6)
    .map((row) => ({ ...row, unit: `Far ${row.unit}`, scheme: `far ${row.scheme}` }));
  writeFileSync(join(folder, 'army.csv'), Papa.unparse([...army, ...farUnits]));
}

let pages: Pages;
let visit: Visit;
let plan: Plan;

beforeAll(async () => {
  writeArmy();
  const { sheets, problems } = await readSheets(folder, '2026-11-02');
  if (sheets === undefined) throw new Error(`no sheets: ${JSON.stringify(problems.slice(0, 3))}`);
  plan = await planArmy(sheets, '2026-11-02', { seconds: 2 });
  pages = await openPages();
  visit = await pages.visit(await pages.write('long.html', plan), { viewport: { width: 1280, height: 900 } });
});

afterAll(async () => {
  await pages?.close();
  rmSync(folder, { recursive: true, force: true });
});

it('is of 14 units and 36 paints', () => {
  expect(plan.estimate.units).toHaveLength(14);
  expect(plan.summary.work.paints.size).toBe(36);
});

it('shows under 2,600 words, and holds more folded', async () => {
  const countOf = (text: string | null): number => (text ?? '').split(/\s+/).filter(Boolean).length;
  // biome-ignore lint/performance/useDomNodeTextContent: what is folded away is to be left out.
  const shown = countOf(await visit.page.locator('body').innerText());
  expect(shown).toBeGreaterThan(500);
  expect(shown).toBeLessThan(2600);
  expect(countOf(await visit.page.locator('main').textContent())).toBeGreaterThan(2 * shown);
});

it('leads from each unit of an evening to a card that is there', async () => {
  const { links, ids } = await cardLinks(plan);
  // Every unit that is painted in the listed evenings, each time.
  const lines = plan.time.spelledOut.slice(0, 60).flatMap(({ pieces }) => pieces);
  const units = new Set(lines.flatMap((piece) => (piece.what === 'waiting' ? [] : [piece.unit])));
  expect(new Set(links.map((link) => link.replace(/-.*/, ''))).size).toBe(units.size);
  expect(links.filter((link) => !ids.includes(link))).toEqual([]);
});

it('prints on twelve sheets or fewer', async () => {
  const pdf = (await visit.page.pdf({ format: 'A4', printBackground: true })).toString('latin1');
  const sheets = pdf.match(/\/Type \/Page\b/g)?.length ?? 0;
  expect(sheets).toBeGreaterThan(2);
  expect(sheets).toBeLessThanOrEqual(12);
});

it.each([
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
])('shows the next thing to do on the first screen of $width pixels', async (viewport) => {
  const report = new URL('../../../reports/low-sluice/report.html', import.meta.url).href;
  const { page } = await pages.visit(report, { viewport });
  const box = await page.locator('.answer-next p', { hasText: 'Next:' }).boundingBox();
  expect(box && box.y + box.height).toBeLessThan(viewport.height);
  await page.context().close();
});

/** Groups of vowels; a silent e at the end, and the one of -ed, are none. */
const syllablesOf = (word: string): number =>
  Math.max(
    1,
    word
      .toLowerCase()
      .replace(/(?<=[a-z]{2})(?:e|ed|es)$/, '')
      .match(/[aeiouy]+/g)?.length ?? 1,
  );

/** Flesch, A new readability yardstick, J. Appl. Psychol. 32 (1948): 206.835 - 1.015 words a sentence - 84.6 syllables a word. */
function readingEase(sentences: readonly string[]): number {
  const words = sentences.flatMap((one) => one.match(/[A-Za-z’']+/g) ?? []);
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return 206.835 - (1.015 * words.length) / sentences.length - (84.6 * syllables) / words.length;
}

describe('reading ease', () => {
  it('counts syllables', () => {
    expect(['paint', 'varnish', 'used', 'evening', 'average', 'the', 'likely'].map(syllablesOf)).toEqual([
      1, 2, 1, 3, 3, 1, 3,
    ]);
  });

  // The cat sat on the mat: 6 words of 6 syllables in one sentence, 206.835 - 6.09 - 84.6.
  it('is Flesch’s', () => expect(readingEase(['The cat sat on the mat.'])).toBeCloseTo(116.145, 3));

  it('of the first screen is over 60', async () => {
    const texts = await visit.page.locator('.answer p:not(.rests, .figure)').allTextContents();
    const sentences = texts
      .flatMap((text) => text.split(/(?<=[.;:])\s+/))
      .filter((one) => /[a-z]/i.test(one));
    expect(sentences.length).toBeGreaterThan(6);
    expect(readingEase(sentences)).toBeGreaterThan(60);
  });
});
