// Charts: the frame around a drawing. In: title, description, content. Out: an SVG string that a reader can announce.
// Width and what all drawings of a kind share stand in the stylesheet: a page holds hundreds of them.
import { escapeMarkup } from './escape-markup.js';

export interface Frame {
  readonly title: string;
  readonly says: string;
  readonly look: string;
  readonly high: number;
}

/** A drawing as wide as its place; `content` is markup already made safe. */
export function drawFrame({ title, says, look, high }: Frame, content: string): string {
  const label = escapeMarkup(says === '' ? title : `${title}. ${says}`);
  return `<svg class="${look}" height="${high}" role="img" aria-label="${label}">${content}</svg>`;
}

/** `fill` of a known colour; without one the class `no-colour` draws it. */
export function fillOf(hex: string, look: string): string {
  return hex === '' ? `class="${look} no-colour"` : `class="${look}" fill="${escapeMarkup(hex)}"`;
}
