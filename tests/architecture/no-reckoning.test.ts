// Architecture: the report words, rounds and draws what stages have reckoned. Rounding stands in report/words, what scales a
// drawing in report/drawing and in files that draw or place.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { findReckoning } from './find-reckoning.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const report = join(root, 'src/report');
const files = readdirSync(report, { recursive: true, encoding: 'utf8' })
  .filter((name) => /^(sections|page)\/.*\.ts$/.test(name) && !/\/(draw|place|load)[^/]*\.ts$/.test(name))
  .map((name) => join(report, name));

describe('the report', () => {
  it('has sections to look at', () => expect(files.length).toBeGreaterThan(20));

  it('neither adds, divides nor compares amounts', () => expect(findReckoning(root, files)).toEqual([]));
});

it('a sum, a share, an exact difference and a comparison are found; a count of rows and a sign are none', () => {
  const file = fileURLToPath(new URL('reckoning/view.ts', import.meta.url));
  expect(findReckoning(root, [file]).map((found) => found.replace(/^.*?: /, ''))).toEqual([
    'haveMl + toBuyMl',
    'ml / wholeMl',
    'whole.minus(remaining)',
    'haveMl < needMl',
  ]);
});
