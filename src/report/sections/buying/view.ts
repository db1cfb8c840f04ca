// Report view: ways to buy, side by side. In: the plan's choices. Out: what each costs now and in all, and what follows from the
// chosen one.
import type { Choice } from '../../../model/choices.js';
import type { Plan } from '../../../model/plan.js';
import { shareOf } from '../../drawing/scale.js';
import { joinSentences } from '../../words/join-sentences.js';
import type { ViewInputs, Worded } from '../../words/view-inputs.js';
import { nameAim } from '../../words/word-aim.js';
import { type BuyList, viewList } from './view-list.js';
import { type BuyingWords, buyingWords } from './words.js';

export interface BuyingView {
  readonly labels: BuyingWords['labels'];
  /** What the way is, and how ways were tried. */
  readonly note: string;
  /** Where the offers do not reach what was asked for, or some paint is not on offer. */
  readonly warnings: readonly string[];
  readonly caption: string;
  readonly ways: readonly WayRow[];
  /** What each way buys at once; ways that buy alike have one. */
  readonly lists: readonly BuyList[];
}

interface WayRow {
  readonly label: string;
  /** The way of the order. */
  readonly isOwn: boolean;
  readonly cash: string;
  readonly orders: string;
  readonly mean: string;
  /** The bar, cash now as a share of the most cash; the text beside it says the same. */
  readonly share: number;
}

/** Undefined where nothing is needed any more, or no way costs anything. */
export function viewBuying({ plan, words }: ViewInputs): BuyingView | undefined {
  const { aim, promised, ranges, order, choices, summary } = plan;
  const { chosen, lists, isFree } = summary.buying;
  if (ranges.paints.size === 0 || isFree || chosen === undefined) return undefined;
  const texts = buyingWords(words);
  const { standing, reached, isHeldBack } = summary.promise;
  const { follows } = chosen;
  const promise =
    aim.policy === 'sure'
      ? [texts.promiseNote(ranges.draws), texts.promise(reached, { order, promised, standing })]
      : [];
  return {
    labels: texts.labels,
    note: joinSentences(texts.lead(aim, standing, ranges.paints.size), texts.note(follows.draws), ...promise),
    warnings: listWarnings(plan, texts),
    caption: texts.caption(isHeldBack),
    ways: choices.map((choice) => viewWay(choice, { plan, words, texts })),
    lists: lists.map((alike) => viewList(alike, { plan, words, texts })),
  };
}

function viewWay(choice: Choice, { plan, words, texts }: Worded<BuyingWords>): WayRow {
  const { follows, cashNowMinor } = choice;
  const { mostMinor, chosen } = plan.summary.buying;
  return {
    label: nameAim(choice, words),
    isOwn: choice === chosen,
    cash: words.money(cashNowMinor),
    orders: texts.orders(follows),
    mean: texts.mean(follows),
    share: shareOf(cashNowMinor, mostMinor),
  };
}

function listWarnings({ promised, order, summary }: Plan, texts: BuyingWords): string[] {
  const { standing, surer, isHeldBack } = summary.promise;
  const { surePercent } = promised;
  if (surePercent === undefined) return [];
  return [
    ...(standing === 'missed' ? [texts.missed(surePercent, surer)] : []),
    ...(isHeldBack && standing !== 'kept' ? [texts.heldBack(promised.metOnFreshDraws, order.unmet)] : []),
  ];
}
