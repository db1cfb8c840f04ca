// Problems: words for files, tables and headers as a whole.
import type { Wording } from './wording.js';

export const fileProblems = {
  'missing-path': {
    severity: 'error',
    says: 'there is no such file or folder',
    hint: 'Name the folder that holds pots.csv, figures.csv, schemes.csv and army.csv, or a workbook with those sheets.',
  },
  'unreadable-file': {
    severity: 'error',
    says: 'this cannot be opened ({found})',
    hint: 'See that it is there, that you may read it, and that no other program holds it.',
  },
  'folder-for-sheet': {
    severity: 'error',
    says: 'this is a folder, where the {expected} sheet should be',
    hint: 'Give the folder another name, and save the sheet as {expected}.csv beside it.',
  },
  'too-large-file': {
    severity: 'error',
    says: 'this file is too large to read: {found}, where {expected} is the most',
    hint: 'Keep only the rows that matter, or name another file.',
  },
  'empty-folder': {
    severity: 'error',
    says: 'this folder is empty',
    hint: 'Put pots.csv, figures.csv, schemes.csv and army.csv into it, or name another folder.',
  },
  'no-sheets': {
    severity: 'error',
    says: 'none of the sheets is here',
    hint: 'At least pots, or figures, schemes and army are needed, each under that name.',
  },
  'lone-sheet': {
    severity: 'error',
    says: 'this is one sheet by itself',
    hint: 'Name the folder that holds all the sheets.',
  },
  'unknown-file-type': {
    severity: 'error',
    says: 'a file of this type cannot be read ({found})',
    hint: 'Save it as a workbook (.xlsx or .ods), or save each sheet as CSV in one folder and name that folder.',
  },
  'old-workbook': {
    severity: 'error',
    says: 'this is a workbook in the old .xls format',
    hint: 'Open it in your spreadsheet program, save it as .xlsx and name that.',
  },
  'locked-workbook': {
    severity: 'error',
    says: 'this workbook is locked with a password',
    hint: 'Save a copy without one and name that.',
  },
  'not-a-workbook': {
    severity: 'error',
    says: 'this is not a workbook, whatever its name says',
    hint: 'Open it in the program that made it, save it as .xlsx and name that.',
  },
  'broken-workbook': {
    severity: 'error',
    says: 'this workbook is damaged and cannot be read',
    hint: 'Open it in your spreadsheet program, save a new copy as .xlsx and name that; if it does not open there either, go back to an older copy.',
  },
  'csv-is-workbook': {
    severity: 'error',
    says: 'this is a workbook, not a text file',
    hint: 'Open it in your spreadsheet program and save this sheet as CSV, or give the file the ending .xlsx and name that.',
  },
  'csv-is-not-text': {
    severity: 'error',
    says: 'this is not a text file',
    hint: 'Open it in the program that made it and save the sheet as CSV.',
  },
  'missing-sheet': {
    severity: 'error',
    says: 'this sheet is needed and is not there',
    hint: 'Add it, with at least these columns: {expected}.',
  },
  'two-of-one-sheet': {
    severity: 'error',
    says: 'the {expected} sheet is there more than once: {found}',
    hint: 'Keep one of them and rename or remove the rest.',
  },
  'sheet-of-parts': {
    severity: 'warning',
    says: 'the {expected} sheet was read from {found}',
    hint: 'Rename what is not meant to count, so that its name begins otherwise.',
  },
  'part-beside-sheet': {
    severity: 'warning',
    says: 'this was left alone, as the {expected} sheet is there under its own name',
    hint: 'If both are to count, name them by what they hold, such as {expected} 1 and {expected} 2.',
  },
  'empty-sheet': {
    severity: 'error',
    says: 'this sheet is empty',
    hint: 'Give it a header row with at least these columns: {expected}; and a row or more below it.',
  },
  'empty-optional-sheet': {
    severity: 'warning',
    says: 'this sheet is empty and counts as not there',
    hint: 'Fill it in, or remove it.',
  },
  'no-header-row': {
    severity: 'error',
    says: 'this sheet has no header row, as its first row reads like data: {found}',
    hint: 'Put a row with the names of its columns above it, at least these: {expected}.',
  },
  'headers-far-below': {
    severity: 'error',
    says: 'the headers stand in row {found}, and are looked for in the first {expected} only',
    hint: 'Delete the rows above them.',
  },
  'sheet-on-its-side': {
    severity: 'error',
    says: 'this sheet is turned on its side, its headers below each other: {found}',
    hint: 'Copy all of it and paste it transposed, so that they stand in one row.',
  },
  'sheet-of-sums': {
    severity: 'error',
    says: 'this adds up another table, and lists no thing by itself',
    hint: 'Name the table that it was made from, or save that one instead.',
  },
  'header-only': {
    severity: 'error',
    says: 'there is nothing below the header row',
    hint: 'Write at least one row there.',
  },
  'duplicate-header': {
    severity: 'error',
    says: 'this header is there twice, the first time as "{expected}" ({found})',
    hint: 'Keep one of the two columns, or give the other a name of its own.',
  },
  'unclosed-quote': {
    severity: 'error',
    says: 'the quotation mark before "{found}" is not closed in its row',
    hint: 'Close it after the last letter of the cell, or take it out.',
  },
  'stray-quote': {
    severity: 'error',
    says: 'the cell that starts with "{found}" goes on after its closing quotation mark',
    hint: 'Write a quotation mark inside a quoted cell twice, or take the quotation marks out.',
  },
  'extra-cell': {
    severity: 'error',
    says: '"{found}" stands past the last header',
    hint: 'If a {expected} is part of a cell, put that cell in quotation marks; else give the column a header.',
  },
  'merged-cells': {
    severity: 'error',
    says: 'these cells are merged, so that only the first of them holds "{found}"',
    hint: 'Unmerge them and write the value in every cell that it is meant for.',
  },
  'too-many-rows': {
    severity: 'error',
    says: 'this sheet has {found} rows, more than a spreadsheet holds ({expected})',
    hint: 'Keep only the rows that matter.',
  },
  'too-many-columns': {
    severity: 'error',
    says: 'this sheet has {found} columns, more than a spreadsheet holds ({expected})',
    hint: 'See that the right character parts the columns.',
  },
  'long-cell': {
    severity: 'error',
    says: 'the cell that starts with "{found}" is longer than a spreadsheet holds ({expected} characters)',
    hint: 'See that its quotation marks are closed.',
  },
  'near-file-name': {
    severity: 'warning',
    says: 'this file was left alone, though its name is close to the {expected} sheet',
    hint: 'If it is meant to be that sheet, name it {found}.',
  },
  'near-worksheet-name': {
    severity: 'warning',
    says: 'the worksheet "{found}" was left alone, though its name is close to the {expected} sheet',
    hint: 'If it is meant to be that sheet, name it {expected}.',
  },
  'sheet-of-other-type': {
    severity: 'warning',
    says: 'this was left alone: in a folder, the {expected} sheet is read from a .csv, .tsv, .txt, .xlsx, .xlsm or .ods file',
    hint: 'Save the sheet as {expected}.csv, or put all sheets into one workbook and name that.',
  },
  'log-of-csv-sheets': {
    severity: 'warning',
    says: 'this was left alone, as it belongs to the CSV sheets beside it ({found}) and not to the workbook',
    hint: 'Give the workbook a folder of its own, and take its log there.',
  },
  'log-of-something-else': {
    severity: 'warning',
    says: 'this stands beside the workbook and was left alone, as it has no paint column',
    hint: 'If it is meant to be the log, give it one; else rename or move it.',
  },
  'log-of-two-workbooks': {
    severity: 'warning',
    says: 'this counts for each of the workbooks beside it: {found}',
    hint: 'Where they are different shelves or armies, give each a folder of its own.',
  },
} as const satisfies Record<string, Wording>;
