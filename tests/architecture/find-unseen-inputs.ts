// Architecture: finds what a pure stage may not touch: the clock, chance, the process, the console, the network.
// In: a file's name and text. Out: one line for each place, such as `film.ts:12 Math.random`.
import ts from 'typescript';

const globals = new Set(
  (
    'process console performance crypto fetch setTimeout setInterval setImmediate queueMicrotask globalThis ' +
    'navigator require eval XMLHttpRequest WebSocket'
  ).split(' '),
);
const members = new Set(['Date.now', 'Math.random']);

/** Every forbidden use in `text`; of clean code, none. Names in types, strings and comments do not count. */
export function findUnseenInputs(file: string, text: string): string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const note = (node: ts.Node, what: string): void => {
    found.push(`${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1} ${what}`);
  };
  const visit = (node: ts.Node): void => {
    const what = unseenInput(node);
    if (what !== undefined) note(node, what);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function unseenInput(node: ts.Node): string | undefined {
  if (ts.isMetaProperty(node)) return 'import.meta';
  if (ts.isPropertyAccessExpression(node)) {
    const name = `${node.expression.getText()}.${node.name.text}`;
    return members.has(name) ? name : undefined;
  }
  if (isNowCall(node)) return 'new Date()';
  return ts.isIdentifier(node) && globals.has(node.text) && isUse(node) ? node.text : undefined;
}

/** `new Date()` without arguments and `Date()` read the clock; `new Date(iso)` does not. */
function isNowCall(node: ts.Node): boolean {
  if (ts.isNewExpression(node)) {
    return node.expression.getText() === 'Date' && (node.arguments?.length ?? 0) === 0;
  }
  return ts.isCallExpression(node) && node.expression.getText() === 'Date';
}

/** True for a value read by its bare name, not for a key, a member or a declaration called alike. */
function isUse(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isTypeReferenceNode(parent) || ts.isQualifiedName(parent)) return false;
  const named = parent as ts.Node & { readonly name?: ts.Node; readonly propertyName?: ts.Node };
  return ts.isShorthandPropertyAssignment(parent) || (named.name !== node && named.propertyName !== node);
}
