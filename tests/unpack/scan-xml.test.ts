import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeCellText, decodeEntities } from '../../src/unpack/decode-xml-text.js';
import { readAttributes, scanXml } from '../../src/unpack/scan-xml.js';
import { UnpackError } from '../../src/unpack/unpack-error.js';

/** Chunks of so many bytes. */
async function* cut(bytes: Buffer, length: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += length) yield bytes.subarray(at, at + length);
}

/** What was met: `<name`, `>name` and texts, decoded and joined. */
async function met(xml: string | Buffer, length = 2 ** 18): Promise<string[]> {
  const found: string[] = [];
  let text = '';
  const flush = (): void => {
    if (text !== '') found.push(text);
    text = '';
  };
  await scanXml(cut(Buffer.from(xml), length), {
    open: (name) => {
      flush();
      found.push(`<${name}`);
    },
    close: (name) => {
      flush();
      found.push(`>${name}`);
    },
    text: (piece) => {
      text += decodeEntities(piece);
    },
  });
  return found;
}

describe('scanXml', () => {
  it.each([
    ['<a><b>x</b><c/></a>', ['<a', '<b', 'x', '>b', '<c', '>c', '>a']],
    ['<x:a xmlns:x="m"><x:b/></x:a>', ['<a', '<b', '>b', '>a']],
    [`<a t="1>2" u='"'>&lt;&#x41;&#66;</a>`, ['<a', '<AB', '>a']],
    ['<?xml version="1.0"?><!-- <b> --><a><![CDATA[<b> & &lt;]]></a>\n', ['<a', '<b> & &lt;', '>a']],
    ['\ufeff<a>é😀</a>', ['<a', 'é😀', '>a']],
    ['<a\n b = "1"\t/>', ['<a', '>a']],
  ])('visits %s', async (xml, expected) => {
    for (const length of [1, 2, 3, 7, 1000]) expect(await met(xml, length)).toEqual(expected);
  });

  it('reads UTF-16 of either order', async () => {
    const little = Buffer.from('\ufeff<a>é</a>', 'utf16le');
    expect(await met(little, 6)).toEqual(['<a', 'é', '>a']);
    expect(await met(Buffer.from(little).swap16(), 6)).toEqual(['<a', 'é', '>a']);
  });

  it.each([
    '',
    ' ',
    'text',
    '<a>',
    '<a></b>',
    '</a>',
    '<a',
    '<a b="',
    '<>',
    '</>',
    '<!DOCTYPE a [<!ENTITY b "c">]><a/>',
    '<a><!-- </a>',
    '<a/>more<',
    `<a>${'<b>'.repeat(300)}`,
  ])('refuses %j', async (xml) => {
    await expect(met(xml)).rejects.toThrow(UnpackError);
  });

  it('refuses a tag that goes on and on', async () => {
    await expect(met(`<a ${'b'.repeat(2 ** 21)}`)).rejects.toThrow('a tag without an end');
  });

  it('meets the same however the bytes come', async () => {
    const piece = fc.constantFrom(
      '<a>',
      '</a>',
      '<b c="d>"/>',
      'x & y',
      '&amp;',
      '<!-- > -->',
      '<![CDATA[<]]>',
      'é',
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(piece, { maxLength: 12 }),
        fc.integer({ min: 1, max: 9 }),
        async (parts, length) => {
          const xml = `<r>${parts.join('')}</r>`;
          const outcome = async (bytes: number): Promise<unknown> =>
            met(xml, bytes).catch((error: Error) => error.name);
          expect(await outcome(length)).toEqual(await outcome(10_000));
        },
      ),
      { seed: 6, numRuns: 200 },
    );
  });
});

describe('readAttributes', () => {
  it.each([
    [
      ' a="1" b=\'2\'',
      [
        ['a', '1'],
        ['b', '2'],
      ],
    ],
    [
      ' r:id = "x"\n xml:space="preserve" /',
      [
        ['id', 'x'],
        ['space', 'preserve'],
      ],
    ],
    [
      ' a="&lt;&quot;&#38;" b="<"',
      [
        ['a', '<"&'],
        ['b', '<'],
      ],
    ],
    [' a=1 b="2"', []],
    [' a="1" b="', [['a', '1']]],
    ['', []],
  ])('reads %j', (text, expected) => {
    expect([...readAttributes(text)]).toEqual(expected);
  });
});

describe('texts', () => {
  it('are decoded once', () => {
    expect(decodeEntities('&amp;lt; &#x1F600; &what; &#xFFFFFFFF; & ;')).toBe(
      '&lt; 😀 &what; &#xFFFFFFFF; & ;',
    );
  });

  // ECMA-376 22.9.2.19: the underscore before an escape is itself escaped as _x005F_.
  it('of cells have their escapes decoded', () => {
    expect(decodeCellText('a_x000D_b _x005F_x000D_ _x12_')).toBe('a\rb _x000D_ _x12_');
  });
});
