// Report view: money so far. In: the plan, its sums. Out: where it is, what was spent where, what finished figures have cost.
import { type ExactMinor, exactMinor } from '../../../model/money.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { type MoneyWords, moneyWords } from './words.js';

export interface MoneyView extends Pick<MoneyWords, 'labels'> {
  /** They add up to all that the pots have cost. */
  readonly sums: readonly { readonly title: string; readonly figure: string; readonly says: string }[];
  readonly spent: readonly { readonly month: string; readonly shop: string; readonly cash: string }[];
  readonly spentInAll: string;
  readonly finished: readonly FinishedRow[];
}

interface FinishedRow {
  readonly figure: string;
  readonly scheme: string;
  readonly figures: string;
  readonly estimated: string;
  readonly really: string;
}

/** Undefined where nothing was bought and nothing used. */
export function viewMoney({ plan, words }: ViewInputs): MoneyView | undefined {
  const { money, summary } = plan;
  if (!summary.money.isTold) return undefined;
  const texts = moneyWords(words);
  const priced = (minor: ExactMinor | number) => ({ exactMinor: exactMinor(minor), atLeast: false });
  const parts = [
    { ...texts.used, minor: money.used },
    { ...texts.standing, minor: money.standing, says: texts.standing.says(money.unpricedPots) },
    ...(money.onWay.isZero() ? [] : [{ ...texts.onWay, minor: money.onWay }]),
  ];
  const split = words.split(
    priced(summary.money.paid),
    parts.map(({ minor }) => priced(minor)),
  );
  return {
    labels: texts.labels,
    sums: parts.map(({ title, says }, at) => ({ title, says, figure: split[at] ?? '' })),
    spent: money.spent.map(({ month, shop, minor }) => ({
      month,
      shop: shop === '' ? texts.noShop : shop,
      cash: words.money(minor),
    })),
    spentInAll: words.money(summary.money.spentMinor),
    finished: summary.money.finished.map(({ estimated, really, figures, ...names }) => ({
      ...names,
      figures: words.count(figures),
      estimated: words.amount(estimated),
      really: words.amount(really),
    })),
  };
}
