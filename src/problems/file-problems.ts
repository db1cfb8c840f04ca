// Problems: words for files, tables and headers as a whole.
import { error, warning } from './wording.js';

export const fileProblems = {
  'missing-path': error(
    'there is no such file or folder',
    'Name the folder that holds pots.csv, figures.csv, schemes.csv and army.csv, or a workbook with those sheets.',
  ),
  'unreadable-file': error(
    'this cannot be opened ({found})',
    'See that it is there, that you may read it, and that no other program holds it.',
  ),
  'folder-for-sheet': error(
    'this is a folder, where the {expected} sheet should be',
    'Give the folder another name, and save the sheet as {expected}.csv beside it.',
  ),
  'too-large-file': error(
    'this file is too large to read: {found}, where {expected} is the most',
    'Keep only the rows that matter, or name another file.',
  ),
  'empty-folder': error(
    'this folder is empty',
    'Put pots.csv, figures.csv, schemes.csv and army.csv into it, or name another folder.',
  ),
  'no-sheets': error(
    'none of the sheets is here',
    'At least pots, or figures, schemes and army are needed, each under that name.',
  ),
  'lone-sheet': error('this is one sheet by itself', 'Name the folder that holds all the sheets.'),
  'unknown-file-type': error(
    'a file of this type cannot be read ({found})',
    'Save it as a workbook (.xlsx or .ods), or save each sheet as CSV in one folder and name that folder.',
  ),
  'old-workbook': error(
    'this is a workbook in the old .xls format',
    'Open it in your spreadsheet program, save it as .xlsx and name that.',
  ),
  'locked-workbook': error(
    'this workbook is locked with a password',
    'Save a copy without one and name that.',
  ),
  'not-a-workbook': error(
    'this is not a workbook, whatever its name says',
    'Open it in the program that made it, save it as .xlsx and name that.',
  ),
  'broken-workbook': error(
    'this workbook is damaged and cannot be read',
    'Open it in your spreadsheet program, save a new copy as .xlsx and name that; if it does not open there either, go back to an older copy.',
  ),
  'csv-is-workbook': error(
    'this is a workbook, not a text file',
    'Open it in your spreadsheet program and save this sheet as CSV, or give the file the ending .xlsx and name that.',
  ),
  'csv-is-not-text': error(
    'this is not a text file',
    'Open it in the program that made it and save the sheet as CSV.',
  ),
  'missing-sheet': error(
    'this sheet is needed and is not there',
    'Add it, with at least these columns: {expected}.',
  ),
  'two-of-one-sheet': error(
    'the {expected} sheet is there more than once: {found}',
    'Keep one of them and rename or remove the rest.',
  ),
  'sheet-of-parts': warning(
    'the {expected} sheet was read from {found}',
    'Rename what is not meant to count, so that its name begins otherwise.',
  ),
  'part-beside-sheet': warning(
    'this was left alone, as the {expected} sheet is there under its own name',
    'If both are to count, name them by what they hold, such as {expected} 1 and {expected} 2.',
  ),
  'empty-sheet': error(
    'this sheet is empty',
    'Give it a header row with at least these columns: {expected}; and a row or more below it.',
  ),
  'empty-optional-sheet': warning('this sheet is empty and counts as not there', 'Fill it in, or remove it.'),
  'no-header-row': error(
    'this sheet has no header row, as its first row reads like data: {found}',
    'Put a row with the names of its columns above it, at least these: {expected}.',
  ),
  'headers-far-below': error(
    'the headers stand in row {found}, and are looked for in the first {expected} only',
    'Delete the rows above them.',
  ),
  'sheet-on-its-side': error(
    'this sheet is turned on its side, its headers below each other: {found}',
    'Copy all of it and paste it transposed, so that they stand in one row.',
  ),
  'sheet-of-sums': error(
    'this adds up another table, and lists no thing by itself',
    'Name the table that it was made from, or save that one instead.',
  ),
  'header-only': error('there is nothing below the header row', 'Write at least one row there.'),
  'duplicate-header': error(
    'this header is there twice, the first time as "{expected}" ({found})',
    'Keep one of the two columns, or give the other a name of its own.',
  ),
  'unclosed-quote': error(
    'the quotation mark before "{found}" is not closed in its row',
    'Close it after the last letter of the cell, or take it out.',
  ),
  'stray-quote': error(
    'the cell that starts with "{found}" goes on after its closing quotation mark',
    'Write a quotation mark inside a quoted cell twice, or take the quotation marks out.',
  ),
  'extra-cell': error(
    '"{found}" stands past the last header',
    'If a {expected} is part of a cell, put that cell in quotation marks; else give the column a header.',
  ),
  'merged-cells': error(
    'these cells are merged, so that only the first of them holds "{found}"',
    'Unmerge them and write the value in every cell that it is meant for.',
  ),
  'too-many-rows': error(
    'this sheet has {found} rows, more than a spreadsheet holds ({expected})',
    'Keep only the rows that matter.',
  ),
  'too-many-columns': error(
    'this sheet has {found} columns, more than a spreadsheet holds ({expected})',
    'See that the right character parts the columns.',
  ),
  'long-cell': error(
    'the cell that starts with "{found}" is longer than a spreadsheet holds ({expected} characters)',
    'See that its quotation marks are closed.',
  ),
  'near-file-name': warning(
    'this file was left alone, though its name is close to the {expected} sheet',
    'If it is meant to be that sheet, name it {found}.',
  ),
  'near-worksheet-name': warning(
    'the worksheet "{found}" was left alone, though its name is close to the {expected} sheet',
    'If it is meant to be that sheet, name it {expected}.',
  ),
  'sheet-of-other-type': warning(
    'this was left alone: in a folder, the {expected} sheet is read from a .csv, .tsv, .txt, .xlsx, .xlsm or .ods file',
    'Save the sheet as {expected}.csv, or put all sheets into one workbook and name that.',
  ),
  'log-of-csv-sheets': warning(
    'this was left alone, as it belongs to the CSV sheets beside it ({found}) and not to the workbook',
    'Give the workbook a folder of its own, and take its log there.',
  ),
  'log-of-something-else': warning(
    'this stands beside the workbook and was left alone, as it has no paint column',
    'If it is meant to be the log, give it one; else rename or move it.',
  ),
  'log-of-two-workbooks': warning(
    'this counts for each of the workbooks beside it: {found}',
    'Where they are different shelves or armies, give each a folder of its own.',
  ),
};
