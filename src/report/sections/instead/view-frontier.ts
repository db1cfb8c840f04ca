// Report view: cash against colour. In: the plan's frontier. Out: levels as rows, each naming its swaps; the fewest pots.
import type { FrontierChoice, FrontierPoint } from '../../../model/frontier.js';
import type { FrontierLevel } from '../../../model/summary.js';
import type { Pair } from '../../drawing/draw-over.js';
import { type Pairing, viewPair } from './view-pair.js';
import { swapRow } from './word-swap-row.js';

export interface FrontierView {
  readonly lead: string;
  readonly caption: string;
  readonly rows: readonly FrontierRow[];
  /** What is not proved, or can't be met; one of a kind. */
  readonly notes: readonly string[];
}

interface FrontierRow {
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
  const { plan, texts } = pairing;
  const { points } = plan.frontier;
  if (points.every(isFree)) return undefined;
  const { levels, fewest } = plan.summary.colours;
  const rows = levels.map((level) => viewLevel(level, pairing));
  const choices: readonly FrontierChoice[] = fewest === undefined ? levels : [...levels, fewest];
  return {
    lead: texts.frontier.lead(plan.summary.colours),
    caption: texts.frontier.caption(
      choices.every(({ status }) => status === 'proved'),
      plan.aim,
    ),
    rows: fewest === undefined ? rows : [...rows, viewFewest(pairing)],
    notes: listNotes(choices, pairing),
  };
}

const isFree = ({ cashMinor, unmet, swaps }: FrontierPoint): boolean =>
  cashMinor === 0 && unmet.length === 0 && swaps.length === 0;

function viewLevel(level: FrontierLevel, pairing: Pairing): FrontierRow {
  return { allowed: pairing.texts.frontier.allowed(level), ...viewChoice(level, pairing) };
}

function viewFewest(pairing: Pairing): FrontierRow {
  const { fewestPots } = pairing.plan.frontier;
  const { frontier } = pairing.texts;
  const row = viewChoice(fewestPots, pairing);
  const { abovePots } = fewestPots;
  return {
    ...row,
    allowed: frontier.fewest(fewestPots),
    status: abovePots > 0 ? frontier.aboveFewest(abovePots) : row.status,
  };
}

function viewChoice(choice: FrontierChoice, pairing: Pairing): Omit<FrontierRow, 'allowed'> {
  const { words, texts } = pairing;
  const { swaps } = choice;
  // A row of the swaps sheet is followed on, so a paint can't both stand in and be replaced.
  const isChained = swaps.some(({ by }) => swaps.some(({ paint }) => paint === by));
  return {
    cash: words.money(choice.cashMinor),
    pots: words.count(choice.pots),
    swaps: swaps.map((swap) => viewPair(swap, pairing)),
    status: texts.frontier.status(choice),
    sheetRows: isChained ? [] : swaps.map(({ paint, by }) => swapRow(paint, by, words)),
    noRows: isChained ? texts.frontier.chained : '',
  };
}

function listNotes(choices: readonly FrontierChoice[], { plan, texts: { frontier } }: Pairing): string[] {
  const [firstLeftOut] = plan.frontier.notDrawn;
  return [
    ...(choices.some(({ status }) => status === "can't be met") ? [frontier.unmet] : []),
    ...(choices.some(({ aboveBestMinor }) => aboveBestMinor > 0) ? [frontier.open] : []),
    ...(firstLeftOut === undefined ? [] : [frontier.notDrawn(firstLeftOut)]),
  ];
}
