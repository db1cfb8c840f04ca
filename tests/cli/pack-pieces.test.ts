import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packPieces } from '../../src/cli/pack-pieces.js';

const bytesOf = (pieces: readonly string[]): Buffer => Buffer.concat([...packPieces(pieces)]);

describe('packPieces', () => {
  it('gives the bytes of the joined texts', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme', maxLength: 6 })), (pieces) => {
        expect(bytesOf(pieces).toString()).toBe(pieces.join(''));
      }),
    );
  });

  it('parts a long text into chunks', () => {
    const pieces = Array.from({ length: 1000 }, (_, at) => `<Weir Guard ${at % 50} ${'–'.repeat(3333)}>`);
    const chunks = [...packPieces(pieces)];
    expect(chunks.length).toBeGreaterThan(2);
    expect(Math.max(...chunks.map(({ length }) => length))).toBeLessThan(4_000_000);
    expect(Buffer.concat(chunks).toString() === pieces.join('')).toBe(true);
  });

  it('makes room for a piece longer than a chunk', () => {
    const pieces = ['a', 'ö'.repeat(2_000_000), 'c'];
    expect(bytesOf(pieces).toString() === pieces.join('')).toBe(true);
  });

  it('gives no chunk for no piece', () => {
    expect([...packPieces([])]).toEqual([]);
    expect([...packPieces(['', ''])]).toEqual([]);
  });
});
