// Armies: units in the log of a shelf. In: the shelf, the armies, whose each unit is. Out: the shelf, its rows about those units.
import { basename, resolve } from 'node:path';
import { unguardFormula } from '../append/guard-formula.js';
import { foldName } from '../check/fold-name.js';
import { changeTables, openTable, type Source, setColumn } from './source.js';

/** As a unit is called where its army has to be told too. */
export const nameOfArmy = (unit: string, army: string): string => `${unit} (${army})`;

const ofArmy = /^(.*\S)\s*\(([^()]+)\)$/;

interface Armies {
  readonly armies: readonly Source[];
  /** Army by the folded name of its unit. */
  readonly armyOf: ReadonlyMap<string, string>;
}

/** Each unit as it is called here; a row about an army that is not read here keeps what it says of the pot alone. */
export function nameShelfUnits(shelf: Source, beside: Armies): Source {
  // The unit last: the others go by it.
  return (['figures', 'step', 'unit'] as const).reduce(
    (changed, key) =>
      changeTables(changed, 'log', (table) => {
        const opened = openTable(table);
        if (opened.indexOf('unit') === -1 || opened.indexOf(key) === -1) return table;
        return setColumn(opened, key, (row) => {
          const written = opened.text(row, 'unit');
          const called = calledHere(written, beside);
          return called === written || (key !== 'unit' && called !== '') ? undefined : called;
        });
      }),
    shelf,
  );
}

/** '' for a unit of an army that is not read here; as written where it is none of the army that it names. */
function calledHere(written: string, { armies, armyOf }: Armies): string {
  const text = unguardFormula(written);
  const [, unit = '', army = ''] = ofArmy.exec(text) ?? [];
  if (unit === '' || armyOf.has(foldName(text))) return written;
  const meant = armies.filter(({ name, path }) =>
    [name, basename(resolve(path))].some((one) => foldName(one) === foldName(army)),
  );
  if (meant.length === 0) return '';
  const names = meant.map(({ name }) => name);
  if (names.includes(armyOf.get(foldName(unit)) ?? '')) return unit;
  const own = names.map((name) => nameOfArmy(unit, name)).filter((name) => armyOf.has(foldName(name)));
  return own.length === 1 ? (own[0] ?? written) : written;
}
