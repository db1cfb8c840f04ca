// Append: names that a spreadsheet could run as a formula. In: a name with single blanks. Out: the same, harmless, and back.

/**
 * What makes a spreadsheet take a cell for a formula, by OWASP's page "CSV Injection", in their plain and full-width
 * forms; before it may stand blanks, unseen characters and quotes that a spreadsheet strips. A semicolon may part one
 * cell into two where the spreadsheet's locale differs.
 */
const formula =
  '(?=[\\s\\u0000-\\u001f\\u007f\\u00ad\\u200b-\\u200f\\u2060\\ufeff"]*[=+\\-@\\uff1d\\uff0b\\uff0d\\uff20])';

const starts = new RegExp(`(^|;)${formula}`, 'g');
const guarded = new RegExp(`(^|;)'${formula}`, 'g');

/** Puts an apostrophe in front: `=1+1` gives `'=1+1`. Other names come back as they are. */
export function guardFormula(name: string): string {
  return name.replace(starts, "$1'");
}

/** Takes the apostrophes of `guardFormula` away; a name without any comes back as it is. */
export function unguardFormula(name: string): string {
  return name.replace(guarded, '$1');
}
