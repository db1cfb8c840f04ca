// Tests: the sheets of the corpus, made anew from typed cells by two spreadsheet programs in seven languages.
// As a program: `npm run corpus`, with LibreOffice and Gnumeric. The files that it makes are kept; how a person reads each
// stands in readings/.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { argv, env, exit } from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { armies } from './armies.mjs';
import { lists } from './lists.mjs';
import { offersAndLogs } from './offers-and-logs.mjs';
import { pots } from './pots.mjs';
import { potsInWords } from './pots-in-words.mjs';
import { spoilt } from './spoilt.mjs';
import { readTyped } from './typed.mjs';

const sheets = fileURLToPath(new URL('../sheets', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'halfpot-corpus-'));

/** Language tags of [MS-LCID], by which LibreOffice knows them, and names of locales. */
const languages = {
  en: [2057, 'en_GB'],
  us: [1033, 'en_US'],
  de: [1031, 'de_DE'],
  fr: [1036, 'fr_FR'],
  es: [3082, 'es_ES'],
  it: [1040, 'it_IT'],
  nl: [1043, 'nl_NL'],
  pl: [1045, 'pl_PL'],
};

/** How LibreOffice names what it saves, by the ending. */
const filters = {
  xlsx: 'Calc MS Excel 2007 XML',
  xlsm: 'Calc MS Excel 2007 VBA XML',
  xls: 'MS Excel 97',
  ods: 'calc8',
  csv: 'Text - txt - csv (StarCalc)',
};

/** As LibreOffice numbers them. */
const charsets = { 'utf-8': 76, 'utf-16': 65535, 'windows-1252': 1, 'windows-1250': 33 };

/** Another Python would not find the office's module. */
const debianPython = '/usr/bin/python3';

const exporters = {
  xlsx: 'Gnumeric_Excel:xlsx2',
  ods: 'Gnumeric_OpenCalc:odf',
  csv: 'Gnumeric_stf:stf_assistant',
};

const [only] = argv.slice(2);
const wanted = [...lists, ...pots, ...potsInWords, ...offersAndLogs, ...armies, ...spoilt].filter(
  ({ path }) => only === undefined || path.startsWith(only),
);

try {
  for (const [at, file] of wanted.entries()) {
    mkdirSync(dirname(join(sheets, file.path)), { recursive: true });
    file.typed = Object.entries(file.sheets).map(([name, text], place) =>
      writeTyped(`${at}-${place}`, name, text),
    );
  }
  for (const language of Object.keys(languages)) {
    makeByOffice(
      language,
      wanted.filter((file) => file.by === 'office' && file.in === language),
    );
  }
  for (const file of wanted.filter(({ by }) => by === 'gnumeric')) makeByGnumeric(file);
} finally {
  rmSync(folder, { recursive: true });
}

/** One sheet as a CSV with every cell in quotes: both programs take them as if they were typed. */
function writeTyped(key, name, text) {
  const { rows, formulas } = readTyped(text);
  const quoted = rows.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(','));
  // Gnumeric names its sheets by their files.
  const path = join(folder, key, name);
  mkdirSync(dirname(path));
  writeFileSync(path, `${quoted.join('\n')}\n`);
  return { name, path, formulas };
}

/** What is text is saved as CSV, whatever it is called. */
function kindOf({ path }) {
  const ending = path.slice(path.lastIndexOf('.') + 1);
  return ending in exporters || ending in filters ? ending : 'csv';
}

function makeByOffice(language, files) {
  const jobs = files.map((file) => ({
    url: pathToFileURL(join(sheets, file.path)).href,
    saving: savingOf(file),
    password: file.password ?? null,
    sheets: file.typed.map(({ name, path, formulas }) => ({
      name,
      url: pathToFileURL(path).href,
      language: languages[language][0],
      asText: file.asText === true,
      formulas,
      merges: file.merges?.[name] ?? [],
      formats: file.formats?.[name] ?? {},
    })),
  }));
  const locale = languages[language][1].replace('_', '-');
  const input = JSON.stringify({ profile: join(folder, `office-${language}`), locale, jobs });
  const script = fileURLToPath(new URL('office.py', import.meta.url));
  if (jobs.length > 0) run(debianPython, [script], { input });
}

function savingOf(file) {
  const { separator = ',', charset = 'utf-8' } = file;
  const FilterName = filters[kindOf(file)];
  // The separator, quotes, the character set, from line 1; cells as they are shown.
  const FilterOptions = `${separator.charCodeAt(0)},34,${charsets[charset]},1,,0,false,true`;
  return kindOf(file) === 'csv' ? { FilterName, FilterOptions } : { FilterName };
}

function makeByGnumeric(file) {
  const { path, separator = ',', charset = 'UTF-8', typed } = file;
  const locale = `${languages[file.in][1]}.UTF-8`;
  const locales = join(folder, 'locales');
  mkdirSync(locales, { recursive: true });
  run('localedef', ['-i', languages[file.in][1], '-f', 'UTF-8', join(locales, locale)]);
  const ways = { env: { ...env, LOCPATH: locales, LC_ALL: locale, LANGUAGE: 'C' } };
  const texts = typed.map((one) => one.path);
  const book = join(folder, 'book.gnumeric');
  const reading = ['-I', 'Gnumeric_stf:stf_csvtab', '-T', 'Gnumeric_XmlIO:sax'];
  if (texts.length === 1) run('ssconvert', [...reading, ...texts, book], ways);
  else run('ssconvert', [...reading, `--merge-to=${book}`, ...texts], ways);
  const options = `separator='${separator}' charset=${charset} format=preserve quoting-mode=auto eol=windows`;
  const kind = kindOf(file);
  const writing = ['-T', exporters[kind], ...(kind === 'csv' ? ['-O', options] : [])];
  run('ssconvert', [...writing, book, join(sheets, path)], ways);
}

function run(program, args, ways = {}) {
  const { status, error } = spawnSync(program, args, { stdio: ['pipe', 'inherit', 'inherit'], ...ways });
  if (status === 0) return;
  console.error(`${program} ${args.join(' ')} failed: ${error?.message ?? status}`);
  console.error('Debian: libreoffice-calc, python3-uno, gnumeric and locales are needed.');
  exit(1);
}
