// Export: text that a spreadsheet must never run. In: text from a sheet. Out: text that it shows and does not calculate.

/**
 * What makes a spreadsheet take a cell for a formula, by OWASP's page "CSV Injection": equals, plus, minus, at, tab,
 * carriage return, line feed, and the full-width forms of the first four.
 */
const starts = '=+\\-@\\uff1d\\uff0b\\uff0d\\uff20';

/** Blanks, unseen characters and quotes that a spreadsheet may strip before it looks for a formula. */
const skipped =
  '(?:[^\\S\\t\\r\\n]|[\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\u007f\\u00ad\\u200b-\\u200f\\u2060\\ufeff"])*';

/** A formula at the start, or after a mark at which a spreadsheet of another locale may part one cell into two. */
const formula = new RegExp(`(^|[;\\t\\r\\n])(?=${skipped}[${starts}])`, 'g');

/** A tab or line end in front is dangerous by itself. */
const controlFirst = /^[\t\r\n]/;

const plainNumber = /^[+-]?\d+(?:[.,]\d+)?$/;

/**
 * Puts an apostrophe in front of whatever a spreadsheet could take for a formula; all other text, and plain signed
 * numbers such as `-5` or `+2,5`, come back as they are. `guardText('=1+1')` is `'=1+1`. Blank gives blank.
 */
export function guardText(text: string): string {
  if (plainNumber.test(text)) return text;
  const guarded = text.replace(formula, "$1'");
  return controlFirst.test(guarded) ? `'${guarded}` : guarded;
}
