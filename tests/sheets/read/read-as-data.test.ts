// First rows of sheets: headers, whatever their language, and rows of data where the header row was forgotten.
import { describe, expect, it } from 'vitest';
import type { SheetName } from '../../../src/model/words.js';
import { readsAsData } from '../../../src/sheets/read/read-as-data.js';
import type { Cell } from '../../../src/sheets/table.js';
import { longestSearched } from '../../count-letters.js';

describe('a first row', () => {
  it.each<[SheetName, readonly Cell[]]>([
    ['army', ['first spears', 'spearman', '20']],
    ['army', ['first spears', 'spearman', 20]],
    ['pots', ['brick red', '17', '60%']],
    ['pots', ['brick red', '17,5 ml']],
    ['pots', ['brick red', '€3.50']],
    ['shops', ['Quay', '3,50 €']],
    ['paints', ['brick red', 'colour']],
    ['paints', ['brick red', '#8a2b2b']],
    ['figures', ['spearman', '', 'clothed']],
    ['figures', ['dredger', '85x40x35']],
    ['log', ['14.3.2026', 'brick red']],
    ['log', [{ kind: 'date', iso: '2026-03-14' }, 'brick red']],
    ['zones', ['coat', 'Front trunk; back trunk']],
    ['zones', ['hat', 'head 50%']],
    ['settings', ['Sure %', 'many']],
    ['pots', ['brick red', 'paint', '17']],
  ])('in %s of %j reads as data', (sheet, cells) => {
    expect(readsAsData(cells, { sheet })).toBe(true);
  });

  it.each<[SheetName, readonly Cell[]]>([
    ['pots', ['Farbe', 'Inhalt']],
    ['pots', ['paint', '17']],
    ['pots', ['brick red', 'size ml', '17']],
    ['pots', ['Farbe', 'paint', 'left', '17']],
    ['extras', ['Sache', 'Price (€)', '20']],
    ['pots', ['my brushes', '']],
    ['pots', ['1. Farbe', 'Inhalt in ml']],
    ['zones', ['Zone 1a and more', 'Teile']],
    ['shops', ['Quay']],
    ['pots', ['', '9'.repeat(50)]],
    ['pots', []],
  ])('in %s of %j does not', (sheet, cells) => {
    expect(readsAsData(cells, { sheet })).toBe(false);
  });

  it('is a header row where measures stand under its texts', () => {
    const header = ['Shade', 'colour', 'Bottle', 'State'];
    const rows = [
      ['brick red', 'river', '', ''],
      ['oat', 'river', '17', 'half'],
    ].map((cells) => ({ cells }));
    expect(readsAsData(header, { sheet: 'pots' }, rows)).toBe(false);
    expect(readsAsData(header, { sheet: 'pots' }, rows.slice(0, 1))).toBe(true);
    expect(readsAsData(['brick red', 'colour', ''], { sheet: 'pots' }, rows)).toBe(true);
    expect(readsAsData(['brick red', 'colour', '17'], { sheet: 'pots' }, rows)).toBe(true);
  });

  it.each(['pots', 'zones', 'settings'] as const)('of %s that goes on and on is hardly searched', (sheet) => {
    const cells = ['coat', '1'.repeat(32_000), `1${' '.repeat(32_000)}%`];
    expect(longestSearched(() => readsAsData(cells, { sheet }))).toBeLessThan(100);
  });
});
