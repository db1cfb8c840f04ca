// Readers: bytes of a text file to a string. In: bytes, the keys of the headers that its sheet knows. Out: the text and the
// encoding it was read in.
import type { KnownHeaders } from '../spell-headers.js';
import { countHeaders } from './find-delimiter.js';

/** Encodings that take nearly any byte, so that reading in them is a guess. */
const guessed = { 'windows-1252': 'Windows-1252', 'windows-1250': 'Windows-1250' } as const;
type Guessed = keyof typeof guessed;

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | Guessed;

export const isGuessed = (encoding: Encoding): encoding is Guessed => Object.hasOwn(guessed, encoding);

/** As people write it. */
export const nameOfGuess = (encoding: Guessed): string => guessed[encoding];

export interface DecodedText {
  readonly text: string;
  readonly encoding: Encoding;
}

/** Enough bytes to see whether every second one is zero, or whether control characters abound. */
const SAMPLE_BYTES = 4096;

/**
 * Decodes by byte order mark, else UTF-16 by its pattern of zero bytes, else UTF-8 where it is valid, else
 * Windows-1252, or Windows-1250 where the words are Polish. Undefined where the bytes are no text; no bytes give an empty text.
 */
export function decodeText(bytes: Uint8Array, knownHeaders: KnownHeaders): DecodedText | undefined {
  const utf16 = utf16Of(bytes);
  if (utf16 !== undefined) {
    const text = new TextDecoder(utf16).decode(bytes);
    return text.includes('\0') ? undefined : { text, encoding: utf16 };
  }
  if (looksBinary(bytes)) return undefined;
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'utf-8' };
  } catch {
    return guess(bytes, knownHeaders);
  }
}

function utf16Of(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  // Nearly every file has none.
  if (!bytes.subarray(0, SAMPLE_BYTES).includes(0)) return undefined;
  const pairs = Math.min(bytes.length, SAMPLE_BYTES) >> 1;
  let evenZeros = 0;
  let oddZeros = 0;
  for (let pair = 0; pair < pairs; pair += 1) {
    if (bytes[2 * pair] === 0) evenZeros += 1;
    if (bytes[2 * pair + 1] === 0) oddZeros += 1;
  }
  // Headers, digits and delimiters are ASCII in every language, so a third of the halves are zero at least.
  if (oddZeros * 3 > pairs && evenZeros === 0) return 'utf-16le';
  if (evenZeros * 3 > pairs && oddZeros === 0) return 'utf-16be';
  return undefined;
}

function looksBinary(bytes: Uint8Array): boolean {
  if (bytes.includes(0)) return true;
  const sample = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, SAMPLE_BYTES));
  const controls = sample.toString('latin1').match(/[^\t-\r -\xff]/g)?.length ?? 0;
  return controls * 50 > sample.length;
}

/** The ł, ą and ż of Windows-1250 inside a word, as Windows-1252 reads them. */
const polishLetters = /\p{L}[³¹¿]\p{L}/u;

/** The encoding that shows more known headers; where both show as many, the letters tell. */
function guess(bytes: Uint8Array, knownHeaders: KnownHeaders): DecodedText {
  const [western, central] = (['windows-1252', 'windows-1250'] as const).map((encoding) => {
    const text = decodeGuessed(bytes, encoding);
    return { text, encoding, headers: countHeaders(text, knownHeaders) };
  }) as [Guess, Guess];
  const gain = central.headers - western.headers;
  const { text, encoding } = gain > 0 || (gain === 0 && polishLetters.test(western.text)) ? central : western;
  return { text, encoding };
}

interface Guess extends DecodedText {
  readonly headers: number;
}

/** In one shot Node decodes 0x80 to 0x9F of Windows-1252 as control characters; as a stream it does so rightly. */
export function decodeGuessed(bytes: Uint8Array, encoding: Guessed): string {
  const decoder = new TextDecoder(encoding);
  return decoder.decode(bytes, { stream: true }) + decoder.decode();
}
