// Cells that say several pots, and rough words: each exact reading by hand, as a painter means it.
import { describe, expect, it } from 'vitest';
import { Mistake } from '../../../../src/sheets/check/read-cell/cell-kind.js';
import { leftsKind, shelfVolume } from '../../../../src/sheets/check/read-cell/read-several.js';
import { checkRight } from '../make-tables.js';

const eye = (share: number, isRough?: true) => ({
  how: 'by eye',
  share,
  ...(isRough === undefined ? {} : { isRough }),
});
const [full, half, empty] = [eye(1), eye(0.5), eye(0)];
const several = (...of: readonly unknown[]) => ({ how: 'several', of });
const codeOf = (read: unknown): unknown => (read instanceof Mistake ? read.code : read);

describe('what is left', () => {
  it.each<[string, unknown]>([
    ['2x', several(full, full)],
    ['2 x', several(full, full)],
    ['x3', several(full, full, full)],
    ['2×', several(full, full)],
    ['2 full, 1 half', several(full, full, half)],
    ['2 full + 1 empty', several(full, full, empty)],
    ['1 new and 1 almost empty', several(full, eye(0.1, true))],
    ['2 volle, 1 halbe', several(full, full, half)],
    ['2 pleins et 1 à moitié', several(full, full, half)],
    ['2 llenos y 1 a la mitad', several(full, full, half)],
    ['2 pełne i 1 do połowy', several(full, full, half)],
    ['1 full, 1 third', several(full, eye(1 / 3))],
    ['2x 40%, 1x 7,5 ml', several(eye(0.4), eye(0.4), { how: 'in ml', ml: 7.5 })],
    ['2 x a third', several(eye(1 / 3), eye(1 / 3))],
    ['1 half', several(half)],
  ])('%s', (written, reading) => {
    expect(leftsKind.read(written)).toEqual(reading);
  });

  it.each<[string, unknown]>([
    ['1/2', half],
    ['½', half],
    ['3/4 full', eye(0.75)],
    ['half full', half],
    ['60% full', eye(0.6)],
    ['~1/2 voll', eye(0.5, true)],
    ['almost empty', eye(0.1, true)],
    ['nearly full', eye(0.9, true)],
    ['new', full],
    ['unopened', full],
    ['ungeöffnet', full],
  ])('of one pot: %s', (written, reading) => {
    expect(leftsKind.read(written)).toEqual(reading);
  });

  // Two thirds, or two pots a third full; weights belong to one pot; 0 and too many are none.
  it.each([
    '2 thirds',
    '2 Drittel',
    '3 Viertel',
    '2 full, 1',
    '2 full, some',
    '2x 31.2 g',
    '0x',
    '1001x',
    '600 full, 600 half',
    '2 40%',
    'full, half',
    ', ',
  ])('asks about %s', (written) => {
    expect(codeOf(leftsKind.read(written))).toBe('not-a-reading');
  });

  it.each([
    ['2', 'left-without-unit'],
    ['120%', 'over-whole'],
  ])('%s stays %s', (written, code) => {
    expect(codeOf(leftsKind.read(written))).toBe(code);
  });
});

describe('a size', () => {
  it.each<[string | number, unknown]>([
    ['2x 17 ml', { count: 2, ml: 17 }],
    ['2 x 17', { count: 2, ml: 17 }],
    ['17 ml x 2', { count: 2, ml: 17 }],
    ['2×0,4 l', { count: 2, ml: 400 }],
    ['3 * 12ml', { count: 3, ml: 12 }],
    ['17ml', 17],
    [17, 17],
  ])('%s', (written, size) => {
    expect(shelfVolume.read(written)).toEqual(size);
  });

  it.each(['17x2', '12x12', '2x', 'x2', '0x 17 ml', '1001 x 17 ml', '2x 3x 17 ml', '2 x 17 oz'])(
    'asks about %s',
    (written) => {
      expect(codeOf(shelfVolume.read(written))).toBe('not-a-volume');
    },
  );
});

describe('a row', () => {
  const rowOf = (...cells: readonly string[]) =>
    checkRight({
      pots: [
        ['paint', 'size ml', 'pots', 'left', 'price'],
        cells,
        ['earth wash', '24', '', '', '4'],
        ['slate', '17', '', '', ''],
      ],
    });
  const leftsOf = (...cells: readonly string[]) =>
    rowOf(...cells).pots.flatMap(({ paint, left, sizeMl }) =>
      paint === 'brick red' ? [[sizeMl, left]] : [],
    );

  it('becomes the pots that its cells say', () => {
    expect(leftsOf('brick red', '17', '', '2 full, 1 half', '')).toEqual([
      [17, full],
      [17, full],
      [17, half],
    ]);
    expect(leftsOf('brick red', '2x 17 ml', '', '60%', '')).toEqual([
      [17, eye(0.6)],
      [17, eye(0.6)],
    ]);
    expect(leftsOf('brick red', '2x 17 ml', '2', '1 full, 1 empty', '')).toEqual([
      [17, full],
      [17, empty],
    ]);
  });

  it('has no price for a gift, which is told as any blank', () => {
    const { pots, defaults } = rowOf('brick red', '17', '', '', 'gift');
    expect(pots.map(({ priceMinor }) => priceMinor)).toEqual([undefined, 400, undefined]);
    expect(defaults.filter(({ sheet, column }) => sheet === 'pots' && column === 'price')).toMatchObject([
      { sheet: 'pots', rows: 2, meaning: 'unpriced' },
    ]);
  });
});
