import { describe, expect, it } from 'vitest';
import { showProgress } from '../../src/cli/show-progress.js';

const settings = { currency: 'EUR', locale: 'en', surePercent: 80, restock: 'army', overrides: [] } as const;

/** A stream that keeps what is written to it. */
const fakeStream = (isTTY: boolean) => {
  const written: string[] = [];
  const stream = { isTTY, write: (text: string) => written.push(text) > 0 };
  return { written, stream: stream as unknown as typeof process.stderr };
};

describe('progress of a long search', () => {
  it('is one line, written over itself, once a second has passed; and is taken away', () => {
    const { written, stream } = fakeStream(true);
    const { onProgress, end } = showProgress(settings, stream);
    onProgress?.({ best: 5000, bound: 4000, seconds: 0.5 });
    expect(written).toEqual([]);
    onProgress?.({ best: 5000, bound: 4860.2, seconds: 2.4 });
    expect(written.join('')).toContain(
      'Cheapest order so far €50.00, at most €1.40 above the best possible (2 s)',
    );
    end();
    expect(written.at(-1)).toBe('\r\u001b[K');
  });

  it('is silent before a first order is found, and where no one watches', () => {
    const { written, stream } = fakeStream(true);
    showProgress(settings, stream).onProgress?.({ best: Number.POSITIVE_INFINITY, bound: 0, seconds: 5 });
    expect(written).toEqual([]);
    expect(showProgress(settings, fakeStream(false).stream).onProgress).toBeUndefined();
  });
});
