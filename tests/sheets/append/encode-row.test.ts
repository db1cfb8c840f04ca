// Rows added to files of every kind: what is there stays, and the whole reads back through the readers.
import { describe, expect, it } from 'vitest';
import { encodeRows, Unwritable } from '../../../src/sheets/append/encode-row.js';
import { readCsv } from '../../../src/sheets/read/read-csv.js';
import { readCsvShape } from '../../../src/sheets/read/read-csv-shape.js';

const place = { file: 'log.csv', sheet: 'log' } as const;

function add(held: Buffer, ...cells: readonly string[]) {
  const shape = readCsvShape(held, place);
  if (shape === undefined) throw new Error('no text');
  const bytes = encodeRows([cells], shape);
  if (bytes instanceof Unwritable) throw new Error(bytes.letters);
  const whole = Buffer.concat([held, bytes]);
  return { shape, whole, rows: readCsv(whole, place).grid?.rows.map((row) => row.cells) };
}

const utf16 = (text: string): Buffer => Buffer.from(`\ufeff${text}`, 'utf16le');
/** "Größe" as ISO 8859-1 and Windows-1252 write it. */
const western = (text: string): Buffer => Buffer.from(text, 'latin1');

describe('a row at the end of a file', () => {
  it.each<[string, Buffer, string]>([
    ['commas, LF', Buffer.from('date,paint\n2026-03-01,Oat\n'), '2026-03-02,"Oat, pale"\n'],
    ['commas, CRLF, mark', Buffer.from('\ufeffdate,paint\r\n'), '2026-03-02,"Oat, pale"\r\n'],
    ['semicolons', Buffer.from('date;paint\n2026-03-01;Oat\n'), '2026-03-02;Oat, pale\n'],
    ['tabs', Buffer.from('date\tpaint\n2026-03-01\tOat\n'), '2026-03-02\tOat, pale\n'],
    ['bars, old line ends', Buffer.from('date|paint\r2026-03-01|Oat\r'), '2026-03-02|Oat, pale\r'],
    ['a sep line', Buffer.from('sep=;\ndate;paint\n'), '2026-03-02;Oat, pale\n'],
    ['no last line end', Buffer.from('date,paint\r\n2026-03-01,Oat'), '\r\n2026-03-02,"Oat, pale"\r\n'],
    ['a header alone, not ended', Buffer.from('date,paint'), '\r\n2026-03-02,"Oat, pale"\r\n'],
    [
      'a quoted line end in the last cell',
      Buffer.from('date,paint\n2026-03-01,"a\r\nb"'),
      '\n2026-03-02,"Oat, pale"\n',
    ],
  ])('with %s', (kind, held, added) => {
    const { whole, rows } = add(held, '2026-03-02', 'Oat, pale');
    expect(rows?.at(-1)).toEqual(['2026-03-02', 'Oat, pale']);
    if (!kind.includes('quoted')) expect(whole.subarray(held.length).toString()).toBe(added);
  });

  it.each([utf16('date;paint\r\n'), Buffer.from(utf16('date;paint\r\n')).swap16()])(
    'is in UTF-16 where the file is',
    (held) => {
      const { shape, rows } = add(held, '2026-03-02', 'Größe €');
      expect(shape.encoding).toMatch(/^utf-16/);
      expect(rows).toEqual([
        ['date', 'paint'],
        ['2026-03-02', 'Größe €'],
      ]);
    },
  );

  it('is in Windows-1252 where the file is, and says what that lacks', () => {
    const held = western('date,paint\n2026-03-01,Gr\xf6\xdfe\n');
    const { shape, whole, rows } = add(held, '2026-03-02', 'Größe €');
    expect(shape.encoding).toBe('windows-1252');
    expect([...whole.subarray(-8)]).toEqual([...western('Gr\xf6\xdfe \x80\n')]);
    expect(rows?.at(-1)).toEqual(['2026-03-02', 'Größe €']);
    expect(encodeRows([['łąka Ω']], shape)).toEqual(new Unwritable('łąΩ', 'Windows-1252'));
  });

  it('is in Windows-1250 where a Polish file is', () => {
    // "dzień" (ń 0xF1), "oddział" (ł 0xB3) and "żółć" (ż 0xBF, ó 0xF3, ł 0xB3, ć 0xE6) in CP1250.TXT of the Unicode consortium.
    const { shape, whole, rows } = add(western('dzie\xf1;farba;oddzia\xb3\n'), '2026-03-02', 'żółć', '1');
    expect(shape.encoding).toBe('windows-1250');
    expect([...whole.subarray(-7)]).toEqual([...western('\xbf\xf3\xb3\xe6;1\n')]);
    expect(rows?.at(-1)).toEqual(['2026-03-02', 'żółć', '1']);
    expect(encodeRows([['é è']], shape)).toEqual(new Unwritable('è', 'Windows-1250'));
  });

  it('keeps quotation marks, line ends and outer blanks of a cell', () => {
    const { whole } = add(Buffer.from('date,paint\n'), ' a', 'b "c"\nd');
    expect(whole.toString()).toBe('date,paint\n" a","b ""c""\nd"\n');
  });

  it('is nothing without rows', () => {
    const shape = readCsvShape(Buffer.from('date,paint'), place);
    expect(shape && encodeRows([], shape)).toEqual(Buffer.from(''));
  });
});

describe('the shape of a file', () => {
  it('has no headers where nothing is in it', () => {
    expect(readCsvShape(Buffer.from(''), place)).toEqual({
      encoding: 'utf-8',
      delimiter: ',',
      lineEnd: '\r\n',
      endsLine: true,
      headers: [],
    });
  });

  it('is not known where it is no text', () => {
    expect(readCsvShape(Buffer.from([0, 1, 2, 0, 0, 3, 0]), place)).toBeUndefined();
  });

  it('has the headers of the row that is the header, wherever it stands', () => {
    expect(readCsvShape(Buffer.from('My log\n\nPaint;DATE;note\n'), place)?.headers).toEqual([
      'Paint',
      'DATE',
      'note',
    ]);
  });
});
