// Bench: a long ledger read and checked over the same rows parsed, and evening after evening written, as whole programs in processor
// time. Prints a Markdown table. `npm run bench:ledger`, how many evenings may follow; not part of the tests, since times depend on
// the machine.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { argv } from 'node:process';
import { makeLedger } from './make-ledger.mjs';
import { measureOnce, median } from './measure-runs.mjs';

const sample = 'sample-data/low-sluice';
const evenings = Number(argv[2] ?? 1000);
const span = Math.min(100, evenings / 4);
const folder = mkdtempSync(join(tmpdir(), 'halfpot-ledger-'));
const cpuMs = (...args) => median(Array.from({ length: 5 }, () => measureOnce(args).cpuMs));

/** Over what each program takes without rows. */
function benchLong() {
  const [long, short] = [join(folder, 'long'), join(folder, 'short')];
  makeLedger({ sample, folder: long, rows: 100_000 });
  makeLedger({ sample, folder: short, rows: 20 });
  const check = ['dist/cli/main.js', 'check'];
  const parse = 'tests/bench/parse-log.mjs';
  return { ours: cpuMs(...check, long) - cpuMs(...check, short), parsed: cpuMs(parse, long) - cpuMs(parse) };
}

/** One figure of a large unit is painted each evening, all of its steps. Times of a hundred evenings: first, in the middle, last. */
function benchEvenings() {
  const sheets = join(folder, 'evenings');
  cpSync(sample, sheets, { recursive: true });
  rmSync(join(sheets, 'log.csv'));
  const [header, unitRow, ...others] = readFileSync(join(sheets, 'army.csv'), 'utf8').split('\n');
  const large = unitRow.replace(/,\d+,\d+,\d+,/, `,${evenings},10,0,`);
  writeFileSync(join(sheets, 'army.csv'), [header, large, ...others].join('\n'));
  const unit = unitRow.split(',')[0];
  const args = ['log', sheets, '--unit', unit, '--steps', '1-15', '--figures', '1', '--date', '2026-11-01'];
  const times = Array.from({ length: evenings }, () => measureOnce(['dist/cli/main.js', ...args]).cpuMs);
  const rows = readFileSync(join(sheets, 'log.csv'), 'utf8').trimEnd().split('\n').length - 1;
  const hundredFrom = (at) => median(times.slice(at, at + span));
  const [first, middle, last] = [0, (evenings - span) / 2, evenings - span].map(hundredFrom);
  return { first, middle, last, rows };
}

const { ours, parsed } = benchLong();
const { first, middle, last, rows } = benchEvenings();
/** 1 where the time grows with the rows alone, 3 where it grows with their square. */
const growth = (last - middle) / (middle - first);
const against = (seen, most) => `< ${most}: ${seen < most ? '(met)' : '(MISSED)'}`;
const table = [
  ['ledger, processor time', 'seen', 'target'],
  ['---', '---', '---'],
  ['100,000 rows parsed', `${parsed.toFixed(0)} ms`, ''],
  ['100,000 rows read and checked', `${ours.toFixed(0)} ms`, against(ours, 1000)],
  ['over the parsing', `${(ours / parsed).toFixed(1)} x`, against(ours / parsed, 10)],
  [
    `of ${evenings} evenings, one run each, the first ${span}; as many in the middle; the last`,
    [first, middle, last].map((ms) => `${ms.toFixed(0)} ms`).join(', '),
    '',
  ],
  ['last over first', `${(last / first).toFixed(2)} x`, ''],
  [`growth to ${rows} rows over that to half of them`, `${growth.toFixed(1)} x`, against(growth, 1.5)],
];
console.log(table.map((cells) => `| ${cells.join(' | ')} |`).join('\n'));
rmSync(folder, { recursive: true });
