// Report view: several armies on one shelf. In: the plan, its sums. Out: a row for each army.

import type { ViewInputs } from '../../words/view-inputs.js';
import { nameOf } from '../../words/word-name.js';
import { listOf } from '../../words/word-numbers.js';
import { armyLabels } from './words.js';

export interface ArmiesView {
  readonly labels: typeof armyLabels;
  readonly rows: readonly ArmyRow[];
}

interface ArmyRow {
  readonly army: string;
  readonly figures: string;
  readonly cash: string;
  readonly whole: string;
  readonly remaining: string;
  /** Paints. */
  readonly short: string;
}

const mostShort = 12;

/** Undefined where one army is planned alone. */
export function viewArmies({ plan, words }: ViewInputs): ArmiesView | undefined {
  const { armies } = plan.summary;
  if (armies.length === 0) return undefined;
  const rows = armies.map(({ army, figures, cashMinor, whole, remaining, short }) => ({
    army,
    figures: words.count(figures),
    cash: words.money(cashMinor),
    whole: words.amount(whole),
    remaining: words.amount(remaining),
    short: listOf(short.map(nameOf), mostShort),
  }));
  return { labels: armyLabels, rows };
}
