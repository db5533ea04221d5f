import ts from 'typescript';
import { declarationOf, symbolOf, type Code } from './code.js';
import { constantBehind } from './constants.js';

/** The function that a call goes to, through what its caller's names are bound to; undefined when it is none. */
export function calledBy(checker: ts.TypeChecker, callee: ts.Expression, from: Code): Code | undefined {
  if (!ts.isIdentifier(callee)) return undefined;
  const given = from.bound.get(symbolOf(checker, callee));
  if (typeof given === 'object') return given;
  const declaration = declarationOf(checker, callee);
  if (ts.isFunctionDeclaration(declaration)) return { node: declaration, bound: new Map() };
  const behind = constantBehind(checker, callee);
  return behind && ts.isArrowFunction(behind) ? { node: behind, bound: new Map() } : undefined;
}

/** Whether a function uses a parameter as a place in an array, itself or by what it calls. */
export function isPlace(checker: ts.TypeChecker, code: Code, parameter: number): boolean {
  return uses(checker, code, parameter, isPlace, (node, isIt) => {
    if (!ts.isElementAccessExpression(node)) return false;
    const parts = (index: ts.Expression): boolean =>
      isIt(index) || (ts.isBinaryExpression(index) && (parts(index.left) || parts(index.right)));
    return parts(node.argumentExpression);
  });
}

/** Whether a function writes entries of a parameter, itself or by what it calls. */
export function isWritten(checker: ts.TypeChecker, code: Code, parameter: number): boolean {
  return uses(checker, code, parameter, isWritten, (node, isIt) => {
    if (!ts.isBinaryExpression(node) || !ts.isElementAccessExpression(node.left)) return false;
    const { kind } = node.operatorToken;
    const assigns = kind >= ts.SyntaxKind.FirstAssignment && kind <= ts.SyntaxKind.LastAssignment;
    return assigns && isIt(node.left.expression);
  });
}

function uses(
  checker: ts.TypeChecker,
  code: Code,
  parameter: number,
  inCalled: (checker: ts.TypeChecker, code: Code, parameter: number) => boolean,
  here: (node: ts.Node, isIt: (name: ts.Node) => boolean) => boolean,
): boolean {
  const name = code.node.parameters[parameter]?.name;
  if (name === undefined || !ts.isIdentifier(name) || code.node.body === undefined) return false;
  const symbol = symbolOf(checker, name);
  const isIt = (node: ts.Node): boolean => ts.isIdentifier(node) && symbolOf(checker, node) === symbol;
  const visit = (node: ts.Node): boolean => {
    if (here(node, isIt)) return true;
    if (ts.isCallExpression(node)) {
      const called = calledBy(checker, node.expression, code);
      if (called && node.arguments.some((argument, i) => isIt(argument) && inCalled(checker, called, i)))
        return true;
    }
    return ts.forEachChild(node, (child) => visit(child) || undefined) ?? false;
  };
  return visit(code.node.body);
}
