// Command line: long text to the console. In: pieces of text. Out: the same on stdout, no faster than it is taken.
import { stdout } from 'node:process';
import { packPieces } from './pack-pieces.js';

/** Writes in chunks and waits until each is taken. */
export async function printChunks(pieces: Iterable<string>): Promise<void> {
  for (const chunk of packPieces(pieces)) {
    await new Promise<void>((taken, failed) => {
      stdout.write(chunk, (error) => (error ? failed(error) : taken()));
    });
  }
}
