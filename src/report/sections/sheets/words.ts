// Sheets: its English. In: how a sheet was read. Out: text.
import type { SheetRead } from '../../../model/sheets.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';

const labels = {
  settle: 'What is not right here, settle in a columns sheet; halfpot check --write-columns begins one.',
  sheet: 'Sheet',
  where: 'Header row',
  taken: 'Columns',
  alone: 'Left alone',
};

export const sheetsWords = (say: NumberWords) => ({
  labels,
  fold: (sheets: number) => `${countOf(say, sheets, 'table')}, column by column`,
  where: ({ file, headerRow }: SheetRead) => `${nameOf(file)}, row ${say.count(headerRow)}`,
});

export type SheetsWords = ReturnType<typeof sheetsWords>;
