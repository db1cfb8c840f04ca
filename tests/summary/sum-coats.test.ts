// Reasons for coats of the small army, and its primers. By hand.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { Paint } from '../../src/model/sheets.js';
import type { Job, Line } from '../../src/model/work.js';
import { sumCoats } from '../../src/summary/sum-coats.js';
import { ram, wardens } from '../report/a-small-army.js';
import { nettleOverGrey, smallPrimers } from '../report/a-small-palette.js';
import { smallPaints } from '../report/a-small-shelf.js';

const paints = new Map<string, Paint>(smallPaints.map((one) => [one.paint, one]));
const sumsOf = (jobs: readonly Job[], primers = smallPrimers) =>
  sumCoats({ jobs, paints, assumptions: [...registry.values()], primers });

const tunic = wardens.lines[1];
if (tunic === undefined) throw new Error('no tunic');
const jobOf = (...lines: readonly Line[]): Job => ({ ...wardens, lines });

describe('reasons', () => {
  it('leave 23.1 x 0.3 x 0.3 x 0.3 = 0.6237 of the difference after three coats', () => {
    const [reason, ...none] = sumsOf([wardens, ram]).reasons;
    expect(none).toEqual([]);
    expect(reason?.coats).toBe(3);
    expect(reason?.leftDE00).toBeCloseTo(0.6237, 9);
  });

  it('alike are one, with every place once', () => {
    const again = { ...tunic, zone: 'cloak', coatsBecause: { ...nettleOverGrey } };
    const twin = { ...again, coatsBecause: { ...nettleOverGrey } };
    const [reason, ...none] = sumsOf([jobOf(tunic, again), { ...jobOf(twin), scheme: 'Fen' }]).reasons;
    expect(none).toEqual([]);
    expect([...(reason?.places ?? [])].map(([scheme, places]) => [scheme, [...places.values()]])).toEqual([
      [
        'Marsh',
        [
          { step: 2, zone: 'tunic' },
          { step: 2, zone: 'cloak' },
        ],
      ],
      ['Fen', [{ step: 2, zone: 'cloak' }]],
    ]);
  });

  it('stand with most coats first, then the greatest difference', () => {
    const other = (coats: number, dE00: number): Line => ({
      ...tunic,
      coats,
      coatsBecause: { ...nettleOverGrey, dE00, under: [{ paint: `${coats} of ${dE00}`, share: 1 }] },
    });
    const { reasons } = sumsOf([jobOf(other(2, 30), other(3, 12), other(3, 40))]);
    expect(reasons.map(({ coats, because }) => [coats, because.dE00])).toEqual([
      [3, 40],
      [3, 12],
      [2, 30],
    ]);
  });

  it('are doubted for the opacity that most coats rest on', () => {
    const fair = (coats: number): Line => ({
      ...tunic,
      coats,
      coatsBecause: { ...nettleOverGrey, opacity: 'fair' },
    });
    expect(sumsOf([jobOf(tunic, fair(2))]).trust.biggestDoubt).toBe('opacity weak');
    expect(sumsOf([jobOf(tunic, fair(4))]).trust.biggestDoubt).toBe('opacity fair');
  });
});

describe('paints of unknown colour', () => {
  it('are those of base coats and midtones without hex or opacity, and primers beneath without hex', () => {
    const { coatsBecause: _, ...plain } = tunic;
    const under = { ...plain, layer: 'primer', paint: 'Pitch shed' } as const;
    // Rust hush has a hex and no opacity; brass has neither, yet no detail is laid to hide.
    expect(sumsOf([ram]).unknown).toEqual(['Rust hush']);
    expect(sumsOf([jobOf(under, { ...plain, paint: 'Bell brass' })]).unknown).toEqual([
      'Pitch shed',
      'Bell brass',
    ]);
    expect(sumsOf([jobOf(under, { ...plain, layer: 'detail', paint: 'Bell brass' })]).unknown).toEqual([]);
    expect(sumsOf([wardens]).unknown).toEqual([]);
  });
});

describe('primers', () => {
  it('are compared with the one in use: 150 and 263 against 263 minutes', () => {
    expect([...sumsOf([wardens]).primerExtraMin]).toEqual([
      ['Lamp white', -113],
      ['Kettle grey', 0],
      ['Pitch shed', 0],
    ]);
  });

  it.each([true, false])('are not where several are in use, or none: %j', (inUse) => {
    const primers = smallPrimers.primers.map((one) => ({ ...one, inUse }));
    expect(sumsOf([wardens], { ...smallPrimers, primers }).primerExtraMin.size).toBe(0);
  });
});
