// Report view: cash against colour. In: the plan's frontier. Out: levels as rows, each naming its swaps; the fewest pots.
import type { FrontierChoice, FrontierPoint } from '../../../model/frontier.js';
import type { ColourSums, FrontierLevel } from '../../../model/summary.js';
import type { Pair } from '../../drawing/draw-over.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { searchLonger } from '../../words/word-proof.js';
import { isFirm } from './is-firm.js';
import { type FrontierChart, viewFrontierChart } from './view-frontier-chart.js';
import { type Pairing, viewPair } from './view-pair.js';
import { swapRow } from './word-swap-row.js';

export interface FrontierView {
  readonly lead: string;
  /** Undefined where every difference costs the same. */
  readonly chart: FrontierChart | undefined;
  readonly caption: string;
  readonly rows: readonly FrontierRow[];
  /** What is not proved, or can't be met; one of a kind. */
  readonly notes: readonly string[];
}

interface FrontierRow {
  /** The number of the level in the chart; '' for the choice of fewest pots. */
  readonly no: string;
  /** `2 to 3`, or `fewest pots`. */
  readonly allowed: string;
  readonly cash: string;
  readonly pots: string;
  readonly swaps: readonly Pair[];
  /** `proved`, or how far from it. */
  readonly status: string;
  /** Rows for the swaps sheet. */
  readonly sheetRows: readonly string[];
  /** Said where rows of the swaps sheet can't tell this choice; else ''. */
  readonly noRows: string;
}

/** Undefined where nothing is to be bought at any difference. */
export function viewFrontier(pairing: Pairing): FrontierView | undefined {
  const { plan, words } = pairing;
  const { points } = plan.frontier;
  if (points.every(isFree)) return undefined;
  const { levels, fewest } = plan.summary.colours;
  const rows = levels.map((level, at) => viewLevel(level, String(at + 1), pairing));
  const choices: readonly FrontierChoice[] = fewest === undefined ? levels : [...levels, fewest];
  return {
    lead: wordLead(plan.summary.colours, words),
    chart: levels.length > 1 ? viewFrontierChart(levels, pairing) : undefined,
    caption: `The least cash for each colour difference allowed${choices.every(isFirm) ? ', each proved: no choice of paints costs less' : ''}`,
    rows: fewest === undefined ? rows : [...rows, viewFewest(pairing)],
    notes: [...wordNotes(choices), ...wordNotDrawn(plan.frontier.notDrawn, words)],
  };
}

const isFree = ({ cashMinor, unmet, swaps }: FrontierPoint): boolean =>
  cashMinor === 0 && unmet.length === 0 && swaps.length === 0;

function wordLead(colours: ColourSums, words: NumberWords): string {
  const { levels } = colours;
  const [first, last] = [levels[0], levels.at(-1)];
  if (first === undefined || last === undefined) return '';
  const own = `Each paint as your schemes name it: ${words.money(first.cashMinor)}`;
  if (last.toDE00 === 0) return `${own}.`;
  if (levels.length === 1)
    return `${own}. No other paint within ${words.plain(last.toDE00)} that is owned or on offer would lower that.`;
  return (
    `${own}. With another paint of the same kind wherever one is within ${words.plain(last.dE00)}: ${wordGain(colours, words)}. ` +
    'Each paint’s whole need is served by one paint, from the shelf or bought, and all is decided together.'
  );
}

/** More cash where other paints cover what the named ones leave open. */
function wordGain({ levels, savedMinor }: ColourSums, words: NumberWords): string {
  const still = new Set(levels.at(-1)?.unmet.map(({ paint }) => paint));
  const covered = (levels[0]?.unmet ?? []).filter(({ paint }) => !still.has(paint));
  const covers =
    covered.length === 0
      ? ''
      : `, and it covers ${listOf(covered.map(({ paint }) => nameOf(paint)))}, which no offer does`;
  if (savedMinor === 0) return `as much${covers}`;
  return `${words.money(Math.abs(savedMinor))} ${savedMinor > 0 ? 'less' : 'more'}${covers}`;
}

function viewLevel(level: FrontierLevel, no: string, pairing: Pairing): FrontierRow {
  const { dE00, toDE00 } = level;
  const { words } = pairing;
  const [from, to] = [words.plain(dE00), words.plain(toDE00)];
  return { no, allowed: from === to ? from : `${from} to ${to}`, ...viewChoice(level, pairing) };
}

function viewFewest(pairing: Pairing): FrontierRow {
  const { plan, words } = pairing;
  const { fewestPots } = plan.frontier;
  const row = viewChoice(fewestPots, pairing);
  const { abovePots } = fewestPots;
  return {
    ...row,
    no: '',
    allowed: `fewest pots, within ${words.plain(fewestPots.dE00)}`,
    status: abovePots > 0 ? `at most ${countOf(words, abovePots, 'pot')} above the fewest` : row.status,
  };
}

function viewChoice(choice: FrontierChoice, pairing: Pairing): Omit<FrontierRow, 'no' | 'allowed'> {
  const { words } = pairing;
  const { swaps } = choice;
  // A row of the swaps sheet is followed on, so a paint can't both stand in and be replaced.
  const isChained = swaps.some(({ by }) => swaps.some(({ paint }) => paint === by));
  return {
    cash: words.money(choice.cashMinor),
    pots: words.count(choice.pots),
    swaps: swaps.map((swap) => viewPair(swap, pairing)),
    status: wordStatus(choice, words),
    sheetRows: isChained ? [] : swaps.map(({ paint, by }) => swapRow(paint, by, words)),
    noRows: isChained
      ? 'One paint is replaced and stands in for another here: give scheme or step in each row, or they follow one another.'
      : '',
  };
}

function wordStatus({ status, aboveBestMinor, unmet }: FrontierChoice, words: NumberWords): string {
  const above = aboveBestMinor > 0 ? `at most ${words.money(aboveBestMinor)} above the best` : '';
  if (status === "can't be met") {
    const lacks = listOf(unmet.map(({ paint, ml }) => `${words.ml(ml)} of ${nameOf(paint)}`));
    return `can’t be met: ${lacks} missing${above === '' ? '' : `; the rest ${above}`}`;
  }
  return status === 'proved' ? 'proved' : `not proved: ${above}`;
}

function wordNotDrawn([from]: readonly number[], words: NumberWords): string[] {
  return from === undefined
    ? []
    : [
        `Differences of ${words.plain(from)} and more are left out: they bring in too many paints to search among.`,
      ];
}

function wordNotes(choices: readonly FrontierChoice[]): string[] {
  const open = choices.some(({ aboveBestMinor }) => aboveBestMinor > 0);
  const unmet = choices.some(({ status }) => status === "can't be met");
  return [
    ...(unmet
      ? [
          'Where a choice can’t be met, no paint within the difference is owned or on offer in that amount; its cash is that of the rest.',
        ]
      : []),
    ...(open ? [`Not all of these are proved. ${searchLonger}`] : []),
  ];
}
