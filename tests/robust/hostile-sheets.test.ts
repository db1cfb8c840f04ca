// Sheets made to break the reader, through the real command: read or refused in plain words, in half a minute of work and
// 512 MB.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeFolder, runHalfpot } from '../cli/run-halfpot.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { forgeSize, type Hostile, makeHostile, textCell, times } from './make-hostile.js';

const root = makeFolder();
const peakPrinter = new URL('./print-peak.mjs', import.meta.url).href;

const mostMb = 512;
const mostSeconds = 30;

/** Checks sheets; what is said, without how many problems there are. */
function check(path: string): { readonly code: number | null; readonly said: string } {
  const { code, err } = runHalfpot(['check', path], { env: { NODE_OPTIONS: `--import=${peakPrinter}` } });
  // Each thread prints a line; all count the whole process.
  const lines = [...err.matchAll(/^peak (\d+) ([\d.]+)$/gm)];
  expect(lines.length, err).toBeGreaterThan(0);
  const megabytes = Math.max(...lines.map(([, kilobytes]) => Number(kilobytes) / 1024));
  const seconds = Math.max(...lines.map(([, , one]) => Number(one)));
  if (process.env.HALFPOT_SHOW_PEAKS) console.log(path.split('/').at(-1), seconds, megabytes);
  expect(megabytes).toBeLessThan(mostMb);
  expect(seconds).toBeLessThan(mostSeconds);
  expect(err).not.toMatch(/\n {4}at |unexpected/);
  return { code, said: err.replace(/^peak .*\n/gm, '').replace(/^\d+ (error|warning).*\n/gm, '') };
}

const tooLarge = (what: string): RegExp =>
  new RegExp(
    `^error: [^ ]*: this file is too large to read: ${what} is the most\\. Keep only the rows that matter, or name another file\\.\n`,
  );
const damaged = /^error: [^ ]*\.xlsx: this workbook is damaged and cannot be read\./;
const nothing = /^$/;
const million = 1_000_000;
const worksheet = (inner: string): string => `<worksheet>${inner}</worksheet>`;

const workbooks: readonly (readonly [string, () => Hostile | Buffer, RegExp])[] = [
  [
    '260 MB of blanks in 260 kB',
    () => ({ whole: worksheet(' '.repeat(260 * 2 ** 20)) }),
    tooLarge('26\\d MB unpacked, where 256 MB'),
  ],
  [
    '250 MB of blanks',
    () => ({ whole: worksheet(' '.repeat(250 * 2 ** 20)) }),
    /^error: .*, sheet pots: this sheet is empty\./,
  ],
  [
    '250 MB that call themselves a hundred bytes',
    () =>
      forgeSize(makeHostile({ whole: worksheet(' '.repeat(250 * 2 ** 20)) }), 'xl/worksheets/pots.xml', 100),
    damaged,
  ],
  [
    'a small part that calls itself 4 GB',
    () => forgeSize(makeHostile({}), 'xl/worksheets/pots.xml', 0xfffffffe),
    tooLarge('4\\d\\d\\d MB unpacked, where 256 MB'),
  ],
  [
    'nine thousand parts',
    () => ({ more: Object.fromEntries(Array.from({ length: 9000 }, (_, at) => [`p${at}`, ''])) }),
    nothing,
  ],
  [
    'a merge over the whole sheet',
    () => ({ after: '<mergeCell ref="A2:XFD1048576"/>' }),
    /^error: .*row 2, "paint" \(A2:XFD1048576\): these cells are merged/,
  ],
  [
    'a merge beyond every sheet',
    () => ({ after: '<mergeCell ref="A1:ZZZZZZZZ99999999999999999"/>' }),
    /^error: .*row 1, "paint" .*merged/,
  ],
  [
    'half a million merges',
    () => ({ after: times(million / 2, (at) => `<mergeCell ref="A${at}:XFD${at + 1}"/>`) }),
    /^error: .*merged/,
  ],
  [
    'ten thousand merges of the same hundred thousand rows',
    () => ({
      rows: times(100_000, (at) => `<row><c><v>${at}</v></c></row>`),
      after: '<mergeCell ref="A2:A1048576"/>'.repeat(10_000),
    }),
    /^error: .*merged/,
  ],
  [
    'fifty thousand names over whole sheets',
    () => ({
      names: times(50_000, (at) => `<definedName name="n${at}">pots!$A$1:$XFD$1048576</definedName>`),
    }),
    nothing,
  ],
  [
    'a million empty formatted rows',
    () => ({ rows: times(million, () => '<row s="1" customFormat="1" ht="20"></row>') }),
    nothing,
  ],
  [
    'a million rows of empty formatted cells',
    () => ({ rows: times(million, () => '<row><c s="1"/><c s="1"/></row>') }),
    nothing,
  ],
  [
    'formats over all columns',
    () => ({
      styles: `<styleSheet><cellXfs><xf/>${'<xf numFmtId="14"/>'.repeat(60_000)}</cellXfs></styleSheet>`,
      after: '<cols><col min="1" max="16384" style="9"/></cols>',
    }),
    nothing,
  ],
  [
    'a million cell styles',
    () => ({ styles: `<styleSheet><cellXfs>${'<xf/>'.repeat(million)}</cellXfs></styleSheet>` }),
    tooLarge('more cell styles, where 65536'),
  ],
  [
    'a cell in the last corner',
    () => ({ rows: '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>' }),
    /^warning: .*column XFD has no header/,
  ],
  [
    'twenty thousand rows with a cell in the last column',
    () => ({ rows: times(20_000, (at) => `<row r="${at + 9}"><c r="XFD${at + 9}"><v>1</v></c></row>`) }),
    tooLarge('more cells, where 2 million'),
  ],
  [
    'row four thousand million',
    () => ({ rows: '<row r="4000000000"><c r="A4000000000"><v>1</v></c></row>' }),
    damaged,
  ],
  ['column ZZZZZZ', () => ({ rows: '<row r="9"><c r="ZZZZZZ9"><v>1</v></c></row>' }), damaged],
  [
    'three million numbers',
    () => ({ rows: times(million, () => '<row><c><v>1</v></c><c><v>2</v></c><c><v>3</v></c></row>') }),
    tooLarge('more rows, where 150 thousand'),
  ],
  [
    'as many cells as are read',
    () => ({
      rows: times(149_000, (at) => `<row>${times(13, (column) => `<c><v>${at + column}</v></c>`)}</row>`),
    }),
    /^warning: .*column C has no header/,
  ],
  [
    'as many letters as are read',
    () => ({
      rows: times(149_000, (at) => `<row>${textCell(`${at}${'ж'.repeat(100)}`)}<c><v>1</v></c></row>`),
    }),
    nothing,
  ],
  [
    'a long text that a hundred thousand cells share',
    () => ({
      strings: `<sst><si><t>${'a'.repeat(30_000)}</t></si></sst>`,
      rows: times(100_000, () => '<row><c t="s"><v>0</v></c></row>'),
    }),
    tooLarge('more letters, where 16 million'),
  ],
  [
    'a text of 100 MB',
    () => ({ rows: `<row>${textCell('a'.repeat(100 * 2 ** 20))}<c><v>1</v></c></row>` }),
    /^error: .*longer than a spreadsheet holds/,
  ],
  [
    'three million short texts',
    () => ({ strings: `<sst>${'<si><t>aaaaaa</t></si>'.repeat(3 * million)}</sst>` }),
    tooLarge('more letters, where 16 million'),
  ],
  [
    'a text in three million pieces',
    () => ({ strings: `<sst><si>${'<r><t>a</t></r>'.repeat(3 * million)}</si></sst>` }),
    nothing,
  ],
  [
    'three million cells that never end',
    () => ({ whole: `<worksheet>${'<c '.repeat(3 * million)}` }),
    damaged,
  ],
  [
    'three million rows that never end',
    () => ({ whole: `<worksheet>${'<row r="'.repeat(3 * million)}` }),
    damaged,
  ],
  ['three million tags in one another', () => ({ whole: '<a>'.repeat(3 * million) }), damaged],
  [
    'a million comments that never end',
    () => ({ whole: `<worksheet>${'<!-- <!'.repeat(million)}` }),
    damaged,
  ],
  [
    'a laugh a thousand million times',
    () => ({
      whole: `<!DOCTYPE x [<!ENTITY a "ha">${times(9, (at) => `<!ENTITY ${'abcdefghij'[at]} "${`&${'abcdefghij'[at - 1]};`.repeat(10)}">`)}]><worksheet><sheetData><row>${textCell('&j;')}</row></sheetData></worksheet>`,
    }),
    damaged,
  ],
  [
    'a formula of 100 MB',
    () => ({ rows: `<row><c><f>${'A1+'.repeat(35 * million)}</f></c></row>` }),
    /^error: .*formula/,
  ],
  [
    "ten thousand columns of the painter's own",
    () => ({
      whole: worksheet(
        `<sheetData><row>${textCell('paint')}${textCell('size ml')}${times(10_000, (at) => textCell(`own ${at}`))}</row><row>${textCell('brick red')}<c><v>17</v></c></row><row>${textCell('earth wash')}<c><v>24</v></c></row></sheetData>`,
      ),
    }),
    nothing,
  ],
];

describe('a workbook with', () => {
  it.each(workbooks)('%s', (name, make, says) => {
    const path = join(root, `${name.replaceAll(/\W+/g, '-')}.xlsx`);
    const made = make();
    writeFileSync(path, Buffer.isBuffer(made) ? made : makeHostile(made));
    const { code, said } = check(path);
    expect(said).toMatch(says);
    expect(code).toBe(/^error: /m.test(said) ? 1 : 0);
  });
});

const wideHeader = (columns: number): string => `paint,size ml${times(columns, (at) => `,own ${at}`)}\n`;

const texts: readonly (readonly [string, Readonly<Record<string, () => string>>, RegExp])[] = [
  [
    '60 MB of commas',
    { 'log.csv': () => ','.repeat(60 * 2 ** 20) },
    tooLarge('more letters, where 16 million'),
  ],
  [
    '15 million commas',
    { 'log.csv': () => ','.repeat(15 * million) },
    tooLarge('more cells, where 2 million'),
  ],
  [
    '15 million line ends',
    { 'log.csv': () => '\n'.repeat(15 * million) },
    tooLarge('more cells, where 2 million'),
  ],
  [
    '15 million carriage returns',
    { 'log.csv': () => '\r'.repeat(15 * million) },
    tooLarge('more cells, where 2 million'),
  ],
  ['15 million quotation marks', { 'log.csv': () => '"'.repeat(15 * million) }, /^error: log\.csv/],
  ['15 million letters', { 'log.csv': () => 'a'.repeat(15 * million) }, /^error: log\.csv/],
  ['15 million Russian letters', { 'log.csv': () => 'ж'.repeat(15 * million) }, /^error: log\.csv/],
  [
    'broken quotation marks in every row',
    { 'log.csv': () => `date,paint\n${'"a"b,"x\n'.repeat(145_000)}` },
    /^error: log\.csv/,
  ],
  [
    'quotation marks that never close',
    { 'log.csv': () => `date,paint\n${'"x,\n'.repeat(145_000)}` },
    /^error: log\.csv/,
  ],
  [
    'ten thousand columns over a long sheet',
    { 'pots.csv': () => wideHeader(10_000) + 'brick red,17\n'.repeat(145_000) },
    /^error: schemes\.csv/,
  ],
  [
    'ten thousand blank columns',
    { 'pots.csv': () => `paint,size ml${','.repeat(10_000)}\n${'brick red,17\n'.repeat(145_000)}` },
    /^error: schemes\.csv/,
  ],
  [
    'a wrong cell in every place',
    { 'army.csv': () => `unit,figure,count,batch,done,priority\n${'x,y,z,a,b,c\n'.repeat(145_000)}` },
    /^error: army\.csv row 2/,
  ],
  [
    'a cell too many in every row',
    { 'army.csv': () => `unit,figure,count\n${'x,y,1,2\n'.repeat(145_000)}` },
    /^error: army\.csv row 2/,
  ],
  [
    'as many paints as are read',
    { 'pots.csv': () => `paint,size ml\n${times(145_000, (at) => `paint ${at},17\n`)}` },
    /^error: schemes\.csv/,
  ],
  [
    'as many units as are read',
    { 'army.csv': () => `unit,figure,count\n${times(145_000, (at) => `unit ${at},spearman,20\n`)}` },
    nothing,
  ],
];

describe('a sheet with', () => {
  it.each(texts)('%s', (name, files, says) => {
    const folder = join(root, name.replaceAll(/\W+/g, '-'));
    mkdirSync(folder);
    writeSheets(folder, {
      ...fourShortSheets,
      ...Object.fromEntries(Object.entries(files).map(([file, make]) => [file, make()])),
    });
    const { code, said } = check(folder);
    expect(said).toMatch(says);
    expect(code).toBe(/^error: /m.test(said) ? 1 : 0);
  });
});
