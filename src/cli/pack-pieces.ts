// Command line: many short texts as few large chunks of bytes. In: texts. Out: UTF-8 chunks of about two megabytes.
import type { FilledPiece, Piece } from '../report/plan-json/write-plan-json.js';

const chunkBytes = 2 ** 21;
/** A UTF-16 unit takes three bytes of UTF-8 at most. */
const mostBytesPerUnit = 3;

/**
 * The bytes of all pieces in their order. Two chunks take turns, so one may be used until the next but one is asked for.
 * No pieces, no chunks.
 */
export function* packPieces(pieces: Iterable<Piece>): Generator<Uint8Array, void, undefined> {
  const write = openWriter();
  let [chunk, other] = [Buffer.allocUnsafeSlow(chunkBytes), Buffer.alloc(0)];
  let filled = 0;
  for (const piece of pieces) {
    const most = mostBytes(piece);
    if (filled + most > chunk.length) {
      if (filled > 0) yield chunk.subarray(0, filled);
      const least = Math.max(chunkBytes, most);
      [chunk, other] = [other.length >= least ? other : Buffer.allocUnsafeSlow(least), chunk];
      filled = 0;
    }
    filled += write(piece, chunk, filled);
  }
  if (filled > 0) yield chunk.subarray(0, filled);
}

function mostBytes(piece: Piece): number {
  if (typeof piece === 'string') return piece.length * mostBytesPerUnit;
  const { own, around } = piece;
  const units = around.reduce((sum, text) => sum + text.length, own.length * (around.length - 1));
  return units * mostBytesPerUnit;
}

/** A filled piece as bytes. */
interface Template {
  readonly bytes: Uint8Array;
  /** Where each gap begins. */
  readonly gaps: readonly number[];
  /** What the gaps are filled with. */
  readonly own: Uint8Array;
}

/** Writes a piece at a place of a chunk that has room for it, and gives back its bytes. */
function openWriter(): (piece: Piece, chunk: Buffer, at: number) => number {
  const templates = new Map<FilledPiece['around'], Template>();
  return (piece, chunk, at) => {
    if (typeof piece === 'string') return chunk.write(piece, at);
    const own = Buffer.from(piece.own);
    const last = templates.get(piece.around);
    const template = last?.own.length === own.length ? last : makeTemplate(piece, own);
    templates.set(piece.around, template);
    fillAnew(template, own);
    chunk.set(template.bytes, at);
    return template.bytes.length;
  };
}

function makeTemplate({ own, around }: FilledPiece, ownBytes: Uint8Array): Template {
  const gaps: number[] = [];
  let end = 0;
  for (const text of around) {
    end += Buffer.byteLength(text);
    gaps.push(end);
    end += ownBytes.length;
  }
  return { bytes: Buffer.from(around.join(own)), gaps: gaps.slice(0, -1), own: ownBytes };
}

/** Most of what is filled in is like the last one, so only bytes that differ are set. */
function fillAnew({ bytes, gaps, own: last }: Template, own: Uint8Array): void {
  for (let at = 0; at < own.length; at += 1) {
    const byte = own[at] ?? 0;
    if (byte === last[at]) continue;
    last[at] = byte;
    for (const gap of gaps) bytes[gap + at] = byte;
  }
}
