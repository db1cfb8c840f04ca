import { expect, it } from 'vitest';
import { sniffFile } from '../../../src/sheets/read/sniff-file.js';
import { fourSheets, makeCompoundFile, makeWorkbook, makeZip } from './make-files.js';

it.each([
  ['a zip', makeZip({ a: 'b' }), 'zip'],
  ['an empty zip', makeZip({}), 'zip'],
  ['an encrypted workbook', makeCompoundFile('EncryptionInfo', 'EncryptedPackage'), 'locked workbook'],
  ['an old workbook', makeCompoundFile('Workbook', '\u0005SummaryInformation'), 'old workbook'],
  ['an older workbook', makeCompoundFile('Book'), 'old workbook'],
  ['a text document of an office program', makeCompoundFile('WordDocument'), 'document'],
  ['a PDF', Buffer.from('%PDF-1.7\n'), 'document'],
  ['text', Buffer.from('paint,size ml'), 'other'],
  ['nothing', Buffer.alloc(0), 'other'],
])('tells what %s is', (_, bytes, kind) => {
  expect(sniffFile(bytes)).toBe(kind);
});

it('takes a workbook for a zip', async () => {
  expect(sniffFile(await makeWorkbook(fourSheets))).toBe('zip');
});

it('looks at the given bytes only, not at what lies around them in memory', () => {
  const both = Buffer.concat([makeCompoundFile('Workbook'), Buffer.from('EncryptedPackage', 'utf16le')]);
  expect(sniffFile(both.subarray(0, 1024))).toBe('old workbook');
});
