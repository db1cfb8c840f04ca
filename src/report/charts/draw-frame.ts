// Charts: the frame around a drawing. In: id, title, description, content. Out: an SVG string that a reader can announce.
import { escapeMarkup } from './escape-markup.js';

export interface Frame {
  /** Unique within the page, letters, digits and hyphens only. */
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly look: string;
  readonly high: number;
}

/** A drawing as wide as its place; `content` is markup already made safe. */
export function drawFrame({ id, title, says, look, high }: Frame, content: string): string {
  return (
    `<svg class="${look}" width="100%" height="${high}" role="img" aria-labelledby="${id}-title ${id}-says">` +
    `<title id="${id}-title">${escapeMarkup(title)}</title><desc id="${id}-says">${escapeMarkup(says)}</desc>` +
    `${content}</svg>`
  );
}

/** `fill` of a known colour; without one the class `no-colour` draws it. */
export function fillOf(hex: string, look: string): string {
  return hex === '' ? `class="${look} no-colour"` : `class="${look}" fill="${escapeMarkup(hex)}"`;
}
