// Compare: compare.json. In: the comparison, what each of the two is called. Out: its text.
import type { Comparison, Sum } from '../../compare/compare-plans.js';
import { toMajor } from '../../model/money.js';
import type { Side } from './view-compare.js';

/** Raised whenever a key changes its meaning or goes. */
const compareVersion = 1;

/** Money as decimal strings, as in plan.json; null where there is nothing to say. Ends in a line feed. */
export function writeCompareJson(
  { sums, paints, sheets, isSame, hasMarkets }: Comparison,
  { a, b }: { readonly a: Side; readonly b: Side },
): string {
  const told = ({ name, currency }: Side) => ({ name, currency });
  return `${JSON.stringify(
    {
      version: compareVersion,
      a: told(a),
      b: told(b),
      isSame,
      hasMarkets,
      sums: sums.map(({ what, isMoney, difference, ...of }) => {
        const say = (value: number | undefined, currency: string) =>
          value === undefined ? null : isMoney ? toMajor(value, currency) : value;
        const tell = ({ value, atLeast }: Sum, currency: string) => ({
          value: say(value, currency),
          atLeast,
        });
        return {
          what,
          ...{ a: tell(of.a, a.currency), b: tell(of.b, b.currency) },
          difference: say(difference, a.currency),
        };
      }),
      paints,
      sheets: sheets.map(({ isMoney, ...row }) => {
        const say = (fact: typeof row.a) =>
          isMoney && typeof fact === 'number' ? toMajor(fact, a.currency) : (fact ?? null);
        return { ...row, column: row.column ?? null, a: say(row.a), b: say(row.b) };
      }),
    },
    undefined,
    1,
  )}\n`;
}
