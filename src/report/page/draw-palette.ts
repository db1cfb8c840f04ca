// Charts: the army's paints as brush strokes drawn down from the top of the page. In: bands with shares. Out: SVG.
import { at } from '../../model/at.js';
import { drawFrame, fillOf } from '../drawing/draw-frame.js';
import { escapeMarkup, place } from '../drawing/escape-markup.js';
import type { PaletteView } from './view-palette.js';

const wide = 1000;
const gap = 1.5;

/** How far strokes and bristles stray. Fixed, not drawn by chance: the same plan gives the same page. */
const strays = [0, 7, 2, 11, 5, 1, 9, 3, 12, 6, 2, 8, 4, 10, 1, 6];
const stray = (index: number): number => at(strays, index % strays.length);

/** A paint whose colour no sheet gives is pencilled in. */
const unknown = 'class="stroke" fill="url(#palette-unknown)"';
const unknownPattern =
  '<pattern id="palette-unknown" width="9" height="16" patternUnits="userSpaceOnUse">' +
  '<path class="unknown-stroke" d="M0 16L9 0"/></pattern>';

interface Stroke {
  readonly left: number;
  readonly right: number;
  readonly index: number;
  /** Where the brush begins to lift. */
  readonly end: number;
}

/** Strokes side by side, each as wide as its share; no paints give an empty strip. */
export function drawPalette({ title, says, bands }: PaletteView): string {
  let from = 0;
  const strokes = bands.map(({ paint, hex, share }, index) => {
    const left = from;
    from += share * wide;
    const stroke = {
      left,
      right: Math.max(left + 1, from - gap),
      index,
      end: 66 + 1.6 * stray(index * 5 + 3),
    };
    return (
      `<g><title>${escapeMarkup(paint)}</title><path ${hex === '' ? unknown : fillOf(hex, 'stroke')} d="${outline(stroke)}"/>` +
      `<path class="bristles" d="${bristles(stroke)}"/></g>`
    );
  });
  const content = `<svg viewBox="0 0 ${wide} 100" preserveAspectRatio="none" width="100%" height="100%">${unknownPattern}${strokes.join('')}</svg>`;
  return drawFrame({ title, says, look: 'palette', high: 84 }, content);
}

/** From the top edge down, with a soft, uneven lower end. */
function outline({ left, right, index, end }: Stroke): string {
  const waves = Math.max(2, Math.round((right - left) / 18));
  const at = (wave: number): number => right - ((right - left) * wave) / waves;
  const curves = Array.from({ length: waves }, (_, wave) => {
    const [x, y] = [(at(wave) + at(wave + 1)) / 2, end + stray(index * 3 + wave * 7)];
    return `Q${place(x)} ${place(y)} ${place(at(wave + 1))} ${place(end + stray(index + wave * 3) / 2)}`;
  });
  return `M${place(left)} 0H${place(right)}V${place(end)}${curves.join('')}Z`;
}

/** Gaps that hairs leave where the brush runs dry: narrow wedges, some close together, none evenly spaced. */
function bristles({ left, right, index, end }: Stroke): string {
  const hairs = Math.floor((right - left) / 9);
  return Array.from({ length: hairs }, (_, hair) => {
    const [near, far] = [stray(hair * 5 + index), stray(hair * 3 + index * 7)];
    const x = left + ((right - left) * (hair + 0.2 + near / 16)) / hairs;
    const half = 0.3 + far / 11;
    return `M${place(x - half)} ${place(end + 14)}L${place(x)} ${place(end - 2 - far * near * 0.4)}L${place(x + half)} ${place(end + 14)}Z`;
  }).join('');
}
