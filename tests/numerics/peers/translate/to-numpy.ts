import ts from 'typescript';
import {
  declarationOf,
  mathematicsName,
  NotTranslated,
  openKeys,
  symbolOf,
  type Code,
  type Source,
} from './code.js';
import { constantBehind, roomOf, worthOf } from './constants.js';
import { calledBy, isWritten } from './usage.js';

/**
 * Turns functions of the source into Python over whole arrays (NumPy): one call stands for a process at
 * all its places. Both sides of a condition are computed and one is chosen for each place; what follows
 * an early return is masked.
 */
export interface NumpyWriter {
  /** Name of the Python function for a function of the source; writes it, and what it calls, when new. */
  use(code: Code, name: string): string;
  text(): string;
}

const operators: Partial<Record<ts.SyntaxKind, string>> = {
  [ts.SyntaxKind.PlusToken]: '+',
  [ts.SyntaxKind.MinusToken]: '-',
  [ts.SyntaxKind.AsteriskToken]: '*',
  [ts.SyntaxKind.SlashToken]: '/',
  [ts.SyntaxKind.AsteriskAsteriskToken]: '**',
  [ts.SyntaxKind.LessThanToken]: '<',
  [ts.SyntaxKind.GreaterThanToken]: '>',
};

const assignments: Partial<Record<ts.SyntaxKind, string>> = {
  [ts.SyntaxKind.EqualsToken]: '',
  [ts.SyntaxKind.PlusEqualsToken]: '+',
  [ts.SyntaxKind.MinusEqualsToken]: '-',
  [ts.SyntaxKind.AsteriskEqualsToken]: '*',
  [ts.SyntaxKind.SlashEqualsToken]: '/',
};

const mathematics: Readonly<Record<string, string>> = {
  exp: 'exp',
  log: 'log',
  log10: 'log10',
  sqrt: 'sqrt',
  abs: 'abs',
  pow: 'power',
  expm1: 'expm1',
};

/** Where the translation of a function stands. */
interface Place {
  readonly code: Code;
  readonly lines: string[];
  /** Conditions of the returns made so far, with their values, first first. */
  readonly returned: { readonly condition: string; readonly value: string }[];
  /** Name of the mask under which the present statements hold, if not everywhere. */
  mask: string | undefined;
  names: number;
}

/** Opens a writer of NumPy for a source. */
export function openNumpyWriter(source: Source): NumpyWriter {
  const { checker } = source;
  const names = new Map<string, string>();
  const functions: string[] = [];
  const keyOf = openKeys();
  /** Arrays of modules that functions write what they need for a moment into. */
  const scratch = new Map<ts.Expression, string>();

  function use(code: Code, name: string): string {
    const key = keyOf(code);
    const known = names.get(key);
    if (known !== undefined) return known;
    const unique = `${name.replaceAll(/\W/g, '_')}_${String(names.size)}`;
    names.set(key, unique);
    const parameters = code.node.parameters.map((parameter) => parameter.name.getText()).join(', ');
    const place: Place = { code, lines: [], returned: [], mask: undefined, names: 0 };
    const body = code.node.body;
    if (body === undefined) throw new NotTranslated(code.node, 'no body');
    if (ts.isBlock(body)) body.statements.forEach((statement) => write(statement, place));
    else place.lines.push(`return ${read(body, place)}`);
    functions.push(`def ${unique}(${parameters}):\n${place.lines.map((line) => `    ${line}`).join('\n')}\n`);
    return unique;
  }

  function write(statement: ts.Statement, place: Place): void {
    const { lines } = place;
    if (ts.isVariableStatement(statement)) {
      for (const declaration of statement.declarationList.declarations) {
        if (
          declaration.initializer === undefined ||
          !(statement.declarationList.flags & ts.NodeFlags.Const)
        ) {
          throw new NotTranslated(declaration, 'a variable that may change');
        }
        const { name } = declaration;
        const target = ts.isArrayBindingPattern(name)
          ? name.elements.map((part) => part.getText()).join(', ')
          : name.getText();
        lines.push(`${target} = ${read(declaration.initializer, place)}`);
      }
    } else if (ts.isReturnStatement(statement)) {
      if (statement.expression === undefined) throw new NotTranslated(statement, 'nothing returned');
      const value = read(statement.expression, place);
      if (place.mask !== undefined && place.returned.length > 0)
        throw new NotTranslated(statement, 'a second early return');
      const [early] = place.returned;
      lines.push(
        early === undefined
          ? `return ${value}`
          : `return where(${early.condition}, ${early.value}, ${value})`,
      );
    } else if (ts.isIfStatement(statement)) writeGuard(statement, place);
    else if (ts.isForStatement(statement)) writeLoop(statement, place);
    else if (ts.isExpressionStatement(statement)) writeEffect(statement.expression, place);
    else throw new NotTranslated(statement, 'a statement of an unknown form');
  }

  /** `if (condition) { ...; return value }`: what it holds under the condition, what follows under its opposite. */
  function writeGuard(statement: ts.IfStatement, place: Place): void {
    const { thenStatement, elseStatement } = statement;
    const inside = ts.isBlock(thenStatement) ? [...thenStatement.statements] : [thenStatement];
    const end = inside.pop();
    if (
      elseStatement ||
      place.mask !== undefined ||
      end === undefined ||
      !ts.isReturnStatement(end) ||
      !end.expression
    ) {
      throw new NotTranslated(statement, 'not a guard that returns');
    }
    const index = String(place.names++);
    place.lines.push(`early_${index} = ${read(statement.expression, place)}`);
    place.mask = `early_${index}`;
    // What a call under the condition writes must hold under it only.
    const written = writtenByCalls(statement.thenStatement, place.code);
    written.forEach((name) => place.lines.push(`${name}_${index} = list(${name})`));
    inside.forEach((inner) => write(inner, place));
    place.lines.push(`value_${index} = ${read(end.expression, place)}`);
    written.forEach((name) =>
      place.lines.push(`restore(~${maskOf(place) ?? ''}, ${name}, ${name}_${index})`),
    );
    const before = place.returned.pop();
    place.returned.push(
      before === undefined
        ? { condition: `early_${index}`, value: `value_${index}` }
        : {
            condition: `(${before.condition} | early_${index})`,
            value: `where(${before.condition}, ${before.value}, value_${index})`,
          },
    );
    place.mask = undefined;
  }

  /** Names of the arrays that calls within a statement write. */
  function writtenByCalls(statement: ts.Node, from: Code): readonly string[] {
    const found = new Set<string>();
    const visit = (node: ts.Node): void => {
      const called = ts.isCallExpression(node) ? calledBy(checker, node.expression, from) : undefined;
      if (called && ts.isCallExpression(node)) {
        node.arguments.forEach((argument, i) => {
          if (isWritten(checker, called, i)) found.add(argument.getText());
        });
      }
      ts.forEachChild(node, visit);
    };
    visit(statement);
    return [...found];
  }

  /** The mask of an assignment: inside a guard its condition, after guards none of them. */
  function maskOf(place: Place): string | undefined {
    const [early] = place.returned;
    if (place.mask === undefined) return early === undefined ? undefined : `~${early.condition}`;
    return early === undefined ? place.mask : `(${place.mask} & ~${early.condition})`;
  }

  function writeLoop(statement: ts.ForStatement, place: Place): void {
    const { initializer, condition } = statement;
    const counter =
      initializer && ts.isVariableDeclarationList(initializer) ? initializer.declarations[0] : undefined;
    if (
      counter?.initializer?.getText() !== '0' ||
      !condition ||
      !ts.isBinaryExpression(condition) ||
      condition.operatorToken.kind !== ts.SyntaxKind.LessThanToken ||
      worthOf(checker, condition.right) === undefined ||
      statement.incrementor?.getText() !== `${counter.name.getText()}++` ||
      !ts.isExpressionStatement(statement.statement)
    ) {
      throw new NotTranslated(statement, 'not a loop of one statement over the first few');
    }
    place.lines.push(`for ${counter.name.getText()} in range(${String(worthOf(checker, condition.right))}):`);
    const inner: Place = { ...place, lines: [] };
    writeEffect(statement.statement.expression, inner);
    place.lines.push(...inner.lines.map((line) => `    ${line}`));
  }

  function writeEffect(node: ts.Expression, place: Place): void {
    if (ts.isCallExpression(node)) {
      if (maskOf(place) !== undefined)
        throw new NotTranslated(node, 'a call for its effect under a condition');
      const { expression: callee } = node;
      const fills = ts.isPropertyAccessExpression(callee) && callee.name.text === 'fill';
      place.lines.push(fills ? `fill(${read(callee.expression, place)})` : read(node, place));
      return;
    }
    const operator = ts.isBinaryExpression(node) ? assignments[node.operatorToken.kind] : undefined;
    if (!ts.isBinaryExpression(node) || operator === undefined || !ts.isElementAccessExpression(node.left)) {
      throw new NotTranslated(node, 'not an assignment to an entry');
    }
    const target = read(node.left, place);
    const right = read(node.right, place);
    const value = operator === '' ? right : `${target} ${operator} (${right})`;
    const mask = maskOf(place);
    place.lines.push(`${target} = ${mask === undefined ? value : `where(${mask}, ${value}, ${target})`}`);
  }

  function read(node: ts.Expression, place: Place): string {
    if (ts.isNumericLiteral(node)) return node.text;
    if (ts.isParenthesizedExpression(node)) return `(${read(node.expression, place)})`;
    if (ts.isIdentifier(node)) return readName(node, place);
    if (ts.isPrefixUnaryExpression(node)) {
      if (node.operator === ts.SyntaxKind.MinusToken) return `-${read(node.operand, place)}`;
      if (node.operator === ts.SyntaxKind.ExclamationToken) return `~${read(node.operand, place)}`;
    }
    if (ts.isBinaryExpression(node)) {
      const { kind } = node.operatorToken;
      if (kind === ts.SyntaxKind.AmpersandAmpersandToken)
        return `((${read(node.left, place)}) & (${read(node.right, place)}))`;
      const operator = operators[kind];
      if (operator === undefined) throw new NotTranslated(node, 'an unknown operator');
      return `${read(node.left, place)} ${operator} ${read(node.right, place)}`;
    }
    if (ts.isConditionalExpression(node)) {
      const parts = [node.condition, node.whenTrue, node.whenFalse].map((part) => read(part, place));
      return `where(${parts.join(', ')})`;
    }
    if (ts.isElementAccessExpression(node)) {
      return `${read(node.expression, place)}[${read(node.argumentExpression, place)}]`;
    }
    if (ts.isPropertyAccessExpression(node)) {
      const text = node.getText();
      if (text === 'Math.LN10') return 'LN10';
      const worth = worthOf(checker, node);
      if (worth !== undefined) return String(worth);
      if (checker.typeToString(checker.getTypeAtLocation(node.expression)) === 'AcidBaseConstants') {
        return `${read(node.expression, place)}.${node.name.text}`;
      }
    }
    if (ts.isCallExpression(node)) return readCall(node, place);
    if (ts.isArrayLiteralExpression(node))
      return `[${node.elements.map((part) => read(part, place)).join(', ')}]`;
    const room = roomOf(checker, node);
    if (room !== undefined) return `[0.0] * ${String(room)}`;
    throw new NotTranslated(node, 'an expression of an unknown form');
  }

  function readName(node: ts.Identifier, { code }: Place): string {
    const given = code.bound.get(symbolOf(checker, node));
    if (typeof given === 'boolean') return given ? 'True' : 'False';
    const worth = worthOf(checker, node);
    if (worth !== undefined) return String(worth);
    const behind = constantBehind(checker, node);
    const room = behind && roomOf(checker, behind);
    if (behind && room !== undefined) {
      const known = scratch.get(behind) ?? `scratch_${String(scratch.size)}`;
      if (!scratch.has(behind)) functions.push(`${known} = [0.0] * ${String(room)}\n`);
      scratch.set(behind, known);
      return known;
    }
    const declaration = declarationOf(checker, node);
    const local = ts.isBindingElement(declaration) || ts.isVariableDeclaration(declaration);
    if (ts.isParameter(declaration) || (local && behind === undefined)) return node.text;
    throw new NotTranslated(node, 'a name that is no local and no number');
  }

  function readCall(node: ts.CallExpression, place: Place): string {
    const list = node.arguments.map((argument) => read(argument, place)).join(', ');
    const callee = node.expression;
    const called = mathematicsName(checker, callee);
    if (called !== undefined) {
      if (called === 'pow10') return `power(10.0, ${list})`;
      const name = mathematics[called];
      if (name === undefined) throw new NotTranslated(node, 'an unknown function');
      return `${name}(${list})`;
    }
    const code = calledBy(checker, callee, place.code);
    if (code === undefined) throw new NotTranslated(node, 'a call of an unknown form');
    return `${use(code, callee.getText())}(${list})`;
  }

  return { use, text: () => functions.join('\n\n') };
}
