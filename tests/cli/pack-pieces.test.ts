import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packPieces } from '../../src/cli/pack-pieces.js';
import type { Piece } from '../../src/report/plan-json/write-plan-json.js';

const textOf = (piece: Piece): string => (typeof piece === 'string' ? piece : piece.around.join(piece.own));

/** Each chunk is copied as soon as it is there, since a later one may be written over it. */
function bytesOf(pieces: readonly Piece[]): Buffer {
  const chunks: Buffer[] = [];
  for (const chunk of packPieces(pieces)) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks);
}

describe('packPieces', () => {
  it('gives the bytes of the joined texts, whatever is filled in', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 6 });
    // Two texts around, so that most pieces find theirs filled before, with an own part as long or longer.
    const around = fc.constantFrom<readonly string[]>(['', ' ä ', '–', '.'], [',\n', '']);
    const piece = fc.oneof(text, fc.record({ own: text, around }));
    fc.assert(
      fc.property(fc.array(piece), (pieces) => {
        expect(bytesOf(pieces).toString()).toBe(pieces.map(textOf).join(''));
      }),
    );
  });

  it('parts a long text into chunks of which the last two stand', () => {
    const around = ['<', '|'.repeat(9999), '>'];
    const pieces = Array.from({ length: 1000 }, (_, at) => ({ own: `Weir Guard ${at % 50}`, around }));
    const whole = pieces.map(textOf).join('');
    let place = 0;
    let before: { readonly chunk: Uint8Array; readonly text: string } = { chunk: new Uint8Array(), text: '' };
    for (const chunk of packPieces(pieces)) {
      expect(Buffer.from(before.chunk).toString()).toBe(before.text);
      before = { chunk, text: Buffer.from(chunk).toString() };
      expect(before.text).toBe(whole.slice(place, place + before.text.length));
      place += before.text.length;
    }
    expect(place).toBe(whole.length);
  });

  it('makes room for a piece longer than a chunk', () => {
    const pieces = ['a', 'ö'.repeat(2_000_000), { own: 'x'.repeat(1_500_000), around: ['', 'b', ''] }, 'c'];
    expect(bytesOf(pieces).toString() === pieces.map(textOf).join('')).toBe(true);
  });

  it('gives no chunk for no piece', () => {
    expect([...packPieces([])]).toEqual([]);
    expect([...packPieces(['', ''])]).toEqual([]);
  });
});
