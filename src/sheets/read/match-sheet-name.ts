// Readers: which sheet a file or worksheet is, by its name. In: a name without its ending. Out: the sheet, or
// a near one.
import { type SheetName, sheetNames } from '../../model/words.js';
import { lettersBetween } from '../check/find-nearest.js';
import { sheetWords } from '../columns/columns.js';
import { headerKey, nameKey } from '../match-header.js';

/** By the key of each of its names. */
const named: ReadonlyMap<string, SheetName> = new Map([
  ...sheetNames.flatMap((sheet) =>
    sheetWords[sheet].split(', ').map((word) => [headerKey(word), sheet] as const),
  ),
  ...sheetNames.map((sheet) => [sheet, sheet] as const),
]);

/** `my paints` are those that stand on the shelf. */
const mine = /^(?:my|our|meine|unsere|mes|nos|mis|i miei|le mie|mijn|onze|moje|nasze)[\s_-]+/i;
const longest = 60;

/**
 * The sheet of that name, or of one that it usually has; case, accents, blanks, hyphens and underscores do not count.
 * Undefined for any other name.
 */
export function matchSheetName(name: string): SheetName | undefined {
  if (name.length > longest) return undefined;
  const sheet = named.get(headerKey(name));
  if (sheet !== undefined || !mine.test(name)) return sheet;
  const owned = named.get(headerKey(name.replace(mine, '')));
  return owned === 'paints' ? 'pots' : owned;
}

/** Of these there is one: a log is written to, and settings hold for all. */
const undivided: readonly SheetName[] = ['log', 'settings'];

/** What is called so is hardly meant to count beside the rest. */
const setAside: ReadonlySet<string> = new Set(
  (
    'old backup copy template example sample test archive note notes wish wishes wishlist wanted want buy order orders shopping ' +
    'sold alt alte kopie vorlage beispiel notiz notizen wunsch wunschliste kaufen bestellen verkauft archiv vieux copie modèle exemple souhaits ' +
    'acheter vendu viejo copia ejemplo notas deseos comprar vendido vecchio esempio desideri comprare venduto oud ' +
    'voorbeeld notities wens kopen verkocht stare kopia wzór przykład notatki zakupy kupić sprzedane'
  )
    .split(' ')
    .map(headerKey),
);

const wordsOf = (name: string): readonly string[] =>
  name.split(/[\s_\-\u2013.,()]+/).filter((word) => word !== '');

/** Whether a name has such a word: `Wishlist`, `pots (old)`. */
export const isSetAside = (name: string): boolean =>
  wordsOf(name).some((word) => setAside.has(headerKey(word)));

/** The sheet of which a name tells a part: `pots attic`, `Kiste 2`. Undefined for a name of a whole sheet. */
export function matchSheetPart(name: string): SheetName | undefined {
  if (name.length > longest || matchSheetName(name) !== undefined) return undefined;
  const words = wordsOf(name);
  for (let count = words.length - 1; count > 0; count -= 1) {
    const sheet = matchSheetName(words.slice(0, count).join(' '));
    if (sheet === undefined) continue;
    const isMeant = !isSetAside(words.slice(count).join(' ')) && !undivided.includes(sheet);
    return isMeant ? sheet : undefined;
  }
  return undefined;
}

/** Twice the longest name of a sheet; nothing longer is near one. */
const LONGEST = 16;

/**
 * The sheet whose name is one letter away, or two neighbours swapped, or two letters where the name has six
 * or more; with shorter ones `notes` would pass for `zones`. Undefined for a sheet's own name and where none
 * is near.
 */
export function nearSheetName(name: string): SheetName | undefined {
  const key = nameKey(name);
  if (key.length > LONGEST || (matchSheetName(name) ?? matchSheetPart(name)) !== undefined) return undefined;
  const ranked = sheetNames
    .map((sheet) => ({ sheet, letters: lettersBetween(key, sheet) }))
    .filter(({ sheet, letters }) => letters <= (sheet.length >= 6 ? 2 : 1))
    .sort((a, b) => a.letters - b.letters);
  return ranked[0]?.sheet;
}
