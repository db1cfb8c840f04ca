// Columns: the rows that the settings sheet knows beside assumptions. In: nothing. Out: how each is read, and what its lack
// means.
import type { CellKind } from '../check/read-cell/cell-kind.js';
import { choiceKind } from '../check/read-cell/read-choice.js';
import { dateKind } from '../check/read-cell/read-date.js';
import { nameKind } from '../check/read-cell/read-name.js';
import { type PriceTerms, priceKind } from '../check/read-cell/read-price.js';
import { currencyKind, localeKind, surePercentKind } from '../check/read-cell/read-setting.js';
import type { Blank } from './column.js';

/** A sum can be read once the currency is known. */
type KindOf<T> = CellKind<T> | ((terms: PriceTerms) => CellKind<T>);

interface SettingRow<T = unknown> {
  readonly name: string;
  readonly kind: KindOf<T>;
  readonly blank: Blank<T>;
}

const row = <T>(name: string, kind: KindOf<T>, blank: Blank<NoInfer<T>>): SettingRow<T> => ({
  name,
  kind,
  blank,
});

/** By key of the model's Settings. */
export const settingRows = {
  currency: row('currency', currencyKind, { means: 'EUR, which is assumed', value: 'EUR' }),
  date: row('date', dateKind, { means: 'the day on which the plan is made' }),
  locale: row('locale', localeKind, { means: 'en, which is assumed', value: 'en' }),
  surePercent: row('sure %', surePercentKind, { means: 'no promise: as buy says' }),
  buy: row('buy', choiceKind('likely or goes', ['likely', 'goes']), {
    means: 'goes: what is likely enough to be needed to be worth its price',
  }),
  againMinor: row('again', priceKind, { means: 'one postage more' }),
  restock: row('restock', choiceKind('army or shelf', ['army', 'shelf']), {
    means: 'army: only what the plan needs; without an army shelf',
    value: 'army',
  }),
  shelf: row('shelf', nameKind, { means: 'none: pots stand in these sheets' }),
};

export const settingNames: readonly string[] = Object.values(settingRows).map(({ name }) => name);
