// `halfpot measure`, and plans of figures with models: the same with and without what was kept.
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { binaryStl, cube, cylinder, move, obj, sphere, textStl } from '../surface/make-models.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const root = makeFolder();
const at = (name: string): string => join(root, name);
const env = { XDG_CACHE_HOME: at('cache') };
const kept = at('cache/halfpot/models');

writeFileSync(at('post.stl'), binaryStl({ body: cylinder(5, 30) }));
writeFileSync(at('inches.stl'), textStl({ body: cylinder(0.2, 1.18) }));
writeFileSync(at('cut.stl'), binaryStl({ body: cube(9) }).subarray(0, 999));
const lidded = {
  chest: move(cube(10), ([x, y, z]) => [x, y, z]),
  lid: move(cylinder(3, 2, 64), ([x, y, z]) => [x + 40, y, z + 20]),
};
writeFileSync(at('chest.obj'), obj(lidded));

describe('halfpot measure', () => {
  it('says what is reached, like whom, and which row to write', () => {
    const { code, out, err } = runHalfpot(['measure', at('post.stl')], { env });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const [likeness, ...others] = out.split('\n').filter((line) => line.startsWith('That is about'));
    // 2 pi 5 x 30 and pi 25: 1,021 mm2, without the disc on the ground. A person 30 mm high, eyes at 28.08 mm: bare skin
    // 5.636 cm2, clothed and heroic 5.636 x 1.2 x 1.26 x 1.1 = 9.374.
    expect([likeness, others]).toEqual([
      expect.stringMatching(/^That is about an? \w+ person.* of that height, (0\.9|1\.0)\d of it\.$/),
      [],
    ]);
    expect(out.replace(`${likeness}\n`, '')).toBe(
      `post.stl: 30 mm high (along z), 12,032 triangles.
A brush reaches 10.2 cm2, 100 % of its 10.2 cm2. What it stands on is left out.
It is in one part: the body chart divides it.
Its row in figures, with the file beside that sheet:
  figure,model
  post,post.stl
`,
    );
  });

  it('names parts', () => {
    const { out } = runHalfpot(['measure', at('chest.obj')], { env });
    // The chest stands: five sides of 100 mm2. The lid hangs beside it: 2 pi 3 x 2 and twice pi 9.
    expect(out).toContain('\nParts: chest 5.0 cm2, lid 0.94 cm2. Zones and schemes may name them;');
    expect(out).toContain('A brush reaches 5.9 cm2');
  });

  it('takes several files as one figure, each by its name', () => {
    const { out } = runHalfpot(['measure', at('chest.obj'), at('post.stl')], { env });
    expect(out).toContain('\nParts: chest 5.0 cm2, lid 0.94 cm2, post 10.2 cm2.');
    expect(out).toContain('\n  chest,chest.obj; post.stl\n');
  });

  it('asks for the height where a file can hardly be in millimetres, and takes it', () => {
    expect(runHalfpot(['measure', at('inches.stl')], { env })).toEqual({
      code: 1,
      out: '',
      err: 'error: "inches.stl" is 1.18 high in its file, which can hardly be millimetres. Give the height of the printed model in millimetres, such as --high 34.\n',
    });
    const { out } = runHalfpot(['measure', at('inches.stl'), '--high', '29.5'], { env });
    // Twenty-five times as high: pi 5 x (2 x 29.5 + 5).
    expect(out).toContain('inches.stl: 29.5 mm high');
    expect(out).toContain('A brush reaches 10.1 cm2');
    expect(out).toContain('  figure,model,model high mm\n  inches,inches.stl,29.5\n');
  });

  it.each([
    [
      'a file cut off',
      ['cut.stl'],
      'error: "cut.stl" cannot be measured: it is cut off, with 18 of 768 triangles. Save it anew as STL, OBJ or 3MF from the program that made it.\n',
    ],
    ['no file', ['none.stl'], 'error: there is no file "none.stl". Name a file that is there.\n'],
    ['a folder', ['.'], expect.stringMatching(/^error: "[^"]*" is not the name of a model file\. Write/)],
  ])('gives 1 for %s', (_, names, err) => {
    expect(runHalfpot(['measure', ...names], { cwd: root, env })).toEqual({ code: 1, out: '', err });
  });

  it('gives 2 for a height that is none', () => {
    expect(runHalfpot(['measure', at('post.stl'), '--high', 'tall'], { env })).toMatchObject({
      code: 2,
      out: '',
    });
  });
});

describe('a plan of figures with models', () => {
  const army = at('army');
  const plan = () => {
    const run = runHalfpot(['plan', army, '--json', '--date', '2026-03-14'], { env });
    return { ...run, plan: run.code === 0 ? JSON.parse(run.out) : undefined };
  };

  it('has their area and mark, and the parts that its schemes name', () => {
    mkdirSync(army);
    cpSync(at('chest.obj'), join(army, 'chest.obj'));
    cpSync(at('post.stl'), join(army, 'post.stl'));
    writeSheets(army, {
      ...fourShortSheets,
      'figures.csv': 'figure,eye mm,model\nspearman,28,post.stl\nchest,,chest.obj\n',
      'schemes.csv':
        'scheme,step,zone,layer,paint\nred line,1,whole,base coat,brick red\nchests,1,Lid,base coat,brick red\nchests,2,all,wash,earth wash\n',
      'army.csv': 'unit,figure,scheme,count\nfirst spears,spearman,red line,20\nhoard,chest,chests,5\n',
    });
    const { code, err, plan: told } = plan();
    expect({ code, err: err.replace(/^.*orders tried.*\n/gm, '') }).toEqual({ code: 0, err: '' });
    const byName = Object.fromEntries(told.figures.map((one: { figure: string }) => [one.figure, one]));
    expect(byName.spearman).toMatchObject({ mark: 'your model', wholeCm2: expect.closeTo(10.2, 1) });
    expect(byName.spearman.parts.head / byName.spearman.wholeCm2).toBeCloseTo(0.07, 3);
    expect(byName.chest).toMatchObject({ mark: 'your model', parts: { lid: expect.closeTo(0.942, 2) } });
    expect(byName.chest.wholeCm2).toBeCloseTo(5.942, 2);
    expect(told.defaults).toContainEqual({
      sheet: 'figures',
      column: 'model',
      rows: 2,
      meaning: 'no zone or scheme names parts of it: divided as the body chart has it',
    });
  });

  it('is the same to the byte without what was kept, and with it spoilt', () => {
    const first = plan();
    const files = readdirSync(kept);
    expect(files.length).toBeGreaterThan(1);
    for (const name of files) writeFileSync(join(kept, name), '{"high":1}');
    expect(plan().out).toBe(first.out);
    expect(readFileSync(join(kept, files[0] ?? ''), 'utf8')).toContain('pieces');
    rmSync(at('cache'), { recursive: true });
    expect(plan().out).toBe(first.out);
    expect(readdirSync(kept).sort()).not.toEqual([]);
  });

  it('goes on where nothing can be kept', () => {
    const blocked = runHalfpot(['plan', army, '--json', '--date', '2026-03-14'], {
      env: { XDG_CACHE_HOME: join(army, 'army.csv') },
    });
    expect(blocked).toMatchObject({ code: 0, out: plan().out });
  });

  it('measures no file again: what is kept is believed', () => {
    const name =
      readdirSync(kept).find((one) => readFileSync(join(kept, one), 'utf8').includes('"lid"')) ?? '';
    const model = JSON.parse(readFileSync(join(kept, name), 'utf8'));
    const halved = model.pieces.map((piece: { area: number }) => ({ ...piece, area: piece.area / 2 }));
    writeFileSync(join(kept, name), JSON.stringify({ ...model, pieces: halved }));
    const chest = plan().plan.figures.find((one: { figure: string }) => one.figure === 'chest');
    expect(chest.wholeCm2).toBeCloseTo(2.971, 2);
  });

  it('knows the log of sheets with models without measuring them', () => {
    const { code, err } = runHalfpot(
      [
        'log',
        army,
        '--paint',
        'brick red',
        '--unit',
        'hoard',
        '--step',
        '1',
        '--figures',
        '5',
        '--used',
        '1',
      ],
      { env: { XDG_CACHE_HOME: at('other') } },
    );
    expect({ code, err }).toEqual({ code: 0, err: '' });
  });
});

describe('a sphere', () => {
  it('is reached all over', () => {
    writeFileSync(at('ball.stl'), binaryStl({ body: sphere(10) }));
    expect(runHalfpot(['measure', at('ball.stl')], { env }).out).toContain(
      'A brush reaches 12.6 cm2, 100 % of its 12.6 cm2.',
    );
  });
});
