// Charts: a share of something as a plain bar beside its number. In: a share of 1, whether it is the one to look at. Out: SVG
// that repeats what the text says, so readers skip it.
import { percentOf } from './escape-markup.js';

interface ShareBar {
  readonly share: number;
  /** Drawn full, others pale; left out: full. */
  readonly isOwn?: boolean;
}

/** As long as its share; nothing is drawn of nothing. */
export function drawShareBar({ share, isOwn = true }: ShareBar): string {
  const bar =
    share > 0 ? `<rect${isOwn ? ' class="own"' : ''} y="1" width="${percentOf(share)}" height="10"/>` : '';
  return `<svg class="share-bar" height="12" aria-hidden="true">${bar}</svg>`;
}
