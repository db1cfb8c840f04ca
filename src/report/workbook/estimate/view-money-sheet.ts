// Report view: the workbook's money so far. In: the plan. Out: the sheet, plain numbers.
import type { Amount, ExactMinor } from '../../../model/money.js';
import type { Plan } from '../../../model/plan.js';
import { SheetTable } from './sheet-table.js';
import { sheetWords } from './sheet-words.js';
import { cellWords, moneySheetWords } from './words.js';
import type { SheetView } from './workbook-view.js';

export function viewMoneySheet(
  { money, summary }: Pick<Plan, 'money' | 'summary'>,
  major: (minor: number) => number,
): SheetView {
  const table = new SheetTable(sheetWords.money);
  const exact = (minor: ExactMinor): number => major(minor.toNumber());
  const { used, standing, onWay, bought, estimated, really } = moneySheetWords;
  table.add({ what: used, money: exact(money.used) });
  table.add({ what: standing, money: exact(money.standing) });
  table.add({ what: onWay, money: exact(money.onWay) });
  for (const { month, shop, minor } of money.spent)
    table.add({ what: bought(month), of: shop, money: major(minor) });
  for (const { figure, scheme, figures, ...costs } of summary.money.finished) {
    const add = (what: string, { exactMinor, atLeast }: Amount): void => {
      const more = atLeast ? cellWords.atLeast : undefined;
      table.add({ what, of: figure, scheme, figures, money: exact(exactMinor), atLeast: more });
    };
    add(estimated, costs.estimated);
    add(really, costs.really);
  }
  return table.view();
}
