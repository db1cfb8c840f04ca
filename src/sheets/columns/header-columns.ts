// Columns: what the painter's own headers mean. In: nothing. Out: the columns of the columns sheet.
import { sheetNames } from '../../model/words.js';
import { choiceKind } from '../check/read-cell/read-choice.js';
import { nameKind } from '../check/read-cell/read-name.js';
import { free, needed } from './column.js';

const others = sheetNames.filter((sheet) => sheet !== 'columns');

export const headers = {
  sheet: needed('sheet', choiceKind('a sheet', others), {
    says: 'The sheet in which the header stands.',
    called: 'Blatt, feuille, hoja, foglio, blad, arkusz',
    example: 'pots',
  }),
  column: free('column', nameKind, {
    says: 'The column of that sheet that it means; a row with a question mark behind it is passed over.',
    blank: { means: 'none, it is a column of your own' },
    called: 'Spalte, colonne, columna, colonna, kolom, kolumna',
    example: 'left',
  }),
  called: needed('called', nameKind, {
    says: 'The header as you wrote it.',
    called: 'header, Überschrift, en-tête, encabezado, intestazione, kop, nagłówek',
    example: 'In the pot',
  }),
};
