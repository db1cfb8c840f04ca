// Sample: writes each folder of sample-data as the workbook of its name. In: CSV sheets. Out: the same sheets with
// typed cells: numbers, percents, dates, and one formula with its stored result. Run by `npm run sample-workbook`.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ExcelJS from 'exceljs';
import Papa from 'papaparse';

const root = fileURLToPath(new URL('../../sample-data/', import.meta.url));
/** Columns whose digits are a name, not a number. */
const textColumns = new Set(['code']);
/** As the tabs stand, left to right. */
const sheetOrder = 'pots paints offers shops figures zones schemes army extras log settings'.split(' ');
/** A fixed day, so that a rebuilt workbook differs only where the sheets do. */
const builtOn = new Date('2026-11-02T00:00:00Z');

/** One cell of a CSV sheet as a spreadsheet would hold it. */
function typedCell(header, text) {
  if (text === '') return { value: null };
  if (textColumns.has(header)) return { value: text, numFmt: '@' };
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return { value: new Date(`${text}T00:00:00Z`), numFmt: 'yyyy-mm-dd' };
  if (/^\d+(\.\d+)?%$/.test(text)) return { value: Number.parseFloat(text) / 100, numFmt: '0%' };
  if (/^\d+(\.\d+)?$/.test(text))
    return { value: Number(text), numFmt: header === 'price' ? '0.00' : 'General' };
  return { value: text };
}

/** The otters are counted by bases: four of three. */
function asFormula(sheet, header, row) {
  return sheet === 'army' && header === 'count' && row.unit === 'Otter Packs'
    ? { formula: '4*3', result: Number(row.count) }
    : undefined;
}

function addSheet(workbook, name, csv) {
  const { data, meta } = Papa.parse(csv, { header: true, skipEmptyLines: true });
  const sheet = workbook.addWorksheet(name, { views: [{ state: 'frozen', ySplit: 1 }] });
  sheet.addRow(meta.fields).font = { bold: true };
  for (const row of data) {
    const added = sheet.addRow([]);
    meta.fields.forEach((header, index) => {
      const { value, numFmt } = typedCell(header, row[header]);
      const cell = added.getCell(index + 1);
      cell.value = asFormula(name, header, row) ?? value;
      if (numFmt !== undefined) cell.numFmt = numFmt;
    });
  }
  meta.fields.forEach((header, index) => {
    const widest = Math.max(header.length, ...data.map((row) => row[header].length));
    sheet.getColumn(index + 1).width = Math.min(widest, 40) + 2;
  });
}

async function buildWorkbook(scenario) {
  const workbook = new ExcelJS.Workbook();
  workbook.creator = 'Halfpot sample';
  workbook.created = builtOn;
  workbook.modified = builtOn;
  const csvFiles = new Set(readdirSync(`${root}${scenario}`));
  const sheets = sheetOrder.filter((name) => csvFiles.has(`${name}.csv`));
  for (const name of sheets) addSheet(workbook, name, readFileSync(`${root}${scenario}/${name}.csv`, 'utf8'));
  await workbook.xlsx.writeFile(`${root}${scenario}.xlsx`);
  console.log(`sample-data/${scenario}.xlsx: ${sheets.length} sheets`);
}

const scenarios = readdirSync(root, { withFileTypes: true }).filter((entry) => entry.isDirectory());
for (const { name } of scenarios) await buildWorkbook(name);
