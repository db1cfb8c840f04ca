// Names of every odd kind through the whole program, from files to files: text in the report, text in the spreadsheets, the
// same text in plan.json.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import exceljs from 'exceljs';
import fc from 'fast-check';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeFolder } from '../cli/run-halfpot.js';
import { openPages, type Pages, type Visit } from '../report/page/open-pages.js';
import { answerSheets } from './answer-sheets.js';
import { oddNames } from './odd-texts.js';
import { rounds, seed } from './soak.js';

const root = makeFolder();
const sampleReport = fileURLToPath(new URL('../../reports/low-sluice/report.html', import.meta.url));
let pages: Pages;
let visit: Visit;
beforeAll(async () => {
  pages = await openPages();
  visit = await pages.visit('about:blank');
});
afterAll(() => pages?.close());

const quote = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** Sheets in which every name is one of these; those that are read as no text at all come as a workbook might hold them. */
function writeNamed(
  name: string,
  [red, wash, figure, scheme, zone, unit, other, shop, offer, set, item]: readonly string[],
): string {
  const folder = join(root, name);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  const [r, w, f, s, z, u, o, h, p, q, i] = [
    red,
    wash,
    figure,
    scheme,
    zone,
    unit,
    other,
    shop,
    offer,
    set,
    item,
  ].map((one) => quote(one ?? ''));
  const files = {
    'pots.csv': `paint,size ml,left,place,hex\n${r},17,40%,${i},#8a2b1f\n${w},24,full,,\n`,
    'paints.csv': `paint,kind\n${w},wash\n`,
    'figures.csv': `figure,eye mm\n${f},28\n`,
    'zones.csv': `zone,parts\n${z},"front trunk, hands"\n`,
    'schemes.csv': `scheme,step,zone,layer,paint\n${s},1,${z},base coat,${r}\n${s},2,whole,wash,${w}\n`,
    'army.csv': `unit,figure,count,priority\n${u},${f},40,1\n${o},${f},400,2\n`,
    'offers.csv': `shop,offer,price,paint,size ml,pots\n${h},${p},3.20,${r},17,\n${h},${q},9.00,${r},12,2\n${h},${q},,${w},12,1\n`,
    'shops.csv': `shop,postage,free from\n${h},3.50,25\n`,
    'extras.csv': `item,price,serves\n${i},4.50,60\n`,
  };
  for (const [file, text] of Object.entries(files)) writeFileSync(join(folder, file), text);
  return folder;
}

const tameNames = 'abcdefghijk'.split('').map((letter) => `${letter}tame`);

/** The structure of a page: each element with the names of its attributes, in their order. */
async function skeletonOf(html: Buffer): Promise<{ readonly skeleton: string[]; readonly text: string }> {
  const path = join(root, 'page.html');
  writeFileSync(path, html);
  const { page, requests, complaints } = visit;
  const asked = requests.length;
  await page.goto(pathToFileURL(path).href);
  const found = await page.evaluate(() => ({
    skeleton: [...document.querySelectorAll('*')].map((one) =>
      [one.localName, ...one.getAttributeNames()].join(' '),
    ),
    text: document.documentElement.textContent,
  }));
  expect(complaints).toEqual([]);
  expect(requests).toHaveLength(asked + 1);
  return found;
}

/** Without the marks that keep a direction of writing to itself, as a file keeps it, blanks as a page shows them. */
const asShown = (text: string): string =>
  Buffer.from(text)
    .toString()
    .normalize('NFC')
    .replaceAll(/[\u2068\u2069]/g, '')
    .replaceAll(/\s+/g, ' ')
    .trim();

/** OWASP, "CSV Injection": what a cell may not begin with, also after what a spreadsheet may strip before it looks. */
const runs = /^[\s\p{Cf}\p{Cc}"]*[=+\-@＝＋－＠]/u;
const isNumber = /^[+-]?\d+(?:[.,]\d+)?$/;

async function cellsOf(bytes: Buffer): Promise<{ readonly texts: string[]; readonly formulas: string[] }> {
  const book = new exceljs.Workbook();
  await book.xlsx.load(bytes as never);
  const [texts, formulas]: [string[], string[]] = [[], []];
  for (const sheet of book.worksheets)
    sheet.eachRow((row) =>
      row.eachCell((cell) => {
        if (typeof cell.value === 'string') texts.push(cell.value);
        if (cell.formula !== undefined) formulas.push(cell.formula);
      }),
    );
  return { texts, formulas };
}

/** Letters of a formula outside of its quoted texts: numbers, cells, sheets and functions of ours. */
const bare = (formula: string): string =>
  formula.replaceAll(/"(?:[^"]|"")*"/g, '""').replaceAll(/'[^']*'!/g, '!');

describe(`odd names (seed ${seed})`, () => {
  it('are problems, or text and nothing else', async () => {
    const tame = await answerSheets(writeNamed('tame', tameNames));
    expect(tame).toBeDefined();
    const file = (answer: typeof tame, name: string): Buffer => answer?.get(name) ?? Buffer.alloc(0);
    const tameReport = await skeletonOf(file(tame, 'report.html'));
    const tameFormulas = (await cellsOf(file(tame, 'estimate.xlsx'))).formulas.map(bare);
    const shown = tameNames.flatMap((name, at) => (tameReport.text.includes(name) ? [at] : []));
    expect(shown.length).toBeGreaterThan(7);
    // Other names draw other numbers, and so other bars; but no element of a kind that no report has.
    const known = new Set([
      ...tameReport.skeleton,
      ...(await skeletonOf(readFileSync(sampleReport))).skeleton,
    ]);
    let planned = 0;
    await fc.assert(
      fc.asyncProperty(oddNames(tameNames.length), async (names) => {
        const answer = await answerSheets(writeNamed('odd', names));
        if (answer === undefined) return;
        planned += 1;

        const { skeleton, text } = await skeletonOf(file(answer, 'report.html'));
        expect(skeleton.length).toBeGreaterThan(500);
        expect(skeleton.filter((one) => !known.has(one))).toEqual([]);
        const page = asShown(text);
        for (const at of shown) expect(page.includes(asShown(names[at] ?? '')), names[at]).toBe(true);

        const rows = Papa.parse<string[]>(
          file(answer, 'reorder.csv')
            .toString()
            .replace(/^\ufeff/, ''),
        ).data;
        for (const cell of rows.flat()) if (!isNumber.test(cell)) expect(cell).not.toMatch(runs);

        for (const name of ['reorder.xlsx', 'estimate.xlsx']) {
          const { texts, formulas } = await cellsOf(file(answer, name));
          expect(texts.length).toBeGreaterThan(10);
          if (name === 'estimate.xlsx') expect(formulas.map(bare).sort()).toEqual([...tameFormulas].sort());
        }

        const plan = JSON.parse(file(answer, 'plan.json').toString());
        expect(new Set(plan.units.map(({ unit }: { unit: string }) => unit)).size).toBe(2);
      }),
      { seed, numRuns: rounds(12) },
    );
    expect(planned).toBeGreaterThan(rounds(12) / 4);
  });
});
