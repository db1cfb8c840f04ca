import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { findInstead } from '../../src/colour/find-instead.js';
import { openColours } from '../../src/colour/open-colours.js';
import type { Paint } from '../../src/model/sheets.js';
import type { PaintStock } from '../../src/model/stock.js';
import { makePaint } from '../make-sheets.js';

const stockOf = (paint: string, haveMl: number, needMl: number): PaintStock => ({
  paint,
  pots: [],
  needMl,
  haveMl,
  orderedMl: 0,
  leftAfterMl: Math.max(0, haveMl - needMl),
  toBuyMl: Math.max(0, needMl - haveMl),
  keepMl: 0,
  state: haveMl >= needMl ? 'enough' : haveMl > 0 ? 'short' : 'none owned',
  runningLow: false,
  mark: 'from memory',
});

async function find(paints: readonly Paint[], stock: readonly PaintStock[]) {
  const colours = await openColours(paints);
  const known = new Map(paints.map((one) => [one.paint, one]));
  return findInstead(stock, { paints: known, colours, assumptions: registry });
}

/** Lamp yellow is needed and not owned; the others stand full on the shelf. */
async function insteadOfYellow(...owned: readonly Paint[]) {
  const yellow = makePaint({ paint: 'Lamp yellow', hex: '#f3c63f', alsoCalled: ['Wick'] });
  const stock = [stockOf('Lamp yellow', 0, 2), ...owned.map(({ paint }) => stockOf(paint, 16, 0))];
  const [found] = await find([yellow, ...owned], stock);
  return found?.by.map(({ paint, sameByName, dE00 }) => [
    paint,
    sameByName,
    dE00 && Math.round(dE00 * 10) / 10,
  ]);
}

describe('what is owned instead', () => {
  it('is of the same kind and near, the nearest first', async () => {
    const found = await insteadOfYellow(
      makePaint({ paint: 'Gorse', hex: '#d9a92e' }),
      makePaint({ paint: 'Marigold', hex: '#f0c040' }),
      makePaint({ paint: 'Slate', hex: '#556070' }),
      makePaint({ paint: 'Brass', hex: '#f3c63f', kind: 'metallic' }),
      makePaint({ paint: 'Nameless' }),
    );
    expect(found?.map(([paint]) => paint)).toEqual(['Marigold', 'Gorse']);
  });

  it('is first what has the same name, however far off or without colour', async () => {
    const found = await insteadOfYellow(
      makePaint({ paint: 'Marigold', hex: '#f0c040' }),
      makePaint({ paint: 'wick', hex: '#c08020' }),
      makePaint({ paint: 'Old lamp', alsoCalled: ['lamp yellow'] }),
      makePaint({ paint: 'Third label', alsoCalled: ['WICK'], hex: '#f3c63f' }),
      makePaint({ paint: 'Wick shine', kind: 'metallic', alsoCalled: ['Wick'] }),
    );
    expect(found).toEqual([
      ['Third label', true, 0],
      ['wick', true, expect.any(Number)],
      ['Old lamp', true, undefined],
      ['Marigold', false, expect.any(Number)],
    ]);
  });

  it('is nothing where all that is owned is needed itself, or nothing is short', async () => {
    const paints = [
      makePaint({ paint: 'Lamp yellow', hex: '#f3c63f' }),
      makePaint({ paint: 'Marigold', hex: '#f0c040' }),
    ];
    expect(await find(paints, [stockOf('Lamp yellow', 0, 2), stockOf('Marigold', 3, 3)])).toEqual([]);
    expect(await find(paints, [stockOf('Lamp yellow', 3, 2), stockOf('Marigold', 3, 0)])).toEqual([]);
  });

  it('tells what is missing and what the army leaves over of the other', async () => {
    const paints = [
      makePaint({ paint: 'Lamp yellow', hex: '#f3c63f' }),
      makePaint({ paint: 'Marigold', hex: '#f3c63f' }),
    ];
    expect(await find(paints, [stockOf('Lamp yellow', 0.5, 2), stockOf('Marigold', 3, 1)])).toEqual([
      {
        paint: 'Lamp yellow',
        toBuyMl: 1.5,
        neededMl: 2,
        by: [{ paint: 'Marigold', sameByName: false, dE00: 0, spareMl: 2, isEnough: true }],
      },
    ]);
  });

  it('tells no media and varnishes apart by colour', async () => {
    const paints = ['Matt coat', 'Gloss coat'].map((paint) =>
      makePaint({ paint, kind: 'varnish', hex: '#ffffff' }),
    );
    expect(await find(paints, [stockOf('Matt coat', 0, 2), stockOf('Gloss coat', 3, 0)])).toEqual([]);
  });
});
