// Armies: units of one name in two armies bear their army's name too. In: sources. Out: sources, whose each unit is, problems.
import { problem } from '../../problems/catalogue.js';
import { foldName } from '../check/fold-name.js';
import type { FoundProblem } from '../read/grid.js';
import { nameOfArmy, nameShelfUnits } from './name-shelf-units.js';
import { changeTables, openTable, placeAt, type Source, setColumn } from './source.js';

export interface UnitsApart {
  readonly sources: readonly Source[];
  /** Army by the folded name of its unit. */
  readonly armyOf: ReadonlyMap<string, string>;
  readonly problems: readonly FoundProblem[];
}

/** Swaps and log rows of an army follow its units; one on the shelf may name its army in any case. */
export function keepUnitsApart(sources: readonly Source[]): UnitsApart {
  const firstOf = new Map<string, string>();
  const shared = new Set<string>();
  const problems: FoundProblem[] = [];
  for (const { name, read } of sources) {
    for (const table of read.tables.filter(({ sheet }) => sheet === 'army')) {
      const opened = openTable(table);
      for (const row of opened.table.rows) {
        const unit = opened.text(row, 'unit');
        const key = foldName(unit);
        const first = firstOf.get(key) ?? name;
        firstOf.set(key, first);
        if (unit === '' || first === name || shared.has(key)) continue;
        shared.add(key);
        const details = { found: unit, expected: first };
        problems.push(problem('unit-of-two-armies', placeAt(opened, row, 'unit'), details));
      }
    }
  }
  const armyOf = new Map<string, string>();
  const apart = sources.map((source) => nameUnits(source, { shared, armyOf }));
  const armies = apart.filter(({ isShelf }) => !isShelf);
  const named = apart.map((one) => (one.isShelf ? nameShelfUnits(one, { armies, armyOf }) : one));
  return { sources: named, armyOf, problems };
}

function nameUnits(
  source: Source,
  { shared, armyOf }: { readonly shared: ReadonlySet<string>; readonly armyOf: Map<string, string> },
): Source {
  const { name, isShelf } = source;
  if (isShelf) return source;
  const called = (unit: string): string => (shared.has(foldName(unit)) ? nameOfArmy(unit, name) : unit);
  return (['army', 'swaps', 'log'] as const).reduce(
    (changed, sheet) =>
      changeTables(changed, sheet, (table) => {
        const opened = openTable(table);
        if (opened.indexOf('unit') === -1) return table;
        return setColumn(opened, 'unit', (row) => {
          const unit = opened.text(row, 'unit');
          if (sheet === 'army' && unit !== '') armyOf.set(foldName(called(unit)), name);
          return shared.has(foldName(unit)) ? called(unit) : undefined;
        });
      }),
    source,
  );
}
