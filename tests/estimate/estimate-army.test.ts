import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overrideAssumptions } from '../../src/assumptions/override-assumptions.js';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import { resolveZone } from '../../src/estimate/resolve-zone.js';
import type { Sheets, Step } from '../../src/model/sheets.js';
import type { Estimate, Line } from '../../src/model/work.js';
import { makeFigure, makePaint, makeSheets, makeStep, makeUnit } from '../make-sheets.js';

const round25 = { shape: 'round', acrossMm: 25 } as const;
const armed = makeFigure({ kit: [{ item: 'weapon', count: 1 }], base: round25 });
const firstOf = (jobs: Estimate['jobs']) => [...jobs.keys()][0];
const linesOf = (sheets: Sheets): readonly Line[] =>
  firstOf(estimateArmy(sheets, registry).jobs)?.lines ?? [];
const onlyLine = (step: Step, sheets: Partial<Sheets> = {}): Line => {
  const [line] = linesOf(makeSheets({ steps: [step], ...(sheets as object) }));
  if (line === undefined) throw new Error('no line');
  return line;
};

describe('a line, by hand', () => {
  // Body 9.3201 cm2 of a clothed heroic 28 mm figure; ten of them, one sitting.
  it('base coat: 10 x 9.3201 x 2 x 50 x 0.0001 = 0.93201 ml on, / 0.5 + 0.08 = 1.9440 ml put out', () => {
    const line = onlyLine(makeStep({ step: 1 }));
    expect(line.onFigureMl).toBeCloseTo(0.93201, 4);
    expect(line.putOutMl).toBeCloseTo(1.944, 3);
    expect(line).toMatchObject({
      method: 'brush',
      coats: 2,
      areaShare: 1,
      thin: 0,
      sittings: 1,
      figures: 10,
    });
  });

  it('glaze: 60 %, two coats, two parts of water: 10 x 9.3201 x 0.6 x 2 x 50 / 3 x 0.0001 = 0.18641 ml on', () => {
    expect(onlyLine(makeStep({ step: 1, layer: 'glaze' })).onFigureMl).toBeCloseTo(0.18641, 4);
  });

  it('a mix of two to one splits what is on the figure, and each paint pays a whole leftover', () => {
    const mix = makeStep({
      step: 1,
      paints: [
        { paint: 'Slate', share: 2 / 3 },
        { paint: 'Oat', share: 1 / 3 },
      ],
    });
    const [slate, oat] = linesOf(makeSheets({ steps: [mix] }));
    expect(slate?.onFigureMl).toBeCloseTo(0.62134, 4);
    expect(slate?.putOutMl).toBeCloseTo(0.62134 / 0.5 + 0.08, 4);
    expect(oat?.putOutMl).toBeCloseTo(0.31067 / 0.5 + 0.08, 4);
  });

  it("thinning: the scheme's comes before the paint's, the paint's before the layer's", () => {
    const paints = [makePaint({ paint: 'Slate', thin: 1 })];
    const of = (thin?: number): number =>
      linesOf(
        makeSheets({
          paints,
          steps: [makeStep({ step: 1, layer: 'glaze', ...(thin === undefined ? {} : { thin }) })],
        }),
      )[0]?.thin ?? -1;
    expect([of(0.5), of()]).toEqual([0.5, 1]);
  });

  it('spray on a small target: transfer 0.08 x sqrt(9.3201 / 18)', () => {
    const line = onlyLine(makeStep({ step: 1, layer: 'primer' }));
    const transfer = 0.08 * Math.sqrt(9.3201 / 18);
    expect(line.putOutMl).toBeCloseTo((10 * 9.3201 * 100 * 0.0001) / transfer + 2, 2);
  });

  it('25 figures in tens are three sittings, each with its leftover', () => {
    const line = onlyLine(makeStep({ step: 1 }), { army: [makeUnit({ count: 25 })] });
    expect(line).toMatchObject({ sittings: 3, leftoverMl: expect.closeTo(0.24, 12) });
  });

  it('bears its mark and its largest doubt: film (0.383 in logs) beats transfer (0.331) with a brush', () => {
    expect(onlyLine(makeStep({ step: 1 }))).toMatchObject({
      mark: 'from memory',
      biggestDoubt: 'brush wet film',
    });
  });

  it('a tiny use is mostly leftover, and says so', () => {
    const line = onlyLine(makeStep({ step: 1, zone: 'eyes' }), { army: [makeUnit({ count: 1 })] });
    expect(line.biggestDoubt).toBe('brush leftover');
  });
});

describe('zones', () => {
  const area = estimateArmy(makeSheets({ figures: [armed] }), registry).figures.get('guard');
  const cm2 = (zone: string, zones: Sheets['zones'] = []): number =>
    area === undefined
      ? -1
      : [...resolveZone(zone, area, { zones, assumptions: registry }).parts.values()].reduce(
          (sum, part) => sum + part,
          0,
        );

  it('whole is body and kit, base is top and edge, all is both', () => {
    expect(cm2('all')).toBeCloseTo(cm2('whole') + cm2('base'), 10);
    expect(cm2('whole')).toBeCloseTo(area?.wholeCm2 ?? -1, 10);
  });

  it("the painter's zone for a figure wins over one for any", () => {
    const any = { zone: 'coat', parts: [{ part: 'head', share: 1 } as const] };
    const own = { zone: 'coat', figure: 'guard', parts: [{ part: 'feet', share: 0.5 } as const] };
    expect(cm2('coat', [any, own])).toBeCloseTo((area?.parts.get('feet') ?? 0) / 2, 12);
    expect(cm2('coat', [any, { ...own, figure: 'rider' }])).toBeCloseTo(area?.parts.get('head') ?? 0, 12);
  });

  // Head 7 %, lower legs 14 %, thighs 19 %, feet 7 %, trunk 13 % and 13 % of 9.3201 cm2 of body.
  it.each([
    ['face', 9.3201 * 0.07 * 0.5],
    ['hair', 9.3201 * 0.07 * 0.5],
    ['eyes', 9.3201 * 0.07 * 0.01],
    ['trousers', 9.3201 * (0.19 + 0.14 * 0.5)],
    ['boots', 9.3201 * (0.14 * 0.5 + 0.07)],
    ['belt', 9.3201 * (0.13 + 0.13) * 0.03],
  ])('%s covers some of a part only', (zone, areaCm2) => {
    expect(cm2(zone)).toBeCloseTo(areaCm2, 4);
  });

  it("such a share can be the painter's own: a face of 40 %, and its mark with it", () => {
    const lineOf = (zone: string, overrides: Sheets['settings']['overrides']) => {
      const steps = [makeStep({ step: 1, zone })];
      return firstOf(estimateArmy(makeSheets({ steps }), overrideAssumptions(registry, overrides)).jobs)
        ?.lines[0];
    };
    expect(lineOf('face', [{ name: 'share face', likely: 40 }])?.areaCm2).toBeCloseTo(9.3201 * 0.07 * 0.4, 4);
    const allOwn = [...registry.values()].map(({ name, likely }) => ({ name, likely }));
    const butFace = allOwn.filter(({ name }) => name !== 'share face');
    expect(lineOf('face', allOwn)?.mark).toBe('yours');
    expect(lineOf('face', butFace)?.mark).toBe('from memory');
    expect(lineOf('head', butFace)?.mark).toBe('yours');
  });

  it('a zone of which the figure has no part gives no line at all', () => {
    expect(linesOf(makeSheets({ steps: [makeStep({ step: 1, zone: 'horse' })] }))).toEqual([]);
  });

  it('parts that only primer, wash and varnish reach are not painted', () => {
    const steps = [makeStep({ step: 1, zone: 'all', layer: 'primer' }), makeStep({ step: 2, zone: 'tunic' })];
    const { jobs } = estimateArmy(makeSheets({ figures: [armed], steps }), registry);
    expect(firstOf(jobs)?.notPainted).toEqual([
      'head',
      'neck',
      'forearms',
      'hands',
      'thighs',
      'lower legs',
      'feet',
      'weapon',
      'base top',
      'base edge',
    ]);
  });
});

/**
 * A clothed, armed 28 mm figure on a round 25, in batches of twenty: body 9.3201 and weapon 0.9246 cm2, base 7.2649, so
 * 10.2447 and with its base 17.5096 cm2.
 */
describe('sanity', () => {
  const figuresPerPot = (step: Step, usableMl: number): number => {
    const army = [makeUnit({ count: 1000, batch: 20 })];
    const line = onlyLine(step, { figures: [armed], army } as never);
    return (1000 * usableMl) / line.putOutMl;
  };

  // 10.2447 x 2 x 50 x 0.0001 / 0.5 + 0.08 / 20 = 0.20889 ml each; 70 to 80 are what painters expect (from memory).
  it('a 17 ml pot base-coats 76 whole figures twice: 15.98 / 0.20889', () => {
    expect(figuresPerPot(makeStep({ step: 1 }), 17 * 0.94)).toBeCloseTo(76.5, 1);
  });

  // 17.5096 x 100 x 0.0001 / 0.65 + 0.1 / 20 = 0.27438 ml each.
  it('a 24 ml wash serves 82 figures with bases: 22.56 / 0.27438', () => {
    expect(figuresPerPot(makeStep({ step: 1, zone: 'all', layer: 'wash' }), 24 * 0.94)).toBeCloseTo(82.2, 1);
  });

  // Transfer 0.08 x sqrt(17.5096 / 18) = 0.07890; 17.5096 x 100 x 0.0001 / 0.07890 + 2 / 20 = 2.3192 ml each.
  it('a 400 ml can primes 103 of them: 240 / 2.3192', () => {
    const figures = figuresPerPot(makeStep({ step: 1, zone: 'all', layer: 'primer' }), 400 * 0.6);
    expect(figures).toBeCloseTo(103.5, 1);
  });
});

describe('an army', () => {
  it('asks nothing for steps already done', () => {
    const steps = [makeStep({ step: 1 }), makeStep({ step: 2, paint: 'Oat' })];
    const { needs, jobs } = estimateArmy(makeSheets({ steps, army: [makeUnit({ done: 1 })] }), registry);
    expect(needs.get('Slate')).toMatchObject({ remainingMl: 0, wholeMl: expect.closeTo(1.944, 3) });
    expect(firstOf(jobs)).toMatchObject({ unfinished: true });
    expect(firstOf(jobs)?.lines.map(({ step }) => step)).toEqual([1, 2]);
    expect(firstOf(jobs)?.remaining).toEqual([firstOf(jobs)?.lines[1]]);
  });

  // Twelve of 25 figures logged, batches of ten: 13 left in 2 sittings, 13 x 9.3201 x 2 x 50 x 0.0001 / 0.5 + 2 x 0.08.
  it('asks nothing for figures that the log calls painted, paint by paint of a step', () => {
    const steps = [
      makeStep({ step: 1, paints: [{ paint: 'Slate', share: 1 }] }),
      makeStep({ step: 1, zone: 'hands', paints: [{ paint: 'Oat', share: 1 }] }),
    ];
    const row = { date: '2026-02-01', unit: 'watch', step: 1, usedMl: 2 };
    const log = [
      { ...row, row: 2, paint: 'Slate', figures: 7 },
      { ...row, row: 3, paint: 'Slate', figures: 5 },
    ];
    const army = [makeUnit({ unit: 'watch', count: 25 })];
    const { jobs, needs } = estimateArmy({ ...makeSheets({ steps, army }), log }, registry);
    expect(
      firstOf(jobs)?.remaining.map(({ paint, figures, sittings }) => [paint, figures, sittings]),
    ).toEqual([
      ['Slate', 13, 2],
      ['Oat', 25, 3],
    ]);
    expect(needs.get('Slate')?.remainingMl).toBeCloseTo((13 * 9.3201 * 2 * 50 * 0.0001) / 0.5 + 0.16, 3);
  });

  it('is finished where the log has every figure, and a log of more figures asks for no less than nothing', () => {
    const log = [
      { row: 2, date: '2026-02-01', paint: 'Slate', unit: 'watch', step: 1, figures: 30, usedMl: 2 },
    ];
    const army = [makeUnit({ unit: 'watch', count: 25 })];
    const { jobs, needs } = estimateArmy(
      { ...makeSheets({ steps: [makeStep({ step: 1 })], army }), log },
      registry,
    );
    expect([firstOf(jobs)?.unfinished, firstOf(jobs)?.remaining, needs.get('Slate')?.remainingMl]).toEqual([
      false,
      [],
      0,
    ]);
  });

  it('works out alike units once, and counts each', () => {
    const army = [makeUnit(), makeUnit({ unit: 'second watch' }), makeUnit({ unit: 'third', count: 5 })];
    const { jobs, units, needs } = estimateArmy(
      makeSheets({ steps: [makeStep({ step: 1 })], army }),
      registry,
    );
    expect([...jobs.values()]).toEqual([2, 1]);
    expect(units[0]?.job).toBe(units[1]?.job);
    const [ten, five] = [...jobs.keys()].map((job) => job.lines[0]?.putOutMl ?? 0);
    expect(needs.get('Slate')?.wholeMl).toBeCloseTo(2 * (ten ?? 0) + (five ?? 0), 10);
  });

  it('without units needs nothing', () => {
    expect(estimateArmy(makeSheets({ army: [], steps: [makeStep({ step: 1 })] }), registry).needs.size).toBe(
      0,
    );
  });

  it('twice the coats, twice the film; twice the figures, twice the film', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 400 }), (coats, count) => {
        const film = (c: number, n: number): number =>
          onlyLine(makeStep({ step: 1, coats: c }), { army: [makeUnit({ count: n })] }).onFigureMl;
        expect(film(2 * coats, count)).toBeCloseTo(2 * film(coats, count), 9);
        expect(film(coats, 2 * count)).toBeCloseTo(2 * film(coats, count), 9);
      }),
    );
  });
});

describe('one palette for one paint of a step', () => {
  const twoZones = (second: Partial<Step>): number[] =>
    linesOf(
      makeSheets({
        steps: [makeStep({ step: 1, zone: 'hands' }), makeStep({ step: 1, zone: 'feet', ...second })],
      }),
    ).map(({ leftoverMl }) => leftoverMl);

  it('two zones of one step share one leftover of 0.08 ml in equal parts', () => {
    expect(twoZones({})).toEqual([0.04, 0.04]);
  });

  it('another step, paint or method has a palette of its own', () => {
    expect(twoZones({ step: 2 })).toEqual([0.08, 0.08]);
    expect(twoZones({ paints: [{ paint: 'Oat', share: 1 }] })).toEqual([0.08, 0.08]);
    expect(twoZones({ method: 'sponge' })).toEqual([0.08, 0.05]);
  });

  it('a paint of the scheme has an entry even where no figure has its zone', () => {
    const { needs } = estimateArmy(makeSheets({ steps: [makeStep({ step: 1, zone: 'horse' })] }), registry);
    expect(needs.get('Slate')).toEqual({ wholeMl: 0, remainingMl: 0 });
  });
});
