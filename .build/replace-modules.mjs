// Build: modules that the bundle holds in another form than the sources name. A plugin for the bundler; each piece that it
// replaces must be met, so that a new version of a library can't slip by.
import { createRequire } from 'node:module';
import { join, sep } from 'node:path';

const require = createRequire(import.meta.url);

/**
 * Of exceljs only the workbook: no CSV (fast-csv), no streams (archiver, unzipper, tmp), which nothing here calls.
 * commander wants child_process for subcommands in files of their own, of which there are none.
 */
const slim = [
  {
    path: 'node_modules/exceljs/lib/csv/csv.js',
    code: 'module.exports = class { get readFile() { throw new Error("left out of the build"); } };',
  },
  {
    path: 'node_modules/commander/lib/command.js',
    change: (code) => code.replace("require('node:child_process')", '{}'),
  },
];

const workbookOnly = '\0workbook-only';

/** @param {() => Promise<string>} templates gives the code of the compiled templates */
export function replaceModules(templates) {
  const unmet = new Set([...slim.map(({ path }) => path), workbookOnly, 'templates']);
  const slimOf = (id) => slim.find(({ path }) => id.endsWith(join(sep, path)));
  return {
    name: 'replace-modules',
    resolveId: (id) => (id === 'exceljs' ? workbookOnly : undefined),
    load(id) {
      if (id === workbookOnly) {
        unmet.delete(workbookOnly);
        const workbook = require.resolve('exceljs/lib/doc/workbook.js');
        return `module.exports = { Workbook: require(${JSON.stringify(workbook)}) };`;
      }
      if (id.endsWith(join(sep, 'src/report/page/open-templates.ts'))) {
        unmet.delete('templates');
        return templates().then((code) => ({ code, moduleType: 'js' }));
      }
      const found = slimOf(id);
      if (found?.code === undefined) return undefined;
      unmet.delete(found.path);
      return found.code;
    },
    transform(code, id) {
      const found = slimOf(id);
      if (found?.change === undefined) return undefined;
      const changed = found.change(code);
      if (changed !== code) unmet.delete(found.path);
      return changed;
    },
    buildEnd(error) {
      if (error === undefined && unmet.size > 0)
        throw new Error(`nothing to replace any more: ${[...unmet].join(', ')}`);
    },
  };
}
