// Command line: long text to the console. In: chunks of text. Out: the same on stdout, no faster than it is taken.
import { once } from 'node:events';
import { stdout } from 'node:process';

/** Writes chunk by chunk and waits whenever the reader is slower. */
export async function printChunks(chunks: Iterable<string>): Promise<void> {
  for (const chunk of chunks) if (!stdout.write(chunk)) await once(stdout, 'drain');
}
