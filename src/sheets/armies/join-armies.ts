// Armies: sheets of several armies and of their shelf as if they were one. In: what was read of each. Out: tables that are
// checked at once, and whose each unit is.
import type { Sheets } from '../../model/sheets.js';
import { problem } from '../../problems/catalogue.js';
import { foldName } from '../check/fold-name.js';
import type { FoundProblem } from '../read/grid.js';
import type { ReadTables, Table } from '../table.js';
import { dropRepeats } from './drop-repeats.js';
import { fillSchemes } from './fill-schemes.js';
import { keepUnitsApart, type UnitsApart } from './keep-units-apart.js';
import { changeTables, fileIn, type OpenedTable, openTable, type Source } from './source.js';

export interface JoinedArmies extends Pick<UnitsApart, 'armyOf'> {
  readonly read: ReadTables;
  /** Each with all of its tables. */
  readonly sources: readonly Source[];
}

/** Files bear the name of where they stand. */
export function joinArmies(given: readonly Source[]): JoinedArmies {
  const problems: FoundProblem[] = [];
  const named = given.map(nameFiles).map((source) => (source.isShelf ? onlyShelf(source, problems) : source));
  const apart = keepUnitsApart(fillSchemes(named));
  const { sources, problems: differing } = dropRepeats(apart.sources);
  problems.push(...apart.problems, ...differing, ...sources.flatMap(({ read }) => read.problems));
  const tables = sources.flatMap(({ read }) => read.tables);
  return { read: { tables, problems }, sources: apart.sources, armyOf: apart.armyOf };
}

function nameFiles({ read, ...source }: Source): Source {
  const { name } = source;
  const inside = <T extends { readonly file: string }>(one: T): T => ({
    ...one,
    file: fileIn(name, one.file),
  });
  return { ...source, read: { tables: read.tables.map(inside), problems: read.problems.map(inside) } };
}

type Row = Table['rows'][number];

/** A shelf needs no sheet for certain, and has no army; where it has one that is told, and what names its units goes with it. */
function onlyShelf(source: Source, problems: FoundProblem[]): Source {
  const { read } = source;
  const armies = read.tables.filter(({ sheet }) => sheet === 'army').map(openTable);
  for (const { table } of armies.slice(0, 1))
    problems.push(problem('army-on-shelf', { file: table.file, sheet: 'army' }));
  const unitOf = ({ text }: OpenedTable, row: Row): string => foldName(text(row, 'unit'));
  const units = new Set(armies.flatMap((army) => army.table.rows.map((row) => unitOf(army, row))));
  units.delete('');
  const kept = read.problems.filter(({ code }) => code !== 'missing-sheet');
  return (['army', 'swaps', 'log'] as const).reduce<Source>(
    (changed, sheet) =>
      changeTables(changed, sheet, (written) => {
        const opened = openTable(written);
        const isOther = (row: Row): boolean => sheet !== 'army' && !units.has(unitOf(opened, row));
        const rows = opened.table.rows.filter(isOther);
        return rows.length === written.rows.length ? written : { ...opened.table, rows };
      }),
    { ...source, read: { ...read, problems: kept } },
  );
}

/** The armies one after the other, the units of each by their own priority. */
export function rankArmies(sheets: Sheets, armyOf: JoinedArmies['armyOf'], names: readonly string[]): Sheets {
  const rank = new Map(names.map((name, at) => [name, at]));
  const army = sheets.army.map((unit) => {
    const name = armyOf.get(foldName(unit.unit));
    return name === undefined ? unit : { ...unit, army: name };
  });
  const rankOf = (name: string | undefined): number => rank.get(name ?? '') ?? names.length;
  const order = army.toSorted(
    (a, b) => rankOf(a.army) - rankOf(b.army) || a.priority - b.priority || a.row - b.row,
  );
  const places = new Map(order.map((unit, at) => [unit, at + 1]));
  return { ...sheets, army: army.map((unit) => ({ ...unit, priority: places.get(unit) ?? unit.priority })) };
}
