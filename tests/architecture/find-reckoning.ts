// Architecture: reckoning in the report. In: source files and their types. Out: where numbers are added, divided or compared.
import { relative } from 'node:path';
import ts from 'typescript';

const { SyntaxKind } = ts;

const sums = new Set([
  SyntaxKind.PlusToken,
  SyntaxKind.MinusToken,
  SyntaxKind.AsteriskToken,
  SyntaxKind.SlashToken,
  SyntaxKind.PercentToken,
  SyntaxKind.PlusEqualsToken,
  SyntaxKind.MinusEqualsToken,
  SyntaxKind.AsteriskEqualsToken,
  SyntaxKind.SlashEqualsToken,
]);
const comparisons = new Set([
  SyntaxKind.LessThanToken,
  SyntaxKind.GreaterThanToken,
  SyntaxKind.LessThanEqualsToken,
  SyntaxKind.GreaterThanEqualsToken,
]);
const decimalMethods = new Set(['plus', 'minus', 'times', 'div', 'gt', 'gte', 'lt', 'lte']);

/** `file:line: code` of each sum, product or comparison of two amounts; with a plain 0, 1 or a length it is none. */
export function findReckoning(root: string, files: readonly string[]): string[] {
  const program = ts.createProgram([...files], {
    strict: true,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    target: ts.ScriptTarget.ES2023,
    skipLibCheck: true,
    noEmit: true,
  });
  const checker = program.getTypeChecker();
  const isNumber = (node: ts.Node): boolean =>
    (checker.getTypeAtLocation(node).flags & ts.TypeFlags.NumberLike) !== 0;
  const found: string[] = [];
  for (const file of files) {
    const source = program.getSourceFile(file);
    if (source === undefined) continue;
    const visit = (node: ts.Node): void => {
      if (isReckoning(node, isNumber)) {
        const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
        found.push(`${relative(root, file)}:${line + 1}: ${node.getText(source)}`);
      } else ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found;
}

function isReckoning(node: ts.Node, isNumber: (node: ts.Node) => boolean): boolean {
  if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression))
    return decimalMethods.has(node.expression.name.text);
  if (!ts.isBinaryExpression(node)) return false;
  const { left, right, operatorToken } = node;
  const isOne = sums.has(operatorToken.kind) || comparisons.has(operatorToken.kind);
  return isOne && isNumber(left) && isNumber(right) && !isPlain(left) && !isPlain(right);
}

/** 0, 1, or how many there are of something. */
function isPlain(node: ts.Expression): boolean {
  if (ts.isNumericLiteral(node)) return node.text === '0' || node.text === '1';
  return ts.isPropertyAccessExpression(node) && ['length', 'size'].includes(node.name.text);
}
