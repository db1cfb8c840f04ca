// Command line: long text to the console. In: pieces of text. Out: the same on stdout, no faster than it is taken.
import { once } from 'node:events';
import { stdout } from 'node:process';
import { packPieces } from './pack-pieces.js';

/** Writes in chunks and waits whenever the reader is slower. */
export async function printChunks(pieces: Iterable<string>): Promise<void> {
  for (const chunk of packPieces(pieces)) if (!stdout.write(chunk)) await once(stdout, 'drain');
}
