import { describe, expect, it } from 'vitest';
import { decodeText } from '../../../src/sheets/read/decode-text.js';
import { knownHeaderKeys } from '../../../src/sheets/spell-headers.js';
import { pictureBytes } from './make-files.js';

/** The headers of pots. */
const decode = (bytes: Uint8Array) => decodeText(bytes, knownHeaderKeys('pots'));
const utf16be = (text: string): Buffer => Buffer.from(text, 'utf16le').swap16();
const sheet = 'paint,size ml\nÉcarlate,17\n';

describe('decodeText', () => {
  it.each([
    ['UTF-8', Buffer.from(sheet), 'utf-8'],
    ['UTF-8 with a byte order mark', Buffer.from(`\uFEFF${sheet}`), 'utf-8'],
    ['UTF-16 LE with a mark', Buffer.from(`\uFEFF${sheet}`, 'utf16le'), 'utf-16le'],
    ['UTF-16 BE with a mark', utf16be(`\uFEFF${sheet}`), 'utf-16be'],
    ['UTF-16 LE without a mark', Buffer.from(sheet, 'utf16le'), 'utf-16le'],
    ['UTF-16 BE without a mark', utf16be(sheet), 'utf-16be'],
    ['Windows-1252', Buffer.from(sheet, 'latin1'), 'windows-1252'],
  ])('reads %s', (_, bytes, encoding) => {
    expect(decode(bytes)).toEqual({ text: sheet, encoding });
  });

  it('reads UTF-16 of Cyrillic paints under English headers, without a mark', () => {
    const text = 'paint,size ml\nКрасная,17\nСиняя,24\n';
    expect(decode(Buffer.from(text, 'utf16le'))).toEqual({ text, encoding: 'utf-16le' });
  });

  // Code points: Unicode consortium, MAPPINGS/VENDORS/MICSFT/WINDOWS/CP1252.TXT.
  it.each([
    [0x80, 0x20ac],
    [0x85, 0x2026],
    [0x8a, 0x0160],
    [0x91, 0x2018],
    [0x93, 0x201c],
    [0x96, 0x2013],
    [0x99, 0x2122],
    [0x9f, 0x0178],
    [0xa0, 0x00a0],
    [0xe9, 0x00e9],
    [0xff, 0x00ff],
  ])('reads the Windows-1252 byte %i as code point %i', (byte, codePoint) => {
    // 0xC9 before a comma is no UTF-8.
    const bytes = Buffer.from([0xc9, 0x2c, byte]);
    expect(decode(bytes)).toEqual({
      text: `É,${String.fromCodePoint(codePoint)}`,
      encoding: 'windows-1252',
    });
  });

  // Code points: Unicode consortium, MAPPINGS/VENDORS/MICSFT/WINDOWS/CP1250.TXT: ś 0x9C, ć 0xE6, ł 0xB3, ą 0xB9, ż 0xBF, ń 0xF1.
  it.each([
    ['a header of the sheet', 'farba,pojemno\x9c\xe6\nZiele\xf1,17\n', 'farba,pojemność\nZieleń,17\n'],
    ['a letter inside a word', 'farba,ml\r\nzg\xb3\xea\xbfa,17\r\n', 'farba,ml\r\nzgłęża,17\r\n'],
  ])('reads Windows-1250 where %s is Polish', (_, bytes, text) => {
    expect(decode(Buffer.from(bytes, 'latin1'))).toEqual({ text, encoding: 'windows-1250' });
  });

  it.each([
    ['the header of another language', 'colore,ml,quantit\xe0\nL\xb3x,17,1\n'],
    ['a unit of volume', 'colour,cm\xb3\nrojo \xbfqu\xe9?,17 cm\xb3\n'],
  ])('reads Windows-1252 where %s is there', (_, bytes) => {
    const text = new TextDecoder('latin1').decode(Buffer.from(bytes, 'latin1'));
    expect(decode(Buffer.from(bytes, 'latin1'))).toEqual({ text, encoding: 'windows-1252' });
  });

  it('gives an empty text for no bytes', () => {
    expect(decode(Buffer.alloc(0))).toEqual({ text: '', encoding: 'utf-8' });
    expect(decode(Buffer.from([0xff, 0xfe]))).toEqual({ text: '', encoding: 'utf-16le' });
  });

  it.each([
    ['a picture', pictureBytes],
    ['zero bytes', Buffer.alloc(64)],
    ['text with a zero byte', Buffer.from('paint,size ml\nRed\0,17\n')],
    ['control characters', Buffer.from([1, 2, 3, 4, 5, 6, 7, 8, 65, 66, 67])],
  ])('refuses %s', (_, bytes) => {
    expect(decode(bytes)).toBeUndefined();
  });
});
