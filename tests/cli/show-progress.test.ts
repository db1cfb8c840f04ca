import { describe, expect, it } from 'vitest';
import { showProgress } from '../../src/cli/show-progress.js';
import { planArmy } from '../../src/plan-army.js';
import { makeSheets, makeStep } from '../make-sheets.js';

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
    const { follow, end } = showProgress(stream);
    const { onProgress } = follow?.(settings) ?? {};
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
    showProgress(stream)
      .follow?.(settings)
      .onProgress({ best: Number.POSITIVE_INFINITY, bound: 0, seconds: 5 });
    expect(written).toEqual([]);
    expect(showProgress(fakeStream(false).stream).follow).toBeUndefined();
  });
});

describe('progress of a run', () => {
  it('says each stage before it begins and how many there are, on one line, which is taken away', async () => {
    const { written, stream } = fakeStream(true);
    const { onStage, follow, end } = showProgress(stream);
    const told = { onStage, ...follow?.(settings) };
    await planArmy(makeSheets({ steps: [makeStep({ step: 1 })] }), '2026-11-01', { draws: 100, ...told });
    onStage('writing');
    end();
    end();
    expect(written.map((text) => text.replace('\r\u001b[K', ''))).toEqual([
      'How widely the needs vary (1 of 4)',
      'The cheapest order (2 of 4)',
      'To buy now: €0.00. Other ways to buy, more figures and fewer, other colours (3 of 4)',
      'To buy now: €0.00. Writing the files (4 of 4)',
      '',
    ]);
    expect(written.every((text) => text.startsWith('\r\u001b[K'))).toBe(true);
  });

  it('is silent where no one watches', () => {
    const { written, stream } = fakeStream(false);
    const { onStage, end } = showProgress(stream);
    onStage('draws');
    end();
    expect(written).toEqual([]);
  });
});
