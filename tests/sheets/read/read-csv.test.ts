import { describe, expect, it } from 'vitest';
import { wordProblem } from '../../../src/problems/word-problem.js';
import { readCsv } from '../../../src/sheets/read/read-csv.js';
import { fourSheets, makeCompoundFile, makeWorkbook, makeZip, pictureBytes } from './make-files.js';

const place = { file: 'pots.csv', sheet: 'pots' } as const;

const rowsOf = (text: string | Buffer): unknown[] =>
  (readCsv(Buffer.from(text), place).grid?.rows ?? []).map(({ row, cells }) => [row, ...cells]);

const wordsOf = (bytes: Buffer): string[] => readCsv(bytes, place).problems.map(wordProblem);

describe('readCsv', () => {
  it('trims blanks around cells, also no-break ones, and keeps those within', () => {
    expect(rowsOf('paint,size ml\n  brick  red\t,\u00a017 \n')).toEqual([
      [1, 'paint', 'size ml'],
      [2, 'brick  red', '17'],
    ]);
  });

  it('leaves blank rows out and counts them', () => {
    expect(rowsOf('paint,size ml\n\n , \nRed,17\n,,,\n\n')).toEqual([
      [1, 'paint', 'size ml'],
      [4, 'Red', '17'],
    ]);
  });

  it.each(['\n', '\r\n', '\r'])('takes %j as a line end (RFC 4180 rule 1 asks for CRLF)', (end) => {
    expect(rowsOf(['paint,size ml', 'Red,17', 'Blue,24', ''].join(end))).toEqual([
      [1, 'paint', 'size ml'],
      [2, 'Red', '17'],
      [3, 'Blue', '24'],
    ]);
  });

  it('takes mixed line ends, also within quoted cells', () => {
    expect(rowsOf('paint,place\r\nRed,"a\r\nb"\rBlue,"c\nd"\nGreen,e')).toEqual([
      [1, 'paint', 'place'],
      [2, 'Red', 'a\nb'],
      [3, 'Blue', 'c\nd'],
      [4, 'Green', 'e'],
    ]);
  });

  it('does not count a sep= line as a row', () => {
    expect(rowsOf('sep=;\r\npaint;price\r\nRed;3,50\r\n')).toEqual([
      [1, 'paint', 'price'],
      [2, 'Red', '3,50'],
    ]);
  });

  it('takes __proto__ and constructor for headers like any other', () => {
    expect(rowsOf('paint,__proto__,constructor\nRed,1,2\n')).toEqual([
      [1, 'paint', '__proto__', 'constructor'],
      [2, 'Red', '1', '2'],
    ]);
  });

  it('reads UTF-16 with semicolons', () => {
    expect(rowsOf(Buffer.from('\uFEFFpaint;size ml\r\nÉcarlate;17\r\n', 'utf16le'))).toEqual([
      [1, 'paint', 'size ml'],
      [2, 'Écarlate', '17'],
    ]);
  });

  it('says that a file is Windows-1252, with the first letters to judge by', () => {
    const bytes = Buffer.from('paint,size ml\nrouge \xe9carlate,17\n', 'latin1');
    expect(rowsOf(bytes)).toContainEqual([2, 'rouge écarlate', '17']);
    expect(wordsOf(bytes)).toEqual([
      'pots.csv: this file is not in UTF-8 and was read as Windows-1252, in which its first special letters read "écarlate". If that is wrong, save it again as "CSV UTF-8".',
    ]);
  });

  it('says nothing of UTF-8 and UTF-16', () => {
    expect(wordsOf(Buffer.from('paint,size ml\nÉcarlate,17\n'))).toEqual([]);
    expect(wordsOf(Buffer.from('paint,size ml\nÉcarlate,17\n', 'utf16le'))).toEqual([]);
  });

  it('gives a grid without rows for no bytes and for blanks', () => {
    for (const text of ['', '\uFEFF', ' \r\n\t\r\n', 'sep=;\n']) {
      expect(readCsv(Buffer.from(text), place)).toMatchObject({ grid: { rows: [] }, problems: [] });
    }
  });

  it('names the row where a quotation mark opens, as a spreadsheet counts', () => {
    const { problems } = readCsv(Buffer.from('paint,size ml\n\n"Red,17\nBlue,24\n'), place);
    expect(problems).toMatchObject([{ code: 'unclosed-quote', row: 3, found: 'Red' }]);
  });

  it('questions a cell that no spreadsheet could hold', () => {
    const { problems } = readCsv(Buffer.from(`paint,size ml\nRed,17\n${'x'.repeat(32_768)},17\n`), place);
    expect(problems).toMatchObject([{ code: 'long-cell', row: 3, cell: 'A3' }]);
    expect(wordsOf(Buffer.from(`paint,size ml\n${'x'.repeat(32_767)},17\n`))).toEqual([]);
  });

  it('does not take other files for text', async () => {
    const codeOf = (bytes: Buffer): unknown => readCsv(bytes, place).problems.map(({ code }) => code);
    expect(codeOf(await makeWorkbook(fourSheets))).toEqual(['csv-is-workbook']);
    expect(codeOf(makeCompoundFile('Workbook'))).toEqual(['csv-is-workbook']);
    expect(codeOf(makeZip({ 'a.txt': 'a' }))).toEqual(['csv-is-workbook']);
    expect(codeOf(pictureBytes)).toEqual(['csv-is-not-text']);
    expect(codeOf(Buffer.from('%PDF-1.7\n1 0 obj'))).toEqual(['csv-is-not-text']);
    expect(readCsv(pictureBytes, place).grid).toBeUndefined();
  });
});
