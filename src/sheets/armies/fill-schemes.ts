// Armies: a blank scheme means the only one of its own army. In: sources. Out: sources with such blanks filled.
import { foldName } from '../check/fold-name.js';
import { changeTables, openTable, type Source, setColumn } from './source.js';

/** Where all armies have one and the same, blanks stay as they are. */
export function fillSchemes(sources: readonly Source[]): readonly Source[] {
  const schemesOf = new Map(sources.map((source) => [source, listSchemes(source)]));
  const all = new Set([...schemesOf.values()].flatMap((schemes) => [...schemes.keys()]));
  return all.size < 2
    ? sources
    : sources.map((source) => fillOnly(source, schemesOf.get(source) ?? new Map()));
}

/** As written, by folded name. */
function listSchemes({ read }: Source): ReadonlyMap<string, string> {
  const schemes = new Map<string, string>();
  for (const table of read.tables.filter(({ sheet }) => sheet === 'schemes')) {
    const { table: filled, text } = openTable(table);
    for (const row of filled.rows) schemes.set(foldName(text(row, 'scheme')), text(row, 'scheme'));
  }
  schemes.delete('');
  return schemes;
}

function fillOnly(source: Source, schemes: ReadonlyMap<string, string>): Source {
  const [only] = schemes.values();
  if (schemes.size !== 1) return source;
  return changeTables(source, 'army', (table) => {
    const opened = openTable(table);
    const isBlank = table.rows.some((row) => opened.text(row, 'scheme') === '');
    if (!isBlank) return table;
    return setColumn(opened, 'scheme', (row) => (opened.text(row, 'scheme') === '' ? only : undefined));
  });
}
