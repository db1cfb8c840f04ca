// Sheets: names and headers compared as painters write them. In: a header or a name. Out: its key for comparing.

/** Small letters, digits and signs of ASCII in which everything counts: most words are, seen at one glance instead of four. */
const isKey = /^[!-'*-,./-Z\\^`-~]*$/;

/**
 * Two names are the same when their keys are: case, spaces, underscores and hyphens do not count, and `cm²` is `cm2`.
 * `Base-Coat` and `base coat` both give `basecoat`; a blank name gives ''.
 */
export function nameKey(name: string): string {
  const small = name.toLowerCase();
  return isKey.test(small) ? small : foldKey(name);
}

function foldKey(name: string): string {
  const folded = isPlain(name) ? name : name.normalize('NFKC');
  return folded.toLowerCase().replace(/[\s_-]+/g, '');
}

/** ASCII, which Unicode leaves as it is; most names are, and they are asked for by the hundred thousand. */
export const isPlain = (text: string): boolean => !/[^\0-\x7f]/.test(text);

/** Letters that lose no accent when they are taken apart. */
const plainLetters: Readonly<Record<string, string>> = { ß: 'ss', ł: 'l', ø: 'o', æ: 'ae', œ: 'oe' };

/**
 * The key of a header, in which brackets and accents do not count either: `Size (ML)` and `size_ml` both give `sizeml`,
 * `Füllstand` gives `fullstand`.
 */
export function headerKey(header: string): string {
  const small = header.toLowerCase();
  if (isKey.test(small)) return small;
  const key = foldKey(header);
  if (isPlain(key)) return key.replace(/[()[\]]+/g, '');
  return key
    .normalize('NFD')
    .replace(/[()[\]]|[\u0300-\u036f]/g, '')
    .replace(/[ßłøæœ]/g, (letter) => plainLetters[letter] ?? letter);
}
