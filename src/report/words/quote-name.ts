// Report words: a name within a command to type. In: the name. Out: the same in quotes.

/** What a shell may take for more than a letter, even in double quotes. */
const meansMore = /["$`\\!%]/;

/** In double quotes, which every shell knows; where a shell would find something to do in them, in single ones (POSIX). */
export const quoteName = (name: string): string =>
  meansMore.test(name) ? `'${name.replaceAll("'", `'\\''`)}'` : `"${name}"`;
