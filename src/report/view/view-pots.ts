// Report view: pots that run low. In: the plan, its sums. Out: one row and one bar per paint, grouped by state,
// the worst first, and low paints that this army does not use.
import type { PaintStock, StockState } from '../../model/plan.js';
import type { Amounts, PotBar, PotGroup, PotRow, PotsView } from './report-view.js';
import { noDoubts } from './sum-work.js';
import type { ViewInputs } from './view-inputs.js';
import { hexOf } from './view-palette.js';
import { nameOf } from './word-name.js';
import { countOf, mlDigits, type NumberWords } from './word-numbers.js';

const groups: readonly { readonly state: StockState; readonly title: string; readonly meaning: string }[] = [
  {
    state: 'none owned',
    title: 'None owned',
    meaning: 'The army needs it and no pot of it is on your shelf.',
  },
  { state: 'short', title: 'Short', meaning: 'You have less than the army needs.' },
  {
    state: 'tight',
    title: 'Tight',
    meaning: 'It lasts, but you have less than one and a half times what the army needs.',
  },
  {
    state: 'enough',
    title: 'Enough',
    meaning: 'You have one and a half times what the army needs, or more.',
  },
];

/** Every paint of the army, then the low ones that it does not use. */
export function viewPots(inputs: ViewInputs): PotsView {
  const { plan, sums, words } = inputs;
  const needed = plan.stock.filter(({ paint }) => sums.paints.has(paint)).sort(byCover);
  const byState = groups.map(({ state, title, meaning }) => ({
    state,
    title,
    meaning,
    line: 'needed' as const,
    paints: needed.filter((one) => one.state === state).map((one) => viewPot(one, inputs)),
  }));
  const low = plan.stock.filter(({ paint, runningLow }) => runningLow && !sums.paints.has(paint));
  const lowGroup: PotGroup = {
    state: 'low',
    title: 'Low, though this army does not use it',
    meaning: 'Less is left than the keep level; a line marks that level.',
    line: 'keep level',
    paints: low.map((one) => viewPot(one, inputs)),
  };
  return {
    lead: wordLead(needed, low.length, words),
    groups: [...byState, lowGroup].filter(({ paints }) => paints.length > 0),
  };
}

/** The least covered first. */
const cover = ({ haveMl, needMl }: PaintStock): number => (needMl === 0 ? Infinity : haveMl / needMl);
const byCover = (a: PaintStock, b: PaintStock): number => (cover(a) === cover(b) ? 0 : cover(a) - cover(b));

function wordLead(needed: readonly PaintStock[], unusedLow: number, words: NumberWords): string {
  const low = needed.filter(({ runningLow }) => runningLow).length;
  const after = `${countOf(words, low, 'owned paint')} will be running low after this army: less than its keep level will be left.`;
  const already = `${countOf(words, unusedLow, 'paint')} that it does not use ${unusedLow === 1 ? 'is' : 'are'} low already.`;
  const none = 'No owned pot falls below its keep level.';
  return [
    needed.length === 0 ? 'This army needs no paint.' : '',
    low > 0 ? after : '',
    unusedLow > 0 ? already : '',
    low + unusedLow === 0 ? none : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function viewPot(stock: PaintStock, { plan, sums, words, trust }: ViewInputs): PotRow {
  const doubts = sums.paints.get(stock.paint)?.doubts;
  const amounts = wordAmounts(stock, words, doubts !== undefined);
  const state = doubts === undefined ? 'low' : stock.state;
  return {
    paint: stock.paint,
    runningLow: stock.runningLow,
    amounts,
    bar: drawnBar(stock, {
      id: `pot-${plan.stock.indexOf(stock) + 1}`,
      hex: hexOf(plan, stock.paint),
      line: doubts === undefined ? 'keep level' : 'needed',
      title: `${nameOf(stock.paint)}: ${state}`,
      says: amounts.map(({ label, text }) => `${label} ${text}`).join(', '),
    }),
    trust: trust.of(doubts ?? noDoubts(), stock.mark),
  };
}

/** All share their digits, except what is missing: that reads alike wherever the report says it. */
function wordAmounts(stock: PaintStock, words: NumberWords, used: boolean): Amounts[] {
  const { needMl, haveMl, orderedMl, leftAfterMl, toBuyMl, keepMl } = stock;
  const digits = mlDigits(Math.max(needMl, haveMl));
  const ml = (volumeMl: number): string => words.ml(volumeMl, digits);
  const onWay = orderedMl > 0 ? ` (${ml(orderedMl)} on the way)` : '';
  const outcome =
    toBuyMl > 0
      ? { label: 'missing', text: words.ml(toBuyMl) }
      : { label: 'left after', text: ml(leftAfterMl) };
  const keep = stock.pots.length > 0 ? [{ label: 'keep level', text: ml(keepMl) }] : [];
  const have = { label: 'have', text: haveMl === 0 ? 'none' : `${ml(haveMl)}${onWay}` };
  return used ? [have, { label: 'needed', text: ml(needMl) }, outcome, ...keep] : [have, ...keep];
}

type BarLooks = Pick<PotBar, 'id' | 'hex' | 'line' | 'title' | 'says'>;

function drawnBar({ needMl, haveMl, orderedMl, keepMl, pots }: PaintStock, looks: BarLooks): PotBar {
  const lineMl = looks.line === 'needed' ? needMl : keepMl;
  const share = (ml: number): number => (lineMl > 0 ? ml / lineMl : ml > 0 ? Infinity : 0);
  const ticked = looks.line === 'needed' && needMl > 0 && pots.length > 0 && keepMl > 0;
  return {
    ...looks,
    hereShare: share(haveMl - orderedMl),
    orderedShare: share(orderedMl),
    keepShare: ticked ? share(needMl + keepMl) : undefined,
  };
}
