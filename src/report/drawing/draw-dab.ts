// Charts: small marks beside numbers. In: a share, a colour, a spread. Out: SVG that repeats what the text says,
// so readers skip it.
import { escapeMarkup, place } from './escape-markup.js';

/** Its area, not its width, stands for the share: half the paint, half the dab. A small one would only blur its number, so under a fifth there is none. */
export function drawDab(share: number): string {
  if (share < 0.2) return '';
  const scale = place(Math.sqrt(Math.min(1, share)) * 1.8);
  return `<svg class="dab" width="36" height="36" viewBox="-18 -18 36 36" aria-hidden="true"><use href="#dab" transform="scale(${scale})"/></svg>`;
}

/** A paint's colour beside its name; hatched where no sheet gives one. */
export function drawSwatch(hex: string): string {
  const fill = hex === '' ? 'class="no-colour"' : `fill="${escapeMarkup(hex)}"`;
  const cross = hex === '' ? '<path class="unknown" d="M4 12L12 4"/>' : '';
  return `<svg class="swatch" aria-hidden="true"><use href="#swatch" ${fill}/>${cross}</svg>`;
}

/** A paint's colour as a field to hold a lid against; crossed out where no sheet gives one. */
export function drawLid(hex: string): string {
  const fill = hex === '' ? 'class="no-colour"' : `fill="${escapeMarkup(hex)}"`;
  const cross = hex === '' ? '<path d="M0 16L16 0"/>' : '';
  return `<svg class="lid" viewBox="0 0 16 16" aria-hidden="true"><rect width="16" height="16" ${fill}/>${cross}</svg>`;
}

/** Pixels of the drawing: likely stands in its middle, drawn by the stylesheet. */
const middle = 36;

/** Low to high about likely, on a scale where half and twice lie equally far; four times is the edge. */
export function drawSpread({ low, high }: { readonly low: number; readonly high: number }): string {
  const at = (share: number): number =>
    middle + Math.min(1, Math.max(-1, Math.log(Math.max(share, 1e-6)) / Math.log(4))) * (middle - 4);
  return `<svg class="spread" aria-hidden="true"><path d="M${place(at(low))} 7H${place(at(high))}"/></svg>`;
}
