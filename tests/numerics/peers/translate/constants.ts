import ts from 'typescript';
import { declarationOf } from './code.js';

const known: Readonly<Record<string, number>> = {
  'Math.LN10': Math.LN10,
  'Math.LN2': Math.LN2,
  'Math.PI': Math.PI,
  'Number.EPSILON': Number.EPSILON,
};

/** An expression without what only its type needs: parentheses, `as`, `satisfies`. */
export function bare(node: ts.Expression): ts.Expression {
  return ts.isParenthesizedExpression(node) || ts.isAsExpression(node) || ts.isSatisfiesExpression(node)
    ? bare(node.expression)
    : node;
}

/** What a constant of a module is set to, where a name stands for one. */
export function constantBehind(checker: ts.TypeChecker, name: ts.Identifier): ts.Expression | undefined {
  const declaration = declarationOf(checker, name);
  if (!ts.isVariableDeclaration(declaration) || !declaration.initializer) return undefined;
  const constant = ts.getCombinedNodeFlags(declaration) & ts.NodeFlags.Const;
  const atTop = ts.isSourceFile(declaration.parent.parent.parent);
  return constant && atTop ? bare(declaration.initializer) : undefined;
}

/** What an expression of numbers, of constants of modules and of lengths of lists is worth; undefined where it is no such. */
export function worthOf(checker: ts.TypeChecker, expression: ts.Expression): number | undefined {
  const node = bare(expression);
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isIdentifier(node)) {
    const behind = constantBehind(checker, node);
    return behind && worthOf(checker, behind);
  }
  if (ts.isPropertyAccessExpression(node)) {
    if (node.name.text === 'length') return lengthOf(checker, node.expression);
    return known[node.getText()];
  }
  if (!ts.isBinaryExpression(node)) return undefined;
  const left = worthOf(checker, node.left);
  const right = worthOf(checker, node.right);
  if (left === undefined || right === undefined) return undefined;
  switch (node.operatorToken.kind) {
    case ts.SyntaxKind.PlusToken:
      return left + right;
    case ts.SyntaxKind.MinusToken:
      return left - right;
    case ts.SyntaxKind.AsteriskToken:
      return left * right;
    case ts.SyntaxKind.SlashToken:
      return left / right;
    default:
      return undefined;
  }
}

/** Number of entries of a list that a module writes out. */
function lengthOf(checker: ts.TypeChecker, expression: ts.Expression): number | undefined {
  const node = bare(expression);
  if (ts.isIdentifier(node)) {
    const behind = constantBehind(checker, node);
    return behind && lengthOf(checker, behind);
  }
  if (!ts.isArrayLiteralExpression(node)) return undefined;
  let sum = 0;
  for (const entry of node.elements) {
    const length = ts.isSpreadElement(entry) ? lengthOf(checker, entry.expression) : 1;
    if (length === undefined) return undefined;
    sum += length;
  }
  return sum;
}

/** Entries of `new Float64Array(n)`; undefined where an expression is no such. */
export function roomOf(checker: ts.TypeChecker, node: ts.Expression): number | undefined {
  if (!ts.isNewExpression(node) || node.expression.getText() !== 'Float64Array') return undefined;
  const [size] = node.arguments ?? [];
  return size === undefined ? undefined : worthOf(checker, size);
}
