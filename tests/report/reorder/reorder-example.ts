// A reorder list with all that a list can hold: two groups, a set with a pot that nothing needs, a code with a leading
// zero, unmet needs, a paint that waits, postage that comes back, notes.
import type { Needed } from '../../../src/model/choices.js';
import type { Alike } from '../../../src/model/order-sums.js';
import type { ReorderLine, ReorderPot, ReorderView } from '../../../src/report/reorder/view-reorder.js';

export const pot = (more: Partial<ReorderPot> = {}): ReorderPot => ({
  paint: 'Oat',
  sizeMl: 17,
  container: 'dropper',
  count: 2,
  coversMl: 20.1,
  overMl: 12.54,
  code: '0230471200207',
  ...more,
});

export const line = (more: Partial<ReorderLine> = {}): ReorderLine => ({
  offer: 'Oat 17 ml',
  count: 2,
  priceMinor: 335,
  costMinor: 670,
  spare: 0,
  needed: undefined,
  pots: [pot()],
  ...more,
});

/** Two pots of 12 ml as last paid. */
const alike = (more: Partial<Alike> = {}): Alike => ({
  ...{ paint: 'Moss', ml: 13.1459, sizeMl: 12, container: 'pot', count: 2, priceMinor: 310 },
  ...{ isOwned: true, isAsLikely: false },
  ...more,
});

const needed = (chance: number): Needed => ({ chanceNeeded: { chance, error: 0.0025 }, threshold: 0.27 });

export const reorderExample: ReorderView = {
  date: '2026-03-14',
  currency: 'EUR',
  minorDigits: 2,
  csv: { decimal: '.', delimiter: ',' },
  groups: [
    {
      for: 'army',
      shops: [
        {
          shop: 'The Eel Trap',
          lines: [
            line({ needed: needed(0.9336) }),
            line({
              offer: 'Earth set',
              count: 1,
              priceMinor: 1299,
              costMinor: 1299,
              pots: [
                pot({ paint: 'Slate', count: 1, coversMl: 0.001, overMl: 16.319, code: '' }),
                pot({ paint: 'Rust, dark', sizeMl: 12.5, count: 1, coversMl: 0, overMl: 12, code: '' }),
              ],
            }),
          ],
          goodsMinor: 1969,
          postageMinor: 490,
          totalMinor: 2459,
          note: '',
        },
        {
          shop: 'Quay "Paints"',
          lines: [
            line({
              offer: 'Bone 24 ml',
              count: 3,
              priceMinor: 10,
              costMinor: 30,
              pots: [pot({ paint: 'Bone' })],
            }),
          ],
          goodsMinor: 30,
          postageMinor: 0,
          totalMinor: 30,
          note: "below this shop's least order of 5.00 EUR",
        },
      ],
      totalMinor: 2489,
      note: 'not proved to be the cheapest: at most 1.40 EUR above the best possible',
      unmet: [alike()],
      waits: [{ paint: 'Peat', ...needed(0.1234) }],
    },
    {
      for: 'shelf',
      shops: [
        {
          shop: 'The Eel Trap',
          lines: [
            line({
              offer: 'Moss twins',
              count: 1,
              priceMinor: 560,
              costMinor: 560,
              pots: [pot({ paint: 'Moss', coversMl: 1.5, overMl: 31.14, code: '' })],
            }),
          ],
          goodsMinor: 560,
          postageMinor: -490,
          totalMinor: 70,
          note: "together with the army's order the goods travel free",
        },
      ],
      totalMinor: 70,
      note: '',
      unmet: [],
      waits: [],
    },
  ],
  totalMinor: 2559,
};

/** The list with one text put into every free text: shop, offer, paint, note, unmet paint. */
export function withText(text: string): ReorderView {
  const shop = {
    shop: text,
    lines: [line({ offer: text, pots: [pot({ paint: text })] })],
    goodsMinor: 670,
    postageMinor: 0,
    totalMinor: 670,
    note: text,
  };
  const group = {
    for: 'army' as const,
    shops: [shop],
    totalMinor: 670,
    note: text,
    unmet: [alike({ paint: text })],
    waits: [{ paint: text, ...needed(0.5) }],
  };
  return { ...reorderExample, groups: [group], totalMinor: 670 };
}
