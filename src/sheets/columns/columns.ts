// Columns: every column of every sheet: its header, how its cells are read, what it says to a newcomer, what a blank means.
// In: nothing. Out: the one table that reading, checks, starter sheets, how-to and README all take them from.
import { armySheets, type SheetName } from '../../model/words.js';
import { army, figures, zones } from './army-columns.js';
import { type Column, type Columns, choicesOf } from './column.js';
import { headers } from './header-columns.js';
import { log, settings } from './log-columns.js';
import { extras, offers, shops } from './market-columns.js';
import { schemes, swaps } from './scheme-columns.js';
import { paints, pots } from './shelf-columns.js';

/** By sheet, and by the key of a row's value. */
export const tables = {
  pots,
  paints,
  offers,
  shops,
  figures,
  zones,
  schemes,
  swaps,
  army,
  extras,
  log,
  settings,
  columns: headers,
} satisfies Record<SheetName, Columns>;

export type Tables = typeof tables;

const listed = Object.entries(tables).map(([sheet, of]) => [sheet, Object.values<Column>(of)] as const);

/** The same as lists. */
export const columns = Object.fromEntries(listed) as unknown as Readonly<
  Record<SheetName, readonly Column[]>
>;

/** What a sheet is for, in one line. */
export const purposes: Readonly<Record<SheetName, string>> = {
  pots: 'what stands on your shelf, a row for pots alike',
  paints: 'what the paints are like: colour, kind, other names',
  offers: 'what shops sell, one row for each kind of pot in an offer',
  shops: 'what each shop asks for postage',
  figures: 'the sculpts of your army, one row each',
  zones: 'your own names for groups of parts',
  schemes: 'the steps in which a figure is painted, one row each',
  swaps: 'what you use instead of a paint of the schemes',
  army: 'your units, one row each',
  extras: 'what else is used up: brushes, flock, sand, thinner',
  log: 'what you used, bought and counted: moves the pots, counts as progress, corrects the estimate',
  settings: 'currency, date and your own values',
  columns: 'which of your headers means which column, where that is not plain',
};

/** What else painters call a sheet, parted by commas; colours are called so where their pots are listed. */
export const sheetWords: Readonly<Record<SheetName, string>> = {
  pots: 'colours, colors, paint list, paint shelf, box, paint box, Kiste, Farbkiste, boîte, caja, scatola, doos, pudełko, Farben, Farbliste, Töpfe, peintures, couleurs, pinturas, botes, colori, vernici, verf, verven, potjes, farby, słoiki',
  paints: 'paint data, Farbdaten',
  offers: 'price list, prices, Angebote, Preise, Preisliste, offres, ofertas, offerte, aanbiedingen, oferty',
  shops: 'stores, Händler, Läden, boutiques, magasins, tiendas, negozi, winkels, sklepy',
  figures:
    'models, miniatures, minis, Figuren, Modelle, Miniaturen, figurines, modèles, figuras, modelos, miniaturas, modelli, miniature, figurki, modele',
  zones: 'Zonen, Bereiche, zonas, strefy',
  schemes:
    'colour schemes, color schemes, recipes, Schemata, Schemas, Farbschemata, Rezepte, schémas, recettes, esquemas, recetas, schemi, ricette, recepten, schematy, przepisy',
  swaps: 'substitutes, Ersatz, remplacements, sustituciones, sostituzioni, vervangingen, zamiany',
  army: 'units, Armee, Einheiten, armée, unités, ejército, unidades, esercito, leger, eenheden, armia, oddziały',
  extras:
    'consumables, Verbrauchsmaterial, consommables, consumibles, materiale di consumo, verbruiksmateriaal, materiały',
  log: 'diary, Logbuch, Tagebuch, journal, registro, diario, logboek, dziennik',
  settings: 'Einstellungen, réglages, ajustes, impostazioni, instellingen, ustawienia',
  columns: 'Spalten, colonnes, columnas, colonne, kolommen, kolumny',
};

/** What goes into a column, and what a blank means. */
export const wordBlank = ({ says, blank }: Column): string =>
  blank === undefined ? says : `${says} Blank: ${blank.means}.`;

/** The same with the words that it knows. */
export function wordColumn(column: Column): string {
  const choices = choicesOf(column);
  return choices.length === 0 ? wordBlank(column) : `${wordBlank(column)} One of: ${choices.join(', ')}.`;
}

/** Whether no army can be planned without a sheet. */
export const isNeeded = (sheet: SheetName): boolean => armySheets.some((one) => one === sheet);

/** What a sheet is for, as a sentence, and whether an army needs it. */
export function wordSheet(sheet: SheetName): string {
  const [first = '', ...rest] = purposes[sheet];
  return `${first.toUpperCase()}${rest.join('')}.${isNeeded(sheet) ? ' Needed for an army.' : ''}`;
}
