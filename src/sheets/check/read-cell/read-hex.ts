// Checks: colours. In: `#8a2b2b`, `8A2B2B` or `#abc`. Out: `#rrggbb` in lower case, or a mistake.
import { type CellKind, Mistake, type Written } from './cell-kind.js';

const six = /^#?([0-9a-f]{6})$/i;
const three = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i;

/** Six hex digits, with or without `#`; three only with it, as in style sheets. */
function readHex(cell: Written): string | Mistake {
  const text = String(cell);
  if (text.length > '#rrggbb'.length) return new Mistake('not-a-colour');
  const [, digits] = six.exec(text) ?? [];
  if (digits !== undefined) return `#${digits.toLowerCase()}`;
  const [, r, g, b] = three.exec(text) ?? [];
  return b === undefined ? new Mistake('not-a-colour') : `#${r}${r}${g}${g}${b}${b}`.toLowerCase();
}

export const hexKind: CellKind<string> = { noun: 'a colour', read: readHex };
