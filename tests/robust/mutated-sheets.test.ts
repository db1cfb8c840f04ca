// Sheets damaged in every way that chance finds: each is a plan with all its files, or problems in words.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openZip } from '../../src/unpack/open-zip.js';
import { makeFolder } from '../cli/run-halfpot.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { fourSheets, makeWorkbook, makeZip } from '../sheets/read/make-files.js';
import { answerSheets, readChecked } from './answer-sheets.js';
import { mutateBytes, mutateCells, oddText } from './odd-texts.js';
import { rounds, seed } from './soak.js';

const root = makeFolder();
const sampleFolder = fileURLToPath(new URL('../../sample-data/low-sluice', import.meta.url));

/** A folder of these files and no others. */
function fill(name: string, files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = join(root, name);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  writeSheets(folder, files);
  return folder;
}

/** The four short sheets with offers, shops, zones and settings: a plan that buys. */
const shortSheets: Readonly<Record<string, string>> = {
  ...fourShortSheets,
  'army.csv':
    'unit,figure,count,batch,done,priority\nfirst spears,spearman,40,10,0,1\nsecond spears,spearman,400,20,1,2\n',
  'pots.csv':
    'paint,size ml,left,price,opened,kind,hex\nbrick red,17,40%,3.20,2026-01-31,,#8a2b1f\nearth wash,24,full,4.10,,wash,\n',
  'offers.csv':
    'shop,offer,price,paint,size ml,pots,available\nquay,red pot,3.20,brick red,17,,\nquay,set,9.00,brick red,12,2,5\nquay,set,,earth wash,12,1,\nmill,wash pot,4.00,earth wash,24,,\n',
  'shops.csv': 'shop,postage,free from,least order\nquay,3.50,25,\nmill,2,,5\n',
  'extras.csv': 'item,price,serves\nflock,4.50,60\n',
  'log.csv':
    'date,paint,unit,step,figures,before g,after g,used ml\n2026-03-14,brick red,first spears,1,10,,,1.5\n',
  'settings.csv': 'name,value\ncurrency,EUR\ndate,2026-11-02\n',
};

const options = (usual: number) => ({ seed, numRuns: rounds(usual) });

describe(`damage by chance (seed ${seed})`, () => {
  it('starts from sheets that plan', async () => {
    expect(await answerSheets(fill('right', shortSheets))).toBeDefined();
  });

  it('to the bytes of a sheet', async () => {
    const damaged = fc
      .constantFrom(...Object.keys(shortSheets))
      .chain((name) => fc.tuple(fc.constant(name), mutateBytes(Buffer.from(shortSheets[name] ?? ''))));
    await fc.assert(
      fc.asyncProperty(damaged, async ([name, bytes]) => {
        await answerSheets(fill('bytes', { ...shortSheets, [name]: bytes }));
      }),
      options(80),
    );
  });

  it('to the cells of a sheet', async () => {
    const damaged = fc
      .constantFrom(...Object.keys(shortSheets))
      .chain((name) => fc.tuple(fc.constant(name), mutateCells(shortSheets[name] ?? '')));
    await fc.assert(
      fc.asyncProperty(damaged, async ([name, csv]) => {
        await answerSheets(fill('cells', { ...shortSheets, [name]: csv }));
      }),
      options(120),
    );
  });

  it('to the sample', async () => {
    const files = Object.fromEntries(
      readdirSync(sampleFolder).map((name) => [name, readFileSync(join(sampleFolder, name))]),
    );
    const damaged = fc.constantFrom(...Object.keys(files)).chain((name) => {
      const bytes = files[name] ?? Buffer.alloc(0);
      return fc.tuple(fc.constant(name), fc.oneof(mutateBytes(bytes), mutateCells(bytes.toString())));
    });
    let plans = 0;
    await fc.assert(
      fc.asyncProperty(damaged, async ([name, content]) => {
        const folder = fill('sample', { ...files, [name]: content });
        const { sheets } = await readChecked(folder);
        // Planning takes half a second; a few show that what is left whole can be planned.
        if (sheets === undefined || plans >= rounds(3)) return;
        plans += 1;
        await answerSheets(folder);
      }),
      options(60),
    );
  });

  it('to any bytes under the name of a sheet', async () => {
    const bytes = fc.oneof(
      fc.uint8Array({ maxLength: 400 }),
      fc.string({ unit: 'binary', maxLength: 200 }).map((text) => Buffer.from(text, 'utf16le')),
      fc
        .array(fc.constantFrom('"', ',', ';', '\n', '\r', '\t', ' ', 'a', '1', '\ufeff', 'sep=;\n'), {
          maxLength: 60,
        })
        .map((all) => Buffer.from(all.join(''))),
    );
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...Object.keys(shortSheets)), bytes, async (name, content) => {
        await readChecked(fill('any', { ...shortSheets, [name]: content }));
      }),
      options(300),
    );
  });
});

describe(`damage to a workbook (seed ${seed})`, () => {
  const path = join(root, 'army.xlsx');

  async function read(bytes: Uint8Array): Promise<void> {
    writeFileSync(path, bytes);
    await readChecked(path);
  }

  it('to its bytes', async () => {
    const right = await makeWorkbook(fourSheets);
    await fc.assert(fc.asyncProperty(mutateBytes(right), read), options(150));
  });

  it('to its parts, packed again', async () => {
    const zip = await openZip(await makeWorkbook(fourSheets));
    const names = [
      'xl/workbook.xml',
      'xl/_rels/workbook.xml.rels',
      'xl/styles.xml',
      'xl/sharedStrings.xml',
      'xl/worksheets/sheet1.xml',
      'xl/worksheets/sheet3.xml',
    ];
    const parts: Record<string, Buffer> = {};
    for (const name of [...names, 'xl/worksheets/sheet2.xml', 'xl/worksheets/sheet4.xml']) {
      const chunks: Uint8Array[] = [];
      for await (const chunk of zip.inflate(name) ?? []) chunks.push(chunk);
      parts[name] = Buffer.concat(chunks);
      expect(parts[name].length).toBeGreaterThan(0);
    }
    const damaged = fc
      .constantFrom(...names)
      .chain((name) => fc.tuple(fc.constant(name), mutateBytes(parts[name] ?? Buffer.alloc(0))));
    await fc.assert(
      fc.asyncProperty(damaged, async ([name, bytes]) => read(makeZip({ ...parts, [name]: bytes }))),
      options(400),
    );
  });

  it('that has any tags in any order', async () => {
    const tag = fc.constantFrom(
      '<row>',
      '<row r="2">',
      '</row>',
      '<c>',
      '<c t="s">',
      '<c t="inlineStr" r="B2">',
      '<c s="7" t="b"/>',
      '</c>',
      '<v>',
      '</v>',
      '<v/>',
      '<f>',
      '</f>',
      '<is>',
      '</is>',
      '<t>',
      '</t>',
      '<r>',
      '</r>',
      '1',
      '0.5',
      'x',
      '&lt;',
      '<mergeCell ref="A1:B9"/>',
      '<![CDATA[<]]>',
    );
    await fc.assert(
      fc.asyncProperty(fc.array(tag, { maxLength: 30 }), async (tags) => {
        const sheet = `<worksheet><sheetData>${tags.join('')}</sheetData></worksheet>`;
        const book = '<workbook><sheets><sheet name="pots" r:id="a"/></sheets></workbook>';
        const links =
          '<Relationships><Relationship Id="a" Type="x/worksheet" Target="pots.xml"/></Relationships>';
        await read(
          makeZip({ 'xl/workbook.xml': book, 'xl/_rels/workbook.xml.rels': links, 'xl/pots.xml': sheet }),
        );
      }),
      options(300),
    );
  });
});

describe(`columns of the painter's own (seed ${seed})`, () => {
  it('change nothing, whatever their headers are', async () => {
    const { sheets: plain } = await readChecked(fill('plain', shortSheets));
    // Control characters make a sheet no text, quotation marks and line ends other cells: all that is tested elsewhere.
    const own = (text: string): string => text.replaceAll(/["\p{Cc}]/gu, '');
    const header = fc
      .oneof(
        oddText,
        fc.constantFrom('__proto__', 'constructor', 'prototype', 'length', 'row', 'cells', 'bad'),
      )
      .map(own)
      .filter((text) => text.trim() !== '');
    const quote = (cell: string): string => (/[,;\t|]/.test(cell) ? `"${cell}"` : cell);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(header, oddText.map(own)), { minLength: 1, maxLength: 5 }),
        async (columns) => {
          const add = (csv: string): string =>
            csv
              .trimEnd()
              .split('\n')
              .map((line, at) => {
                const cells = columns.map(([head, text]) => quote(at === 0 ? head : text));
                return `${line},${cells.join(',')}\n`;
              })
              .join('');
          const files = Object.fromEntries(
            Object.entries(shortSheets).map(([name, csv]) => [name, add(csv)]),
          );
          const { sheets, problems } = await readChecked(fill('own', files));
          expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
          expect({ ...sheets, read: [] }).toEqual({ ...plain, read: [] });
        },
      ),
      options(60),
    );
  });
});
