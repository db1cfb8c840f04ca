// Outputs: all files that five plans write, kept before a change and compared byte by byte after it. As a program, after a
// build: `npm run outputs keep`, then `npm run outputs compare`. Out: one line a file; exit code 1 where one differs.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { argv, exit } from 'node:process';
import { fileURLToPath } from 'node:url';
import { makeArmy } from '../bench/make-army.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const main = join(root, 'dist/cli/main.js');
const sample = join(root, 'sample-data/low-sluice');
const folder = join(root, '.halfpot/outputs');

/** Each writes its sheets into a folder of its own, and says what else the command is given. */
const cases = {
  sample: (sheets) => copySample(sheets, 'en'),
  german: (sheets) => copySample(sheets, 'de-DE'),
  budget: (sheets) => [...copySample(sheets, 'en'), '--budget', '40'],
  starter: (sheets) => {
    run(['start', sheets]);
    return [];
  },
  'a thousand rows': (sheets) => {
    makeArmy({ sample, folder: sheets, rows: 1000 });
    return [];
  },
};

function copySample(sheets, locale) {
  cpSync(sample, sheets, { recursive: true });
  const settings = `name,value\ncurrency,EUR\ndate,2026-11-02\nlocale,${locale}\nrestock,shelf\n`;
  writeFileSync(join(sheets, 'settings.csv'), settings);
  return [];
}

function run(args) {
  const { status, stderr } = spawnSync('node', [main, ...args], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`halfpot ${args.join(' ')} ended with ${status}: ${stderr}`);
}

/** Plans every case into `into`; the sheets themselves do not stay. */
function writeAll(into) {
  rmSync(into, { recursive: true, force: true });
  for (const [name, prepare] of Object.entries(cases)) {
    const [sheets, out] = [join(folder, 'sheets'), join(into, name)];
    rmSync(sheets, { recursive: true, force: true });
    mkdirSync(out, { recursive: true });
    const more = prepare(sheets);
    run(['plan', sheets, '--out', out, '--date', '2026-11-02', ...more]);
    rmSync(sheets, { recursive: true });
  }
}

const listFiles = (under) =>
  readdirSync(under, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(under.length + 1))
    .sort();

const hashOf = (file) =>
  existsSync(file) ? createHash('sha256').update(readFileSync(file)).digest('hex') : 'absent';

function compare(kept, fresh) {
  const names = [...new Set([...listFiles(kept), ...listFiles(fresh)])].sort();
  const differing = names.filter((name) => hashOf(join(kept, name)) !== hashOf(join(fresh, name)));
  for (const name of names) console.log(`${differing.includes(name) ? 'DIFFERS' : 'same   '} ${name}`);
  return differing.length;
}

const [kept, fresh] = [join(folder, 'kept'), join(folder, 'fresh')];
if (argv[2] === 'keep') writeAll(kept);
else if (argv[2] === 'compare' && existsSync(kept)) {
  writeAll(fresh);
  exit(compare(kept, fresh) === 0 ? 0 : 1);
} else {
  console.error('Type npm run outputs keep, change something, then npm run outputs compare.');
  exit(2);
}
