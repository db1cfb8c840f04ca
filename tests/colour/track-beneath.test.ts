import { describe, expect, it } from 'vitest';
import { likely } from '../../src/assumptions/look-up.js';
import { registry } from '../../src/assumptions/registry.js';
import { bareGround, layCoat } from '../../src/colour/track-beneath.js';
import { type Part, partsOfZone, shareOf } from '../../src/model/zones.js';
import { makeStep } from '../make-sheets.js';

type Row = readonly [zone: string, paint: string, areaShare?: number];

/** What each step in turn lies on: paint and share of the part. */
function layAll(rows: readonly Row[], parts: readonly Part[] = ['head', 'front trunk']) {
  const ground = bareGround(parts);
  return rows.map(([zone, paint, areaShare = 1], index) => {
    const coat = {
      step: makeStep({ step: index, zone, paint }),
      parts: partsOfZone(zone, '', []).map((one) => ({
        part: one.part,
        share: shareOf(one, (name) => likely(registry, name)),
      })),
      areaShare,
    };
    return layCoat(ground, coat).map((one) => [
      one.part,
      one.coat?.paints[0]?.paint ?? 'bare',
      Number(one.share.toFixed(6)),
    ]);
  });
}

describe('what a coat lies on', () => {
  it('the figure is bare, then whatever came last', () => {
    expect(
      layAll([
        ['head', 'grey'],
        ['head', 'skin'],
        ['whole', 'black'],
      ]),
    ).toEqual([
      [['head', 'bare', 1]],
      [['head', 'grey', 1]],
      [
        ['head', 'skin', 1],
        ['front trunk', 'bare', 1],
      ],
    ]);
  });

  it('face and hair are halves of the head beside each other, and each comes back to its own', () => {
    const rows: Row[] = [
      ['head', 'grey'],
      ['face', 'skin'],
      ['hair', 'black'],
      ['face', 'light'],
      ['hair', 'dark'],
    ];
    expect(layAll(rows).slice(1)).toEqual([
      [['head', 'grey', 0.5]],
      [['head', 'grey', 0.5]],
      [['head', 'skin', 0.5]],
      [['head', 'black', 0.5]],
    ]);
  });

  it('eyes lie on the face, which was painted before the hair', () => {
    expect(
      layAll([
        ['face', 'skin'],
        ['hair', 'black'],
        ['eyes', 'white'],
      ]).at(-1),
    ).toEqual([['head', 'skin', 0.01]]);
  });

  it('a belt lies on the tunic, and a midtone of the tunic keeps off the belt', () => {
    const rows: Row[] = [
      ['tunic', 'red'],
      ['belt', 'black'],
      ['tunic', 'light red', 0.6],
      ['belt', 'brown'],
    ];
    expect(layAll(rows, ['front trunk'])).toEqual([
      [['front trunk', 'bare', 1]],
      [['front trunk', 'red', 0.03]],
      [['front trunk', 'red', 0.6]],
      [['front trunk', 'black', 0.03]],
    ]);
  });

  it('a coat on some of its zone lies on what was painted there last', () => {
    const rows: Row[] = [
      ['head', 'red'],
      ['head', 'mid', 0.6],
      ['head', 'light', 0.4],
      ['head', 'pale', 0.7],
    ];
    expect(layAll(rows).slice(2)).toEqual([
      [['head', 'mid', 0.4]],
      [
        ['head', 'light', 0.4],
        ['head', 'mid', 0.2],
        ['head', 'red', 0.1],
      ],
    ]);
  });

  it('nothing, where the figure has no part of the zone or nothing of it is covered', () => {
    expect(
      layAll([
        ['horse', 'brown'],
        ['head', 'red', 0],
        ['head', 'grey'],
      ]),
    ).toEqual([[], [], [['head', 'bare', 1]]]);
  });
});
