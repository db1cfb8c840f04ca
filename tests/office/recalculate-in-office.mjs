// Tests: both workbooks of the sample army, worked out again by LibreOffice: by itself, and with other numbers than planned.
// As a program: `npm run office`. Not among the tests, since few machines have an office suite.
import { spawnSync } from 'node:child_process';
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { execPath, exit } from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import exceljs from 'exceljs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'halfpot-office-'));
const nearEnough = 1e-9;

/** What is changed in the workbook by hand, and in the sheets for a new plan. */
const likely = { 'brush wet film': 70, 'dress clothed': 1.5, 'brush transfer': 0.35 };
const counted = { unit: 'Lamp Archers', from: 20, to: 31 };

try {
  if (spawnSync('soffice', ['--version']).status !== 0) {
    console.error('This check needs LibreOffice: type "sudo apt-get install libreoffice-calc".');
    exit(1);
  }
  const planned = planSample('planned');
  const anew = planSample('anew', (sheets) => {
    const settings = Object.entries(likely).map(([name, value]) => `${name},${value}\n`);
    appendFileSync(join(sheets, 'settings.csv'), settings.join(''));
    const army = join(sheets, 'army.csv');
    const row = new RegExp(`^(${counted.unit},.*,)${counted.from}(,)`, 'm');
    writeFileSync(army, readFileSync(army, 'utf8').replace(row, `$1${counted.to}$2`));
  });
  for (const name of ['estimate', 'reorder']) {
    const stored = await readBook(join(planned, `${name}.xlsx`));
    const again = await workOut(join(planned, `${name}.xlsx`), `${name}-again`);
    report(`${name}.xlsx as it was written`, compare(formulasOf(stored), again));
  }
  const changed = await workOut(join(planned, 'estimate.xlsx'), 'estimate-changed', changeNumbers);
  const wanted = await readBook(join(anew, 'estimate.xlsx'));
  const follows = cellsOf(wanted, 'paints', ['C', 'D']).concat(cellsOf(wanted, 'totals', ['B'], 5));
  report('estimate.xlsx with other numbers, against a new plan', compare(follows, changed));
} finally {
  rmSync(folder, { recursive: true });
}

/** The sample without its log, which would weigh the new numbers again. Gives the folder of the plan. */
function planSample(name, change = () => {}) {
  const [sheets, out] = [join(folder, `${name}-sheets`), join(folder, name)];
  cpSync(join(root, 'sample-data/low-sluice'), sheets, { recursive: true });
  rmSync(join(sheets, 'log.csv'));
  change(sheets);
  run(execPath, [join(root, 'dist/cli/main.js'), 'plan', sheets, '--out', out]);
  return out;
}

/** A workbook without any stored result, changed, and saved anew by the office: it has to work out every formula. */
async function workOut(path, name, change = () => {}) {
  const book = await readBook(path);
  for (const { cell } of formulasOf(book)) cell.value = { formula: cell.formula };
  change(book);
  await book.xlsx.writeFile(join(folder, `${name}.xlsx`));
  const profile = `-env:UserInstallation=${pathToFileURL(join(folder, 'profile'))}`;
  const saved = join(folder, 'saved');
  run('soffice', [
    profile,
    '--headless',
    '--convert-to',
    'xlsx',
    '--outdir',
    saved,
    join(folder, `${name}.xlsx`),
  ]);
  return readBook(join(saved, `${name}.xlsx`));
}

function changeNumbers(book) {
  const set = (sheet, key, column, value) => {
    const row = rowsOf(book, sheet).find((one) => one.getCell('A').value === key);
    if (row === undefined) throw new Error(`${sheet} has no ${key}`);
    row.getCell(column).value = value;
  };
  for (const [name, value] of Object.entries(likely)) set('assumptions', name, 'B', value);
  set('units', counted.unit, 'E', counted.to);
}

async function readBook(path) {
  const book = new exceljs.Workbook();
  await book.xlsx.readFile(path);
  return book;
}

function rowsOf(book, name) {
  const sheet = book.getWorksheet(name);
  return sheet.getRows(2, sheet.rowCount - 1);
}

/** Cells of some columns, down to a row. */
function cellsOf(book, sheet, columns, last = Number.POSITIVE_INFINITY) {
  const rows = rowsOf(book, sheet).filter(({ number }) => number <= last);
  return rows.flatMap((row) => columns.map((column) => ({ sheet, cell: row.getCell(column) })));
}

function formulasOf(book) {
  const found = [];
  for (const sheet of book.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        if (cell.formula !== undefined) found.push({ sheet: sheet.name, cell });
      });
    });
  }
  return found;
}

/** What the office gives in the same cells. The library reads a result of 0 or '' as none. */
function compare(cells, office) {
  const resultOf = (cell) => (cell.formula === undefined ? cell.value : cell.result) ?? 0;
  let worst = 0;
  const wrong = [];
  for (const { sheet, cell } of cells) {
    const [wanted, found] = [resultOf(cell), resultOf(office.getWorksheet(sheet).getCell(cell.address))];
    const isNumber = typeof wanted === 'number' && typeof found === 'number';
    const apart = isNumber ? Math.abs(wanted - found) / Math.max(1, Math.abs(wanted)) : 0;
    const isWrong = isNumber ? apart > nearEnough : (wanted || '') !== (found || '');
    worst = Math.max(worst, apart);
    if (isWrong)
      wrong.push(`${sheet}!${cell.address}: ${JSON.stringify(found)} for ${JSON.stringify(wanted)}`);
  }
  return { count: cells.length, worst, wrong };
}

function report(what, { count, worst, wrong }) {
  console.log(`${what}: ${count} cells, apart by ${worst.toExponential(1)} at most, ${wrong.length} wrong`);
  for (const line of wrong.slice(0, 10)) console.log(`  ${line}`);
  if (count === 0 || wrong.length > 0) process.exitCode = 1;
}

function run(program, args) {
  const { status, stderr } = spawnSync(program, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${program} ${args.join(' ')}: ${stderr}`);
}
