// The installed package by itself: its commands, its library and types, and what it carries of others.
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { execPath } from 'node:process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { planArmy, readSheets, renderReport, writePlanJson, writeReorderCsv } from '../../src/library.js';
import type { Solve } from '../../src/order/solver/integer-program.js';
import { solveProgram } from '../../src/order/solver/solve-program.js';
import { drawMarket } from '../order/draw-market.mjs';
import { armySheets, marketSheets } from '../order/market-sheets.mjs';
import { writeSheets } from '../problems/problem-case.js';
import { installPackage } from './install-package.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { home, folder, packedBytes, run } = installPackage();
const today = '2026-03-14';
/** To search, on a busy machine too. */
const seconds = 20;
const at = (...names: string[]): string => join(home, ...names);
const read = (...names: string[]): string => readFileSync(at(...names), 'utf8');
const programs = readdirSync(join(folder, 'dist/program')).filter((name) => name.endsWith('.js'));

describe('the installed package', () => {
  it('comes alone', () => {
    expect(readdirSync(at('node_modules')).filter((name) => !name.startsWith('.'))).toEqual(['halfpot']);
    const { dependencies, optionalDependencies, peerDependencies } = JSON.parse(
      readFileSync(join(folder, 'package.json'), 'utf8'),
    );
    expect({ dependencies, optionalDependencies, peerDependencies }).toEqual({});
  });

  it('is under 2.5 MB packed', () => {
    expect(packedBytes).toBeLessThan(2.5 * 2 ** 20);
  });

  it('names no path of the machine that built it', () => {
    for (const name of programs)
      expect(readFileSync(join(folder, 'dist/program', name), 'utf8'), name).not.toContain(root);
  });

  it('starts, checks and plans, from sheets of both kinds', () => {
    expect(run('halfpot', ['start', 'army'])).toMatchObject({ code: 0, err: '' });
    expect(run('halfpot', ['check', 'army'])).toMatchObject({ code: 0, err: '' });
    expect(run('halfpot', ['plan', 'army', '--out', 'out', '--date', today])).toMatchObject({
      code: 0,
      err: '',
    });
    expect(readdirSync(at('out'))).toEqual(
      expect.arrayContaining(['estimate.xlsx', 'plan.json', 'reorder.xlsx', 'report.html']),
    );
    expect(run('halfpot', ['start', 'book', '--workbook'])).toMatchObject({ code: 0, err: '' });
    // Line ends hang on how long the names of the files are.
    const bare = (out: string) => out.replaceAll(/[\w-]+\.(?:csv|xlsx)/g, 'FILE').replaceAll(/\s+/g, ' ');
    const { out } = run('halfpot', ['check', 'army']);
    const { out: ofBook, ...rest } = run('halfpot', ['check', 'book/sheets.xlsx']);
    expect(rest).toMatchObject({ code: 0, err: '' });
    expect(bare(ofBook)).toBe(bare(out));
  });

  it('plans to the byte as the sources do, templates compiled or not', async () => {
    const { sheets, problems } = await readSheets(at('army'), today);
    if (sheets === undefined) throw new Error('the starter sheets have errors');
    const plan = await planArmy(sheets, today);
    expect(read('out', 'report.html')).toBe(await renderReport(plan, problems));
    expect(read('out', 'plan.json')).toBe(writePlanJson(plan, problems));
    expect(read('out', 'reorder.csv')).toBe(writeReorderCsv(plan));
  });
});

describe('a market too large for our own search', () => {
  const market = drawMarket(3, { paints: 240, offers: 280, shops: 2 });

  it('is ordered by the solver that the package brings, as by the one of the sources', async () => {
    mkdirSync(at('market'));
    writeSheets(at('market'), { ...armySheets(market), ...marketSheets(market) });
    const args = ['plan', 'market', '--out', 'market-plan', '--date', today, '--seconds', String(seconds)];
    expect(run('halfpot', args)).toMatchObject({ code: 0, err: '' });
    const { sheets } = await readSheets(at('market'), today);
    if (sheets === undefined) throw new Error('the sheets of the market have errors');
    let searches = 0;
    const solve: Solve = (program, limits) => {
      searches++;
      return solveProgram(program, limits);
    };
    const { order } = await planArmy(sheets, today, { solve, seconds });
    expect(searches).toBeGreaterThan(0);
    expect(order.status).toBe('proved');
    const planned = JSON.parse(read('market-plan', 'plan.json'));
    expect(planned.order.status).toBe('proved');
    expect(planned.order.total).toBe((order.totalMinor / 100).toFixed(2));
  });
});

describe('the library', () => {
  it('has types that stand on their own', () => {
    cpSync(join(root, 'tests/package/use-library.mts'), at('use-library.mts'));
    cpSync(join(root, 'node_modules/@types/node'), at('types/node'), { recursive: true });
    cpSync(join(root, 'node_modules/undici-types'), at('types/undici-types'), { recursive: true });
    const options = {
      module: 'NodeNext',
      target: 'ES2023',
      lib: ['ES2023'],
      strict: true,
      skipLibCheck: false,
    };
    const compilerOptions = {
      ...options,
      exactOptionalPropertyTypes: true,
      types: ['node'],
      typeRoots: ['types'],
    };
    writeFileSync(at('tsconfig.json'), JSON.stringify({ compilerOptions, files: ['use-library.mts'] }));
    const { code, out } = run(execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', '.']);
    expect({ code, out }).toEqual({ code: 0, out: '' });
  });

  it('plans as the command does', () => {
    const { code, out, err } = run(execPath, ['use-library.mjs', 'army']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const { costs, paints } = JSON.parse(read('out', 'plan.json'));
    const told = JSON.parse(out);
    expect(told).toMatchObject({ paints: paints.length, budget: true });
    expect((told.cash / 100).toFixed(2)).toBe(costs.cash);
    for (const name of ['report.html', 'shop.html', 'bench.html', 'reorder.csv', 'plan.json'])
      expect(read(name)).toBe(read('out', name));
  });
});

describe('compiled code', () => {
  const compiled = join(folder, 'dist/compiled');
  const check = () => run('halfpot', ['check', 'army']);

  it('is kept after a run that went well, and changes nothing that is said', () => {
    rmSync(compiled, { recursive: true, force: true });
    expect(run('halfpot', ['check', 'nowhere']).code).not.toBe(0);
    expect(existsSync(compiled)).toBe(false);
    const first = check();
    const [version = ''] = readdirSync(compiled);
    expect(readdirSync(join(compiled, version))).toEqual(['check']);
    expect(check()).toEqual(first);
  });

  it('serves plans too: what is kept while the solver works under flags of its own serves a plan without it', () => {
    rmSync(compiled, { recursive: true, force: true });
    const plan = (sheets: string) =>
      run('halfpot', ['plan', sheets, '--out', 'kept', '--date', today, '--seconds', String(seconds)]);
    const written = () => {
      const [version = ''] = readdirSync(compiled);
      return statSync(join(compiled, version, 'plan')).mtimeMs;
    };
    // The market of before asks the solver, the starter's army does not; what each needs is kept once both have run.
    const first = plan('market');
    expect(plan('army')).toMatchObject({ code: 0, err: '' });
    const kept = written();
    expect(plan('market')).toEqual(first);
    expect(plan('army')).toMatchObject({ code: 0, err: '' });
    expect(written()).toBe(kept);
  });

  it('is not believed where it is spoiled', () => {
    const first = check();
    for (const entry of readdirSync(compiled, { recursive: true, withFileTypes: true }))
      if (entry.isFile()) writeFileSync(join(entry.parentPath, entry.name), 'not what V8 wrote');
    expect(check()).toEqual(first);
  });

  it('may be impossible to keep', () => {
    rmSync(compiled, { recursive: true, force: true });
    writeFileSync(compiled, 'a file in the way');
    expect(check()).toMatchObject({ code: 0, err: '' });
    rmSync(compiled);
  });
});

describe('what it carries of others', () => {
  const notices = readFileSync(join(folder, 'dist/THIRD-PARTY-NOTICES.txt'), 'utf8');
  const sources = programs.map((name) => readFileSync(join(folder, 'dist/program', name), 'utf8')).join('\n');
  /** The build heads each module with its path. */
  const headings = sources.matchAll(/^\s*\/\/ (?:\S+\/)?node_modules\/((?:@[^/\s]+\/)?[^/\s]+)/gm);
  const carried = [...new Set([...headings].map(([, name = '']) => name))];

  it('is named with its licence, each library', () => {
    expect(carried).toEqual(expect.arrayContaining(['exceljs', 'handlebars', 'highs', 'papaparse']));
    for (const name of carried)
      expect(notices, name).toMatch(new RegExp(`^${name.replaceAll('.', '\\.')} \\d`, 'm'));
    // The solver's WebAssembly is HiGHS itself, whose licence asks to be shown (MIT).
    expect(notices).toMatch(/Copyright \(c\) \d+ HiGHS/);
  });

  it('says which licence is chosen where there is a choice, and has a text for each', () => {
    expect(notices).toMatch(
      /^jszip [\d.]+ \(\(MIT OR GPL-3\.0-or-later\)\)\n-+\nHalfpot uses it under the MIT licence\./m,
    );
    expect(notices).toMatch(/^saxes [\d.]+ \(ISC\)\n-+\nCopyright .*\n\nPermission to use, copy, modify/m);
    expect(notices).not.toContain('ships no text');
  });

  it('leaves out what exceljs needs only for streams and CSV', () => {
    for (const name of ['archiver', 'fast-csv', '@fast-csv/parse', 'tmp', 'unzipper']) {
      expect(carried).not.toContain(name);
      expect(sources).not.toMatch(new RegExp(`require\\(["'\`]${name}["'\`]\\)`));
    }
  });
});
