// Surface: a text file line by line. In: bytes. Out: a call for each line; the text never stands in memory as a whole.
import { ModelError } from './model-error.js';

const PIECE_BYTES = 2 ** 20;
/** No line of coordinates is longer; a face of a thousand corners takes twenty thousand letters. */
const MOST_LETTERS = 2 ** 20;

/** Visits every line without its end and outer blanks, counted from 1. A backslash at its end joins a line to the next. */
export function scanLines(bytes: Uint8Array, visit: (line: string, number: number) => void): void {
  const decoder = new TextDecoder();
  let [rest, number] = ['', 0];
  const take = (text: string): void => {
    let from = 0;
    for (let end = lineEnd(text, 0); end !== -1; end = lineEnd(text, from)) {
      number += 1;
      visit(text.slice(from, end).trim().replaceAll('\\\n', ' '), number);
      from = end + 1;
    }
    rest = text.slice(from);
    if (rest.length > MOST_LETTERS) throw new ModelError('broken', `line ${number + 1} has no end`);
  };
  for (let at = 0; at < bytes.length; at += PIECE_BYTES) {
    const piece = decoder.decode(bytes.subarray(at, at + PIECE_BYTES), { stream: true });
    take(rest + piece.replaceAll('\r\n', '\n').replaceAll('\r', '\n'));
  }
  take(`${rest}${decoder.decode()}\n`);
  if (rest !== '') visit(rest.trim(), number + 1);
}

function lineEnd(text: string, from: number): number {
  let end = text.indexOf('\n', from);
  while (end > 0 && text.charCodeAt(end - 1) === BACKSLASH) end = text.indexOf('\n', end + 1);
  return end;
}

const BACKSLASH = 0x5c;
