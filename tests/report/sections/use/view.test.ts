// Where the paint goes: tables that add up, paints in three parts, parts left bare.
import { describe, expect, it } from 'vitest';
import { viewPlan } from '../../../../src/report/page/view.js';
import { ram, smallUnits } from '../../a-small-army.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const { use } = viewPlan(smallPlan, []);

describe('zones and layers', () => {
  it('list what is still to be done, two units of wardens and the ram', () => {
    // Primer 2 x 30; tunic 2 x 6.05 and 2 x 0.45; wash 2 x 6.1; belt 2 x 0.07; the ram's base coat 4.05.
    expect(use.layers).toEqual(['primer', 'base coat', 'wash', 'highlight', 'detail']);
    expect(
      use.zones.map(({ zone, cells, total }) => [zone, ...cells.map(({ text }) => text), total]),
    ).toEqual([
      ['all', '60.0', '', '', '', '', '60.0'],
      ['whole', '', '4.1', '12.2', '', '', '16.3'],
      ['tunic', '', '12.1', '', '0.9', '', '13.0'],
      ['belt', '', '', '', '', '0.1', '0.1'],
    ]);
  });

  it('add up along and across', () => {
    // 89.39 ml in all
    const sum = (texts: readonly string[]) =>
      texts.reduce((total, text) => total + Math.round(Number(text) * 10), 0);
    expect(use.total).toBe('89.4');
    expect(sum(use.layerTotals)).toBe(894);
    expect(sum(use.zones.map(({ total }) => total))).toBe(894);
    for (const { cells, total } of use.zones) expect(sum(cells.map(({ text }) => text))).toBe(sum([total]));
  });

  it('tell the whole scheme from what is left to do', () => {
    // 89.39 and the 9 ml of primer that the ram has on already; 4.48 + 6 + 7.8 + 0.4 + 0.02 + 2 = 20.7 of it on the figures.
    expect(use.lead.replaceAll('\u00a0', ' ')).toBe(
      'The whole scheme takes 98 ml out of the pots; 89 ml of that is still to be done. ' +
        '23% stays on the figures; the rest stays in brush and palette, or misses as spray.',
    );
  });

  it('have nothing to show where all is done', () => {
    const done = { ...ram, remaining: [] };
    const units = [{ unit: smallUnits[2].unit, job: done }];
    const estimate = { ...smallPlan.estimate, units, jobs: new Map([[done, 1]]) };
    const view = viewPlan(changedPlan({ estimate }), []);
    expect([view.use.zones, view.use.total]).toEqual([[], '0.0']);
    expect(view.use.lead).toContain('nothing of it is still to be done');
  });
});

describe('paints', () => {
  it('part into figure, way and rest', () => {
    // Kettle grey: 2 x 2.24 on the figures, 2 x 2 left over, of 60; Nettle coat: 6, 0.1 of 12.1; Bell brass 0.02, 0.1 of 0.14.
    const rows = use.paints.map(({ paint, remaining, onFigure, lost, leftover, whole }) => [
      paint,
      remaining,
      onFigure,
      lost,
      leftover,
      whole,
    ]);
    expect(rows).toEqual([
      ['Kettle grey', '60.0', '4.5', '51.5', '4.0', '69.0'],
      ['Nettle coat', '12.1', '6.0', '6.0', '0.1', '12.1'],
      ['Pond wash', '12.2', '7.8', '4.2', '0.2', '12.2'],
      ['Chalk light', '0.90', '0.40', '0.40', '0.10', '0.90'],
      ['Bell brass', '0.14', '0.02', '0.02', '0.10', '0.14'],
      ['Rust hush', '4.1', '2.0', '2.0', '0.1', '4.1'],
    ]);
  });

  it('give low to high of what is still to be put out', () => {
    expect(use.paints.map(({ remainingRange }) => remainingRange).slice(0, 4)).toEqual([
      '29.0 to 130.0',
      '7.3 to 22.4',
      '7.1 to 21.5',
      '0.50 to 1.80',
    ]);
  });

  it('name the mark and the biggest doubt', () => {
    expect(use.paints[2]?.trust).toMatchObject({ mark: 'from memory', doubt: 'flood transfer' });
  });
});

it('says which parts stay bare', () => {
  expect(use.notPainted).toEqual([
    'Nothing is counted for feet of Reed warden in Marsh: no colour reaches them.',
  ]);
});
