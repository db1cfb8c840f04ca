import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const root = makeFolder();

/** [MS-CFB] 2.2: the signature of a compound file, then some stream name in UTF-16 ([MS-XLS] 2.1.2, [MS-OFFCRYPTO] 1.3.3). */
const compoundFile = (stream: string): Uint8Array =>
  Buffer.concat([
    Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
    Buffer.alloc(1016),
    Buffer.from(stream, 'utf16le'),
    Buffer.alloc(512),
  ]);

const manyRows = Array.from({ length: 10_000 }, (_, at) => `paint ${at},twelve\n`).join('');

/** What is spoiled in the four right sheets, or the one file that is read, and what the message must say. */
const cases: readonly {
  readonly what: string;
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  readonly alone?: boolean;
  readonly path?: string;
  readonly says: RegExp;
}[] = [
  { what: 'a missing folder', path: 'nowhere', says: /nowhere: there is no such file or folder/ },
  { what: 'an empty folder', alone: true, says: /this folder is empty/ },
  { what: 'an empty sheet', files: { 'army.csv': '' }, says: /army\.csv: this sheet is empty/ },
  { what: 'a sheet of blanks', files: { 'army.csv': ' \r\n;;\r\n' }, says: /army\.csv/ },
  {
    what: 'a header only',
    files: { 'army.csv': 'unit,figure,count\n' },
    says: /army\.csv row 1: there is nothing below the header/,
  },
  {
    what: 'a missing sheet',
    files: {
      'pots.csv': 'paint,size ml\nbrick red,17\n',
      'army.csv': 'unit,figure,count\nfirst spears,spearman,20\n',
    },
    alone: true,
    says: /this sheet is needed and is not there/,
  },
  {
    what: 'an unknown file type',
    files: { 'army.numbers': 'x' },
    path: 'army.numbers',
    alone: true,
    says: /army\.numbers: a file of this type cannot be read/,
  },
  {
    what: 'an old workbook',
    files: { 'army.xls': compoundFile('Workbook') },
    path: 'army.xls',
    alone: true,
    says: /the old \.xls format/,
  },
  {
    what: 'a workbook with a password',
    files: { 'army.xlsx': compoundFile('EncryptedPackage') },
    path: 'army.xlsx',
    alone: true,
    says: /locked with a password/,
  },
  {
    what: 'a broken workbook',
    files: { 'army.xlsx': 'PK\u0003\u0004 and no more' },
    path: 'army.xlsx',
    alone: true,
    says: /damaged/,
  },
  {
    what: 'a workbook that is none',
    files: { 'army.xlsx': 'unit,figure' },
    path: 'army.xlsx',
    alone: true,
    says: /not a workbook/,
  },
  {
    what: 'no ml at all',
    files: { 'pots.csv': 'paint,size ml\nbrick red,0\nearth wash,24\n' },
    says: /pots\.csv row 2, "size ml" \(B2\): "0" is zero/,
  },
  {
    what: 'ml below zero',
    files: { 'pots.csv': 'paint,size ml\nbrick red,-17\nearth wash,24\n' },
    says: /pots\.csv row 2, "size ml" \(B2\): "-17" is below zero/,
  },
  {
    what: 'a pot of 40 litres',
    files: { 'pots.csv': 'paint,size ml\nbrick red,40000\nearth wash,24\n' },
    says: /pots\.csv row 2, "size ml" \(B2\): "40000" is more than/,
  },
  {
    what: 'an eye height of 3 m',
    files: { 'figures.csv': 'figure,eye mm\nspearman,3000\n' },
    says: /figures\.csv row 2, "eye mm" \(B2\): "3000" is more than/,
  },
  {
    what: 'a count of 2.5',
    files: { 'army.csv': 'unit,figure,count\nfirst spears,spearman,2.5\n' },
    says: /army\.csv row 2, "count" \(C2\): "2\.5" is not a whole number/,
  },
  {
    what: 'an unknown figure',
    files: { 'army.csv': 'unit,figure,count\nfirst spears,speerman,20\n' },
    says: /army\.csv row 2, "figure" \(B2\): .*"speerman".*spearman/,
  },
];

describe('bad input', () => {
  it.each(cases)(
    '$what: one clear message, exit 1, nothing written',
    ({ what, files = {}, alone = false, path = '', says }) => {
      const folder = join(root, what.replaceAll(' ', '-'));
      mkdirSync(folder);
      writeSheets(folder, { ...(alone ? {} : fourShortSheets), ...files });
      const before = readdirSync(folder);
      const run = runHalfpot(['plan', join(folder, path), '--out', join(folder, 'out')], { cwd: folder });
      expect({ code: run.code, out: run.out }).toEqual({ code: 1, out: '' });
      expect(run.err).toMatch(says);
      expect(run.err).toMatch(/^error: /);
      expect(run.err).not.toMatch(/\n {4}at /);
      expect(readdirSync(folder)).toEqual(before);
    },
  );

  it.each([[['check']], [['plan']], [['plan', '--json']]])('%j says the same and writes nothing', (args) => {
    const folder = join(root, args.join());
    mkdirSync(folder);
    writeSheets(folder, { ...fourShortSheets, 'army.csv': 'unit,figure,count\nfirst spears,spearman,2.5\n' });
    const before = readdirSync(folder);
    const { code, out, err } = runHalfpot(args, { cwd: folder });
    expect({ code, out }).toEqual({ code: 1, out: '' });
    const [first = '', count, ...read] = err.split('\n');
    expect(first).toMatch(/^error: army\.csv row 2, "count" \(C2\): "2\.5" is not a whole number\./);
    expect([count, ...read]).toEqual([
      '1 error',
      ...(args[0] === 'check' ? ['Read:', '  army      army.csv, row 1: unit, figure, count'] : []),
      '',
    ]);
    expect(readdirSync(folder)).toEqual(before);
  });

  it('10,000 problems at once are counted and not all shown', () => {
    const folder = join(root, 'many');
    mkdirSync(folder);
    writeSheets(folder, { ...fourShortSheets, 'pots.csv': `paint,size ml\n${manyRows}` });
    const { code, out, err } = runHalfpot(['plan', folder]);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('"size ml" (B2): "twelve" is not a volume');
    expect(err).toContain('  and 9995 more of the same in this column');
    expect(err).toMatch(/\n1000\d errors(, \d+ warnings?)?\n$/);
    expect(err.split('\n').length).toBeLessThan(40);
  });

  it('all problems of all sheets come in one run, in the order of sheets and rows', () => {
    const folder = join(root, 'all');
    mkdirSync(folder);
    writeSheets(folder, {
      ...fourShortSheets,
      'army.csv': 'unit,figure,count\nfirst spears,spearman,2.5\n',
      'pots.csv': 'paint,size ml\nbrick red,0\nearth wash,minus\n',
      'figures.csv': 'figure,eye mm\nspearman,3000\n',
    });
    const { err } = runHalfpot(['check', folder]);
    const places = err
      .split('\n')
      .map((line) => /^error: (\w+)\.csv row (\d+)/.exec(line)?.slice(1).join(' '));
    expect(places.filter((place) => place !== undefined)).toEqual([
      'pots 2',
      'pots 3',
      'figures 2',
      'army 2',
    ]);
  });

  it('a date that is none is wrong usage, and nothing is read or written', () => {
    const { code, out, err } = runHalfpot(['plan', join(root, 'nowhere'), '--date', '2026-02-30']);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe('halfpot: "2026-02-30" is not a day. Write --date as 2026-03-14.\n');
  });

  it('a file that is no folder of sheets is named', () => {
    writeFileSync(join(root, 'pots.csv'), fourShortSheets['pots.csv'] ?? '');
    expect(runHalfpot(['check', join(root, 'pots.csv')]).err).toMatch(
      /pots\.csv: this is one sheet by itself/,
    );
  });
});
