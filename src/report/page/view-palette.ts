// Report view: the army's paints as a strip of colour. In: the plan, its sums. Out: bands with shares and colours.
import type { Plan } from '../../model/plan.js';
import { hexOf } from '../words/hex-of.js';
import type { WorkSums } from '../words/sum-work.js';
import { nameOf } from '../words/word-name.js';

export interface PaletteView {
  readonly says: string;
  readonly bands: readonly { readonly paint: string; readonly hex: string; readonly share: number }[];
}

/**
 * One band per paint of the army, in the order in which they first go on. A band is as wide as the square root of
 * its ml: true shares would leave nothing to see of a detail colour beside a can of primer.
 */
export function viewPalette(plan: Plan, sums: WorkSums): PaletteView {
  const roots = [...sums.paints].map(([paint, { wholeMl }]) => ({ paint, root: Math.sqrt(wholeMl) }));
  const all = roots.reduce((sum, { root }) => sum + root, 0);
  return {
    says: `The paints of this army in the order in which they go on: ${roots.map(({ paint }) => nameOf(paint)).join(', ')}`,
    bands: roots
      .filter(({ root }) => root > 0)
      .map(({ paint, root }) => ({ paint, hex: hexOf(plan, paint), share: root / all })),
  };
}
