// Bench: the workbook library's reader as a program. In: a workbook. Out: all of it read, and how many units there are.
// Without a workbook: what loading the library takes.
import { argv } from 'node:process';
import exceljs from 'exceljs';

const [path] = argv.slice(2);
if (path !== undefined) {
  const workbook = new exceljs.Workbook();
  await workbook.xlsx.readFile(path);
  console.log((workbook.getWorksheet('army')?.rowCount ?? 0) - 1);
}
