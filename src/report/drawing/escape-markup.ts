// Charts: text made safe for SVG inside HTML, and numbers as they stand in attributes. In: text, numbers. Out: the same, safe.

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** For element content and for attributes in quotes. */
export function escapeMarkup(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character] ?? '');
}

/** At most three places; what is not finite becomes 0. */
export function place(value: number): string {
  return Number.isFinite(value) ? String(Math.round(value * 1000) / 1000) : '0';
}

/** A share of the drawing's width, 0 to 1, as percent to a hundredth: bars stretch with the page and need no script. */
export function percentOf(share: number): string {
  return `${Math.round(within(share) * 10_000) / 100}%`;
}

const within = (share: number): number => (share > 0 ? Math.min(1, share) : 0);
