import { describe, expect, it } from 'vitest';
import { at, indexAt, numberAt } from '../../src/model/at.js';

describe('an element that must be there', () => {
  it('is read from lists and typed arrays, whatever it is', () => {
    expect(at(['oat', 'rust'], 1)).toBe('rust');
    expect(at(Float64Array.of(0, 2.5), 0)).toBe(0);
    expect([at([''], 0), at([false], 0), at([null], 0)]).toEqual(['', false, null]);
    expect([numberAt(Float64Array.of(0, 2.5), 1), indexAt(Int32Array.of(-1, 0), 1)]).toEqual([2.5, 0]);
  });

  it('stops with index and length where it is missing: past the end, before the start, between, not a number', () => {
    expect(() => at([1, 2], 2)).toThrow(new RangeError('no element 2 in a list of 2'));
    expect(() => at(Float64Array.of(1), -1)).toThrow(new RangeError('no element -1 in a list of 1'));
    expect(() => at([1, 2], 0.5)).toThrow(new RangeError('no element 0.5 in a list of 2'));
    expect(() => at([], Number.NaN)).toThrow(new RangeError('no element NaN in a list of 0'));
    expect(() => numberAt(Float64Array.of(1), 1)).toThrow(new RangeError('no element 1 in a list of 1'));
    expect(() => indexAt(Int32Array.of(), 0)).toThrow(new RangeError('no element 0 in a list of 0'));
  });
});
