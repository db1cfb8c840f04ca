// Report words: a paint's colour as the page takes it. In: the plan. Out: `#rrggbb`.
import type { Plan } from '../../model/plan.js';

/** A paint's colour as `#rrggbb`, or '' where the sheets give none. */
export function hexOf({ paints }: Plan, paint: string): string {
  const hex = paints.get(paint)?.hex ?? '';
  return /^#[0-9a-f]{6}$/i.test(hex) ? hex.toLowerCase() : '';
}
