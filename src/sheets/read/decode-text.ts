// Readers: bytes of a text file to a string. In: bytes. Out: the text and the encoding it was read in.

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

export interface DecodedText {
  readonly text: string;
  readonly encoding: Encoding;
}

/** Enough bytes to see whether every second one is zero, or whether control characters abound. */
const SAMPLE_BYTES = 4096;

/**
 * Decodes by byte order mark, else UTF-16 by its pattern of zero bytes, else UTF-8 where it is valid, else
 * Windows-1252, which takes any byte. Undefined where the bytes are no text; no bytes give an empty text.
 */
export function decodeText(bytes: Uint8Array): DecodedText | undefined {
  const utf16 = utf16Of(bytes);
  if (utf16 !== undefined) {
    const text = new TextDecoder(utf16).decode(bytes);
    return text.includes('\0') ? undefined : { text, encoding: utf16 };
  }
  if (looksBinary(bytes)) return undefined;
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'utf-8' };
  } catch {
    return { text: decodeWindows1252(bytes), encoding: 'windows-1252' };
  }
}

function utf16Of(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
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
  const sample = bytes.subarray(0, SAMPLE_BYTES);
  let controls = 0;
  for (const byte of sample) if (byte < 9 || (byte > 13 && byte < 32)) controls += 1;
  return controls * 50 > sample.length;
}

/** In one shot Node decodes 0x80 to 0x9F as Latin-1 control characters; as a stream it does so rightly. */
function decodeWindows1252(bytes: Uint8Array): string {
  const decoder = new TextDecoder('windows-1252');
  return decoder.decode(bytes, { stream: true }) + decoder.decode();
}
