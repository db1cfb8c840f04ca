// Charts: how much of a unit is finished. In: a share of 1. Out: SVG that repeats what the text says, so readers skip it.
import { percentOf } from '../../drawing/escape-markup.js';

/** Filled as far as it is finished. */
export function drawDoneBar(share: number): string {
  return `<svg class="done-bar" height="12" aria-hidden="true"><rect width="${percentOf(share)}" height="100%"/></svg>`;
}
