// One case or more for each code of file-problems.ts: sheets that raise it, and the exact words.
import { mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  fourSheets,
  makeCompoundFile,
  makeOds,
  makeWorkbook,
  makeZip,
  odsText,
  pictureBytes,
} from '../sheets/read/make-files.js';
import { fourShortSheets, type ProblemCase, writeSheets } from './problem-case.js';

type Files = Readonly<Record<string, string | Uint8Array>>;

/** The four short sheets with these files added or written over, `without` left out. */
function folder(files: Files, without: readonly string[] = []): ProblemCase['make'] {
  return (dir) => {
    const kept = Object.entries(fourShortSheets).filter(([name]) => !without.includes(name));
    writeSheets(dir, { ...Object.fromEntries(kept), ...files });
  };
}

/** A file by itself, which is what is read. */
function lone(code: string, name: string, bytes: Buffer | Promise<Buffer>, says: string): ProblemCase {
  const path = (dir: string): string => join(dir, name);
  return { code, path, says: [says], make: async (dir) => writeFileSync(path(dir), await bytes) };
}

const attic = 'paint,size ml\nbrick red,17\n';
const desk = 'paint,size ml\nearth wash,24\n';

type Change = Parameters<typeof makeWorkbook>[1];

function workbook(code: string, change: Change, says: readonly string[]): ProblemCase {
  const path = (dir: string): string => join(dir, 'army.xlsx');
  return {
    code,
    path,
    says,
    make: async (dir) => writeFileSync(path(dir), await makeWorkbook(fourSheets, change)),
  };
}

/** A folder of a name that does not change, with these files alone. */
function named(code: string, files: Files, says: string): ProblemCase {
  const path = (dir: string): string => join(dir, 'my sheets');
  const make = (dir: string): void => {
    mkdirSync(path(dir));
    writeSheets(path(dir), files);
  };
  return { code, path, make, says: [says] };
}

const wideHeader = `paint,size ml,${Array.from({ length: 16_383 }, (_, index) => `note ${index}`).join(',')}`;

const paths: readonly ProblemCase[] = [
  {
    code: 'missing-path',
    make: () => {},
    path: (dir) => join(dir, 'nowhere'),
    says: [
      'nowhere: there is no such file or folder. Name the folder that holds pots.csv, figures.csv, schemes.csv and army.csv, or a workbook with those sheets.',
    ],
  },
  {
    code: 'unreadable-file',
    make: (dir) => {
      writeSheets(dir, fourShortSheets);
      symlinkSync(join(dir, 'gone.csv'), join(dir, 'shops.csv'));
    },
    says: [
      'shops.csv: this cannot be opened (it points to something that is gone). See that it is there, that you may read it, and that no other program holds it.',
    ],
  },
  {
    code: 'too-large-file',
    make: (dir) => {
      writeSheets(dir, { ...fourShortSheets, 'log.csv': '' });
      truncateSync(join(dir, 'log.csv'), 300 * 2 ** 20);
    },
    says: [
      'log.csv: this file is too large to read: 300 MB, where 64 MB is the most. Keep only the rows that matter, or name another file.',
    ],
  },
  {
    code: 'too-large-file',
    make: (dir) => writeSheets(dir, { ...fourShortSheets, 'log.csv': ','.repeat(2_000_001) }),
    says: [
      'log.csv: this file is too large to read: more cells, where 2 million is the most. Keep only the rows that matter, or name another file.',
    ],
  },
  named(
    'empty-folder',
    {},
    'my sheets: this folder is empty. Put pots.csv, figures.csv, schemes.csv and army.csv into it, or name another folder.',
  ),
  named(
    'no-sheets',
    { 'notes.md': 'buy more red' },
    'my sheets: none of the sheets is here. At least pots, or figures, schemes and army are needed, each under that name.',
  ),
  named(
    'no-sheets',
    { 'ferry.xlsx': '', 'gate.xlsx': '' },
    'my sheets: none of the sheets is here. If they are in ferry.xlsx or gate.xlsx, name that workbook instead of the folder.',
  ),
  named(
    'no-sheets',
    { 'ferry.xlsx': '', 'tolls.csv': 'day,toll\n' },
    'my sheets: none of the sheets is here. If they are in ferry.xlsx, name that workbook instead of the folder.',
  ),
  named(
    'no-sheets',
    {
      'Sammlung.csv': 'Farbe;Inhalt\nZiegelrot;17\n',
      'orders.csv': 'shop,paint,size ml\nthe ferry,brick red,17\n',
    },
    'my sheets: none of the sheets is here. If Sammlung.csv holds your pots, call it pots.csv.',
  ),
  // A folder with a workbook alone is read as that workbook.
  named(
    'broken-workbook',
    { 'ferry.xlsx': '' },
    'ferry.xlsx: this workbook is damaged and cannot be read. Open it in your spreadsheet program, save a new copy as .xlsx and name that; if it does not open there either, go back to an older copy.',
  ),
  {
    code: 'folder-for-sheet',
    make: (dir) => {
      folder({}, ['pots.csv'])(dir);
      for (const name of ['pots.csv', 'shops', 'log.csv']) mkdirSync(join(dir, name));
    },
    says: [
      'pots.csv: this is a folder, where the pots sheet should be. Give the folder another name, and save the sheet as pots.csv beside it.',
      'log.csv: this is a folder, where the log sheet should be. Give the folder another name, and save the sheet as log.csv beside it.',
    ],
  },
  {
    code: 'unreadable-file',
    make: (dir) => {
      symlinkSync(join(dir, 'ferry'), join(dir, 'gate'));
      symlinkSync(join(dir, 'gate'), join(dir, 'ferry'));
    },
    path: (dir) => join(dir, 'ferry'),
    says: [
      'ferry: this cannot be opened (its links lead in a circle). See that it is there, that you may read it, and that no other program holds it.',
    ],
  },
  {
    code: 'unreadable-file',
    make: (dir) => symlinkSync(join(dir, 'gone'), join(dir, 'ferry')),
    path: (dir) => join(dir, 'ferry'),
    says: [
      'ferry: this cannot be opened (it points to something that is gone). See that it is there, that you may read it, and that no other program holds it.',
    ],
  },
  {
    code: 'unreadable-file',
    make: (dir) => {
      writeSheets(dir, fourShortSheets);
      mkdirSync(join(dir, 'shelf'));
      symlinkSync(join(dir, 'shelf'), join(dir, 'shops.csv'));
    },
    says: [
      'shops.csv: this cannot be opened (it is a folder). See that it is there, that you may read it, and that no other program holds it.',
    ],
  },
  lone(
    'no-sheets',
    'ferry.xlsx',
    makeWorkbook({ Sheet1: [['paint', 'tin']] }),
    'ferry.xlsx: none of the sheets is here. At least pots, or figures, schemes and army are needed, each under that name.',
  ),
  lone(
    'lone-sheet',
    'pots.csv',
    Buffer.from('paint,size ml\nbrick red,17\n'),
    'pots.csv: this is one sheet by itself. Name the folder that holds all the sheets.',
  ),
  lone(
    'lone-sheet',
    'Sammlung.csv',
    Buffer.from('Farbe;Inhalt\nZiegelrot;17\n'),
    'Sammlung.csv: this is one sheet by itself. If it holds your pots, call it pots.csv and name its folder.',
  ),
  lone(
    'unknown-file-type',
    'army.numbers',
    makeZip({ mimetype: 'application/vnd.oasis.opendocument.spreadsheet' }),
    'army.numbers: a file of this type cannot be read (.numbers). Save it as a workbook (.xlsx or .ods), or save each sheet as CSV in one folder and name that folder.',
  ),
];

const workbooks: readonly ProblemCase[] = [
  lone(
    'old-workbook',
    'army.xls',
    makeCompoundFile('Workbook'),
    'army.xls: this is a workbook in the old .xls format. Open it in your spreadsheet program, save it as .xlsx and name that.',
  ),
  lone(
    'locked-workbook',
    'army.xlsx',
    makeCompoundFile('EncryptionInfo', 'EncryptedPackage'),
    'army.xlsx: this workbook is locked with a password. Save a copy without one and name that.',
  ),
  lone(
    'not-a-workbook',
    'army.xlsx',
    makeZip({ 'word/document.xml': '<document/>' }),
    'army.xlsx: this is not a workbook, whatever its name says. Open it in the program that made it, save it as .xlsx and name that.',
  ),
  lone(
    'broken-workbook',
    'army.xlsx',
    makeWorkbook(fourSheets).then((bytes) => bytes.subarray(0, 4000)),
    'army.xlsx: this workbook is damaged and cannot be read. Open it in your spreadsheet program, save a new copy as .xlsx and name that; if it does not open there either, go back to an older copy.',
  ),
];

const textFiles: readonly ProblemCase[] = [
  {
    code: 'csv-is-workbook',
    make: async (dir) => writeSheets(dir, { ...fourShortSheets, 'pots.csv': await makeWorkbook(fourSheets) }),
    says: [
      'pots.csv: this is a workbook, not a text file. Open it in your spreadsheet program and save this sheet as CSV, or give the file the ending .xlsx and name that.',
    ],
  },
  {
    code: 'csv-is-not-text',
    make: folder({ 'pots.csv': pictureBytes }),
    says: [
      'pots.csv: this is not a text file. Open it in the program that made it and save the sheet as CSV.',
    ],
  },
  {
    code: 'guessed-encoding',
    make: folder({
      'pots.csv': Buffer.from('paint,size ml\nbrick red,17\nearth wash,24\nécarlate,17\n', 'latin1'),
    }),
    says: [
      'pots.csv: this file is not in UTF-8 and was read as Windows-1252, in which its first special letters read "écarlate". If that is wrong, save it again as "CSV UTF-8".',
    ],
  },
  {
    code: 'unclosed-quote',
    make: folder({ 'pots.csv': 'paint,size ml\n"brick red,17\nearth wash,24\n' }),
    says: [
      'pots.csv row 2: the quotation mark before "brick red" is not closed in its row. Close it after the last letter of the cell, or take it out.',
    ],
  },
  {
    code: 'stray-quote',
    make: folder({ 'pots.csv': 'paint,size ml\n"brick" red,17\nearth wash,24\n' }),
    says: [
      'pots.csv row 2: the cell that starts with "brick" goes on after its closing quotation mark. Write a quotation mark inside a quoted cell twice, or take the quotation marks out.',
    ],
  },
  {
    code: 'extra-cell',
    make: folder({
      'pots.csv': 'paint,size ml\nbrick red,17\nearth wash,24,5\n',
      'figures.csv': 'figure;eye mm\nspearman;28;31\n',
    }),
    says: [
      'pots.csv row 3 (C3): "5" stands past the last header. If a comma is part of a cell, put that cell in quotation marks; else give the column a header.',
      'figures.csv row 2 (C2): "31" stands past the last header. If a semicolon is part of a cell, put that cell in quotation marks; else give the column a header.',
    ],
  },
  {
    code: 'long-cell',
    make: folder({ 'extras.csv': `item,price,serves\nflock,1,9\n${'moss '.repeat(7000)},1,9\n` }),
    says: [
      'extras.csv row 3 (A3): the cell that starts with "moss moss moss moss ..." is longer than a spreadsheet holds (32767 characters). See that its quotation marks are closed.',
    ],
  },
];

const tables: readonly ProblemCase[] = [
  {
    code: 'missing-sheet',
    make: folder({}, ['schemes.csv']),
    says: [
      'schemes.csv: this sheet is needed and is not there. Add it, with at least these columns: scheme, zone, layer, paint.',
    ],
  },
  workbook('missing-sheet', (book) => book.removeWorksheet('army'), [
    'army.xlsx, sheet army: this sheet is needed and is not there. Add it, with at least these columns: unit, figure, count.',
  ]),
  {
    code: 'two-of-one-sheet',
    make: folder({ 'Pots.txt': 'paint,size ml\nbrick red,17\n' }),
    says: [
      'Pots.txt: the pots sheet is there more than once: Pots.txt, pots.csv. Keep one of them and rename or remove the rest.',
    ],
  },
  workbook('two-of-one-sheet', (book) => book.addWorksheet('Po ts').addRow(['paint', 'size ml']), [
    'army.xlsx: the pots sheet is there more than once: pots, Po ts. Keep one of them and rename or remove the rest.',
  ]),
  {
    code: 'sheet-of-parts',
    make: folder({ 'pots attic.csv': attic, 'Kiste 2.csv': desk }, ['pots.csv']),
    says: [
      'Kiste 2.csv: the pots sheet was read from "Kiste 2.csv", "pots attic.csv". Rename what is not meant to count, so that its name begins otherwise.',
    ],
  },
  {
    code: 'part-beside-sheet',
    make: folder({ 'pots desk.csv': desk }),
    says: [
      'pots desk.csv: this was left alone, as the pots sheet is there under its own name. If both are to count, name them by what they hold, such as pots 1 and pots 2.',
    ],
  },
  workbook('part-beside-sheet', (book) => book.addWorksheet('Pots 2').addRow(['paint', 'size ml']), [
    'army.xlsx, sheet Pots 2: this was left alone, as the pots sheet is there under its own name. If both are to count, name them by what they hold, such as pots 1 and pots 2.',
  ]),
  {
    code: 'two-of-one-sheet',
    make: folder({ 'pots attic.csv': attic, 'pots desk.csv': attic }, ['pots.csv']),
    says: [
      'pots attic.csv: the pots sheet is there more than once: pots attic.csv, pots desk.csv. Keep one of them and rename or remove the rest.',
    ],
  },
  {
    code: 'empty-sheet',
    make: folder({ 'figures.csv': '' }),
    says: [
      'figures.csv: this sheet is empty. Give it a header row with at least these columns: figure; and a row or more below it.',
    ],
  },
  {
    code: 'empty-optional-sheet',
    make: folder({ 'offers.csv': '\n\n' }),
    says: ['offers.csv: this sheet is empty and counts as not there. Fill it in, or remove it.'],
  },
  {
    code: 'headers-far-below',
    make: folder({ 'pots.csv': `${'an evening\n'.repeat(20)}paint,size ml\nbrick red,17\nearth wash,24\n` }),
    says: [
      'pots.csv: the headers stand in row 21, and are looked for in the first 20 only. Delete the rows above them.',
    ],
  },
  lone(
    'sheet-on-its-side',
    'shelf.ods',
    makeOds(
      `<table:table table:name="pots"><table:table-row>${odsText('paint')}${odsText('brick red')}</table:table-row><table:table-row>${odsText('size ml')}${odsText('17')}</table:table-row></table:table>`,
    ),
    'shelf.ods, sheet pots: this sheet is turned on its side, its headers below each other: "paint", "size ml". Copy all of it and paste it transposed, so that they stand in one row.',
  ),
  {
    code: 'sheet-on-its-side',
    make: folder({
      'pots.csv': 'paint,brick red,earth wash\nsize ml,17,24\nleft,half,full\nplace,desk,attic\n',
    }),
    says: [
      'pots.csv: this sheet is turned on its side, its headers below each other: "paint", "size ml", "left". Copy all of it and paste it transposed, so that they stand in one row.',
    ],
  },
  {
    code: 'sheet-of-sums',
    make: folder({ 'pots.csv': 'Rows,desk,attic,Total\nbrick red,1,1,2\nearth wash,,1,1\nTotal,1,2,3\n' }),
    says: [
      'pots.csv: this adds up another table, and lists no thing by itself. Name the table that it was made from, or save that one instead.',
    ],
  },
  {
    code: 'headers-again',
    make: folder({ 'pots.csv': 'paint,size ml\nbrick red,17\npaint,size ml\nearth wash,24\n' }),
    says: [
      'pots.csv: the headers stand there again, which was left alone: row 3. Change a cell of a row that is meant to count.',
    ],
  },
  {
    code: 'table-beside',
    make: folder({
      'pots.csv': 'paint,size ml,,shop,free from\nbrick red,17,,the ferry,30\nearth wash,24,,,\n',
    }),
    says: [
      'pots.csv row 1 (D1:E1): a second table stands beside the first and was not read: "shop", "free from". Move it to a sheet of its own, called shops.',
    ],
  },
  {
    code: 'no-header-row',
    make: folder({
      'army.csv': 'first spears,spearman,20\nsecond spears,spearman,10\n',
      'zones.csv': 'coat,"front trunk, back trunk"\n',
      'settings.csv': 'locale,de\n',
      'log.csv': 'date,paint,unit,step,figures,used ml\n2026-03-01,brick red,first spears,1,10,0.4\n',
      'pots.csv': 'brick red,paint,17\nearth wash,paint,24\n',
    }),
    says: [
      'pots.csv row 1: this sheet has no header row, as its first row reads like data: "brick red", "paint", "17". Put a row with the names of its columns above it, at least these: paint, size ml.',
      'zones.csv row 1: this sheet has no header row, as its first row reads like data: "coat", "front trunk, back tr ...". Put a row with the names of its columns above it, at least these: zone, parts.',
      'army.csv row 1: this sheet has no header row, as its first row reads like data: "first spears", "spearman", "20". Put a row with the names of its columns above it, at least these: unit, figure, count.',
      'settings.csv row 1: this sheet has no header row, as its first row reads like data: "locale", "de". Put a row with the names of its columns above it, at least these: name, value.',
    ],
  },
  {
    code: 'header-only',
    make: folder({ 'army.csv': 'unit,figure,count\n' }),
    says: ['army.csv row 1: there is nothing below the header row. Write at least one row there.'],
  },
  {
    code: 'duplicate-header',
    make: folder({ 'pots.csv': 'paint,Size ML,size_ml\nbrick red,17,17\nearth wash,24,24\n' }),
    says: [
      'pots.csv row 1, "size_ml" (C1): this header is there twice, the first time as "Size ML" (B1). Keep one of the two columns, or give the other a name of its own.',
    ],
  },
  {
    code: 'rows-above-header',
    make: folder({
      'pots.csv': 'brick red,17\npaint,size ml\nbrick red,17\nearth wash,24\n',
      'army.csv': 'The watch,\n,\nunit,figure,count\nfirst spears,spearman,20\n',
      'offers.csv': 'Offers of\nMarch,\nshop,offer,price,paint,size ml\nQuay,one,3,brick red,17\n',
    }),
    says: [
      'pots.csv: what stands above the header row was not read: row 1 ("brick red"). A title may stay there; what is meant as a row belongs below the header row.',
      'offers.csv: what stands above the header row was not read: 2 rows (1, 2). A title may stay there; what is meant as a row belongs below the header row.',
      'army.csv: what stands above the header row was not read: row 1 ("The watch"). A title may stay there; what is meant as a row belongs below the header row.',
    ],
  },
  // 17 + 24 = 41, 3.50 + 4.20 = 7.70, 20 + 10 = 30.
  {
    code: 'totals-row',
    make: folder({
      'pots.csv': 'paint,size ml,price\nbrick red,17,3.50\nearth wash,24,4.20\n,,\nTotal,41,7.70\n',
      'offers.csv':
        'shop,offer,price,paint,size ml\nQuay,a,3,brick red,17\nQuay,b,4,earth wash,24\nSumme,,7,,\n',
      'army.csv': 'unit,figure,count\nfirst spears,spearman,20\nbows,spearman,10\n,,30\n',
    }),
    says: [
      'pots.csv row 5: this row was left alone, as it adds up those above it: "Total", "41". If it is a row like the others, give it a name of its own and fill in its needed cells.',
      'offers.csv row 4: this row was left alone, as it adds up those above it: "Summe", "7". If it is a row like the others, give it a name of its own and fill in its needed cells.',
      'army.csv row 4: this row was left alone, as it adds up those above it: "30". If it is a row like the others, give it a name of its own and fill in its needed cells.',
    ],
  },
  {
    code: 'totals-row',
    make: folder({
      'pots.csv':
        'paint,size ml,price\nbrick red,17,3.50\nearth wash,24,4.20\nSubtotal rack,41,7.70\nbone,17,3.50\nAverage,,3.73\n',
    }),
    says: [
      'pots.csv row 4: this row was left alone, as it adds up those above it: "Subtotal rack", "41". If it is a row like the others, give it a name of its own and fill in its needed cells.',
      'pots.csv row 6: this row was left alone, as it adds up those above it: "Average", "3.73". If it is a row like the others, give it a name of its own and fill in its needed cells.',
    ],
  },
  {
    code: 'note-row',
    make: folder({
      'pots.csv':
        'paint,size ml,price\nbrick red,17,3.50\n,,\nDrawer,,\nearth wash,24,4.20\nTotal,41,7.70\nsizes by label,,\n',
    }),
    says: [
      'pots.csv row 4: this row was left alone, as a heading or a note: "Drawer". If it is a row like the others, fill in its needed cells.',
      'pots.csv row 7: this row was left alone, as a heading or a note: "sizes by label". If it is a row like the others, fill in its needed cells.',
    ],
  },
  {
    code: 'filled-down',
    make: folder({
      'schemes.csv':
        'scheme,step,zone,layer,paint\nred line,1,whole,base coat,brick red\n,2,whole,wash,earth wash\n,3,head,base coat,brick red\n',
      'offers.csv':
        'shop,offer,price,paint,size ml\nQuay,box,9.00,brick red,17\n,,,earth wash,24\nLock,red,3.50,brick red,17\n',
    }),
    says: [
      'offers.csv: blanks under "shop" and "offer" were read as what stands above them (1 row). Write the name on each row where it is another.',
      'schemes.csv: blanks under "scheme" were read as what stands above them (2 rows). Write the name on each row where it is another.',
    ],
  },
  {
    code: 'column-without-header',
    make: folder({ 'pots.csv': 'paint,size ml,,\nbrick red,17,,nearly dry\nearth wash,24,,\n' }),
    says: [
      'pots.csv: column D has no header, so what stands in it was not read: 1 cell. Give it a header if it is meant.',
    ],
  },
  {
    code: 'too-many-rows',
    make: folder({ 'log.csv': `date,paint\n${'\n'.repeat(1_048_576)}2026-01-31,brick red\n` }),
    says: [
      'log.csv: this sheet has 1048578 rows, more than a spreadsheet holds (1048576). Keep only the rows that matter.',
    ],
  },
  {
    code: 'too-many-columns',
    make: folder({ 'paints.csv': `${wideHeader}\nbrick red\n` }),
    says: [
      'paints.csv: this sheet has 16385 columns, more than a spreadsheet holds (16384). See that the right character parts the columns.',
    ],
  },
  workbook('merged-cells', (book) => book.getWorksheet('schemes')?.mergeCells('C2:C3'), [
    'army.xlsx, sheet schemes, row 2, "zone" (C2:C3): these cells are merged, so that only the first of them holds "whole". Unmerge them and write the value in every cell that it is meant for.',
  ]),
  workbook(
    'hidden-rows',
    (book) => Object.assign(book.getWorksheet('pots')?.getRow(3) ?? {}, { hidden: true }),
    [
      'army.xlsx, sheet pots: what is hidden in the workbook was read like any other row: row 3. Delete it if it is not meant.',
    ],
  ),
  workbook(
    'hidden-columns',
    (book) => {
      const sheet = book.getWorksheet('army');
      for (const letter of ['A', 'C', 'D']) Object.assign(sheet?.getColumn(letter) ?? {}, { hidden: true });
      Object.assign(book.getWorksheet('figures')?.getColumn('B') ?? {}, { hidden: true });
      Object.assign(sheet?.getCell('D1') ?? {}, { value: 'banner' });
    },
    [
      'army.xlsx, sheet figures: what is hidden in the workbook was read like any other column: column B ("eye mm"). Delete it if it is not meant.',
      'army.xlsx, sheet army: what is hidden in the workbook was read like any other column: columns A ("unit"), C ("count"). Delete it if it is not meant.',
    ],
  ),
  workbook('hidden-sheet', (book) => Object.assign(book.getWorksheet('pots') ?? {}, { state: 'hidden' }), [
    'army.xlsx, sheet pots: this sheet is hidden in the workbook and was read like any other. Rename or delete it if it is not meant.',
  ]),
];

const names: readonly ProblemCase[] = [
  {
    code: 'near-file-name',
    make: folder({ 'shop.csv': 'shop,postage\n' }),
    says: [
      'shop.csv: this file was left alone, though its name is close to the shops sheet. If it is meant to be that sheet, name it shops.csv.',
    ],
  },
  workbook('near-worksheet-name', (book) => book.addWorksheet('Shop').addRow(['shop', 'postage']), [
    'army.xlsx: the worksheet "Shop" was left alone, though its name is close to the shops sheet. If it is meant to be that sheet, name it shops.',
  ]),
  {
    code: 'sheet-of-other-type',
    make: folder({ 'shops.numbers': 'x' }),
    says: [
      'shops.numbers: this was left alone: in a folder, the shops sheet is read from a .csv, .tsv, .txt, .xlsx, .xlsm or .ods file. Save the sheet as shops.csv, or put all sheets into one workbook and name that.',
    ],
  },
];

/** A workbook with these files beside it. */
function beside(code: string, files: Files, says: string): ProblemCase {
  const path = (dir: string): string => join(dir, 'army.xlsx');
  const make = async (dir: string): Promise<void> =>
    writeSheets(dir, { ...files, 'army.xlsx': await makeWorkbook(fourSheets) });
  return { code, path, make, says: [says] };
}

const besideCases: readonly ProblemCase[] = [
  beside(
    'log-of-csv-sheets',
    { 'log.csv': 'date,paint\n', 'pots.csv': 'paint,size ml\n', 'army.csv': 'unit,figure,count\n' },
    'log.csv: this was left alone, as it belongs to the CSV sheets beside it (pots.csv, army.csv) and not to the workbook. Give the workbook a folder of its own, and take its log there.',
  ),
  beside(
    'log-of-something-else',
    { 'log.csv': 'date,level,message\n2026-03-01,info,hello\n' },
    'log.csv: this stands beside the workbook and was left alone, as it has no paint column. If it is meant to be the log, give it one; else rename or move it.',
  ),
  beside(
    'log-of-two-workbooks',
    { 'log.csv': 'date,paint,used ml\n2026-03-01,brick red,1\n', 'other.xlsx': '' },
    'log.csv: this counts for each of the workbooks beside it: army.xlsx, other.xlsx. Where they are different shelves or armies, give each a folder of its own.',
  ),
];

export const fileCases: readonly ProblemCase[] = [
  ...besideCases,
  ...paths,
  ...workbooks,
  ...textFiles,
  ...tables,
  ...names,
];
