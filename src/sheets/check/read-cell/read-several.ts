// Checks: several pots in one cell. In: `2 full, 1 half`, `2x`, `2x 17 ml`. Out: what is left in each, or how many of which size.
import { type CellKind, Mistake, type Written } from './cell-kind.js';
import { leftKind, type OneReading, readOne } from './read-left.js';
import { potVolume } from './read-number.js';

/** What is left in pots of one row, one by one. */
interface SeveralReadings {
  readonly how: 'several';
  readonly of: readonly OneReading[];
}

export type WrittenReading = OneReading | SeveralReadings;

/** Pots of one size. */
interface SeveralSizes {
  readonly count: number;
  readonly ml: number;
}

export type WrittenSize = number | SeveralSizes;

const longest = 80;
/** Pots that one cell may come to. */
const mostPots = 1000;
const joint = /\s*(?:[;+&]|,\s|\s(?:and|und|et|y|e|en|i)\s)\s*/;
const some = /^(\d{1,4})( ?[x×] ?| )(\S.*)$/i;
const bare = /^(?:(\d{1,4}) ?[x×]|[x×] ?(\d{1,4}))$/i;

/** One pot as ever; `2x` are two full ones. */
function readLeft(cell: Written): WrittenReading | Mistake {
  const one = readOne(cell);
  if (!(one instanceof Mistake) || one.code !== 'not-a-reading') return one;
  const text = String(cell);
  const of = text.length > longest ? [] : text.split(joint).flatMap(readPart);
  const isRight = of.length > 0 && of.length <= mostPots && !of.includes(undefined);
  return isRight ? { how: 'several', of: of as readonly OneReading[] } : one;
}

/** Without a cross only what can be counted: `2 thirds` are no two pots. A weight is that of one. */
function readPart(part: string): (OneReading | undefined)[] {
  const [isBare, first, second] = bare.exec(part) ?? [];
  const [, counted, cross = '', said = 'full'] = (isBare === undefined && some.exec(part)) || [];
  const count = Number(first ?? second ?? counted);
  const reading = readOne(said);
  const isWord = !(reading instanceof Mistake) && reading.how === 'by eye' && !said.includes('%');
  const isWhole = isWord && (count === 1 || reading.isRough === true || [0, 0.5, 1].includes(reading.share));
  if (!(count >= 1 && count <= mostPots) || reading instanceof Mistake || reading.how === 'in g')
    return [undefined];
  if (cross === ' ' && !isWhole) return [undefined];
  return Array.from({ length: count }, () => reading);
}

/** Of one pot, or of several in one cell. */
export const leftsKind: CellKind<WrittenReading> = { ...leftKind, read: readLeft };

const times = /^(.+?) ?[x×*] ?(.+)$/i;
const whole = /^\d{1,4}$/;

/** `2x 17 ml` and `17 ml x 2`; of two bare numbers the smaller, which has to stand in front, is the count. */
function readSize(cell: Written): WrittenSize | Mistake {
  const one = potVolume.read(cell);
  const text = typeof cell === 'string' && cell.length <= longest ? cell : '';
  const [, before = '', after = ''] = times.exec(text) ?? [];
  if (!(one instanceof Mistake) || after === '') return one;
  const isInFront = whole.test(before) && (!whole.test(after) || Number(before) < Number(after));
  if (!isInFront && (whole.test(before) || !whole.test(after))) return one;
  const [count, ml] = isInFront
    ? [Number(before), potVolume.read(after)]
    : [Number(after), potVolume.read(before)];
  return ml instanceof Mistake || count < 1 || count > mostPots ? one : { count, ml };
}

/** The label of a pot, or of several alike. */
export const shelfVolume: CellKind<WrittenSize> = { ...potVolume, read: readSize };
