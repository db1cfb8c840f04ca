import { describe, expect, it } from 'vitest';
import { findDelimiter } from '../../../src/sheets/read/find-delimiter.js';
import { knownHeaderKeys } from '../../../src/sheets/spell-headers.js';

const pots = knownHeaderKeys('pots');

describe('findDelimiter', () => {
  it.each([
    ['commas', 'paint,size ml,price\nRed,17,3.50\n', ','],
    ['semicolons', 'paint;size ml;price\nRed;17;3.50\n', ';'],
    ['semicolons with decimal commas', 'paint;price\nRed;3,50\nBlue;2,95\n', ';'],
    [
      'semicolons with many decimal commas',
      'paint;price;left;place\nRed;3,50;7,5;a, b, c\nBlue;2,95;1,5;d, e\n',
      ';',
    ],
    ['tabs', 'paint\tsize ml\nRed, bright\t17\n', '\t'],
    ['bars', 'paint|size ml\nRed;1,5|17\n', '|'],
    ['commas with lists by semicolons', 'paint,also called\nRed,a;b;c\nBlue,d;e;f\n', ','],
    ['headers written otherwise', 'PAINT;Size_ML\nRed;17,5\n', ';'],
    ['a title row above', 'My pots, all of them, as of May\npaint;size ml\nRed;17\n', ';'],
    ['a quoted header', '"paint";"size ml"\n"Red";17\n', ';'],
    ['a header with an unclosed quote below', 'paint;size ml\n"Red;17\nBlue;17\n', ';'],
    ['one column', 'paint\nRed\nBlue\n', ','],
  ])('finds %s', (_, text, delimiter) => {
    expect(findDelimiter(text, pots)).toEqual({ delimiter, start: 0 });
  });

  it('goes by rows of equal width where no header is known', () => {
    expect(findDelimiter('Farbe;Preis\nRot;1,5\nBlau;2,5\n', pots).delimiter).toBe(';');
    expect(findDelimiter('Farbe,Preis\nRot,1\nBlau; hell,2\n', pots).delimiter).toBe(',');
  });

  it.each([
    ['sep=;\npaint;size ml\n', ';', 6],
    ['SEP=\t\npaint\tsize ml\n', '\t', 6],
    ['"sep=|"\npaint|size ml\n', '|', 8],
    ['sep=#\npaint#size ml\n', '#', 6],
    ['sep=;;;\npaint;size ml;\n', ';', 8],
    ['sep=,\npaint;size ml\n', ',', 6],
    ['sep=;', ';', 5],
  ])('obeys a first line that says %j', (text, delimiter, start) => {
    expect(findDelimiter(text, pots)).toEqual({ delimiter, start });
  });

  it('takes an empty text for one column', () => {
    expect(findDelimiter('', pots)).toEqual({ delimiter: ',', start: 0 });
  });
});
