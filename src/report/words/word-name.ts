// Report view: a painter's name inside a sentence of ours. In: the name. Out: the same, fenced off where it has to be.

/** Letters written from right to left, and the marks that turn the direction of text. */
const turnsText = /[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufefc]/;

/**
 * A name that reads from right to left, or that holds marks turning the text, is put between isolating marks
 * (Unicode's FSI and PDI), so that the words and numbers behind it keep their order. Other names stay as they are.
 */
export function nameOf(name: string): string {
  return turnsText.test(name) ? `\u2068${name}\u2069` : name;
}
