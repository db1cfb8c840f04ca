// Start of the built program; the build copies it to dist/program and every run begins here. In: the file to begin with, what
// for, and a word for what the build made. Loads the files of its own folder and keeps them with what V8 compiled of them, so
// that the next run need not compile: all in one file, since reading forty takes as long as compiling half of them.
// Kept in dist/compiled, which is as safe as the program itself: whoever may write there may change that too.
'use strict';
const { mkdirSync, readFileSync, renameSync, writeFileSync } = require('node:fs');
const { dirname, join } = require('node:path');
const { cachedDataVersionTag, deserialize, serialize } = require('node:v8');
const { Script, constants } = require('node:vm');

/** V8's version and all its flags as one number. V8 refuses what was kept under another one. */
const mark = cachedDataVersionTag();

/** Not so while the solver is being made, in its thread: the flags are those of the whole process. */
const isMarked = () => cachedDataVersionTag() === mark;

const parameters = 'exports, require, module, __filename, __dirname';

/** By name of a file, its source as a function and what V8 compiled of it; none before the first run, or where they are spoiled. */
function readKept(path) {
  try {
    return deserialize(readFileSync(path));
  } catch {
    return new Map();
  }
}

/** A file, which the build leaves in ASCII alone. */
const readSource = (filename) =>
  `(function (${parameters}) { ${readFileSync(filename, 'latin1').replace(/^#!.*/, '')}\n})`;

/** The file as a function. V8 itself refuses what another version compiled. */
function compile(name, { kept, fresh }) {
  const filename = join(__dirname, name);
  const before = kept.get(name);
  const source = before?.source.latin1Slice() ?? readSource(filename);
  const wasMarked = isMarked();
  const script = new Script(source, {
    filename,
    cachedData: before?.compiled,
    importModuleDynamically: constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  });
  const isSpoiled = script.cachedDataRejected && wasMarked && isMarked();
  if (before === undefined || isSpoiled) fresh.push({ name, source, script });
  return script.runInThisContext();
}

/** Kept at the end of a run that went well, with all the functions that it called. A folder that is not ours stays so. */
function keep({ path, kept, fresh }) {
  try {
    mkdirSync(dirname(path), { recursive: true });
    for (const { name, source, script } of fresh)
      kept.set(name, { source: Buffer.from(source, 'latin1'), compiled: script.createCachedData() });
    writeFileSync(`${path}.${process.pid}`, serialize(kept));
    renameSync(`${path}.${process.pid}`, path);
  } catch {
    // Nothing is lost but time.
  }
}

/**
 * Runs a file of this folder and what it asks for.
 * @param {string} first its name
 * @param {string} purpose a word: each has compiled code of its own, since each calls other functions
 * @param {string} build a word: what another build made has another one
 */
module.exports = function startProgram(first, purpose, build) {
  const path = join(__dirname, '../compiled', `${process.version}-${process.arch}-${build}`, purpose);
  const store = { path, kept: readKept(path), fresh: [] };
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
