// Bench: our reader as a program. In: a workbook. Out: all of it read and checked, and how many units there are. Without a
// workbook: what loading the reader takes.
import { argv } from 'node:process';
import { readSheets } from '../../dist/program/library.js';

const [workbook] = argv.slice(2);
if (workbook !== undefined) {
  const { sheets, problems } = await readSheets(workbook, '2026-03-14');
  if (sheets === undefined) throw new Error(`the workbook has ${problems.length} problems`);
  console.log(sheets.army.length);
}
