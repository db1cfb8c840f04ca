import { describe, expect, it } from 'vitest';
import type { CoatReason } from '../../../../src/model/colour.js';
import type { Plan } from '../../../../src/model/plan.js';
import { viewCoats } from '../../../../src/report/sections/coats/view.js';
import { coatWords } from '../../../../src/report/sections/coats/words.js';
import { viewInputs } from '../../../../src/report/words/view-inputs.js';
import { numberWords } from '../../../../src/report/words/word-numbers.js';
import { ram, wardens } from '../../a-small-army.js';
import { nettleOverGrey, smallPrimers, smallUndercoats } from '../../a-small-palette.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const viewOf = (change: Partial<Plan> = {}) => {
  const view = viewCoats(viewInputs(changedPlan({ ...change })));
  return view && (JSON.parse(JSON.stringify(view).replaceAll('\u00a0', ' ')) as typeof view);
};
const texts = coatWords(numberWords(smallPlan.settings));
const one = (paint: string) => [{ paint, share: 1 }];

describe('why so many coats', () => {
  const brass: CoatReason = {
    rule: 'metallic over pale',
    over: one('Bell brass'),
    under: one('Chalk light'),
    beneath: [one('Chalk light')],
    dE00: 40,
  };
  it.each([
    [3, nettleOverGrey, '3 coats: weak Nettle coat over Kettle grey; over Moss bed it would be 1'],
    [1, brass, '1 coat: metallic Bell brass over pale Chalk light'],
    [
      1,
      { ...nettleOverGrey, under: one('Nettle coat'), beneath: [one('Nettle coat')], dE00: 0 },
      '1 coat: Nettle coat over itself',
    ],
    [
      2,
      {
        rule: 'shows through' as const,
        over: [
          { paint: 'Oat', share: 0.7 },
          { paint: 'Foam', share: 0.3 },
        ],
        under: one('Iron'),
        beneath: [one('Grey'), one('Iron')],
        coatOpacity: 0.8,
        dE00: 27,
      },
      '2 coats: Oat and Foam mixed over Iron, harder to hide than Grey beside it',
    ],
  ])('%d: in a painter’s words', (coats, because, says) => {
    expect(texts.because(coats, because)).toBe(says);
  });

  // 23.1 x 0.3^3 = 0.6237
  it('shows how the coats hide what lies beneath, and where', () => {
    expect(viewOf()?.rows).toEqual([
      {
        drawn: { over: '#5d7a3a', under: '#8d9196' },
        says: '3 coats: weak Nettle coat over Kettle grey; over Moss bed it would be 1',
        hides: '70%',
        differs: '23.1',
        left: '0.6',
        where: 'Marsh: 2 tunic',
      },
    ]);
    expect(viewOf()?.lead).toContain('a colour difference under 2');
    expect(viewOf()?.trust).toMatchObject({ mark: 'from memory', doubt: 'opacity weak' });
  });

  it('says a reason once for all its places, and lists so many', () => {
    const line = wardens.lines[1];
    if (line === undefined) throw new Error('no line');
    const zones = ['tunic', 'cloak', 'boots', 'hat', 'belt', 'gloves'];
    const twice = {
      ...wardens,
      lines: zones.map((zone) => ({ ...line, zone, coatsBecause: { ...nettleOverGrey } })),
    };
    const many = Array.from({ length: 80 }, (_, at) => ({
      ...line,
      coatsBecause: {
        ...nettleOverGrey,
        dE00: at,
        under: one(`ground ${at}`),
        beneath: [one(`ground ${at}`)],
      },
    }));
    const estimate = (lines: typeof wardens.lines) => {
      const job = { ...wardens, lines };
      const units = smallPlan.estimate.units.slice(0, 1).map(({ unit }) => ({ unit, job }));
      return { ...smallPlan.estimate, units, jobs: new Map([[job, 1]]) };
    };
    expect(viewOf({ estimate: estimate(twice.lines) })?.rows.map(({ where }) => where)).toEqual([
      'Marsh: 2 tunic, 2 cloak, 2 boots, 2 hat and 2 more',
    ]);
    const listed = viewOf({ estimate: estimate(many) });
    expect(listed?.rows).toHaveLength(60);
    expect(listed?.rows[0]?.differs).toBe('79');
    expect(listed?.more).toContain('20 more reasons');
  });

  it('names once the paints without a colour or an opacity', () => {
    expect(viewOf()?.unknown).toContain('No hex or no opacity in your sheets: Rust hush.');
    const known = new Map(smallPlan.paints);
    const rust = known.get('Rust hush');
    if (rust === undefined) throw new Error('no paint');
    known.set('Rust hush', { ...rust, opacity: 'fair' });
    expect(viewOf({ paints: known })?.unknown).toBe('');
  });

  // Base coats and midtones take as many coats as colours ask; a primer asks for its hex alone, and no other layer for any.
  it.each([
    ['primer', ''],
    ['base coat', 'Rust hush'],
    ['midtone', 'Rust hush'],
    ['wash', ''],
    ['highlight', ''],
    ['detail', ''],
  ] as const)('looks for a colour of a %s that has none: %j', (layer, named) => {
    const [line] = wardens.lines;
    const rust = smallPlan.paints.get('Rust hush');
    if (line === undefined || rust === undefined) throw new Error('no line');
    const { coatsBecause: _, ...plain } = line;
    const job = { ...wardens, lines: [{ ...plain, layer, paint: 'Rust hush' }] };
    const units = smallPlan.estimate.units.slice(0, 1).map(({ unit }) => ({ unit, job }));
    const estimate = { ...smallPlan.estimate, units, jobs: new Map([[job, 1]]) };
    const paints = new Map(smallPlan.paints).set('Rust hush', { ...rust, hex: '#7b3f2a' });
    const unknown = viewOf({ estimate, paints })?.unknown ?? '';
    expect(unknown.slice(0, unknown.indexOf('. ')).replace('No hex or no opacity in your sheets: ', '')).toBe(
      named,
    );
  });

  it('is no section for an army of nobody', () => {
    const estimate = { ...smallPlan.estimate, units: [], jobs: new Map() };
    expect(viewOf({ estimate, undercoats: [], primers: { primers: [], best: [] } })).toBeUndefined();
    expect(ram.lines.every(({ coatsBecause }) => coatsBecause === undefined)).toBe(true);
  });
});

describe('undercoats', () => {
  it('say what they save, and what they cost', () => {
    expect(viewOf()?.undercoats).toEqual([
      {
        drawn: { over: '#5d7a3a', under: '#66803f' },
        says: '1 coat of Moss bed first, then 1 coat of Nettle coat instead of 3',
        where: 'Marsh: 2 tunic, 20 figures',
        coats: '1 fewer',
        ml: '0.31 ml more',
        minutes: '66 min less',
      },
    ]);
    const [advice] = smallUndercoats;
    if (advice === undefined) throw new Error('no advice');
    const many = viewOf({
      undercoats: Array.from({ length: 23 }, (_, at) => ({ ...advice, mlSaved: at === 0 ? 1.5 : 0.001 })),
    });
    expect(many?.undercoats.slice(0, 2).map(({ ml }) => ml)).toEqual(['1.5 ml less', 'as much']);
    expect(many?.moreUndercoats).toContain('3 more undercoats');
  });
});

describe('primers', () => {
  const [lamp, kettle, pitch] = smallPrimers.primers;
  if (lamp === undefined || kettle === undefined || pitch === undefined) throw new Error('no primers');
  const other = { paint: 'Other grey' };

  it('stand side by side, the best named and compared with the one in use', () => {
    const primers = viewOf()?.primers;
    expect(primers?.lead).toBe(
      'Lamp white takes the least brush time: 1 h 53 min less than Kettle grey, which your schemes have.',
    );
    expect(primers?.rows).toEqual([
      {
        paint: 'Lamp white',
        hex: '#fafafa',
        isBest: true,
        flags: ['on your shelf'],
        coats: '101',
        ml: '95.2 ml',
        cost: 'at least €8.80',
        minutes: '2 h 30 min',
        compared: '1 h 53 min less',
      },
      expect.objectContaining({ flags: ['on your shelf', 'in your schemes'], isBest: false, compared: '' }),
      expect.objectContaining({ flags: ['on offer', 'no colour'], hex: '', compared: 'the same' }),
    ]);
    expect(primers?.colourless).toContain('without a hex nobody knows');
  });

  it.each([
    [
      { primers: [kettle, lamp], best: ['Kettle grey'] },
      'Kettle grey, which your schemes have, takes the least brush time.',
    ],
    [
      { primers: [{ ...lamp, owned: false }, kettle], best: ['Lamp white'] },
      'Lamp white takes the least brush time: 1 h 53 min less than Kettle grey, which your schemes have. You do not own it, and the order above does not hold it.',
    ],
    [
      { primers: [kettle, { ...kettle, ...other, inUse: false }], best: ['Kettle grey', 'Other grey'] },
      'Kettle grey, which your schemes have, and Other grey take the least brush time, and tie in all else.',
    ],
    [
      {
        primers: [{ ...lamp, owned: false }, { ...lamp, ...other, owned: false }, kettle],
        best: ['Lamp white', 'Other grey'],
      },
      'Lamp white and Other grey take the least brush time, and tie in all else: 1 h 53 min less than Kettle grey, which your schemes have. You own none of them, and the order above holds none.',
    ],
    [
      { primers: [kettle, pitch], best: [] },
      'Fewer than two of these primers have a colour, so none can be called the best.',
    ],
  ])('say which is best, and whether it is there: %#', (primers, lead) => {
    expect(viewOf({ primers })?.primers?.lead).toBe(lead);
  });

  it('are not compared where there is but one', () => {
    expect(viewOf({ primers: { primers: [kettle], best: [] } })?.primers).toBeUndefined();
  });
});
