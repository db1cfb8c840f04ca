// Schemes written short give the steps, and the plan, of the same written out.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planArmy } from '../../../src/plan-army.js';
import { check, checkRight, type SheetRows, shortRows } from './make-tables.js';

const heads = ['scheme', 'step', 'zone', 'layer', 'paint', 'coats', 'share', 'like'];
const pots = [
  ['paint', 'size ml', 'kind', 'left'],
  ...['red', 'blue', 'green', 'sand'].map((paint) => [paint, '17', '', '5%']),
  ['mud wash', '24', 'wash', '10%'],
];
const army = [
  ['unit', 'figure', 'scheme', 'count'],
  ['first', 'spearman', 'guard', '20'],
];
const sheetsOf = (...rows: readonly (readonly string[])[]): SheetRows => ({
  pots,
  army,
  schemes: [heads, ...rows],
});
const levy = [
  ['levy', '1', 'tunic', 'base coat', 'red', '2', '', ''],
  ['levy', '2', 'trousers', 'base coat', 'blue', '', '', ''],
  ['levy', '3', 'tunic', 'highlight', 'red', '', '2', ''],
  ['levy', '3', 'tunic', 'highlight', 'sand', '', '1', ''],
  ['levy', '4', 'whole', 'wash', 'mud wash', '', '', ''],
];

/** `1 tunic base coat 2x: red` of a scheme, step by step. */
function stepsOf(scheme: string, ...rows: readonly (readonly string[])[]): string[] {
  const { steps = [] } = checkRight(sheetsOf(...rows)).schemes.get(scheme) ?? {};
  return steps.map(({ step, zone, layer, coats, paints }) => {
    const mix = paints.map(({ paint, share }) => (share === 1 ? paint : `${paint} ${share.toFixed(2)}`));
    return `${step} ${zone} ${layer}${coats === undefined ? '' : ` ${coats}x`}: ${mix.join(' + ')}`;
  });
}
const codesOf = (...rows: readonly (readonly string[])[]) =>
  check(sheetsOf(...rows)).problems.map(({ code, row, cell }) => `${code} ${row} ${cell}`);

describe('a list of zones in one cell', () => {
  it('is a row for each, in mixes too', () => {
    expect(
      stepsOf(
        'guard',
        ['guard', '1', 'tunic, trousers', 'base coat', 'red', '2', '', ''],
        ['guard', '2', 'boots,belt', 'highlight', 'sand', '', '1', ''],
        ['guard', '2', 'boots,belt', 'highlight', 'red', '', '1', ''],
      ),
    ).toEqual([
      '1 tunic base coat 2x: red',
      '1 trousers base coat 2x: red',
      '2 boots highlight: sand 0.50 + red 0.50',
      '2 belt highlight: sand 0.50 + red 0.50',
    ]);
  });

  it('is asked about zone by zone', () => {
    const { problems } = check(
      sheetsOf(['guard', '1', 'tunik, trousers, moon', 'base coat', 'brik', '', '', '']),
    );
    expect(problems.map(({ code, found, expected }) => [code, found, expected])).toEqual([
      ['unknown-zone', 'tunik', 'tunic'],
      ['unknown-zone', 'moon', ''],
      ['unknown-paint', 'brik', ''],
    ]);
  });
});

describe('a blank step', () => {
  it('is one more than that of the row above in its scheme; a mix and a list share theirs', () => {
    expect(
      stepsOf(
        'guard',
        ['guard', '', 'tunic, trousers', 'base coat', 'red', '', '', ''],
        ['levy', '', 'tunic', 'base coat', 'red', '', '', ''],
        ['guard', '', 'tunic', 'highlight', 'red', '', '2', ''],
        ['guard', '', 'tunic', 'highlight', 'sand', '', '1', ''],
        ['guard', '7', 'boots', 'base coat', 'sand', '', '', ''],
        ['guard', '', 'whole', 'wash', 'mud wash', '', '', ''],
      ),
    ).toEqual([
      '1 tunic base coat: red',
      '1 trousers base coat: red',
      '2 tunic highlight: red 0.67 + sand 0.33',
      '7 boots base coat: sand',
      '8 whole wash: mud wash',
    ]);
  });

  it('may be the whole column', () => {
    const { schemes, defaults } = checkRight({
      schemes: shortRows.schemes.map((row) => row.filter((_, at) => at !== 1)),
    });
    expect(schemes.get('red line')?.steps.map(({ step }) => step)).toEqual([1, 2]);
    expect(defaults.filter(({ column }) => column === 'step')).toMatchObject([{ sheet: 'schemes', rows: 2 }]);
  });

  it('goes no further than the longest scheme', () => {
    const rows = Array.from({ length: 3 }, () => ['guard', '', 'tunic', 'base coat', 'red', '', '', '']);
    expect(codesOf(['guard', '999', 'boots', 'base coat', 'red', '', '', ''], ...rows)).toEqual([
      'too-much 4 B4',
    ]);
  });
});

describe('a scheme like another', () => {
  it('changes what its rows are about, and keeps the rest', () => {
    const steps = stepsOf(
      'guard',
      ...levy,
      ['guard', '', 'tunic', '', 'green', '', '', 'levy'],
      ['guard', '2', '', '', '', '3', '', ''],
      ['guard', '', 'trousers', 'edge highlight', 'sand', '', '', ''],
      ['guard', '', 'whole', 'wash', 'none', '', '', ''],
    );
    expect(steps).toEqual([
      '1 tunic base coat 2x: green',
      '2 trousers base coat 3x: blue',
      '3 tunic highlight: green',
      '5 trousers edge highlight: sand',
    ]);
  });

  it('takes the row that says most', () => {
    const steps = stepsOf(
      'guard',
      ...levy,
      ['guard', '', '', '', '', '', '', 'levy'],
      ['guard', '', 'tunic', '', 'green', '', '', ''],
      ['guard', '', 'tunic', 'highlight', 'blue', '', '3', ''],
      ['guard', '', 'tunic', 'highlight', 'sand', '', '1', ''],
    );
    expect(steps.slice(0, 3)).toEqual([
      '1 tunic base coat 2x: green',
      '2 trousers base coat: blue',
      '3 tunic highlight: blue 0.75 + sand 0.25',
    ]);
  });

  it('may stand above that one, and begin another', () => {
    const chain = [
      ['guard', '', 'trousers', '', 'sand', '', '', 'watch'],
      ['watch', '', 'tunic', 'base coat', 'blue', '', '', 'Levy'],
    ];
    expect(stepsOf('guard', ...chain, ...levy)).toEqual([
      '1 tunic base coat 2x: blue',
      '2 trousers base coat: sand',
      '3 tunic highlight: red 0.67 + sand 0.33',
      '4 whole wash: mud wash',
    ]);
  });

  it.each([
    ['like itself', [['guard', '', 'tunic', '', 'red', '', '', 'guard']], ['like-circle 7 H7']],
    [
      'in a circle',
      [
        ['guard', '', '', '', '', '', '', 'watch'],
        ['watch', '', '', '', '', '', '', 'guard'],
      ],
      ['like-circle 8 H8'],
    ],
    ['of no scheme', [['guard', '', '', '', '', '', '', 'levi']], ['unknown-scheme 7 H7']],
    [
      'about a zone that it has not',
      [['guard', '', 'boots', '', 'red', '', '', 'levy']],
      ['like-nothing 7 H7'],
    ],
    ['about nothing', [['guard', '', '', '', 'red', '', '', 'levy']], ['like-nothing 7 H7']],
    [
      'changed in two ways',
      [
        ['guard', '', 'tunic', '', 'green', '', '', 'levy'],
        ['guard', '3', '', '', 'blue', '', '', 'levy'],
      ],
      ['like-two-ways 7 E7'],
    ],
  ])('is told where it is %s', (_, rows, codes) => {
    expect(codesOf(...levy, ...rows)).toEqual(codes);
  });

  it('is told once what is wrong with a row that several schemes have', () => {
    const wrong = levy.map((row, at) => (at === 2 ? row.with(6, '') : row));
    const codes = codesOf(
      ...wrong,
      ['guard', '', '', '', '', '', '', 'levy'],
      ['watch', '', '', '', '', '', '', 'levy'],
    );
    expect(codes).toEqual(['share-missing 4 G4']);
  });

  it('comes to no more rows than the memory holds', () => {
    const long = Array.from({ length: 1000 }, (_, at) => [
      'levy',
      String(at + 1),
      'tunic',
      'base coat',
      'red',
      '',
      '',
      '',
    ]);
    const many = Array.from({ length: 102 }, (_, at) => [`guard ${at}`, '', '', '', '', '', '', 'levy']);
    expect(codesOf(...long, ...many)[0]).toBe('too-many-in-all 1102 H1102');
  });
});

/** Base rows by number of zone, layer and paint; changes by which row, to which paint. */
const zones = ['tunic', 'trousers', 'boots', 'belt', 'cloak'];
const layers = ['base coat', 'highlight', 'edge highlight'];
const paints = ['red', 'blue', 'green', 'sand'];
const written = fc.uniqueArray(fc.tuple(fc.nat(4), fc.nat(2), fc.nat(3)), {
  minLength: 2,
  maxLength: 8,
  selector: ([zone, layer]) => zone * 3 + layer,
});
const changes = fc.uniqueArray(fc.tuple(fc.nat(7), fc.nat(3), fc.nat(3)), {
  maxLength: 5,
  selector: ([at]) => at,
});

describe('written like and written out', () => {
  it('any scheme has the same steps', () => {
    fc.assert(
      fc.property(written, changes, (rows, diffs) => {
        const rowOf = (scheme: string, at: number, paint?: number): string[] => {
          const [zone = 0, layer = 0, own = 0] = rows[at] ?? [];
          const named = [zones[zone] ?? '', layers[layer] ?? '', paints[paint ?? own] ?? ''];
          return [scheme, String(at + 1), ...named, '', '', ''];
        };
        const used = diffs.filter(([at]) => at < rows.length);
        const changed = new Map(used.map(([at, paint]) => [at, paint]));
        const base = rows.map((_, at) => rowOf('levy', at));
        const out = rows.map((_, at) => rowOf('guard', at, changed.get(at)));
        // A row is told by its step, by zone and layer, or by all three.
        const short = used.map(([at, paint, way]) => {
          const row = rowOf('guard', at, paint).with(7, 'levy');
          return way === 0 ? row.with(2, '').with(3, '') : way === 1 ? row.with(1, '') : row;
        });
        const like = [['guard', '', '', '', '', '', '', 'levy'], ...short];
        expect(stepsOf('guard', ...base, ...like)).toEqual(stepsOf('guard', ...base, ...out));
      }),
      { numRuns: 60 },
    );
  });

  it('a scheme gives the same plan', async () => {
    const planOf = async (...rows: readonly (readonly string[])[]) => {
      const { defaults, ...sheets } = checkRight(sheetsOf(...levy, ...rows));
      const schemes = new Map(
        [...sheets.schemes].map(([name, { scheme, steps }]) => [
          name,
          { scheme, steps: steps.map((step) => ({ ...step, row: 2 })) },
        ]),
      );
      return planArmy({ ...sheets, schemes, defaults: [] }, '2026-11-02');
    };
    const like = await planOf(
      ['guard', '', 'tunic', '', 'green', '', '', 'levy'],
      ['guard', '', 'boots, belt', 'base coat', 'sand', '', '', ''],
    );
    const out = await planOf(
      ['guard', '1', 'tunic', 'base coat', 'green', '2', '', ''],
      ['guard', '2', 'trousers', 'base coat', 'blue', '', '', ''],
      ['guard', '3', 'tunic', 'highlight', 'green', '', '', ''],
      ['guard', '4', 'whole', 'wash', 'mud wash', '', '', ''],
      ['guard', '5', 'boots', 'base coat', 'sand', '', '', ''],
      ['guard', '5', 'belt', 'base coat', 'sand', '', '', ''],
    );
    expect(like).toEqual(out);
  });
});
