// Readers: a first row that is no header row. In: its cells, the sheet. Out: whether it reads like a row of data.
import type { SheetName } from '../../model/words.js';
import { parts } from '../../model/zones.js';
import { choicesOf } from '../columns/column.js';
import { columns } from '../columns/columns.js';
import { settingNames } from '../columns/setting-rows.js';
import { nameKey } from '../match-header.js';
import { columnMeant } from '../spell-headers.js';
import type { Cell, Headed } from '../table.js';
import { headerText } from './find-header-row.js';

/** A number with at most a sign of money, a share or a unit; a day; sides such as 25x50; a colour. */
const measure =
  /^(?:[\p{Sc}+-]? ?\d[\d.,' ]* ?(?:%|\p{Sc}|\p{L}{1,3}2?)?|\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}|\d+(?:[xX]\d+)+|#[\da-fA-F]{6})$/u;

/** Longer cells are neither a measure nor a word to choose. */
const longest = 40;

/**
 * Whether a row in which no header is known holds a number, a day or a word that only a row of data has: `first spears,
 * spearman, 20`. Headers in another language (`Farbe, Inhalt`) do not read so. One plain word behind the first cell may be
 * the painter's, though some header is called so too: `brick red, paint, 17`. A word with a measure under some text of its row
 * is a header: `Colour, Inhalt` over `brick red, 17`.
 */
export function readsAsData(
  cells: readonly Cell[],
  { sheet, called }: Headed,
  below: readonly { readonly cells: readonly Cell[] }[] = [],
): boolean {
  const texts = cells.map(headerText).map((text) => text.trim());
  const [first, more] = texts.filter((text) => columnMeant({ sheet, called }, text) !== undefined);
  if (first !== undefined && (more !== undefined || first === texts[0] || !isWord(first))) return false;
  if (texts.some(isMeasure) || (sheet === 'zones' && texts.some(startsWithPart))) return true;
  const words = wordsOf(sheet);
  // The values of settings are of every kind, one below the other.
  const isOver = (text: string, at: number): boolean =>
    text !== '' &&
    sheet !== 'settings' &&
    below.slice(0, fewRows).some((row) => isMeasure(headerText(row.cells[at] ?? '')));
  return texts.some((text) => text.length <= longest && words.has(nameKey(text))) && !texts.some(isOver);
}

const fewRows = 5;

const isMeasure = (text: string): boolean => text.length <= longest && measure.test(text);

const isWord = (text: string): boolean => /^\p{L}+$/u.test(text);

/** Choices of the sheet, and names of settings. */
function wordsOf(sheet: SheetName): ReadonlySet<string> {
  const settings = sheet === 'settings' ? settingNames : [];
  return new Set([...columns[sheet].flatMap(choicesOf), ...settings].map(nameKey));
}

/** `front trunk, back trunk`, `head 50%`. */
function startsWithPart(text: string): boolean {
  const piece = text.slice(0, longest + 1).split(/[,;]/, 1)[0] ?? '';
  const first = nameKey(piece.length > longest ? '' : piece.replace(/[\d.]+ ?%$/, ''));
  return parts.some((part) => nameKey(part) === first);
}
