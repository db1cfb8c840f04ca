// Architecture: English outside the files that hold it. In: source files, templates, styles. Out: texts that a reader would see.
import ts from 'typescript';

const { SyntaxKind } = ts;

/** Texts that are no prose. */
export interface Known {
  /** Words of the model's lists: data, whatever language the report speaks. */
  readonly words: ReadonlySet<string>;
  /** Classes of the stylesheets, for files that draw; elsewhere none. */
  readonly looks: ReadonlySet<string>;
}

/** `line: text` of each text of two words or more, and of each single word with a capital; `{}` stands for a value put in. */
export function findProseInCode(code: string, known: Known): string[] {
  const source = ts.createSourceFile('code.ts', code, ts.ScriptTarget.ES2023, true);
  const words = new Set([...known.words, ...listTypeWords(source)]);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isSilent(node)) return;
    const text = textOf(node);
    if (text !== undefined && isProse(text) && !words.has(text) && !isLook(text, known.looks)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
      found.push(`${line + 1}: ${text}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Texts that a type of the file names: data too. */
function listTypeWords(source: ts.SourceFile): string[] {
  const words: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isLiteralTypeNode(node) && ts.isStringLiteral(node.literal)) words.push(node.literal.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return words;
}

/** What no reader sees: imports, types, errors that only a mistake in the code throws, names of assumptions asked for. */
function isSilent(node: ts.Node): boolean {
  if (ts.isImportDeclaration(node) || ts.isTypeNode(node) || ts.isThrowStatement(node)) return true;
  return ts.isCallExpression(node) && ts.isIdentifier(node.expression) && asksFor.has(node.expression.text);
}

const asksFor = new Set(['likely', 'assume']);

/** A literal's text; a name of a property is none, nor is what is only compared with. */
function textOf(node: ts.Node): string | undefined {
  if (ts.isTemplateExpression(node))
    return node.head.text + node.templateSpans.map(({ literal }) => `{}${literal.text}`).join('');
  return ts.isStringLiteralLike(node) && !isName(node) ? node.text : undefined;
}

function isName(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isBinaryExpression(parent)) return comparisons.has(parent.operatorToken.kind);
  return ts.isPropertyAssignment(parent) && parent.name === node;
}

const comparisons: ReadonlySet<ts.SyntaxKind> = new Set([
  SyntaxKind.EqualsEqualsEqualsToken,
  SyntaxKind.ExclamationEqualsEqualsToken,
]);

const word = '\\p{L}{2,}';
const between = '[,.:;]? +[({“]*';
const prose = new RegExp(
  `${word}${between}(${word}|\\{\\})|\\{\\}${between}${word}|^\\p{Lu}\\p{Ll}+[.:]?$`,
  'u',
);

/** Markup, selectors, scripts, paths of drawings and names in the browser's store are none. */
const isProse = (text: string): boolean =>
  prose.test(text) && !/<|="|^[.#]\w|^\(\(\) =>|^M[\d{]|^halfpot /.test(text) && !names.has(text);

/** Ours and a font's are the same in every language. */
const program = 'Halfpot';
const names = new Set([program, 'Calibri']);

/** Classes only, one of which may go on with a value. */
const isLook = (text: string, looks: ReadonlySet<string>): boolean =>
  text.split(' ').every((one) => {
    const start = one.replace(/\{\}$/, '');
    return looks.has(one) || (start !== one && [...looks].some((look) => look.startsWith(start)));
  });

/** Each text of a template that a reader would see: between its tags, and in attributes that are read out or shown. */
export function findProseInTemplate(markup: string): string[] {
  const bare = markup.replace(/\{\{[\s\S]*?\}\}/g, '');
  const shown = bare.matchAll(/\s(?:aria-label|title|alt|placeholder|data-[\w-]+)="([^"]*)"/g);
  return [...bare.split(/<[^>]*>/), ...[...shown].map(([, value = '']) => value)]
    .map((text) => text.trim())
    .filter((text) => /\p{L}/u.test(text.replaceAll(program, '')));
}

/** Each text that a stylesheet puts before or behind something, and each that it asks an attribute for. */
export const findProseInStyle = (style: string): string[] =>
  [...style.matchAll(/content:\s*"([^"]*)"|\[(?:data|aria)-label[~|^$*]?="([^"]*)"/g)]
    .map(([, put = '', asked = '']) => (put + asked).replace(/\\[0-9a-f]{1,6} ?/gi, ''))
    .filter((text) => /\p{L}/u.test(text));

/** Classes that stylesheets name. */
export const listLooks = (style: string): string[] =>
  [...style.matchAll(/\.([a-z][\w-]*)/g)].map(([, name = '']) => name);
