// Command line: rows about pots. In: checked sheets, flags. Out: cells of the log by header. Throws a UsageError for what the
// shelf contradicts.
import { holdsPaint, potsThere } from '../plan-army.js';
import type { TypedCells } from '../sheets/append/check-log-rows.js';
import { foldName } from '../sheets/check/fold-name.js';
import { completeName } from './complete-name.js';
import { UsageError } from './end-run.js';
import type { Sheets } from './read-or-show.js';
import { countOf } from './show-problems.js';

const typed = (cells: Readonly<Record<string, string | undefined>>): TypedCells =>
  new Map(Object.entries(cells).flatMap(([header, text]) => (text === undefined ? [] : [[header, text]])));

/** Throws where each row stands in the log already, since the day of the plan. */
export function tellBoughtBefore({ log }: Sheets, rows: readonly TypedCells[], planOf: string): void {
  const keyOf = (paint = '', sizeMl = '', pots = '', shop = ''): string =>
    JSON.stringify([foldName(paint), sizeMl.replace(',', '.'), pots, foldName(shop)]);
  const bought = new Map(
    log.flatMap(({ what, paint, sizeMl, pots = 1, shop, date }) =>
      what === 'bought' && date >= planOf ? [[keyOf(paint, String(sizeMl), String(pots), shop), date]] : [],
    ),
  );
  const days = rows.map((cells) =>
    bought.get(keyOf(cells.get('paint'), cells.get('size ml'), cells.get('pots'), cells.get('shop'))),
  );
  const [day] = days;
  if (day !== undefined && days.every((one) => one !== undefined))
    throw new UsageError(
      `All of it stands in the log as bought on ${day}. If you bought it once more, say --again.`,
    );
}

/** A row for each paint, size and shop of what is on its way. */
export function listArrived(sheets: Sheets, wanted: string | undefined): TypedCells[] {
  const coming = potsThere(sheets).filter(({ ordered }) => ordered);
  const shop =
    wanted === undefined
      ? undefined
      : completeName(
          wanted,
          coming.flatMap((pot) => pot.shop ?? []),
        );
  const meant = coming.filter((pot) => shop === undefined || foldName(pot.shop ?? '') === foldName(shop));
  if (meant.length === 0)
    throw new UsageError(
      `Nothing is on its way${shop === undefined ? '' : ` from ${shop}`}. Write halfpot bought first.`,
    );
  const counts = new Map<string, number>();
  for (const { paint, sizeMl, shop: from } of meant) {
    const key = JSON.stringify([paint, sizeMl, from]);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return [...counts].map(([key, pots]) => {
    const [paint, sizeMl, from] = JSON.parse(key) as [string, number, string | null];
    const cells = { paint, what: 'arrived', 'size ml': String(sizeMl), pots: String(pots) };
    return typed({ ...cells, shop: from ?? undefined });
  });
}

interface Count {
  readonly paint?: string;
  readonly left?: string;
  readonly size?: string;
  readonly pots?: string;
}

/** Where several pots stand there nobody could tell which one is meant, unless it is said how many there are. */
export function listCount(sheets: Sheets, { paint, left, size, pots }: Count): TypedCells {
  if (paint === undefined || (left === undefined && pots === undefined))
    throw new UsageError('What was counted? Give --paint and --left, such as 40%, 7.5 ml or 31.2 g.');
  const name = completeName(paint, sheets.paints.keys());
  const isMeant = (pot: ReturnType<typeof potsThere>[number]): boolean =>
    foldName(pot.paint) === foldName(name) && (size === undefined || pot.sizeMl === Number(size));
  const there = potsThere(sheets).filter((pot) => !pot.ordered && holdsPaint(pot) && isMeant(pot));
  if (there.length > 1 && pots === undefined)
    throw new UsageError(
      `There should be ${countOf(there.length, 'pot')} of ${name}. Say how many there are with --pots: --left is of the one in use, the others count as they were.`,
    );
  return typed({ paint: name, what: 'counted', left, 'size ml': size, pots });
}
