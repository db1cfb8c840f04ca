// Names written once above their rows: what is filled, and what stays blank, by hand.
import { describe, expect, it } from 'vitest';
import type { SheetName } from '../../../src/model/words.js';
import { fillDown } from '../../../src/sheets/check/fill-down.js';
import { columns } from '../../../src/sheets/columns/columns.js';
import { headerKey } from '../../../src/sheets/match-header.js';

const filled = (sheet: SheetName, text: string): { rows: string[]; said: string[] } => {
  const [headers = [], ...body] = text.split('\n').map((line) => line.split(','));
  const rows = body.map((cells, at) => ({ row: at + 2, cells }));
  const known = columns[sheet].map(({ header }) => headerKey(header));
  const indexes = new Map(
    headers.flatMap((header, at) =>
      known.includes(headerKey(header)) ? [[headerKey(header), at] as const] : [],
    ),
  );
  const { table, problems } = fillDown({ sheet, file: 'a.csv', headerRow: 1, headers, rows }, indexes);
  return {
    rows: (table?.rows ?? []).map(({ cells }) => cells.join(',')),
    said: problems.map(({ found, expected }) => `${found}: ${expected}`),
  };
};

describe('names written once', () => {
  it.each<[string, SheetName, string, string[], string[]]>([
    [
      'a scheme over its steps',
      'schemes',
      'scheme,step\nred line,1\n,2\nblue line,1\n,2',
      ['red line,1', 'red line,2', 'blue line,1', 'blue line,2'],
      ['"scheme": 2 rows'],
    ],
    [
      'an offer no further than its shop',
      'offers',
      'offer,shop,paint\nbox,Quay,red\n,,blue\n,Lock,red\n,Lock,blue',
      ['box,Quay,red', 'box,Quay,blue', ',Lock,red', ',Lock,blue'],
      ['"shop" and "offer": 1 row'],
    ],
    [
      'an offer under a shop that is written each time',
      'offers',
      'shop,offer,paint\nQuay,box,red\nQuay,,blue',
      ['Quay,box,red', 'Quay,box,blue'],
      ['"offer": 1 row'],
    ],
    [
      'a unit only where figures are counted',
      'log',
      'unit,figures,paint\nspears,2,red\n,3,blue\n,,green',
      ['spears,2,red', 'spears,3,blue', ',,green'],
      ['"unit": 1 row'],
    ],
    [
      'nothing where no figures can be counted',
      'log',
      'unit,paint\nspears,red\n,blue',
      ['spears,red', ',blue'],
      [],
    ],
    ['nothing above the first', 'schemes', 'scheme,step\n,1\nred line,2', [',1', 'red line,2'], []],
    [
      'a short row',
      'schemes',
      'step,scheme\n1,red line\n2',
      ['1,red line', '2,red line'],
      ['"scheme": 1 row'],
    ],
    [
      'no scheme of a swap, which stands for all',
      'swaps',
      'scheme,instead\na,red\n,blue',
      ['a,red', ',blue'],
      [],
    ],
  ])('%s', (_, sheet, text, rows, said) => {
    expect(filled(sheet, text)).toEqual({ rows, said });
  });
});
