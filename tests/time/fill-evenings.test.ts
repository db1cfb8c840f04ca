import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Unit } from '../../src/model/sheets.js';
import type { Evening, Pass } from '../../src/model/time.js';
import { fillEvenings } from '../../src/time/fill-evenings.js';
import type { UnitWork } from '../../src/time/queue-batches.js';
import { cutBatches } from '../../src/time/time-job.js';
import { makeUnit } from '../make-sheets.js';
import { makePass } from './make-time.js';

/** 10 figures: 5 minutes of setup and 2 of spraying, then 1 and 20 by brush. */
const primer = makePass({
  layer: 'primer',
  spray: true,
  palette: 'spray can\nGrey',
  brushMinPerFigure: 0.2,
  setupMin: 5,
  driesMin: 30,
});
const base = makePass({ step: 2, setupMin: 1 });
const varnish = { ...primer, step: 9, layer: 'varnish', palette: 'spray can\nMatt' } as const;

const workOf = (unit: Partial<Unit>, passes: readonly Pass[]): UnitWork => {
  const whole = makeUnit(unit);
  return { unit: whole, alike: cutBatches(passes, whole.batch) };
};
const first = (passes: readonly Pass[]): UnitWork => workOf({ unit: 'first', priority: 1 }, passes);
const second = (passes: readonly Pass[]): UnitWork => workOf({ unit: 'second', priority: 2 }, passes);

/** Each piece in one line: `first 2 x10 = 21`. */
const inWords = ({ pieces }: Evening): string[] =>
  pieces.map((piece) => {
    const minutes = Number(piece.minutes.toFixed(3));
    if (piece.what === 'waiting') return `waiting = ${minutes}`;
    return `${piece.what} ${piece.unit} ${piece.pass.step} x${Number(piece.figures.toFixed(3))} = ${minutes}`;
  });
const wordsOf = (works: readonly UnitWork[], eveningMin: number): string[][] =>
  fillEvenings(works, eveningMin).evenings.map(inWords);

describe('an evening, by hand', () => {
  // The first figure is sprayed at 5.2 and dry at 35.2, the setup of a minute passes before it: 34.2 - 7 = 27.2.
  it('waits till the primer is dry, and puts out the paint meanwhile', () => {
    expect(wordsOf([first([primer, base])], 120)).toEqual([
      ['spraying first 1 x10 = 7', 'waiting = 27.2', 'painting first 2 x10 = 21'],
    ]);
  });

  it('two units are sprayed with one setup, and the second is painted after the first', () => {
    expect(wordsOf([first([primer, base]), second([primer, base])], 120)).toEqual([
      [
        'spraying first 1 x10 = 7',
        'spraying second 1 x10 = 2',
        'waiting = 25.2',
        'painting first 2 x10 = 21',
        'painting second 2 x10 = 21',
      ],
    ]);
  });

  // 30 minutes: nothing is dry at 9 + 25.2; then 21 and, of the 9 left, 1 + 4 x 2; then 1 + 6 x 2.
  it('ends before what is still wet, dries overnight, and carries a pass over with a new setup', () => {
    const filled = fillEvenings([first([primer, base]), second([primer, base])], 30);
    expect(filled.evenings.map(inWords)).toEqual([
      ['spraying first 1 x10 = 7', 'spraying second 1 x10 = 2'],
      ['painting first 2 x10 = 21', 'painting second 2 x4 = 9'],
      ['painting second 2 x6 = 13'],
    ]);
    expect(filled.evenings.map(({ minutes }) => minutes)).toEqual([expect.closeTo(9, 9), 30, 13]);
    expect([...filled.doneOn].map(([{ unit }, evening]) => [unit, evening])).toEqual([
      ['first', 2],
      ['second', 3],
    ]);
  });

  // 1 + 10 x 2 = 21; the first figure was painted at 3 and is dry at 33, so the second unit fills 21 of 12 minutes.
  it('paints the next unit while the first dries, then goes back to the first', () => {
    const wash = makePass({ layer: 'wash', driesMin: 30, setupMin: 1 });
    expect(wordsOf([first([wash, base]), second([wash])], 120)).toEqual([
      ['painting first 1 x10 = 21', 'painting second 1 x10 = 21', 'painting first 2 x10 = 21'],
    ]);
  });

  it('a second coat needs no setup the same evening, but one on the next', () => {
    const coats = [makePass({ setupMin: 1 }), makePass({ coat: 2 })];
    expect(wordsOf([first(coats)], 60)).toEqual([['painting first 1 x10 = 21', 'painting first 1 x10 = 20']]);
    expect(wordsOf([first(coats)], 21)).toEqual([
      ['painting first 1 x10 = 21'],
      ['painting first 1 x10 = 21'],
    ]);
  });

  // 9 minutes are left: 6 of setup would leave one figure of 2.
  it('begins nothing for less painting than its setup', () => {
    const slow = { ...base, setupMin: 6 };
    expect(wordsOf([first([base]), second([slow])], 30)).toEqual([
      ['painting first 2 x10 = 21'],
      ['painting second 2 x10 = 26'],
    ]);
  });

  // A figure of 21 minutes, a setup of 1, evenings of 10: 9, 9 and 3 minutes of painting.
  it('splits a figure that takes longer than an evening', () => {
    const hull = makePass({ figures: 1, brushMinPerFigure: 21, setupMin: 1 });
    expect(wordsOf([workOf({ unit: 'first', count: 1 }, [hull])], 10)).toEqual([
      ['painting first 1 x0.429 = 10'],
      ['painting first 1 x0.429 = 10'],
      ['painting first 1 x0.143 = 4'],
    ]);
  });

  it('gets on even where setting up takes longer than the evening', () => {
    const slow = makePass({ figures: 4, setupMin: 50 });
    expect(wordsOf([workOf({ unit: 'first', count: 4 }, [slow])], 8)).toEqual([
      ['painting first 1 x2 = 8'],
      ['painting first 1 x2 = 8'],
    ]);
  });

  it('no work, no evening', () => {
    expect(fillEvenings([], 120)).toMatchObject({ evenings: [], complete: true, brushMin: 0 });
  });
});

describe('sprays', () => {
  it('wait till the whole unit has come to them, also where later units could be painted first', () => {
    const works = [
      workOf({ unit: 'first', priority: 1, count: 20 }, [
        { ...base, figures: 20 },
        { ...varnish, figures: 20 },
      ]),
      second([base]),
    ];
    // Batch two is painted before batch one is varnished; then both, then the second unit.
    expect(wordsOf(works, 120)).toEqual([
      ['painting first 2 x20 = 42', 'spraying first 9 x20 = 9', 'painting second 2 x10 = 21'],
    ]);
  });

  // Batches of 10 and 3. At 76 the ten await their varnish, but the three are wet till 80: the second unit goes on.
  it('wait also for a batch of the unit that is still wet', () => {
    const wet = makePass({ driesMin: 54, setupMin: 1, figures: 13 });
    const quick = makePass({ step: 2, brushMinPerFigure: 0.5, driesMin: 0, setupMin: 1, figures: 13 });
    const works = [
      workOf({ unit: 'first', priority: 1, count: 13 }, [wet, quick, { ...varnish, figures: 13 }]),
      workOf({ unit: 'second', priority: 2, count: 30 }, [{ ...base, figures: 30 }]),
    ];
    expect(wordsOf(works, 120)).toEqual([
      [
        'painting first 1 x13 = 28',
        'painting second 2 x20 = 42',
        'painting first 2 x10 = 6',
        'painting second 2 x10 = 21',
        'painting first 2 x3 = 2.5',
        'spraying first 9 x13 = 7.6',
      ],
    ]);
  });

  // The same unit alone: ten await their varnish at 75.5, and three are dry at 80, sooner than a can is set up.
  it('are not set up for a wait shorter than setting up', () => {
    const wet = makePass({ driesMin: 54, setupMin: 1, figures: 13 });
    const quick = makePass({ step: 2, brushMinPerFigure: 0.5, driesMin: 0, setupMin: 1, figures: 13 });
    const alone = workOf({ unit: 'first', count: 13 }, [wet, quick, { ...varnish, figures: 13 }]);
    expect(wordsOf([alone], 120)).toEqual([
      [
        'painting first 1 x13 = 28',
        'waiting = 41.5',
        'painting first 2 x10 = 6',
        'waiting = 4.5',
        'painting first 2 x3 = 2.5',
        'spraying first 9 x13 = 7.6',
      ],
    ]);
  });

  it('of units of one priority are laid together', () => {
    const steps = [base, varnish];
    const together = [workOf({ unit: 'first' }, steps), workOf({ unit: 'second', row: 3 }, steps)];
    expect(wordsOf(together, 120)).toEqual([
      [
        'painting first 2 x10 = 21',
        'painting second 2 x10 = 21',
        'spraying first 9 x10 = 7',
        'spraying second 9 x10 = 2',
      ],
    ]);
  });
});

/** One batch a unit, so that each piece tells which figures it is about. */
const drawnWorks = fc.array(
  fc.record({
    count: fc.integer({ min: 1, max: 12 }),
    passes: fc.array(
      fc.record({
        spray: fc.boolean(),
        brushMinPerFigure: fc.integer({ min: 1, max: 9 }),
        setupMin: fc.integer({ min: 0, max: 4 }),
        driesMin: fc.constantFrom(0, 2, 5, 30),
      }),
      { minLength: 1, maxLength: 5 },
    ),
  }),
  { minLength: 1, maxLength: 4 },
);

const buildWorks = (drawn: typeof drawnWorks extends fc.Arbitrary<infer Works> ? Works : never): UnitWork[] =>
  drawn.map(({ count, passes }, index) =>
    workOf(
      { unit: `unit ${index}`, row: index + 2, priority: index, count, batch: count },
      passes.map((pass, step) =>
        makePass({
          ...pass,
          step,
          figures: count,
          palette: pass.spray ? 'spray can\nGrey' : `brush\n${step}`,
        }),
      ),
    ),
  );

describe('whatever the army', () => {
  it('evenings hold their minutes, everything is painted once, in order, and never while wet', () => {
    fc.assert(
      fc.property(drawnWorks, fc.integer({ min: 5, max: 150 }), (drawn, eveningMin) => {
        const works = buildWorks(drawn);
        const { evenings, complete, brushMin } = fillEvenings(works, eveningMin);
        expect(complete).toBe(true);
        const painted = new Map<Pass, number>();
        for (const { pieces, minutes } of evenings) {
          expect(minutes).toBeLessThanOrEqual(eveningMin);
          expect(pieces.reduce((sum, piece) => sum + piece.minutes, 0)).toBeCloseTo(minutes, 6);
          expect(pieces.at(-1)?.what).not.toBe('waiting');
          walkEvening(pieces, painted, works);
        }
        for (const { alike } of works) {
          for (const { pass } of alike[0]?.rounds ?? [])
            expect(painted.get(pass)).toBeCloseTo(pass.figures, 6);
        }
        const work = works
          .flatMap(({ alike }) => alike[0]?.rounds ?? [])
          .reduce((sum, round) => sum + round.figures * round.brushMinPerFigure, 0);
        expect(brushMin).toBeCloseTo(work, 6);
        expect(evenings.length).toBeGreaterThanOrEqual(Math.ceil(work / eveningMin - 1e-9));
      }),
      { numRuns: 500 },
    );
  });
});

/** Figure by figure through one evening: each pass after the one before it, and only on what is dry. */
function walkEvening(
  pieces: Evening['pieces'],
  painted: Map<Pass, number>,
  works: readonly UnitWork[],
): void {
  const dryAt = new Map<string, number>();
  let now = 0;
  for (const piece of pieces) {
    if (piece.what !== 'waiting') {
      const { unit, pass, figures } = piece;
      const rounds = works.find((work) => work.unit.unit === unit)?.alike[0]?.rounds ?? [];
      const place = rounds.findIndex((round) => round.pass === pass);
      const before = rounds[place - 1]?.pass;
      if (before !== undefined) expect(painted.get(before)).toBeCloseTo(before.figures, 6);
      const from = painted.get(pass) ?? 0;
      let at = now + piece.setupMin;
      for (let figure = Math.floor(from + 1e-6); figure < from + figures - 1e-6; figure++) {
        expect(at).toBeGreaterThanOrEqual((dryAt.get(`${unit}\n${figure}`) ?? 0) - 1e-6);
        at += Math.min(1, from + figures - figure) * pass.brushMinPerFigure;
        dryAt.set(`${unit}\n${figure}`, at + pass.driesMin);
      }
      painted.set(pass, from + figures);
    }
    now += piece.minutes;
  }
}
