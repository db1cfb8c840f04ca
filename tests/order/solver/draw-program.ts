// Tests: small programs drawn at random. In: fast-check. Out: programs with rows of every kind, some of which nothing fits.
import fc from 'fast-check';
import type { Column, IntegerProgram, Row } from '../../../src/order/solver/integer-program.js';

const infinity = Number.POSITIVE_INFINITY;

interface Drawn {
  /** Whether all columns are whole, and their costs too. */
  readonly isWhole: boolean;
  readonly mostColumns: number;
}

const columnOf = ({ isWhole }: Drawn): fc.Arbitrary<Column> =>
  fc
    .record({
      cost: isWhole
        ? fc.integer({ min: -300, max: 1500 })
        : fc.integer({ min: -30, max: 150 }).map((n) => n / 7),
      lower: fc.constantFrom(0, 0, 0, 1),
      most: fc.integer({ min: 0, max: 4 }),
      integer: isWhole ? fc.constant(true) : fc.boolean(),
    })
    .map(({ most, lower, ...column }) => ({ ...column, lower, upper: lower + most }));

/** At least, at most, between, or just so much. */
function rowOf(columns: number): fc.Arbitrary<Row> {
  const coefficient = fc.constantFrom(0, 0, 1, 2, 3, -1, -2, 11.52, 16.32, 32.64);
  return fc
    .record({
      coefficients: fc.array(coefficient, { minLength: columns, maxLength: columns }),
      lower: fc.integer({ min: -20, max: 60 }),
      width: fc.constantFrom(infinity, infinity, infinity, 0, 10),
      isUpper: fc.boolean(),
    })
    .map(({ coefficients, lower, width, isUpper }) => ({
      lower: isUpper && width === infinity ? -infinity : lower,
      upper: isUpper && width === infinity ? lower : lower + width,
      terms: coefficients.flatMap((one, column): [number, number][] => (one === 0 ? [] : [[column, one]])),
    }));
}

export const drawProgram = (drawn: Drawn): fc.Arbitrary<IntegerProgram> =>
  fc.integer({ min: 1, max: drawn.mostColumns }).chain((count) =>
    fc.record({
      columns: fc.array(columnOf(drawn), { minLength: count, maxLength: count }),
      rows: fc.array(rowOf(count), { minLength: 0, maxLength: 8 }),
    }),
  );
