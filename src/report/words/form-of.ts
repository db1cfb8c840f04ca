// Report words: forms of a word. In: how many there are. Out: the form that English has for so many.

const plurals = new Intl.PluralRules('en-GB');

/** One of two words, by how many there are: `is` or `are`. */
export const formOf = (count: number, one: string, many: string): string =>
  plurals.select(count) === 'one' ? one : many;
