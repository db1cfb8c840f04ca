// Report view: the army's paints as a strip of colour. In: the plan, its sums. Out: bands with shares and colours.
import { at } from '../../model/at.js';
import type { Plan } from '../../model/plan.js';
import { shareOut } from '../drawing/scale.js';
import { hexOf } from '../words/hex-of.js';
import type { PageWords } from './words.js';

export interface PaletteView {
  readonly title: string;
  readonly says: string;
  readonly bands: readonly { readonly paint: string; readonly hex: string; readonly share: number }[];
}

/**
 * One band per paint of the army, in the order in which they first go on; without an army, of the shelf. A band is as wide as the square root of
 * its ml: true shares would leave nothing to see of a detail colour beside a can of primer.
 */
export function viewPalette(plan: Plan, texts: PageWords['palette']): PaletteView {
  const isShelf = plan.lacking.includes('army');
  const paints = isShelf
    ? plan.stock.map(({ paint, haveMl }) => ({ paint, root: Math.sqrt(haveMl) }))
    : [...plan.summary.work.paints].map(([paint, { wholeMl }]) => ({ paint, root: Math.sqrt(wholeMl) }));
  const shares = shareOut(paints.map(({ root }) => root));
  return {
    title: texts.title,
    says: texts.says(
      paints.map(({ paint }) => paint),
      isShelf,
    ),
    bands: paints
      .map(({ paint }, index) => ({ paint, hex: hexOf(plan, paint), share: at(shares, index) }))
      .filter(({ share }) => share > 0),
  };
}
