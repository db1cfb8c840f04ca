// Report view: a row of the swaps sheet, as a painter would write it. In: two paints. Out: one line of CSV.

/** The header that goes with the rows. */
export const swapHeader = 'scheme,step,paint,instead';

/** Scheme and step are left blank: wherever the paint stands. Names are quoted where CSV needs it (RFC 4180). */
export const swapRow = (paint: string, by: string): string => `,,${quoted(paint)},${quoted(by)}`;

/** Line breaks of a name become spaces here, since the row is shown on one line. */
function quoted(name: string): string {
  const line = name.replace(/[\r\n\u2028\u2029]+/g, ' ');
  return /[",;\t]|^\s|\s$/.test(line) ? `"${line.replaceAll('"', '""')}"` : line;
}
