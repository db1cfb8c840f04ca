// Report words: sentences one after the other. In: each, '' where there is nothing to say. Out: text.

export const joinSentences = (...sentences: readonly string[]): string =>
  sentences.filter((sentence) => sentence !== '').join(' ');
