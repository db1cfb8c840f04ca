import { describe, expect, it } from 'vitest';
import { overrideAssumptions } from '../../src/assumptions/override-assumptions.js';
import { registry } from '../../src/assumptions/registry.js';
import { decideCoats } from '../../src/colour/decide-coats.js';
import type { CoatChoice } from '../../src/model/colour.js';
import type { Sheets, Step } from '../../src/model/sheets.js';
import { makeFigure, makePot, makeSheets, makeStep, makeUnit } from '../make-sheets.js';
import { makeSight, shelf } from './make-sight.js';

type Row = Partial<Step> & { paint?: string };

/** Steps numbered by their place; the first primes all in grey unless `primer` says otherwise. */
const stepsOf = (rows: readonly Row[], primer = 'Quay grey'): Step[] =>
  [{ zone: 'all', layer: 'primer', paint: primer } as const, ...rows].map((row, index) =>
    makeStep({ step: index + 1, ...row }),
  );

async function choose(sheets: Sheets): Promise<(CoatChoice | undefined)[]> {
  const choices = decideCoats(sheets, await makeSight(sheets));
  const steps = sheets.schemes.get('plain')?.steps ?? [];
  return steps.map((step) => choices.get(step)?.get('guard'));
}

/** Coats of the last step; undefined: the layer's default stands. */
async function coatsOfLast(rows: readonly Row[], primer?: string): Promise<number | undefined> {
  return (await choose(makeSheets({ paints: shelf, steps: stepsOf(rows, primer) }))).at(-1)?.coats;
}

describe('worked examples', () => {
  // dE00 by colorjs.io on its own Lab under D65: yellow is 55.60 from Peat, 31.85 from Quay grey, 17.54 from Oat.
  // x 0.3^n: 16.7, 5.0, 1.5 | 9.6, 2.9, 0.9 | 5.3, 1.6.
  it.each([
    ['weak yellow over dark brown', [{ paint: 'Peat' }, { paint: 'Lamp yellow' }], 3],
    ['weak yellow over grey primer', [{ paint: 'Lamp yellow' }], 3],
    ['weak yellow over oat', [{ paint: 'Oat' }, { paint: 'Lamp yellow' }], 2],
    ['the same again', [{ paint: 'Lamp yellow' }, { paint: 'Lamp yellow', layer: 'midtone' }], 1],
  ] as const)('%s', async (_, rows, coats) => {
    expect(await coatsOfLast(rows)).toBe(coats);
  });

  it('say why: weak yellow over dark brown; over Oat it would be 2', async () => {
    const steps = stepsOf([{ paint: 'Peat' }, { paint: 'Lamp yellow' }]);
    const pots = [makePot({ paint: 'Oat' }), makePot({ paint: 'Harbour blue' })];
    const choice = (await choose(makeSheets({ paints: shelf, steps, pots }))).at(-1);
    expect(choice).toEqual({
      coats: 3,
      because: {
        rule: 'shows through',
        over: [{ paint: 'Lamp yellow', share: 1 }],
        under: [{ paint: 'Peat', share: 1 }],
        beneath: [[{ paint: 'Peat', share: 1 }]],
        opacity: 'weak',
        coatOpacity: expect.closeTo(0.7, 12),
        dE00: expect.closeTo(55.6, 1),
        better: { undercoat: 'Oat', coats: 2 },
      },
      inputs: ['base coat thin', 'opacity weak', 'just visible difference'],
    });
  });

  it('name no empty pot as better', async () => {
    const steps = stepsOf([{ paint: 'Peat' }, { paint: 'Lamp yellow' }]);
    const pots = [makePot({ paint: 'Oat', left: { how: 'by eye', share: 0 } })];
    const choice = (await choose(makeSheets({ paints: shelf, steps, pots }))).at(-1);
    expect(choice?.because.better).toBeUndefined();
  });

  // 31.85 x 0.548^n, 0.548 = 0.3^(1/2): 17.4, 9.6, 5.2, 2.9, 1.6.
  it.each([
    ['of the scheme', shelf, { thin: 1 }],
    ['of the paint', shelf.map((one) => ({ ...one, thin: 1 })), {}],
  ])('thinning %s lays less and takes more coats', async (_, paints, more) => {
    const steps = stepsOf([{ paint: 'Lamp yellow', ...more }]);
    expect((await choose(makeSheets({ paints, steps }))).at(-1)?.coats).toBe(5);
  });

  it('a medium in the mix is thinning by another name', async () => {
    const paints = [
      { paint: 'Lamp yellow', share: 0.5 },
      { paint: 'Slack medium', share: 0.5 },
    ];
    expect(await coatsOfLast([{ paints }])).toBe(5);
  });
});

describe('no choice, so that the default stands', () => {
  it.each([
    ['coats given', { paint: 'Lamp yellow', coats: 2 }],
    ['no hex on top', { paint: 'Plain' }],
    ['no opacity', { paint: 'Guess' }],
    ['a wash', { paint: 'Bog wash', layer: 'wash' }],
    ['a wash as base coat', { paint: 'Bog wash' }],
    ['a glaze', { paint: 'Lamp yellow', layer: 'glaze' }],
    ['a highlight', { paint: 'Lamp yellow', layer: 'highlight' }],
    ['an edge highlight', { paint: 'Lamp yellow', layer: 'edge highlight' }],
    ['a detail', { paint: 'Lamp yellow', layer: 'detail' }],
    ['a tidy-up', { paint: 'Lamp yellow', layer: 'tidy-up' }],
    ['a varnish', { paint: 'Lamp yellow', layer: 'varnish' }],
    ['another primer', { paint: 'Lamp yellow', layer: 'primer' }],
    ['a basing', { paint: 'Lamp yellow', layer: 'basing' }],
    ['a drybrushed base', { paint: 'Lamp yellow', method: 'drybrush' }],
    ['a sponged base', { paint: 'Lamp yellow', method: 'sponge' }],
    ['a paste', { paint: 'Silt' }],
    ['a zone that the figure lacks', { paint: 'Lamp yellow', zone: 'horse' }],
  ] as const)('%s', async (_, row) => {
    expect(await coatsOfLast([row])).toBeUndefined();
  });

  it('no hex beneath, or bare plastic', async () => {
    expect(await coatsOfLast([{ paint: 'Lamp yellow' }], 'Plain')).toBeUndefined();
    const steps = [makeStep({ step: 1, paint: 'Lamp yellow' })];
    expect(await choose(makeSheets({ paints: shelf, steps }))).toEqual([undefined]);
  });

  it('an opacity of 0 of the painter’s own', async () => {
    const sheets = makeSheets({ paints: shelf, steps: stepsOf([{ paint: 'Lamp yellow' }]) });
    const assumptions = overrideAssumptions(registry, [{ name: 'opacity weak', likely: 0 }]);
    expect(decideCoats(sheets, await makeSight(sheets, assumptions)).size).toBe(0);
  });

  it('an empty army', async () => {
    const sheets = makeSheets({ paints: shelf, steps: stepsOf([{ paint: 'Lamp yellow' }]), army: [] });
    expect(decideCoats(sheets, await makeSight(sheets)).size).toBe(0);
  });
});

describe('what lies beneath', () => {
  const yellow: Row = { paint: 'Lamp yellow' };
  const black: Row = { paint: 'Soot black' };

  it('is the last covering layer; washes, highlights, drybrushing and sponging cover nothing', async () => {
    const between: Row[] = [
      { paint: 'Bog wash', layer: 'wash' },
      { paint: 'Soot black', layer: 'highlight' },
      { paint: 'Soot black', layer: 'drybrush' },
      { paint: 'Soot black', method: 'sponge' },
    ];
    expect(await coatsOfLast([{ paint: 'Oat' }, ...between, yellow])).toBe(2);
  });

  it('is looked up by part: a tunic over a black trunk, sleeves beside it', async () => {
    expect(
      await coatsOfLast([
        { ...black, zone: 'front trunk' },
        { ...yellow, zone: 'tunic' },
      ]),
    ).toBe(4);
    expect(
      await coatsOfLast([
        { ...black, zone: 'front trunk' },
        { ...yellow, zone: 'sleeves' },
      ]),
    ).toBe(3);
  });

  it('is a paste where one lies on the base', async () => {
    const paste: Row = { paint: 'Silt', layer: 'basing', zone: 'base top' };
    const figures = [makeFigure({ base: { shape: 'round', acrossMm: 25 } })];
    const steps = stepsOf([paste, { paint: 'Silt look', zone: 'base top' }]);
    const look = { ...shelf[0], paint: 'Silt look', hex: '#6f6350', kind: 'colour', alsoCalled: [] } as const;
    const choice = (await choose(makeSheets({ figures, paints: [...shelf, look], steps }))).at(-1);
    expect(choice?.because).toMatchObject({ under: [{ paint: 'Silt', share: 1 }], dE00: 0 });
  });

  it('a belt of 3 % of the trunk asks nothing more of the tunic around it', async () => {
    const rows = [
      { ...black, zone: 'belt' },
      { ...yellow, zone: 'torso' },
    ];
    const choice = (await choose(makeSheets({ paints: shelf, steps: stepsOf(rows) }))).at(-1);
    expect(choice?.coats).toBe(3);
    expect(choice?.inputs).toContain('speck beneath a coat');
  });

  it('a bare patch larger than a speck leaves the choice open', async () => {
    const steps = [
      makeStep({ step: 1, zone: 'front trunk', layer: 'primer', paint: 'Quay grey' }),
      makeStep({ step: 2, zone: 'torso', paint: 'Lamp yellow' }),
    ];
    expect(await choose(makeSheets({ paints: shelf, steps }))).toEqual([undefined, undefined]);
  });

  it('differs by figure, and each has its own choice', async () => {
    const zones = [
      { zone: 'coat', figure: 'guard', parts: [{ part: 'front trunk', share: 1 }] },
      { zone: 'coat', parts: [{ part: 'thighs', share: 1 }] },
    ] as const;
    const steps = stepsOf([
      { ...black, zone: 'front trunk' },
      { ...yellow, zone: 'coat' },
    ]);
    const figures = [makeFigure(), makeFigure({ figure: 'clerk' })];
    const army = [makeUnit(), makeUnit({ unit: 'desk', figure: 'clerk' })];
    const sheets = makeSheets({ paints: shelf, steps, figures, army, zones });
    const last = steps.at(-1);
    const choices = last && decideCoats(sheets, await makeSight(sheets)).get(last);
    expect(choices?.get('guard')?.coats).toBe(4);
    expect(choices?.get('clerk')?.coats).toBe(3);
  });
});
