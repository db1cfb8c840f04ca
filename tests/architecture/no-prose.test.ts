// Architecture: what the report says stands in words.ts of each part and in report/words, so that a second language is a second
// file of each. plan.json describes itself in English, whoever reads it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  findProseInCode,
  findProseInStyle,
  findProseInTemplate,
  type Known,
  listLooks,
} from './find-prose.js';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Files under a folder with an ending, and what stands in them. */
const read = (folder: string, end: string) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(end))
    .map((name) => ({ name, text: readFileSync(join(root, folder, name), 'utf8') }));

const styles = read('templates', '.css');
const looks = new Set(styles.flatMap(({ text }) => listLooks(text)));
const modelText = read('src/model', '.ts')
  .map(({ text }) => text)
  .join('\n');
const words = new Set([...modelText.matchAll(/['"]([\w' -]+)['"]/g)].map(([, text = '']) => text));
const none = new Set<string>();

const holdsWords = /(^|\/)(words|[a-z]+-words)\.ts$|^(words|plan-json)\//;

type Files = readonly { readonly name: string; readonly text: string }[];

const findIn = (files: Files, find: (text: string, name: string) => string[]): string[] =>
  files.flatMap(({ name, text }) => find(text, name).map((found) => `${name}:${found}`));

describe('English stands in files of its own: none is found', () => {
  it('in the code of the report', () => {
    const files = read('src/report', '.ts').filter(({ name }) => !holdsWords.test(name));
    expect(files.length).toBeGreaterThan(50);
    const knownIn = (name: string): Known => ({
      words,
      looks: /(^|\/)draw[^/]*\.ts$/.test(name) ? looks : none,
    });
    expect(findIn(files, (text, name) => findProseInCode(text, knownIn(name)))).toEqual([]);
  });

  it('in templates', () => {
    const files = read('templates', '.hbs');
    expect(files.length).toBeGreaterThan(15);
    expect(findIn(files, findProseInTemplate)).toEqual([]);
  });

  it('in stylesheets', () => expect(findIn(styles, findProseInStyle)).toEqual([]));

  it('in scripts', () =>
    expect(findIn(read('templates', '.js'), (text) => findProseInCode(text, { words, looks }))).toEqual([]));
});

describe('of the fixture', () => {
  const textOf = (file: URL): string => readFileSync(file, 'utf8');
  const code = textOf(new URL('prose/view.ts', import.meta.url));
  const markup = textOf(new URL('prose/part.hbs', import.meta.url));
  const style = textOf(new URL('prose/style.css', import.meta.url));
  const known: Known = { words: none, looks: new Set(['tread', 'unproved']) };

  it('sentences, parts of them and single words with a capital are found; data, classes, paths and errors are none', () =>
    expect(findProseInCode(code, known).map((one) => one.replace(/^\d+: /, ''))).toEqual([
      'of {} paints',
      '{} left',
      'Each paint, by name',
      'Drawn',
      'two pots',
    ]));

  it('texts between tags and in attributes that are read out are found', () =>
    expect(findProseInTemplate(markup)).toEqual(['Halfpot · and more', 'Your pots', 'cash']));

  it('texts that a stylesheet puts in or asks for are found', () =>
    expect(findProseInStyle(style)).toEqual(['from figure ', 'Price']));
});
