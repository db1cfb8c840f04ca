import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { comparePrimers, listPrimers, withPrimer } from '../../src/colour/compare-primers.js';
import { decideCoats } from '../../src/colour/decide-coats.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { PrimerTrial } from '../../src/model/colour.js';
import { exactMinor } from '../../src/model/money.js';
import type { Sheets, Step } from '../../src/model/sheets.js';
import { minutesOfLine } from '../../src/time/minutes-of-coat.js';
import { makeOffer, makePot, makeSheets, makeStep, offerPot } from '../make-sheets.js';
import { makeSight, shelf } from './make-sight.js';

const can = { sizeMl: 400, container: 'can' } as const;
const steps = [
  makeStep({ step: 1, zone: 'all', layer: 'primer', paint: 'Quay grey' }),
  makeStep({ step: 2, zone: 'tunic', paint: 'Harbour blue' }),
  makeStep({ step: 3, zone: 'legs', paint: 'Harbour blue' }),
  makeStep({ step: 4, zone: 'skin', paint: 'Oat' }),
];
const pots = [makePot({ paint: 'Quay grey', ...can }), makePot({ paint: 'Soot black', ...can })];
const offers = [makeOffer({ priceMinor: 900, pots: [{ ...offerPot('Chalk', 400), container: 'can' }] })];

/** The whole reckoning: choose coats, put them into the steps, estimate, time. A cent a ml. */
async function tryWith(sheets: Sheets): Promise<(changed: Sheets) => Promise<PrimerTrial>> {
  const sight = await makeSight(sheets);
  return async (changed) => {
    const choices = decideCoats(changed, sight);
    const coatsOf = (step: Step): Step => {
      const coats = choices.get(step)?.get('guard')?.coats;
      return coats === undefined ? step : { ...step, coats };
    };
    const plain = changed.schemes.get('plain');
    const chosen = plain?.steps.map(coatsOf) ?? [];
    const schemes = new Map([['plain', { scheme: 'plain', steps: chosen }]]);
    const lines = [...estimateArmy({ ...changed, schemes }, registry).jobs.keys()].flatMap(
      (job) => job.lines,
    );
    const ml = lines.reduce((sum, { putOutMl }) => sum + putOutMl, 0);
    return {
      coats: lines.reduce((sum, { coats }) => sum + coats, 0),
      ml,
      useCost: { exactMinor: exactMinor(ml), atLeast: false },
      minutes: lines.reduce((sum, line) => sum + minutesOfLine(line, registry) * line.figures, 0),
    };
  };
}

describe('primers side by side', () => {
  it('a primer in the colour of the largest zone saves coats, paint and minutes, and is named (common practice)', async () => {
    const navy = {
      ...shelf[0],
      paint: 'Night blue',
      kind: 'primer',
      hex: '#26395a',
      alsoCalled: [],
    } as const;
    const owned = [...pots, makePot({ paint: 'Night blue', ...can })];
    const sheets = makeSheets({ paints: [...shelf, navy], steps, pots: owned, offers });
    const { primers, best } = await comparePrimers(sheets, await tryWith(sheets));
    expect(best).toEqual(['Night blue']);
    expect(primers.map(({ paint, owned: isOwned, inUse }) => [paint, isOwned, inUse])).toContainEqual([
      'Quay grey',
      true,
      true,
    ]);
    const grey = primers.find(({ paint }) => paint === 'Quay grey');
    // Tunic and legs take one coat each over the blue, two over the grey; skin two over both.
    expect([primers[0]?.coats, grey?.coats]).toEqual([5, 7]);
    expect(primers[0]?.ml).toBeLessThan(grey?.ml ?? 0);
    expect(primers[0]?.minutes).toBeLessThan(grey?.minutes ?? 0);
  });

  it('counts what is owned, on offer or in use; the best first', async () => {
    const sheets = makeSheets({ paints: shelf, steps, pots, offers });
    const { primers } = await comparePrimers(sheets, await tryWith(sheets));
    expect(primers.map(({ paint }) => paint).sort()).toEqual(['Chalk', 'Quay grey', 'Soot black']);
    expect(primers.find(({ paint }) => paint === 'Chalk')).toMatchObject({ owned: false, inUse: false });
    const minutes = primers.map((one) => one.minutes);
    expect(minutes).toEqual(minutes.toSorted((a, b) => a - b));
  });

  it('puts one without a colour last, and names no best of fewer than two with one', async () => {
    const paints = shelf.map((one) => (one.paint === 'Soot black' ? { ...one, hex: undefined } : one));
    const known = paints.map(({ hex, ...one }) => (hex === undefined ? one : { ...one, hex }));
    const sheets = makeSheets({ paints: known, steps, pots });
    const { primers, best } = await comparePrimers(sheets, await tryWith(sheets));
    expect(primers.map(({ paint, hasColour }) => [paint, hasColour])).toEqual([
      ['Quay grey', true],
      ['Soot black', false],
    ]);
    expect(best).toEqual([]);
  });

  it('names all that tie exactly, and none that anything tells apart', async () => {
    const sheets = makeSheets({ paints: shelf, steps, pots, offers });
    const alike = {
      minutes: 90,
      coats: 40,
      ml: 12,
      useCost: { exactMinor: exactMinor(250), atLeast: false },
    };
    const bestWith = async (chalk: Partial<PrimerTrial>) => {
      const trials = new Map([
        ['Quay grey', { ...alike, minutes: 91 }],
        ['Soot black', alike],
        ['Chalk', { ...alike, ...chalk }],
      ]);
      const primerOf = (changed: Sheets) => changed.schemes.get('plain')?.steps[0]?.paints[0]?.paint ?? '';
      return (await comparePrimers(sheets, async (changed) => trials.get(primerOf(changed)) ?? alike)).best;
    };
    expect(await bestWith({})).toEqual(['Chalk', 'Soot black']);
    // The same numbers added up in another order.
    expect(await bestWith({ ml: 12 + 1e-12 })).toEqual(['Soot black', 'Chalk']);
    expect(await bestWith({ useCost: { exactMinor: exactMinor(251), atLeast: false } })).toEqual([
      'Soot black',
    ]);
    expect(await bestWith({ useCost: { exactMinor: exactMinor(250), atLeast: true } })).toEqual([
      'Soot black',
    ]);
    expect(await bestWith({ coats: 39 })).toEqual(['Chalk']);
    expect(await bestWith({ ml: 11 })).toEqual(['Chalk']);
  });

  it('compares nothing where nothing is primed', async () => {
    const sheets = makeSheets({ paints: shelf, steps: steps.slice(1), pots });
    const never = async () => expect.fail('no primer is tried');
    expect(await comparePrimers(sheets, never)).toEqual({ primers: [], best: [] });
  });

  it('leaves out an empty can', () => {
    const empty = makePot({ paint: 'Soot black', ...can, left: { how: 'by eye', share: 0 } });
    const sheets = makeSheets({ paints: shelf, steps, pots: [empty] });
    expect(listPrimers(sheets).map(({ paint }) => paint)).toEqual(['Quay grey']);
  });
});

describe('another primer', () => {
  const first = (sheets: Sheets, paint: string) => withPrimer(sheets, paint).schemes.get('plain')?.steps[0];

  it('is sprayed from a can and brushed from a pot; all other steps stay the same objects', () => {
    const dropper = makePot({ paint: 'Chalk' });
    const sheets = makeSheets({ paints: shelf, steps, pots: [...pots, dropper] });
    expect(first(sheets, 'Soot black')).toMatchObject({
      method: 'spray can',
      paints: [{ paint: 'Soot black' }],
    });
    expect(first(sheets, 'Chalk')).toMatchObject({ method: 'brush' });
    expect(withPrimer(sheets, 'Chalk').schemes.get('plain')?.steps[1]).toBe(steps[1]);
  });

  it('leaves sheets that hold no other as they are', () => {
    const sheets = makeSheets({ paints: shelf, steps, pots });
    const inUse = steps[0]?.paints[0]?.paint ?? '';
    expect(withPrimer(sheets, inUse)).toBe(sheets);
    expect(withPrimer(sheets, 'Soot black')).not.toBe(sheets);
  });

  it('goes through the airbrush where the scheme has one, without the thinning of the old', () => {
    const [, ...others] = steps;
    const brushed = makeStep({
      step: 1,
      layer: 'primer',
      paint: 'Quay grey',
      method: 'airbrush',
      thin: 0.3,
      coats: 2,
    });
    const sheets = makeSheets({
      paints: shelf,
      steps: [brushed, ...others],
      pots: [makePot({ paint: 'Chalk' })],
    });
    expect(first(sheets, 'Chalk')).toEqual({
      ...makeStep({ step: 1, layer: 'primer', paint: 'Chalk', method: 'airbrush', coats: 2 }),
    });
  });

  it('that is the one in use changes nothing', () => {
    const sheets = makeSheets({ paints: shelf, steps, pots });
    expect(first(sheets, 'Quay grey')).toBe(steps[0]);
  });
});
