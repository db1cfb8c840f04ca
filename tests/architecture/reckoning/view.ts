// Reckoning where none may be, and what only looks like it.
interface Exact {
  minus(other: Exact): Exact;
}

export const neededMl = (haveMl: number, toBuyMl: number): number => haveMl + toBuyMl;
export const share = (ml: number, wholeMl: number): number => ml / wholeMl;
export const done = (whole: Exact, remaining: Exact): Exact => whole.minus(remaining);
export const isShort = (haveMl: number, needMl: number): boolean => haveMl < needMl;
export const isOwned = (haveMl: number): boolean => haveMl > 0;
export const id = (index: number): string => `row-${index + 1}`;
export const rest = (rows: readonly string[], most: number): number => rows.length - most;
export const name = (first: string, last: string): string => first + last;
