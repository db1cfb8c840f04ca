// Start of the built program; the build copies it to dist/program and every run begins here. In: the file to begin with,
// what for. Loads the files of its own folder and keeps what V8 compiled of them, so that the next run need not compile.
// Kept in dist/compiled, which is as safe as the program itself: whoever may write there may change that too.
'use strict';
const { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } = require('node:fs');
const { join } = require('node:path');
const { cachedDataVersionTag } = require('node:v8');
const { Script, constants } = require('node:vm');

/** V8's version and all its flags as one number. V8 refuses what was kept under another one. */
const mark = cachedDataVersionTag();

/** Not so while the solver is being made, in its thread: the flags are those of the whole process. */
const isMarked = () => cachedDataVersionTag() === mark;

const parameters = 'exports, require, module, __filename, __dirname';

/** The file, which the build leaves in ASCII alone, as a function. What is kept belongs to one size and time of the file; V8 itself refuses another version's. */
function compile(name, { folder, fresh }) {
  const filename = join(__dirname, name);
  const source = readFileSync(filename, 'latin1').replace(/^#!.*/, '');
  const { size, mtimeMs } = statSync(filename);
  const path = join(folder, `${name}-${size}-${Math.trunc(mtimeMs)}`);
  let cachedData;
  try {
    cachedData = readFileSync(path);
  } catch {
    // The first run for this purpose.
  }
  const wasMarked = isMarked();
  const script = new Script(`(function (${parameters}) { ${source}\n})`, {
    filename,
    cachedData,
    importModuleDynamically: constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  });
  const isSpoiled = script.cachedDataRejected && wasMarked && isMarked();
  if (cachedData === undefined || isSpoiled) fresh.push({ script, path });
  return script.runInThisContext();
}

/** Kept at the end of a run that went well, with all the functions that it called. A folder that is not ours stays so. */
function keep({ folder, fresh }) {
  try {
    mkdirSync(folder, { recursive: true });
    for (const { script, path } of fresh) {
      writeFileSync(`${path}.${process.pid}`, script.createCachedData());
      renameSync(`${path}.${process.pid}`, path);
    }
  } catch {
    // Nothing is lost but time.
  }
}

/**
 * Runs a file of this folder and what it asks for.
 * @param {string} first its name
 * @param {string} purpose a word: each has compiled code of its own, since each calls other functions
 */
module.exports = function startProgram(first, purpose) {
  const folder = join(__dirname, '../compiled', `${process.version}-${process.arch}`, purpose);
  const store = { folder, fresh: [] };
  const loaded = new Map();
  const load = (id) => {
    if (!id.startsWith('./')) return require(id);
    const name = id.slice(2);
    const known = loaded.get(name);
    if (known !== undefined) return known.exports;
    const module = { exports: {} };
    loaded.set(name, module);
    compile(name, store)(module.exports, load, module, join(__dirname, name), __dirname);
    return module.exports;
  };
  process.once('exit', (code) => {
    if (code === 0 && store.fresh.length > 0 && isMarked()) keep(store);
  });
  return load(`./${first}`);
};
