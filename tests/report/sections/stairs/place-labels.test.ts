// Labels of the staircase: none over another at the least width, names where there is room, numbers and ranges where not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawStairs } from '../../../../src/report/sections/stairs/draw.js';
import { narrow, type StairsRoom, scaleOf, wide } from '../../../../src/report/sections/stairs/draw-room.js';
import { type Label, placeLabels } from '../../../../src/report/sections/stairs/place-labels.js';
import type { Riser, StairsChart } from '../../../../src/report/sections/stairs/view-chart.js';

/** Risers from where they stand and how high they reach, both as shares. */
const risersOf = (steps: readonly (readonly [across: number, up: number])[], name = 'Lock brick'): Riser[] =>
  steps.map(([across, up], index) => ({
    no: index + 1,
    name,
    title: name,
    hexes: ['#445566'],
    across,
    fromUp: steps[index - 1]?.[1] ?? 0,
    up,
    proved: true,
  }));

const placeIn = (room: StairsRoom, risers: readonly Riser[]): Label[] =>
  placeLabels(risers, room, scaleOf(room));

/** At least what 12 pixel letters take: a bold figure 6.7 (Liberation Sans), others on average under 6.5. */
const boxOf = ({ x, y, side, no, name }: Label, { leastWidth }: StairsRoom) => {
  const width = 6.7 * [...`${name} ${no}`.trim()].length;
  const left = x * leastWidth + (side === 'left' ? -8 - width : 8);
  return { left, right: left + width, top: y - 10, bottom: y + 2 };
};

function overlaps(labels: readonly Label[], room: StairsRoom): string[] {
  const boxes = labels.map((label) => ({ no: label.no, ...boxOf(label, room) }));
  return boxes.flatMap((a, at) =>
    boxes
      .slice(at + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.no} and ${b.no}`),
  );
}

/** Any staircase: sorted places and heights. */
const anySteps = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 1, max: 1000 })), {
    minLength: 1,
    maxLength: 90,
  })
  .map((pairs) => {
    const across = [...new Set(pairs.map(([at]) => at))].sort((a, b) => a - b);
    const up = pairs.map(([, high]) => high).sort((a, b) => a - b);
    return across.map((at, index) => [at / 1000, (up[index] ?? 0) / (up.at(-1) ?? 1)] as const);
  });

describe.each([wide, narrow])('in the $name drawing', (room) => {
  it('every label keeps clear of the ticks at the edge', () => {
    fc.assert(
      fc.property(anySteps, (steps) => {
        for (const label of placeIn(room, risersOf(steps)))
          expect(boxOf(label, room).left).toBeGreaterThanOrEqual(room.left * room.leastWidth);
      }),
    );
  });

  it('no label lies over another, whatever the stairs', () => {
    fc.assert(
      fc.property(
        anySteps,
        fc.constantFrom('Lock brick', 'Ink', 'Old pennant purple + 12'),
        (steps, name) => {
          expect(overlaps(placeIn(room, risersOf(steps, name)), room)).toEqual([]);
        },
      ),
    );
  });

  it('numbers come in order, and no step is told twice', () => {
    fc.assert(
      fc.property(anySteps, (steps) => {
        const told = placeIn(room, risersOf(steps)).flatMap(({ no }) => no.split('–').map(Number));
        expect(told).toEqual([...told].sort((a, b) => a - b));
        expect(new Set(told).size).toBe(told.length);
      }),
    );
  });

  it('a lone step keeps its own number', () => {
    expect(placeIn(room, risersOf([[0.5, 1]])).map(({ no }) => no)).toEqual(['1']);
  });
});

describe('names', () => {
  const nameAt = (across: number, name: string, room = wide) =>
    placeIn(room, risersOf([[across, 1]], name)).map((label) => label.name);

  it('are written where they fit left of the step', () =>
    expect(nameAt(0.9, 'Lock brick')).toEqual(['Lock brick']));
  it('go to the right at the left edge', () => {
    const [label] = placeIn(wide, risersOf([[0.02, 1]]));
    expect(label).toMatchObject({ name: 'Lock brick', side: 'right' });
  });
  it('give way where they would reach past the left edge', () =>
    expect(nameAt(0.1, 'Lock brick')).toEqual(['']));
  it('give way where they are long', () => expect(nameAt(0.9, 'unbroken'.repeat(5))).toEqual(['']));
  it('count ideographs as wide', () => expect(nameAt(0.35, '灰色の下塗り塗料缶スプレー')).toEqual(['']));
  it('are left to the table on a narrow page', () => expect(nameAt(0.9, 'Lock brick', narrow)).toEqual(['']));
});

it('steps too close together share a label', () => {
  const steps = [
    [0.5, 0.01],
    [0.501, 0.02],
    [0.502, 0.03],
    [0.9, 1],
  ] as const;
  expect(placeIn(narrow, risersOf(steps)).map(({ no }) => no)).toEqual(['1–3', '4']);
});

describe('the drawing', () => {
  const chart = (risers: readonly Riser[]): StairsChart => ({
    title: 'Cash </title><script>',
    says: 'Steps',
    across: 'figures',
    risers,
    army: { across: 0.5, up: 0.4, label: 'your army', short: 'army' },
    currency: 'EUR',
    cashTicks: [{ share: 0, text: '0' }],
    figureTicks: [{ share: 0, text: '0' }],
  });
  const wideOf = (svg: string): string => svg.slice(0, svg.indexOf('<svg class="stairs stairs-narrow"'));
  /** Treads as [from, to, y]: units of 1,000 to the width, and pixels. */
  const treadsOf = (svg: string): number[][] =>
    [...svg.matchAll(/class="tread[^"]*" d="([^"]*)"/g)]
      .flatMap(([, d]) => [...(d ?? '').matchAll(/M(\d+) ([\d.]+)H(\d+)/g)])
      .map(([, from, y, to]) => [Number(from), Number(to), Number(y)]);

  it('goes up from the left edge to the right without a gap and never down', () => {
    fc.assert(
      fc.property(anySteps, (steps) => {
        const treads = treadsOf(wideOf(drawStairs(chart(risersOf(steps)))));
        expect(treads).toHaveLength(steps.length + 1);
        let [end, height] = [0, Number.POSITIVE_INFINITY];
        for (const [x1 = 0, x2 = 0, y = 0] of treads) {
          expect(x1).toBe(end);
          expect(y).toBeLessThanOrEqual(height);
          [end, height] = [x2, y];
        }
        expect(end).toBe(1000);
      }),
    );
  });

  it('marks treads that are not proved, and lightens the second army', () => {
    const [first, second] = risersOf([
      [0.25, 0.5],
      [0.75, 1],
    ]);
    if (first === undefined || second === undefined) throw new Error('no risers');
    const svg = wideOf(drawStairs(chart([first, { ...second, proved: false }])));
    expect(svg.match(/class="tread unproved"/g)).toHaveLength(1);
    // The first tread is cut in two at the army, the second lies beyond it.
    const blocks = (looks: string) => new RegExp(`class="${looks}" d="([^"]*)"`).exec(svg)?.[1]?.match(/M/g);
    expect(blocks('ground')).toHaveLength(1);
    expect(blocks('ground beyond')).toHaveLength(2);
  });

  it('escapes every text', () => {
    const svg = drawStairs(chart(risersOf([[0.9, 1]], '</text><b>&')));
    expect(svg).not.toMatch(/<script|<b>/);
    expect(svg).toContain('&lt;/text&gt;&lt;b&gt;&amp;');
  });
});
