// Unpacking: the XML of a package's part, tag by tag. In: chunks of bytes. Out: calls for tags and texts; the part never
// stands in memory, and no byte is looked at more than a few times.
import { decodeEntities } from './decode-xml-text.js';
import { UnpackError } from './unpack-error.js';

/** Names come without the prefix that some programs put before each. */
export interface XmlVisitor {
  /** `attributes` as written, for `readAttributes`. */
  readonly open: (name: string, attributes: string) => void;
  readonly close?: (name: string) => void;
  /** Text as written, for `decodeEntities`; a long one comes in pieces, none of them within an entity. */
  readonly text?: (text: string) => void;
}

/** No tag, comment or the like is longer in any of them; it is all that is held back from one chunk to the next. */
const MOST_TAG_LETTERS = 2 ** 20;
/** Cells lie six deep. */
const MOST_DEPTH = 256;
const LONGEST_ENTITY = 12;

/** Of UTF-16. Every letter up to the blank is one, as far as XML allows it at all. */
const SPACE = 0x20;
const DOUBLE_QUOTE = 0x22;
const SINGLE_QUOTE = 0x27;
const SLASH = 0x2f;
const COLON = 0x3a;
const GREATER = 0x3e;

/** Visits a whole part. Throws an UnpackError where it is no well-formed XML; no bytes are no part. */
export async function scanXml(chunks: AsyncIterable<Uint8Array>, visitor: XmlVisitor): Promise<void> {
  const scan = openScan(visitor);
  let decoder: InstanceType<typeof TextDecoder> | undefined;
  for await (const chunk of chunks) {
    decoder ??= new TextDecoder(encodingOf(chunk));
    scan.write(decoder.decode(chunk, { stream: true }));
  }
  scan.write(decoder?.decode() ?? '');
  scan.end();
}

/** ECMA-376 part 2, 8.2.5: UTF-8 or UTF-16. */
function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  return first === 0xff && second === 0xfe ? 'utf-16le' : 'utf-8';
}

const broken = (reason: string): UnpackError => new UnpackError('broken', reason);

function openScan(visitor: XmlVisitor): { readonly write: (text: string) => void; readonly end: () => void } {
  const path: string[] = [];
  let rest = '';
  let seen = false;

  const visitTag = (text: string, from: number, end: number): void => {
    const isClosing = text.charCodeAt(from) === SLASH;
    const { name, nameEnd } = readName(text, isClosing ? from + 1 : from, end);
    if (isClosing) {
      if (path.pop() !== name) throw broken(`${name} is closed and was not opened`);
      visitor.close?.(name);
      return;
    }
    seen = true;
    visitor.open(name, text.slice(nameEnd, end));
    if (text.charCodeAt(end - 1) === SLASH) visitor.close?.(name);
    else if (path.push(name) > MOST_DEPTH) throw broken(`${MOST_DEPTH} tags in one another`);
  };

  /** Where the markup that begins at `from` goes on; -1 while its end has not come. */
  const visitMarkup = (text: string, from: number): number => {
    const [ending, kind] = kindOf(text, from);
    if (kind === 'unsure') return -1;
    const end = kind === 'tag' ? tagEnd(text, from + 1) : text.indexOf(ending, from + 2);
    if (end === -1) return -1;
    if (kind === 'tag') visitTag(text, from + 1, end);
    if (kind === 'plain text') visitor.text?.(text.slice(from + CDATA.length, end).replaceAll('&', '&amp;'));
    return end + ending.length;
  };

  /** The text before the next tag; gives where it ends. */
  const visitText = (text: string, from: number, tag: number): number => {
    const end = tag === -1 ? wholeEntities(text, from) : tag;
    if (end > from) visitor.text?.(text.slice(from, end));
    return end;
  };

  const write = (chunk: string): void => {
    const text = rest + chunk;
    let at = 0;
    for (let next = 0; next !== -1 && next < text.length; ) {
      const tag = text.indexOf('<', next);
      at = visitText(text, next, tag);
      next = tag === -1 ? -1 : visitMarkup(text, tag);
      if (next !== -1) at = next;
    }
    rest = text.slice(at);
    if (rest.length > MOST_TAG_LETTERS) throw broken('a tag without an end');
  };

  const end = (): void => {
    if (rest.trim() !== '' || path.length > 0 || !seen) throw broken('the part is cut off');
  };
  return { write, end };
}

const CDATA = '<![CDATA[';

/** How the markup at `from` ends, and what it is. A document type may not stand in these parts and counts as damage. */
function kindOf(text: string, from: number): readonly [string, 'tag' | 'skipped' | 'plain text' | 'unsure'] {
  const second = text[from + 1];
  if (second === '?') return ['?>', 'skipped'];
  if (second !== '!') return ['>', second === undefined ? 'unsure' : 'tag'];
  const start = text.slice(from, from + CDATA.length);
  if (start.startsWith('<!--')) return ['-->', 'skipped'];
  if (start === CDATA) return [']]>', 'plain text'];
  if (CDATA.startsWith(start) || '<!--'.startsWith(start)) return ['', 'unsure'];
  throw broken('a document type');
}

/** The `>` of a tag, which may also stand between its quotation marks; -1 while it has not come. */
function tagEnd(text: string, from: number): number {
  let quote = 0;
  for (let at = from; at < text.length; at += 1) {
    const letter = text.charCodeAt(at);
    if (quote !== 0) quote = letter === quote ? 0 : quote;
    else if (letter === GREATER) return at;
    else if (letter === DOUBLE_QUOTE || letter === SINGLE_QUOTE) quote = letter;
  }
  return -1;
}

/** The name of a tag without its prefix, and where it ends. */
function readName(
  text: string,
  from: number,
  end: number,
): { readonly name: string; readonly nameEnd: number } {
  let start = from;
  let at = from;
  for (; at < end; at += 1) {
    const letter = text.charCodeAt(at);
    if (letter === COLON) start = at + 1;
    else if (letter <= SPACE || letter === SLASH) break;
  }
  if (start === at) throw broken('a tag without a name');
  return { name: text.slice(start, at), nameEnd: at };
}

/** The end of a text that goes on in the next chunk, before an entity that may go on there too. */
function wholeEntities(text: string, from: number): number {
  const entity = text.lastIndexOf('&');
  const isWhole = entity < from || text.length - entity > LONGEST_ENTITY || text.includes(';', entity);
  return isWhole ? text.length : entity;
}

/** Decoded values by name without prefix, the last of two alike. Reading ends where the text is no attribute. */
export function readAttributes(text: string): Map<string, string> {
  const attributes = new Map<string, string>();
  for (let at = 0; ; ) {
    const equals = text.indexOf('=', at);
    const from = equals + 1 + (equals === -1 ? 0 : blanksAt(text, equals + 1));
    const quote = equals === -1 ? '' : text.charAt(from);
    const end = quote === '"' || quote === "'" ? text.indexOf(quote, from + 1) : -1;
    if (end === -1) return attributes;
    const name = text.slice(at, equals).trim();
    attributes.set(name.slice(name.indexOf(':') + 1), decodeEntities(text.slice(from + 1, end)));
    at = end + 1;
  }
}

function blanksAt(text: string, from: number): number {
  let at = from;
  while (at < text.length && text.charCodeAt(at) <= SPACE) at += 1;
  return at - from;
}
