// Export: how cells of estimate.xlsx look. In: the sheets' columns. Out: the styles part, and the style of each cell.
import type { SheetView } from '../view/estimate-workbook/workbook-view.js';

/** Kinds of cells: a number to be changed is blue, what is worked out black, as modellers of sums have it. */
type Kind = 'text' | 'header' | 'number' | 'formula';

export interface Styles {
  /** Digits after the point that some column asks for, each once. */
  readonly digits: readonly number[];
  /** The place of a style in the styles part. */
  readonly of: (kind: Kind, digits?: number) => number;
}

/** Style 0 is plain, 1 the header, 2 a number without set digits; then a formula and a number for each count of digits. */
export function findStyles(sheets: readonly SheetView[]): Styles {
  const asked = sheets.flatMap(({ columns }) => columns.flatMap(({ digits }) => digits ?? []));
  const digits = [...new Set(asked)].sort((a, b) => a - b);
  const of = (kind: Kind, count?: number): number => {
    if (kind === 'text') return 0;
    if (kind === 'header') return 1;
    const place = count === undefined ? -1 : digits.indexOf(count);
    if (place < 0) return kind === 'number' ? 2 : 0;
    return 3 + place * 2 + (kind === 'number' ? 1 : 0);
  };
  return { digits, of };
}

/** Number formats below 164 belong to the standard (ISO/IEC 29500-1, 18.8.30). */
const ownFormats = 164;

/** The styles part: a plain, a bold and a blue font, one number format for each count of digits. */
export function writeStyles({ digits }: Styles, namespace: string): string {
  const formats = digits.map(
    (count, at) =>
      `<numFmt numFmtId="${ownFormats + at}" formatCode="${count === 0 ? '0' : `0.${'0'.repeat(count)}`}"/>`,
  );
  const font = (more: string): string => `<font>${more}<sz val="11"/><name val="Calibri"/></font>`;
  const xf = (format: number, fontPlace: number): string =>
    `<xf numFmtId="${format}" fontId="${fontPlace}" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1"/>`;
  const blue = '<font><sz val="11"/><color rgb="FF1F4E9E"/><name val="Calibri"/></font>';
  const xfs = [
    xf(0, 0),
    xf(0, 1),
    xf(0, 2),
    ...digits.flatMap((_, at) => [0, 2].map((one) => xf(ownFormats + at, one))),
  ];
  const list = (name: string, items: readonly string[]): string =>
    items.length === 0 ? '' : `<${name} count="${items.length}">${items.join('')}</${name}>`;
  return [
    `<styleSheet xmlns="${namespace}">`,
    list('numFmts', formats),
    list('fonts', [font(''), font('<b/>'), blue]),
    list(
      'fills',
      ['none', 'gray125'].map((kind) => `<fill><patternFill patternType="${kind}"/></fill>`),
    ),
    list('borders', ['<border><left/><right/><top/><bottom/><diagonal/></border>']),
    list('cellStyleXfs', ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>']),
    list('cellXfs', xfs),
    list('cellStyles', ['<cellStyle name="Normal" xfId="0" builtinId="0"/>']),
    '</styleSheet>',
  ].join('');
}
