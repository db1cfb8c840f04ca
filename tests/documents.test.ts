// Documents: what README and DEVELOPERS name is there, and the numbers that they trace are those of the program.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { onFigureMl, putOutMl } from '../src/estimate/estimate-film.js';
import { bareSkinCm2 } from '../src/estimate/measure-figure.js';
import * as library from '../src/library.js';
import { registry } from '../src/plan-army.js';

const root = fileURLToPath(new URL('../', import.meta.url));
const read = (name: string): string => readFileSync(root + name, 'utf8');
const [readme, developers] = [read('README.md'), read('DEVELOPERS.md')];
const both = `${readme}\n${developers}`;
const made: { scripts: object; devDependencies: object } = JSON.parse(read('package.json'));

const found = (text: string, pattern: RegExp): string[] =>
  [...text.matchAll(pattern)].map(([, one = '']) => one);

/** Cells of the first column of the table under a header. */
function firstColumn(text: string, header: string): string[] {
  const [, after = ''] = text.split(`\n${header}\n`);
  const [table = ''] = after.split('\n\n');
  return found(table, /^\| ([^|]+?) \|/gm);
}

const likely = (name: string): number => registry.get(name)?.likely ?? Number.NaN;

describe('DEVELOPERS.md', () => {
  const folders = firstColumn(developers, '| folder | what it does | may import |').map((cell) =>
    cell.replace(/\/&lt;.*/, ''),
  );

  it('maps folders that are there', () => {
    expect(folders.length).toBeGreaterThan(20);
    expect(folders.filter((folder) => !existsSync(root + folder))).toEqual([]);
  });

  it('maps every folder of src and of src/report', () => {
    const isMapped = (folder: string) =>
      folders.some((one) => one === folder || one.startsWith(`${folder}/`));
    const there = ['src', 'src/report'].flatMap((folder) =>
      readdirSync(root + folder, { withFileTypes: true }).flatMap((entry) =>
        // A change of branch may leave folders with nothing in them.
        entry.isDirectory() && readdirSync(`${root}${folder}/${entry.name}`).length > 0
          ? [`${folder}/${entry.name}`]
          : [],
      ),
    );
    expect(there.filter((folder) => !isMapped(folder))).toEqual([]);
  });

  it('names files that are there', () => {
    const paths = found(developers, /`((?:src|tests|templates|reports|sample-data|\.build)\/[\w./-]+)`/g);
    expect(paths.length).toBeGreaterThan(20);
    expect(paths.filter((path) => !existsSync(root + path))).toEqual([]);
    const files = readdirSync(`${root}src`, { recursive: true, encoding: 'utf8' });
    const isThere = (name: string) => files.some((file) => `/${file}`.endsWith(`/${name}`));
    const names = found(developers, /`((?:[\w-]+\/)*[\w-]+\.ts)`/g).filter(
      (name) => !/^(src|tests)\//.test(name),
    );
    expect(names.length).toBeGreaterThan(30);
    expect(names.filter((name) => !isThere(name))).toEqual([]);
  });

  it('gives a reason for every library', () => {
    const listed = [
      ...firstColumn(developers, '| library | reason |'),
      ...firstColumn(developers, '| for development | reason |'),
    ].flatMap((cell) => cell.split(', '));
    expect(listed.sort()).toEqual(Object.keys(made.devDependencies).sort());
  });

  it('traces a line as plan.json has it', () => {
    const line = lineOf('weir guard', 'Lock brick', 'base coat');
    expect(developers).toContain(`\`"onFigureMl":${line.onFigureMl}\``);
    expect(developers).toContain(`\`"putOutMl":${line.putOutMl}\``);
    expect(developers).toContain(`\`"useCost":"${line.useCost}"\``);
    expect(developers).toContain(`**${line.areaCm2.toFixed(4)} cm2**`);
    const row = 'guard,5,large shield,base coat,Lock brick,,,,,,';
    expect(read('sample-data/low-sluice/schemes.csv').split(/\r?\n/)[41]).toBe(row);
    expect(developers).toContain(`\n${row}\n`);
  });
});

it('only commands are named that there are', () => {
  const named = new Set(found(both, /npm run ([a-z:-]+)/g));
  expect([...named].filter((name) => !(name in made.scripts))).toEqual([]);
  expect(named.size).toBeGreaterThan(10);
});

describe('README.md', () => {
  it('names the flags of the command line, all of them and no others', () => {
    const defined = ['main', 'define-ledger'].map((name) => read(`src/cli/${name}.ts`)).join();
    const flags = new Set(found(defined, /'(--[a-z]+(?:-[a-z]+)*)[ ']/g));
    const named = new Set(found(readme, /[ `](--[a-z]+(?:-[a-z]+)*)/g));
    expect([...named].filter((flag) => !flags.has(flag) && flag !== '--help')).toEqual([]);
    expect([...flags].filter((flag) => !named.has(flag))).toEqual([]);
  });

  it('names what the library hands out', () => {
    const rows = found(readme, /^(\| `\w+\([^|]*\|) /gm).join();
    expect(found(rows, /`(\w+)\(/g).sort()).toEqual(
      Object.entries(library)
        .flatMap(([name, value]) => (typeof value === 'function' ? [name] : []))
        .sort(),
    );
  });

  it('works out a shield by the values of the registry', () => {
    const skinCm2 = bareSkinCm2(28, registry);
    const areaCm2 = skinCm2 * likely('kit large shield') * likely('relief');
    const film = { areaShare: 1, coats: 2, wetFilmMicrons: likely('brush wet film'), thin: 0 };
    const onFigures = onFigureMl({ ...film, areaCm2: 20 * areaCm2 });
    const lost = { transfer: likely('brush transfer'), leftoverMl: likely('brush leftover'), painter: 1 };
    const said = [
      `has ${(likely('skin of a person') / 10_000).toFixed(2)} m2 of skin`,
      `that is ${skinCm2.toFixed(2)} cm2.`,
      `adds ${likely('kit large shield')} times as much`,
      `${areaCm2.toFixed(2)} cm2 each`,
      `about ${likely('brush wet film')} µm thick while wet`,
      `20 shields are ${onFigures.toFixed(2)} ml on the figures`,
      `${putOutMl(onFigures, { ...lost, sittings: 0 }).toFixed(2)} ml leave the pot`,
      `on the palette, ${likely('brush leftover')} ml`,
      `${putOutMl(onFigures, { ...lost, sittings: 2 }).toFixed(2)} ml in all`,
      `its report puts ${lineOf('weir guard', 'Lock brick', 'base coat').putOutMl.toFixed(2)} ml there`,
    ];
    expect(said.filter((one) => !oneLine(readme).includes(one))).toEqual([]);
  });

  it('works out coats as plan.json has them', () => {
    const { coats, coatsBecause } = lineOf('lamp archer', 'Duckweed green', 'base coat');
    const dE00 = coatsBecause?.dE00 ?? 0;
    const open = 1 - likely('opacity weak');
    expect(coats).toBe(3);
    expect(oneLine(readme)).toContain(`and ${dE00.toFixed(0)} away from the grey primer of the sample`);
    expect(oneLine(readme)).toContain(`= ${(dE00 * open ** 3).toFixed(1)}, three coats; two would leave`);
    expect(oneLine(readme)).toContain(`two would leave ${(dE00 * open ** 2).toFixed(1)}.`);
  });

  it('counts the sample as plan.json does', () => {
    expect(readme).toContain(`the sample army: ${plan.army.figures} figures`);
    expect(plan.work.paints.length).toBe(19);
    expect(readme).toContain('nineteen paints');
  });
});

interface PlanLine {
  readonly paint: string;
  readonly layer: string;
  readonly areaCm2: number;
  readonly coats: number;
  readonly coatsBecause?: { readonly dE00: number };
  readonly onFigureMl: number;
  readonly putOutMl: number;
  readonly useCost: string;
}

interface PlanFile {
  readonly army: { readonly figures: number };
  readonly work: { readonly paints: readonly unknown[] };
  readonly jobs: readonly { readonly figure: string; readonly lines: readonly PlanLine[] }[];
}

const plan: PlanFile = JSON.parse(read('reports/low-sluice/plan.json'));

function lineOf(figure: string, paint: string, layer: string): PlanLine {
  const lines = plan.jobs.filter((job) => job.figure === figure).flatMap((job) => job.lines);
  const line = lines.find((one) => one.paint === paint && one.layer === layer);
  if (line === undefined) throw new Error(`${figure} has no ${layer} of ${paint}`);
  return line;
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ');
}
