// Checks: shares. In: `60%`, `60`, or parts of a mix. Out: 0 to 1, or parts; or a mistake.
import { type CellKind, Mistake, type Written } from './cell-kind.js';
import { parseNumber } from './parse-number.js';

/** The number before a percent sign, or undefined where there is no such sign. */
function percentText(cell: Written): string | undefined {
  return typeof cell === 'string' && cell.endsWith('%') ? cell.slice(0, -1).trimEnd() : undefined;
}

/**
 * A share of the whole, above 0 up to 1. `60` and `60%` are both 0.6; a bare number between 0 and 1 could be a
 * share or a percentage and is questioned, since a spreadsheet shows 60% as 0.6 once the format is lost.
 */
export function readShare(cell: Written): number | Mistake {
  const percent = percentText(cell);
  const value = parseNumber(percent ?? cell);
  if (value === undefined) return new Mistake('not-a-share', 'a percentage, such as 60%');
  if (value instanceof Mistake) return value;
  if (percent === undefined && value > 0 && value < 1) return shareOrPercent(value);
  return checkShare(value);
}

function shareOrPercent(value: number): Mistake {
  const asShare = Number((value * 100).toPrecision(12));
  return new Mistake('ambiguous-number', `${asShare}% or ${value}%`);
}

function checkShare(percent: number): number | Mistake {
  if (percent < 0) return new Mistake('negative', 'a share');
  if (percent === 0) return new Mistake('zero', 'a share');
  return percent > 100 ? new Mistake('over-whole') : percent / 100;
}

export const areaShare: CellKind<number> = { noun: 'a share', read: readShare, takesUnit: true };

/** A share in a mix as written: in percent, or in parts that count against the other rows of the mix. */
export interface MixShare {
  readonly how: 'percent' | 'parts';
  readonly value: number;
}

export const mixShare: CellKind<MixShare> = { noun: 'a share', read: readMixShare, takesUnit: true };

/** `50%` is a percentage, `2` are two parts; both above 0. */
function readMixShare(cell: Written): MixShare | Mistake {
  const percent = percentText(cell);
  const value = parseNumber(percent ?? cell);
  if (value === undefined) return new Mistake('not-a-share', 'a percentage such as 50%, or parts such as 2');
  if (value instanceof Mistake) return value;
  if (percent !== undefined) {
    const share = checkShare(value);
    return share instanceof Mistake ? share : { how: 'percent', value };
  }
  if (value < 0) return new Mistake('negative', 'a share');
  if (value === 0) return new Mistake('zero', 'a share');
  return value > 1000 ? new Mistake('too-much', 'the largest mix, 1000 parts') : { how: 'parts', value };
}
