// Charts: colours that meet. In: two colours as `#rrggbb`, or '' where none is known. Out: SVG that repeats what the text
// says, so readers skip it.
import { fillOf } from './draw-frame.js';

/** One colour over another. */
export interface Over {
  readonly over: string;
  readonly under: string;
}

/** Two paints side by side. */
export interface Pair {
  readonly paint: string;
  readonly hex: string;
  readonly by: string;
  readonly byHex: string;
  /** `3.6, just visible`; '' without hex on both. */
  readonly differs: string;
}

/** A stroke of the paint on top over a patch of what lies beneath. */
export function drawOver({ over, under }: Over): string {
  return (
    '<svg class="over" width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">' +
    `<rect ${fillOf(under, 'patch')} x="1" y="1" width="38" height="26"/>${crossed(under, 'M4 24L10 18')}` +
    `<path ${fillOf(over, 'patch')} d="M9 8C14 5 27 7 33 5C36 8 35 18 32 22C25 24 15 21 8 23C6 18 6 12 9 8Z"/>` +
    `${crossed(over, 'M16 18L25 10')}</svg>`
  );
}

/** Two colours edge to edge, as swatches are compared. */
export function drawPair({ hex, byHex }: Pick<Pair, 'hex' | 'byHex'>): string {
  return (
    '<svg class="pair" width="56" height="28" viewBox="0 0 56 28" aria-hidden="true">' +
    `<rect ${fillOf(hex, 'patch')} x="1" y="1" width="27" height="26"/>${crossed(hex, 'M9 19L20 9')}` +
    `<rect ${fillOf(byHex, 'patch')} x="28" y="1" width="27" height="26"/>${crossed(byHex, 'M36 19L47 9')}</svg>`
  );
}

const crossed = (hex: string, d: string): string => (hex === '' ? `<path class="unknown" d="${d}"/>` : '');
