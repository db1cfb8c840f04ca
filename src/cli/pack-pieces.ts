// Command line: many short texts as few large chunks of bytes. In: texts. Out: UTF-8 chunks of about two megabytes.

const chunkBytes = 2 ** 21;
/** A UTF-16 unit takes three bytes of UTF-8 at most. */
const mostBytesPerUnit = 3;

/** The bytes of all pieces in their order; every text is copied once, straight into its chunk. No pieces, no chunks. */
export function* packPieces(pieces: Iterable<string>): Generator<Uint8Array, void, undefined> {
  let chunk = Buffer.allocUnsafeSlow(chunkBytes);
  let filled = 0;
  for (const piece of pieces) {
    const most = piece.length * mostBytesPerUnit;
    if (filled + most > chunkBytes) {
      if (filled > 0) yield chunk.subarray(0, filled);
      chunk = Buffer.allocUnsafeSlow(Math.max(chunkBytes, most));
      filled = 0;
    }
    filled += chunk.write(piece, filled);
  }
  if (filled > 0) yield chunk.subarray(0, filled);
}
