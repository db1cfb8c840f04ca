// Readers: what a number format of a workbook makes of a number. In: its code (ECMA-376 18.8.31). Out: a kind, and the unit or
// currency that the format writes beside the number.
import { isCurrencySign } from '../check/read-cell/read-price.js';
import { isMeasure } from '../units.js';

export interface CellFormat {
  readonly kind: 'date' | 'percent' | 'number';
  /** `ml`, `$`, `USD`; '' for none. */
  readonly unit: string;
}

export const plainFormat: CellFormat = { kind: 'number', unit: '' };

/** No program writes a longer one, and looking through it may take its length squared. */
const longest = 255;

/** Quoted, escaped, padding and filling letters; a currency, a condition or colour; a bare sign; the end of a section. */
const piece =
  /"(?<quoted>[^"]*)"|\\(?<escaped>.)|[_*].|\[\$(?<currency>[^\]-]*)[^\]]*\]|\[(?!h+\]|m+\]|s+\])[^\]]*\]|(?<sign>\p{Sc})|(?<end>;)/giu;

/** By its first section. No format is General. */
export function readFormat(code: string | undefined): CellFormat {
  if (code === undefined || code.length > longest || /^(general|standard)/i.test(code)) return plainFormat;
  let beside = '';
  let isOver = false;
  const bare = code.replace(piece, (...found) => {
    const { quoted, escaped, currency, sign, end } = found.at(-1) as Record<string, string | undefined>;
    if (!isOver) beside += quoted ?? escaped ?? currency ?? sign ?? '';
    isOver ||= end !== undefined;
    return end ?? '';
  });
  const section = bare.split(';', 1)[0] ?? '';
  if (/[ymdhs]/i.test(section)) return { kind: 'date', unit: '' };
  return section.includes('%') ? { kind: 'percent', unit: '' } : { kind: 'number', unit: unitOf(beside) };
}

/** Other words that a format may write say nothing of the number: `0" pots"`. */
function unitOf(beside: string): string {
  const unit = beside.trim().replace(/\.$/, '');
  return isMeasure(unit) || (unit.length <= 4 && isCurrencySign(unit.toLowerCase())) ? unit : '';
}
