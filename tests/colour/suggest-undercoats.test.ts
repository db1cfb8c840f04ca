import { describe, expect, it } from 'vitest';
import { likely } from '../../src/assumptions/look-up.js';
import { registry } from '../../src/assumptions/registry.js';
import { decideCoats } from '../../src/colour/decide-coats.js';
import { suggestUndercoats } from '../../src/colour/suggest-undercoats.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { Paint, Sheets, Step } from '../../src/model/sheets.js';
import type { Line } from '../../src/model/work.js';
import { minutesOfLine } from '../../src/time/minutes-of-coat.js';
import { makePaint, makePot, makeSheets, makeStep, makeUnit } from '../make-sheets.js';
import { makeSight, shelf } from './make-sight.js';

const minutesOnFigures = (line: Line): number => minutesOfLine(line, registry) * line.figures;

/** Estimates with the chosen coats, and asks for undercoats. */
async function suggest(sheets: Sheets, minutesOf = minutesOnFigures) {
  const sight = await makeSight(sheets);
  const choices = decideCoats(sheets, sight);
  const chosen = (step: Step): Step => {
    const coats = choices.get(step)?.get('guard')?.coats;
    return coats === undefined ? step : { ...step, coats };
  };
  const steps = sheets.schemes.get('plain')?.steps.map(chosen) ?? [];
  const asked = { ...sheets, schemes: new Map([['plain', { scheme: 'plain', steps }]]) };
  const { jobs } = estimateArmy(asked, registry);
  return suggestUndercoats(sheets, { ...sight, choices, jobs, minutesOf });
}

const gorse = makePaint({ paint: 'Gorse', hex: '#e8bc40', opacity: 'strong' });
const yellowOverSoot = [
  makeStep({ step: 1, zone: 'all', layer: 'primer', paint: 'Soot black' }),
  makeStep({ step: 2, zone: 'whole', paint: 'Lamp yellow' }),
];

type More = Partial<Omit<Sheets, 'paints' | 'figures' | 'schemes' | 'shops'>> & {
  readonly paints?: readonly Paint[];
};

const sheetsOf = (owned: readonly Paint[], more: More = {}): Sheets =>
  makeSheets({
    paints: [...shelf, gorse],
    steps: yellowOverSoot,
    pots: owned.map(({ paint }) => makePot({ paint })),
    ...more,
  });
const [oat] = shelf.filter(({ paint }) => paint === 'Oat');

describe('an undercoat worth its coat', () => {
  // Lamp yellow, weak, is 74.5 from Soot black (colorjs.io, Lab under D65): 4 coats. One strong coat of Gorse leaves
  // 5 % of the black; the tinted colour is 5.28 away, and 5.28 x 0.3 is under 2: one coat.
  it('saves more coats than it takes', async () => {
    const [advice, ...more] = await suggest(sheetsOf([gorse]));
    expect(more).toEqual([]);
    expect(advice).toMatchObject({
      scheme: 'plain',
      step: 2,
      zone: 'whole',
      layer: 'base coat',
      over: [{ paint: 'Lamp yellow', share: 1 }],
      under: [{ paint: 'Soot black', share: 1 }],
      undercoat: 'Gorse',
      undercoatCoats: 1,
      coatsWithout: 4,
      coatsWith: 1,
      figures: 10,
    });
  });

  it('with ml and minutes saved, by hand', async () => {
    const sheets = sheetsOf([gorse]);
    const [advice] = await suggest(sheets);
    const area = (await makeSight(sheets)).areas.get('guard');
    const areaCm2 = [...(area?.parts.values() ?? [])].reduce((sum, one) => sum + one, 0);
    // Two coats of four are saved: 10 figures x area x 50 µm x 0.0001 / 0.5 each. The undercoat's own leftover: 0.08 ml.
    expect(advice?.mlSaved).toBeCloseTo((2 * 10 * areaCm2 * 50 * 0.0001) / 0.5 - 0.08, 9);
    const perCm2 = likely(registry, 'brush pace') * likely(registry, 'base coat care');
    // Over 5 cm2 with a wider brush: as long as the root of 5 x area.
    const coat = likely(registry, 'brush handling') + Math.sqrt(5 * areaCm2) * perCm2;
    expect(advice?.minutesSaved).toBeCloseTo(2 * 10 * coat, 9);
  });

  // Common practice: a pale bone-coloured coat beneath saves coats of yellow. Oat, fair, lets 13 % of the black
  // through: the tinted colour is 18.9 away, 18.9 x 0.3^n is 5.7, 1.7.
  it('a coat of bone-coloured Oat beneath two of yellow does what four of yellow do (common practice)', async () => {
    const [advice] = await suggest(sheetsOf(oat ? [oat] : []));
    expect(advice).toMatchObject({ undercoat: 'Oat', undercoatCoats: 1, coatsWithout: 4, coatsWith: 2 });
  });

  it('is not suggested where it only shifts the coats: weak Foam takes as many as it saves', async () => {
    const [foam] = shelf.filter(({ paint }) => paint === 'Foam');
    expect(foam?.opacity).toBe('weak');
    expect(await suggest(sheetsOf(foam ? [foam] : []))).toEqual([]);
  });

  it('is not suggested where it saves no minutes', async () => {
    const sheets = sheetsOf([gorse]);
    expect(await suggest(sheets, () => 1)).toEqual([]);
  });

  it('adds up units alike, and counts only figures still to be painted', async () => {
    const army = [makeUnit(), makeUnit({ unit: 'second' }), makeUnit({ unit: 'third', count: 5, done: 2 })];
    const [alone] = await suggest(sheetsOf([gorse]));
    const [both] = await suggest(sheetsOf([gorse], { army }));
    expect(both?.figures).toBe(20);
    expect(both?.mlSaved).toBeCloseTo(2 * (alone?.mlSaved ?? 0), 9);
  });

  it('is none that is empty, unknown, metallic, or the paint itself', async () => {
    const [yellow] = shelf.filter(({ paint }) => paint === 'Lamp yellow');
    const unlikely = [
      makePaint({ paint: 'No opacity', hex: '#e8bc40' }),
      makePaint({ paint: 'No hex', opacity: 'strong' }),
      makePaint({ paint: 'Gilt', hex: '#e8bc40', opacity: 'strong', kind: 'metallic' }),
      ...(yellow ? [yellow] : []),
    ];
    const sheets = sheetsOf(unlikely, { paints: [...shelf, gorse, ...unlikely] });
    const empty = makePot({ paint: 'Gorse', left: { how: 'in ml', ml: 0 } });
    expect(await suggest({ ...sheets, pots: [...sheets.pots, empty] })).toEqual([]);
  });

  it('is not suggested where the painter gave the coats, or none are chosen', async () => {
    const given = yellowOverSoot.map((step) => ({ ...step, coats: 4 }));
    expect(
      await suggest(
        makeSheets({ paints: [...shelf, gorse], steps: given, pots: [makePot({ paint: 'Gorse' })] }),
      ),
    ).toEqual([]);
  });
});
