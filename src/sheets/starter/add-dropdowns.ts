// Starter: dropdowns of a worksheet. In: the worksheet and its columns. Out: nothing; the worksheet then offers choices.
import type { DataValidation, Worksheet } from 'exceljs';
import type { SheetName } from '../../model/words.js';
import { choicesOf } from '../columns/column.js';
import { wordBlank } from '../columns/columns.js';
import type { StarterSheet } from './list-starter-sheets.js';

/** Rows that have dropdowns: enough for a large army, few enough to open fast. */
const lastRow = 1000;

/** exceljs keeps validations of whole ranges here; its types know those of single cells only. */
interface WithRanges {
  readonly dataValidations: { add(range: string, validation: DataValidation): void };
}

/** Words of a closed list are held to it; names of other sheets are only offered, since new ones may come. */
export function addDropdowns(sheet: Worksheet, { columns }: StarterSheet): void {
  const { dataValidations } = sheet as unknown as WithRanges;
  for (const [at, column] of columns.entries()) {
    const letter = sheet.getColumn(at + 1).letter;
    const choices = choicesOf(column);
    const range = `${letter}2:${letter}${lastRow}`;
    if (choices.length > 0) dataValidations.add(range, closedList(choices, wordBlank(column)));
    else if (column.from !== undefined) dataValidations.add(range, openList(column.from));
  }
}

/** A list written out may take 255 characters; ours stay far below. */
function closedList(choices: readonly string[], says: string): DataValidation {
  return {
    type: 'list',
    allowBlank: true,
    formulae: [`"${choices.join(',')}"`],
    showErrorMessage: true,
    errorStyle: 'stop',
    errorTitle: 'Not a choice',
    error: says,
  };
}

function openList(other: SheetName): DataValidation {
  return {
    type: 'list',
    allowBlank: true,
    formulae: [`${other}!$A$2:$A$${lastRow}`],
    showErrorMessage: false,
  };
}
