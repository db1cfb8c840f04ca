// The corpus: sheets as painters keep them, each against the reading of a person. No file may be read worse than before;
// `HALFPOT_RAISE=1` writes what is better into floors.txt. Where a reading was mended, take its lines out there first.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { env } from 'node:process';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { readFloors, worseThan, writeFloors } from './floors.js';
import { readAnswer } from './read-answer.js';
import { loadReadings, sheetsFolder } from './reading.js';
import { type Score, scoreReading } from './score-reading.js';

/** What all files come to: better numbers are put here by hand, worse ones never. */
const leastRightPercent = 97;
/** Cells that are read wrong without a word. */
const mostWrong = 0;
/** Files with something to mend, of those in which a person finds every cell clear. */
const mostToMend = 18;

const floorsFile = fileURLToPath(new URL('floors.txt', import.meta.url));
const today = '2026-11-29';
const readings = loadReadings();
const floors = readFloors(existsSync(floorsFile) ? readFileSync(floorsFile, 'utf8') : '');
const scores = new Map<string, Score>();
const isRaising = env.HALFPOT_RAISE !== undefined;

for (const reading of readings) {
  for (const path of reading.paths) {
    it(`${path}: ${reading.says}`, async () => {
      const score = scoreReading(reading, await readAnswer(join(sheetsFolder, path), today), basename(path));
      scores.set(path, score);
      const floor = floors.get(path);
      if (!isRaising) expect(floor, 'it has no floor yet').toBeDefined();
      expect(worseThan(floor ?? score, score)).toEqual([]);
    });
  }
}

/** A file that is read worse keeps its floor, and so does one that was not read this time. */
afterAll(() => {
  if (!isRaising) return;
  const known = readings.flatMap(({ paths }) => paths).sort();
  const raised = known.flatMap((path): [string, Score][] => {
    const [floor, score] = [floors.get(path), scores.get(path)];
    const isBetter = score !== undefined && worseThan(floor ?? score, score).length === 0;
    const kept = isBetter ? score : floor;
    return kept === undefined ? [] : [[path, kept]];
  });
  writeFileSync(floorsFile, writeFloors(new Map(raised)));
});

it('reads so many cells right, so few wrong in silence, and has so few files mended', () => {
  const all = [...scores.values()];
  const clear = readings.flatMap(({ paths, clear }) => (clear === true ? paths : []));
  const sum = (of: (score: Score) => number): number => all.reduce((total, score) => total + of(score), 0);
  const rightPercent = (sum(({ right }) => right) / sum(({ cells }) => cells)) * 100;
  expect(rightPercent).toBeGreaterThanOrEqual(leastRightPercent);
  expect(sum(({ wrong }) => wrong.length)).toBeLessThanOrEqual(mostWrong);
  const toMend = clear.filter((path) => (scores.get(path)?.errors ?? 0) > 0);
  expect(toMend.length).toBeLessThanOrEqual(mostToMend);
});

it('has a reading for each file, and a file for each reading', () => {
  const kept = readdirSync(sheetsFolder);
  const read = readings.flatMap(({ paths }) => paths);
  expect([...read].sort()).toEqual(kept.sort());
  expect([...floors.keys()].filter((path) => !read.includes(path))).toEqual([]);
});
