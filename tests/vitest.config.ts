// Tests: where they are, how long one may take, and what coverage counts.
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { times } from './robust/soak.js';

/**
 * Only ends what hangs. The longest test takes some ten seconds of work on a machine with nothing else to do: enough for one
 * that does twenty other things.
 */
const longestMs = 300_000 * Math.max(1, times);

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/architecture/fixtures/**'],
    testTimeout: longestMs,
    hookTimeout: longestMs,
    teardownTimeout: longestMs,
    expect: { poll: { timeout: longestMs / 5 } },
    // One for each core: many tests wait for processes of their own.
    maxWorkers: '100%',
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reportsDirectory: 'coverage',
      reporter: ['text-summary', 'lcovonly'],
      thresholds: { lines: 90, functions: 90, branches: 80 },
    },
  },
});
