// Command line: what was found, and how each sheet was read. In: checked sheets. Out: lines of at most 80 letters.
import { wordColumnsRead } from '../report/words/word-read.js';
import type { CheckedSheets, DefaultUsed, SheetRead } from '../sheets/read-sheets.js';
import { showPlain } from './show-plain.js';

/** Of a line: room for the name of a sheet, and for what is said of it. */
const nameLetters = 12;
const saidLetters = 80 - nameLetters;

/**
 * By sheet: how much stands in it, its file and header row, each column (`Colour -> paint`), those left alone, and what blanks
 * were taken for.
 */
export function wordRead(
  { read, sheets }: Pick<CheckedSheets, 'read' | 'sheets'>,
  counts: ReadonlyMap<string, string>,
): string {
  const defaults = sheets?.defaults ?? [];
  const names = new Set(read.map(({ sheet }) => sheet));
  const lines = [...names].flatMap((name) => {
    const tables = read.filter(({ sheet }) => sheet === name);
    const count = counts.get(name);
    const said = [
      ...(count === undefined ? [] : [count]),
      ...tables.flatMap(wordTable),
      ...wordBlanks(defaults.filter(({ sheet }) => sheet === name)),
    ].flatMap(wrap);
    return said.map((line, at) => `${(at === 0 ? `  ${name}` : '').padEnd(nameLetters)}${showPlain(line)}\n`);
  });
  return lines.join('');
}

function wordTable(one: SheetRead): string[] {
  const { taken, alone } = wordColumnsRead(one, (header) => header);
  const none = one.columns.length === 0 ? 'nothing below its headers' : 'no column';
  const [first = none, ...others] = taken;
  return [
    [`${one.file}, row ${one.headerRow}: ${first}`, ...others].join(',\t'),
    ...(alone.length > 0 ? [`left alone: ${alone.join(',\t')}`] : []),
  ];
}

function wordBlanks(defaults: readonly DefaultUsed[]): string[] {
  const said = defaults.map(
    ({ column, rows, meaning }) => `${column}${rows > 1 ? ` (${rows})` : ''}: ${meaning}`,
  );
  return said.length === 0 ? [] : [`blank ${said.join('; ')}`];
}

/** Broken between the items of a list, which tabs part, or else between words. */
function wrap(text: string): string[] {
  const items = text.includes('\t') ? text.split('\t') : text.split(' ');
  const lines: string[] = [];
  for (const item of items) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + item.length <= saidLetters)
      lines.splice(-1, 1, `${last} ${item}`);
    else lines.push(item);
  }
  return lines;
}
