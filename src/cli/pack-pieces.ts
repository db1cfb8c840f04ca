// Command line: many short texts as few large chunks of bytes. In: texts. Out: UTF-8 chunks of about a megabyte.

const chunkLength = 2 ** 20;

/** The bytes of all pieces in their order. No text, no chunks. */
export function* packPieces(pieces: Iterable<string>): Generator<Uint8Array, void, undefined> {
  let text = '';
  for (const piece of pieces) {
    text += piece;
    if (text.length < chunkLength) continue;
    yield Buffer.from(text);
    text = '';
  }
  if (text !== '') yield Buffer.from(text);
}
