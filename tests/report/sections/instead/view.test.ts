import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/model/plan.js';
import { viewInstead } from '../../../../src/report/sections/instead/view.js';
import { swapHeader, swapRow } from '../../../../src/report/sections/instead/word-swap-row.js';
import { viewInputs } from '../../../../src/report/words/view-inputs.js';
import { differenceWords } from '../../../../src/report/words/word-difference.js';
import { numberWords } from '../../../../src/report/words/word-numbers.js';
import { smallFrontier, smallInstead } from '../../a-small-palette.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const viewOf = (change: Partial<Plan> = {}) => {
  const view = viewInstead(viewInputs(changedPlan({ ...change })));
  return view && (JSON.parse(JSON.stringify(view).replaceAll('\u00a0', ' ')) as typeof view);
};
const view = viewOf();

describe('colour differences in words', () => {
  const { of, meaning } = differenceWords(smallPlan, numberWords(smallPlan.settings));
  // From memory: below 1 not seen, 2 just visible, 5 plainly different, 10 another colour.
  it.each([
    [0, '0, not seen'],
    [0.94, '0.9, not seen'],
    [0.96, '1, hardly seen'],
    [1.94, '1.9, hardly seen'],
    [1.96, '2, just visible'],
    [4.94, '4.9, just visible'],
    [4.96, '5, plainly different'],
    [9.96, '10, another colour'],
  ])('%d is %s', (dE00, says) => expect(of(dE00)).toBe(says));

  it('follow the painter’s own idea of what is just visible', () => {
    const assumptions = smallPlan.assumptions.map((one) =>
      one.name === 'just visible difference' ? { ...one, likely: 3 } : one,
    );
    const own = differenceWords({ assumptions }, numberWords(smallPlan.settings));
    expect([own.of(2.5), own.of(3)]).toEqual(['2.5, hardly seen', '3, just visible']);
    expect(meaning).toContain('from 2 on it is just visible');
    expect(own.meaning).toContain('from 3 on it is just visible');
  });
});

describe('rows for the swaps sheet', () => {
  // RFC 4180, 2.6 and 2.7: fields with commas or quotes are quoted, quotes doubled.
  it.each([
    ['Oat', 'Straw', ',,Oat,Straw'],
    ['Oat, old', 'Straw "pale"', ',,"Oat, old","Straw ""pale"""'],
    [' Oat', 'a\nb', ',," Oat",a b'],
  ])('%j by %j', (paint, by, row) => {
    expect(swapRow(paint, by, numberWords(smallPlan.settings))).toBe(row);
  });

  it('is parted as sheets are where numbers have a decimal comma', () => {
    const german = numberWords({ ...smallPlan.settings, locale: 'de-DE' });
    expect(swapHeader(german)).toBe('scheme;step;paint;instead');
    expect(swapRow('Oat, old', 'Straw', german)).toBe(';;Oat, old;Straw');
  });
});

describe('what is owned instead', () => {
  it('lists substitutes with their difference, what is left over and the row to write', () => {
    expect(view?.heading).toBe('Paints you own that could replace 1 of the 2 paints to buy');
    expect(view?.header).toBe('scheme,step,paint,instead');
    expect(view?.paints).toEqual([
      {
        paint: 'Nettle coat',
        hex: '#5d7a3a',
        toBuy: '8.0 ml to buy: 80% sure takes 12.1 ml in all',
        by: [
          {
            ...{ paint: 'Nettle coat', hex: '#5d7a3a', by: 'Nettle, old label', byHex: '', differs: '' },
            sameByName: true,
            spare: '14.0 ml left over: enough for all of it',
            row: ',,Nettle coat,"Nettle, old label"',
          },
          {
            ...{ paint: 'Nettle coat', hex: '#5d7a3a', by: 'Moss bed', byHex: '#66803f' },
            differs: '2, just visible',
            sameByName: false,
            spare: '6.5 ml left over: enough for some steps, not for all',
            row: ',,Nettle coat,Moss bed',
          },
        ],
        more: '',
      },
    ]);
  });

  it('shows the swaps that hold already', () => {
    expect(view?.taken).toEqual([
      {
        ...{ paint: 'Bark hush', hex: '', by: 'Rust hush', byHex: '#8a4b2e', differs: '0.8, not seen' },
        where: 'Timber, step 2',
      },
    ]);
  });

  it('caps long lists, and says so', () => {
    const [one] = smallInstead;
    if (one === undefined) throw new Error('no paint');
    const by = Array.from({ length: 7 }, () => one.by[0]).flatMap((found) => found ?? []);
    const many = viewOf({ instead: Array.from({ length: 33 }, () => ({ ...one, by })) });
    expect(many?.paints).toHaveLength(30);
    expect(many?.morePaints).toContain('3 more paints');
    expect(many?.paints[0]).toMatchObject({ more: 'and 3 farther off', by: { length: 4 } });
  });

  it('says where nothing comes near, and is no section where nothing is to be bought or swapped', () => {
    expect(viewOf({ instead: [] })?.none).toContain('Nothing that you own');
    const stock = smallPlan.stock.map((paint) => ({ ...paint, toBuyMl: 0 }));
    expect(viewOf({ stock })?.heading).toBe('Swapped already');
    expect(viewOf({ stock, swaps: [] })).toBeUndefined();
  });
});

describe('cash against colour', () => {
  const frontier = view?.frontier;

  it('joins points alike into levels, each naming its swaps, and ends with the fewest pots', () => {
    expect(frontier?.rows.map(({ allowed, cash, pots, status }) => [allowed, cash, pots, status])).toEqual([
      ['0', '€7.40', '1', 'can’t be met: 4.1 ml of Rust hush missing'],
      ['2 to 5', '€0.00', '0', 'can’t be met: 4.1 ml of Rust hush missing'],
      ['10', '€7.00', '2', 'not proved: at most €0.40 above the best'],
      ['fewest pots, within 10', '€7.60', '1', 'proved'],
    ]);
    expect(frontier?.rows[2]?.swaps.map(({ by, differs }) => `${by}: ${differs}`)).toEqual([
      'Moss bed: 2, just visible',
      'Clay, "wet": 6.2, plainly different',
    ]);
    expect(frontier?.rows[2]?.sheetRows).toEqual([',,Nettle coat,Moss bed', ',,Rust hush,"Clay, ""wet"""']);
    expect(frontier?.caption).not.toContain('proved');
    expect(frontier?.notes).toHaveLength(2);
  });

  it('says that it is proved where all of it is', () => {
    const points = smallFrontier.points.map((point) => ({
      ...point,
      ...{ status: 'proved' as const, unmet: [], aboveBestMinor: 0 },
    }));
    const proved = viewOf({ frontier: { ...smallFrontier, points } })?.frontier;
    expect(proved?.caption).toContain('each proved');
    expect(proved?.notes).toEqual([]);
  });

  it('gives no rows where a paint both stands in and is replaced', () => {
    const points = smallFrontier.points.map((point) => ({
      ...point,
      swaps: [
        { paint: 'Oat', by: 'Straw', dE00: 1 },
        { paint: 'Straw', by: 'Rope', dE00: 1 },
      ],
    }));
    const chained = viewOf({ frontier: { ...smallFrontier, points } })?.frontier?.rows[0];
    expect(chained?.sheetRows).toEqual([]);
    expect(chained?.noRows).toContain('give scheme or step');
  });

  it('is left out where nothing is bought at any difference, or too little is saved', () => {
    const free = smallFrontier.points.map((point) => ({
      ...point,
      cashMinor: 0,
      pots: 0,
      swaps: [],
      unmet: [],
    }));
    expect(viewOf({ frontier: { ...smallFrontier, points: free } })?.frontier).toBeUndefined();
    const level = smallFrontier.points.map((point) => ({
      ...(smallFrontier.points[0] ?? point),
      dE00: point.dE00,
    }));
    expect(viewOf({ frontier: { ...smallFrontier, points: level } })?.frontier).toBeUndefined();
    // 5 of 100 are enough, 4.99 are not.
    const saving = (minor: number) =>
      level.map((point) => ({ ...point, cashMinor: point.dE00 === 0 ? 10_000 : 10_000 - minor }));
    const shown = [499, 500].map((minor) =>
      viewOf({ frontier: { ...smallFrontier, points: saving(minor) } }),
    );
    expect(shown.map((one) => one?.frontier === undefined)).toEqual([true, false]);
  });

  it('says by which way to buy', () => {
    expect(frontier?.caption).toContain('for each colour difference allowed, 80% sure');
  });

  it('says why other paints may cost more', () => {
    const [own] = smallFrontier.points;
    if (own === undefined) throw new Error('no points');
    const open = {
      ...own,
      cashMinor: 700,
      status: "can't be met" as const,
      unmet: [{ paint: 'Rust hush', ml: 4 }],
    };
    const met = { ...own, cashMinor: 830, unmet: [] };
    const leadOf = (last: typeof met): string | undefined => {
      const points = smallFrontier.points.map(({ dE00 }) => ({ ...(dE00 === 0 ? open : last), dE00 }));
      return viewOf({ frontier: { ...smallFrontier, points } })?.frontier?.lead;
    };
    expect(leadOf(met)).toContain('within 2: €1.30 more, and it covers Rust hush, which no offer does.');
    expect(leadOf({ ...met, cashMinor: 700 })).toContain('as much, and it covers Rust hush');
  });

  it('says what is left out among very many paints, and claims nothing of it', () => {
    const notDrawn = [2, 5, 10];
    const cut = viewOf({ frontier: { ...smallFrontier, notDrawn } })?.frontier;
    expect(cut?.notes.at(-1)).toMatch(/^Differences of 2 and more are left out/);
    expect(frontier?.notes.join()).not.toContain('left out');
  });
});
