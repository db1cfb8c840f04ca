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

/** Of libraries that ship no text of their ISC licence: who holds the rights, by their package and readme. */
const isc = new Map([
  [
    'saxes',
    'Copyright (c) Louis-Dominique Dubeau and contributors. A fork of sax 1.2.4, Copyright (c) Isaac Z. Schlueter and Contributors.',
  ],
]);

/** As SPDX lists it. */
const iscText = `Permission to use, copy, modify, and/or distribute this software for any
purpose with or without fee is hereby granted, provided that the above
copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH
REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND
FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM
LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR
OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR
PERFORMANCE OF THIS SOFTWARE.`;

/** Licence files; where a package ships none, what its readme says under that heading, or the text that belongs to it. */
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
  const holders = about.license === 'ISC' ? isc.get(about.name) : undefined;
  if (holders === undefined) throw new Error(`${about.name} is in the bundle and ships no licence`);
  return `${holders}\n\n${iscText}`;
}

/** Where a library leaves the choice, which licence it is used under: MIT. */
function chosenFrom({ name, license }) {
  if (!/\bOR\b/.test(license)) return '';
  if (!/\bMIT\b/.test(license)) throw new Error(`${name} is in the bundle: choose one of ${license}`);
  return 'Halfpot uses it under the MIT licence.\n\n';
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
    return `${heading}\n${'-'.repeat(heading.length)}\n${chosenFrom(about)}${licenceOf(folder, about)}\n`;
  });
  return `Halfpot contains these libraries, under their own licences.\n\n${notices.sort().join('\n\n')}`;
}
