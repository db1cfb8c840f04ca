// Readers: the styles of a workbook cut down to number formats. In: styles XML without prefixes. Out: the
// same for exceljs, which trips over styles that leave fonts or fills out, and spends seconds on those that
// have thousands.
import { attribute, tags } from './read-tags.js';

const SHORT_DATE = 14;

/** Every cell style with its number format and nothing else; '' gives the General format alone. */
export function slimStyles(xml: string): string {
  const formats = tags(xml, 'numFmt').filter((tag) => attribute(tag, 'formatCode') !== undefined);
  const cellStyles = /<cellXfs[\s>][\s\S]*?<\/cellXfs>/.exec(xml)?.[0] ?? '<xf numFmtId="0"/>';
  const ids = tags(cellStyles, 'xf').map((tag) => plainFormat(Number(attribute(tag, 'numFmtId') ?? 0)));
  const xfs = ids.map((id) => `<xf numFmtId="${id}"/>`);
  return `<styleSheet><numFmts>${formats.map(quoteEscapes).join('')}</numFmts><cellXfs>${xfs.join('')}</cellXfs></styleSheet>`;
}

/**
 * ECMA-376 18.8.30: 27 to 36 and 50 to 58 are the dates and times of East Asian locales; exceljs knows few of
 * them.
 */
function plainFormat(id: number): number {
  return (id >= 27 && id <= 36) || (id >= 50 && id <= 58) ? SHORT_DATE : id;
}

/**
 * A closed tag of a number format, with `\m` as `"m"`: exceljs takes the backslash off, and the m of `0.0\
 * \m\l` would mean months.
 */
function quoteEscapes(format: string): string {
  return format
    .replace(/\s*\/?>$/, '/>')
    .replace(/&quot;.*?&quot;|\\(&\w+;|[^"])/g, (part, letter?: string) =>
      letter === undefined ? part : `&quot;${letter}&quot;`,
    );
}
