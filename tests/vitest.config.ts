// Tests: where they are, how long one may take on a slow machine, and what coverage counts.
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/architecture/fixtures/**'],
    testTimeout: 30_000,
    // What is measured on model files is kept by no test that does not ask for it.
    env: { XDG_CACHE_HOME: '/dev/null/nothing-is-kept' },
    hookTimeout: 60_000,
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
