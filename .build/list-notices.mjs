// Build: the licences of the libraries inside the bundle. In: the modules of the bundle. Out: one text for all of them.
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';

const marker = `${sep}node_modules${sep}`;

/** The folder of the package that a module belongs to; undefined for a module of our own. */
function packageFolder(id) {
  const at = id.lastIndexOf(marker);
  if (at < 0) return undefined;
  const names = id.slice(at + marker.length).split(sep);
  const depth = names[0].startsWith('@') ? 2 : 1;
  return join(id.slice(0, at + marker.length), ...names.slice(0, depth));
}

/** Licence files; where a package ships none, what its readme says under that heading, or its authors and its kind. */
function licenceOf(folder, about) {
  const files = readdirSync(folder).filter((name) =>
    /^(licen[cs]e|copying|notice|third[-_]party)/i.test(name),
  );
  if (files.length > 0)
    return files.map((name) => readFileSync(join(folder, name), 'utf8').trim()).join('\n\n');
  const readme = readdirSync(folder).find((name) => /^readme/i.test(name));
  const text = readme === undefined ? '' : readFileSync(join(folder, readme), 'utf8');
  const said = /^#+ *licen[cs]e[^\n]*\n(.+?)(?=^#|(?![\s\S]))/ims.exec(text)?.[1].trim();
  if (said !== undefined && /copyright|permission/i.test(said)) return said;
  if (about.license === undefined) throw new Error(`${about.name} is in the bundle and names no licence`);
  const author = typeof about.author === 'string' ? about.author : about.author?.name;
  return `${about.license} licence, by ${author ?? 'its authors'}; the package ships no text of it.`;
}

/**
 * @param {readonly string[]} moduleIds paths of the modules in the bundle
 * @returns {string} name, version and licence text of every package among them, by name
 */
export function listNotices(moduleIds) {
  const folders = [...new Set(moduleIds.map(packageFolder))].filter((folder) => folder !== undefined);
  const notices = folders.map((folder) => {
    const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const heading = `${about.name} ${about.version} (${about.license})`;
    return `${heading}\n${'-'.repeat(heading.length)}\n${licenceOf(folder, about)}\n`;
  });
  return `Halfpot contains these libraries, under their own licences.\n\n${notices.sort().join('\n\n')}`;
}
