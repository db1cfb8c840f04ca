// The sample's paint demand worked out twice: by the tool, and by compute-demand.mjs, a plain script that shares no
// code with src and runs in a process of its own. The script follows the documented formulas: bare skin by Du Bois &
// Du Bois 1916 at the eye level of Drillis & Contini 1966, parts by Lund & Browder 1944, wet film over area as in
// ISO 3233-3, ellipses by Ramanujan 1914; factors of dress, kit and boxes as measured on open 3D models; the person,
// builds, the cloak, zones, films, losses and usable shares from memory. Left to other tests: prices, the log, coats by colour, the promise, shelf levels.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import type { Plan } from '../../src/model/plan.js';
import type { Sheets } from '../../src/model/sheets.js';
import { planArmy, registry } from '../../src/plan-army.js';
import { readSheets } from '../../src/sheets/read-sheets.js';

const script = fileURLToPath(new URL('./compute-demand.mjs', import.meta.url));
const sample = fileURLToPath(new URL('../../sample-data/low-sluice', import.meta.url));
const today = '2026-11-02';
const dayFolder = mkdtempSync(join(tmpdir(), 'second-computation-'));
afterAll(() => rmSync(dayFolder, { recursive: true }));

interface Demand {
  readonly wholeMl: number;
  readonly needMl: number;
  readonly haveMl: number;
  readonly toBuyMl: number;
}

interface Second {
  readonly paints: Readonly<Record<string, Demand>>;
  readonly units: readonly { readonly unit: string; readonly areaCm2: number }[];
}

const computeAgain = (folder: string): Second =>
  JSON.parse(execFileSync(process.execPath, [script, folder], { encoding: 'utf8' }));

/** The sample as the script reads it: without its log. */
const plainSample = copySample('plain');

async function planOf(path: string): Promise<Plan> {
  const { sheets, problems } = await readSheets(path, { assumptions: registry, today });
  if (sheets === undefined) throw new Error(JSON.stringify(problems, undefined, 2));
  return planArmy(withoutColoursAndLog(sheets), today, { draws: 100, seconds: 0.1 });
}

/** Without hex the layers' own coats stand, which the script knows. */
function withoutColoursAndLog(sheets: Sheets): Sheets {
  const paints = [...sheets.paints].map(([name, { hex: _, ...paint }]) => [name, paint] as const);
  return { ...sheets, paints: new Map(paints), log: [] };
}

/** Ends of the two computations that differ by more than a billionth, by name; none where all agree. */
function disagreements(plan: Plan, { paints, units }: Second): string[] {
  const stock = new Map(plan.stock.map((one) => [one.paint, one]));
  const pairs = Object.entries(paints).flatMap(([paint, again]): [string, number, number | undefined][] => [
    [`${paint}: whole scheme`, again.wholeMl, plan.estimate.needs.get(paint)?.wholeMl ?? 0],
    [`${paint}: need`, again.needMl, stock.get(paint)?.needMl],
    [`${paint}: have`, again.haveMl, stock.get(paint)?.haveMl],
  ]);
  const areas = units.map(({ unit, areaCm2 }, index): [string, number, number | undefined] => [
    `${unit}: area`,
    areaCm2,
    plan.estimate.units[index]?.job.areaCm2,
  ]);
  return [...pairs, ...areas]
    .filter(([, a, b]) => !isAlike(a, b))
    .map(([name, a, b]) => `${name} ${a} / ${b}`);
}

const isAlike = (a: number, b: number | undefined): boolean =>
  b !== undefined && Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

function expectAlike(plan: Plan, again: Second): void {
  expect(plan.stock.map(({ paint }) => paint).sort()).toEqual(Object.keys(again.paints).sort());
  expect(plan.estimate.units.map(({ unit }) => unit.unit)).toEqual(again.units.map(({ unit }) => unit));
  expect(disagreements(plan, again)).toEqual([]);
}

describe('the sample, computed twice', () => {
  const again = computeAgain(plainSample);

  it.each([sample, `${sample}.xlsx`])('needs, shelf, what to buy and areas agree: %#', async (path) => {
    expectAlike(await planOf(path), again);
  });

  it('has work that puts paint out, paints to buy, and units at different stages', () => {
    const demands = Object.values(again.paints);
    expect(demands.filter(({ toBuyMl }) => toBuyMl > 0).length).toBeGreaterThan(3);
    expect(demands.filter(({ wholeMl, needMl }) => wholeMl > needMl).length).toBeGreaterThan(3);
    expect(again.units.length).toBe(8);
  });

  it('a slip of a thousandth in one number would be seen', async () => {
    const { paints, units } = again;
    const [first] = Object.entries(paints);
    const [paint, demand] = first ?? ['', { wholeMl: 0, needMl: 0, haveMl: 0, toBuyMl: 0 }];
    const slipped = { units, paints: { ...paints, [paint]: { ...demand, needMl: demand.needMl * 1.001 } } };
    expect(disagreements(await planOf(sample), slipped)).toHaveLength(1);
  });
});

function copySample(name: string): string {
  const folder = join(dayFolder, name);
  cpSync(sample, folder, { recursive: true });
  rmSync(join(folder, 'log.csv'));
  return folder;
}

/** Rewrites one sheet of the sample; throws where there is nothing to rewrite. */
type Edit = readonly [sheet: string, from: string | RegExp, to: string];

function changeSample(name: string, edits: readonly Edit[]): string {
  const folder = copySample(name);
  for (const [sheet, from, to] of edits) {
    const file = join(folder, `${sheet}.csv`);
    const text = readFileSync(file, 'utf8');
    const changed = text.replace(from, to);
    if (changed === text) throw new Error(`nothing to change in ${sheet}: ${from}`);
    writeFileSync(file, changed);
  }
  return folder;
}

const variants: readonly [string, readonly Edit[]][] = [
  [
    'own assumptions',
    [
      [
        'settings',
        /\n?$/,
        '\npainter,1.1\nbrush wet film,40 / 60 / 90\nspray can transfer,0.3\nfull target of a spray,9\nairbrush transfer,0.45\nmost transfer of an airbrush,0.7\n',
      ],
      [
        'settings',
        /$/,
        'relief,1.2\nkit horse,3\ndress armoured,1.5\nbuild heroic,1.2\nhighlight area,20\nglaze thin,3\n',
      ],
      [
        'settings',
        /$/,
        'base coat coats,3\nusable share of a can,0.7\nusable share of a pot,0.9\ndensity,1.35\n',
      ],
    ],
  ],
  [
    'other bodies, kit and bases',
    [
      [
        'figures',
        'lock keeper,28,,,weapon,round 25',
        'lock keeper,36,stocky,bare,"weapon, weapon, barding",square 20',
      ],
      ['figures', 'lamp archer,28,,clothed', 'lamp archer,35,stocky,none'],
      [
        'figures',
        'heroic mild,armoured,"weapon, large shield",round 28,,,',
        'broad,,"round shield",oval 60x35,,6,',
      ],
      ['figures', 'otter,9,true scale,bare,,round 40,,3,,3.8', 'otter,9,,bare,small shield,,,,,2.2'],
      ['figures', '85x40x35,,', '250x90x60,310.5,'],
      ['figures', /$/, 'ferry crane,,open frame,,,,,,60x40x90,,,\n'],
      ['army', /$/, 'Crane,ferry crane,dredger,1,,,,\n'],
    ],
  ],
  [
    'other ways of working',
    [
      [
        'schemes',
        'archer,9,quilted coat,midtone,Night ferry blue,,,40',
        'archer,9,quilted coat,midtone,Night ferry blue,,,',
      ],
      ['schemes', 'bailiff,9,cloak,glaze,Moorhen red,,,,2', 'bailiff,9,cloak,glaze,Moorhen red,,,,'],
      ['schemes', 'bailiff,13,whole,tidy-up,Coal wharf black,,,5', 'bailiff,13,whole,tidy-up,Holt brown,,,'],
      [
        'schemes',
        'keeper,2,quilted coat,base coat,Sluice green,,',
        'keeper,2,tunic,base coat,Sluice green,3,sponge',
      ],
      ['schemes', 'keeper,3,breeches', 'keeper,3,trousers'],
      ['schemes', 'keeper,6,hat,base coat,Coal wharf black,,,,', 'keeper,6,hair,glaze,Coal wharf black,,,,0'],
      [
        'schemes',
        'archer,2,quilted coat,base coat,Night ferry blue,,',
        'archer,2,all,base coat,Night ferry blue,,airbrush',
      ],
      ['schemes', /25,,70%,(.*\n.*)30%/, '25,,3,$12'],
      ['paints', "Bargee's cheek,colour,#d9a07e,fair,,,", "Bargee's cheek,colour,#d9a07e,fair,,0.75,"],
      ['settings', /\n?$/, '\nshare trousers,62.5\nshare hair,45\n'],
      ['army', 'keeper,20,,', 'keeper,53,7,11'],
      ['army', 'rider,8,4,', 'rider,9,,16'],
    ],
  ],
  [
    'another shelf',
    [
      ['pots', '24,25%,,4.80', '24,31.5 g,19.5,4.80'],
      ['pots', '400,55%,,', '400,310 g,110,'],
      ['pots', '17,35%,,3.25', '17,24.4 g,9,3.25'],
      ['pots', '400,full,,13.90,,2026-10-31,,', '150,full,,13.90,,2026-10-31,,yes'],
      ['pots', 'Hawser tan,17', 'rope colour,12'],
    ],
  ],
];

describe('the sample with changes, computed twice', () => {
  it.each(variants)('%s', async (name, edits) => {
    const folder = changeSample(name, edits);
    const again = computeAgain(folder);
    expect(again).not.toEqual(computeAgain(plainSample));
    expectAlike(await planOf(folder), again);
  });
});
