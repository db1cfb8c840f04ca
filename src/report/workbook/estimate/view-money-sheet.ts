// Report view: the workbook's money so far. In: the plan. Out: the sheet, plain numbers.
import type { Amount, ExactMinor } from '../../../model/money.js';
import type { Plan } from '../../../model/plan.js';
import { columnWords } from './column-words.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import { cellWords, moneySheetWords, sheetWords } from './words.js';
import type { SheetView } from './workbook-view.js';

const names = columnWords.money;
const columns = {
  what: [names.what, 30],
  of: [names.of, 26],
  scheme: [names.scheme, 20],
  figures: [names.figures, 9],
  money: [names.money, 12, 4],
  atLeast: [names.atLeast, 10],
} as const satisfies Record<string, ColumnOf>;

export function viewMoneySheet(
  { money, summary }: Pick<Plan, 'money' | 'summary'>,
  major: (minor: number) => number,
): SheetView {
  const table = new SheetTable(sheetWords.money.name, columns, ['figures', 'money']);
  const exact = (minor: ExactMinor): number => major(minor.toNumber());
  const { used, standing, onWay, bought, estimated, really } = moneySheetWords;
  table.add({ what: used, money: exact(money.used) });
  table.add({ what: standing, money: exact(money.standing) });
  table.add({ what: onWay, money: exact(money.onWay) });
  for (const { month, shop, minor } of money.spent)
    table.add({ what: bought(month), of: shop, money: major(minor) });
  for (const { figure, scheme, figures, ...costs } of summary.money.finished) {
    const add = (what: string, { exactMinor, atLeast }: Amount): void => {
      const more = atLeast ? { atLeast: cellWords.atLeast } : {};
      table.add({ what, of: figure, scheme, figures, money: exact(exactMinor), ...more });
    };
    add(estimated, costs.estimated);
    add(really, costs.really);
  }
  return table.view();
}
