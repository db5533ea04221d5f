import ts from 'typescript';
import { mathematicsName, NotTranslated, openKeys, symbolOf, type Code, type Source } from './code.js';
import { bare, constantBehind, roomOf, worthOf } from './constants.js';
import { calledBy, isPlace } from './usage.js';

/** Types that the translated subset knows. */
export type CType =
  'double' | 'int' | 'const double *' | 'double *' | 'const int *' | 'const AcidBase *' | `double[${number}]`;

/** Turns functions of the source into C, each once for the types that it is called with. */
export interface CWriter {
  /**
   * Name of the C function for a function of the source; writes it, and what it calls, when new.
   * @param part which entry the function is to return, of a list that it returns
   */
  use(code: Code, types: readonly CType[], name: string, part?: number): string;
  /** All functions written, callees first. */
  text(): string;
}

const element: Partial<Record<CType, CType>> = {
  'const double *': 'double',
  'double *': 'double',
  'const int *': 'int',
};

/** Entries of an array whose length is known. */
const lengthOf = (type: CType): number | undefined =>
  type.startsWith('double[') ? Number(type.slice('double['.length, -1)) : undefined;

/** A number as C writes a double. */
const literal = (value: number): string => (Number.isInteger(value) ? `${String(value)}.0` : String(value));

const mathematics: Readonly<Record<string, string>> = {
  exp: 'exp',
  log: 'log',
  log10: 'log10',
  sqrt: 'sqrt',
  abs: 'fabs',
  pow: 'pow',
  pow10: 'pow_10',
  expm1: 'expm1',
  max: 'larger_of',
};

const plainOperators: Partial<Record<ts.SyntaxKind, string>> = {
  [ts.SyntaxKind.PlusToken]: '+',
  [ts.SyntaxKind.MinusToken]: '-',
  [ts.SyntaxKind.AsteriskToken]: '*',
  [ts.SyntaxKind.SlashToken]: '/',
  [ts.SyntaxKind.LessThanToken]: '<',
  [ts.SyntaxKind.GreaterThanToken]: '>',
  [ts.SyntaxKind.LessThanEqualsToken]: '<=',
  [ts.SyntaxKind.GreaterThanEqualsToken]: '>=',
  [ts.SyntaxKind.EqualsEqualsEqualsToken]: '==',
  [ts.SyntaxKind.ExclamationEqualsEqualsToken]: '!=',
  [ts.SyntaxKind.AmpersandAmpersandToken]: '&&',
  [ts.SyntaxKind.BarBarToken]: '||',
  [ts.SyntaxKind.EqualsToken]: '=',
  [ts.SyntaxKind.PlusEqualsToken]: '+=',
  [ts.SyntaxKind.MinusEqualsToken]: '-=',
  [ts.SyntaxKind.AsteriskEqualsToken]: '*=',
  [ts.SyntaxKind.SlashEqualsToken]: '/=',
};

interface Value {
  readonly text: string;
  readonly type: CType;
}

/** A whole number that is written out; undefined for any other expression. */
const wholeIn = (node: ts.Expression): string | undefined =>
  ts.isNumericLiteral(node) && /^\d+$/.test(node.text) ? node.text : undefined;

/** Opens a writer of C for a source. */
export function openCWriter(source: Source): CWriter {
  const { checker } = source;
  const names = new Map<string, string>();
  const functions: string[] = [];
  const keyOf = openKeys();
  /** Arrays of modules that functions write what they need for a moment into. */
  const scratch = new Map<ts.Expression, string>();

  function use(code: Code, types: readonly CType[], name: string, part?: number): string {
    const key = [keyOf(code), part, ...types].join('|');
    const known = names.get(key);
    if (known !== undefined) return known;
    const unique = `${name.replaceAll(/\W/g, '_')}_${String(names.size)}`;
    names.set(key, unique);
    functions.push(writeFunction(code, types, unique, part));
    return unique;
  }

  function writeFunction(code: Code, types: readonly CType[], name: string, part?: number): string {
    const locals = new Map<ts.Symbol, CType>();
    const parameters = code.node.parameters.map((parameter, index) => {
      if (!ts.isIdentifier(parameter.name)) throw new NotTranslated(parameter, 'not a plain parameter');
      locals.set(symbolOf(checker, parameter.name), types[index]);
      return `${lengthOf(types[index]) === undefined ? types[index] : 'double *'} ${parameter.name.text}`;
    });
    const body = code.node.body;
    if (body === undefined) throw new NotTranslated(code.node, 'no body');
    const scope = { code, locals, part };
    const nothing = part === undefined && returnsNothing(code.node);
    const lines = ts.isBlock(body)
      ? body.statements.map((statement) => write(statement, scope))
      : [`return ${read(partOf(body, part), scope).text};`];
    const given = code.node.type?.getText() === 'i32' ? 'int' : 'double';
    return `static inline ${nothing ? 'void' : given} ${name}(${parameters.join(', ')}) {\n${lines.join('\n')}\n}`;
  }

  function returnsNothing(node: Code['node']): boolean {
    const signature = checker.getSignatureFromDeclaration(node);
    if (signature === undefined) throw new NotTranslated(node, 'no signature');
    const type = checker.typeToString(checker.getReturnTypeOfSignature(signature));
    if (type !== 'void' && type !== 'number') throw new NotTranslated(node, `it returns ${type}`);
    return type === 'void';
  }

  /** The entry of a list that is returned which a function is to give; all of it where it is no list. */
  function partOf(returned: ts.Expression, part: number | undefined): ts.Expression {
    if (part === undefined) return returned;
    const whole = bare(returned);
    if (!ts.isArrayLiteralExpression(whole)) throw new NotTranslated(returned, 'not a list returned');
    return whole.elements[part];
  }

  interface Scope {
    readonly code: Code;
    readonly part: number | undefined;
    readonly locals: Map<ts.Symbol, CType>;
  }

  function declare(list: ts.VariableDeclarationList, scope: Scope, type: CType): string {
    const constant = list.flags & ts.NodeFlags.Const ? 'const ' : '';
    return list.declarations
      .map(({ name, initializer, type: annotation }) => {
        if (initializer === undefined) throw new NotTranslated(name, 'not a variable with a value');
        if (ts.isArrayBindingPattern(name)) return declareParts(name, initializer, scope);
        if (!ts.isIdentifier(name)) throw new NotTranslated(name, 'not a plain variable');
        const room = roomOf(checker, initializer);
        const list = ts.isArrayLiteralExpression(initializer) ? initializer.elements : [];
        const length = room ?? (list.length > 0 ? list.length : undefined);
        if (length !== undefined) {
          const value = list.map((entry) => read(entry, scope).text).join(', ') || '0';
          scope.locals.set(symbolOf(checker, name), `double[${length}]`);
          return `double ${name.text}[${String(length)}] = {${value}};`;
        }
        const value = read(initializer, scope);
        const whole = value.type === 'int' || annotation?.getText() === 'i32';
        const own = whole ? 'int' : type;
        scope.locals.set(symbolOf(checker, name), own);
        return `${constant}${own} ${name.text} = ${value.text};`;
      })
      .join(' ');
  }

  /** `const [a, b] = ...` of a list that is written out, kept, or returned by a function. */
  function declareParts(names: ts.ArrayBindingPattern, from: ts.Expression, scope: Scope): string {
    return names.elements
      .map((name, i) => {
        if (!ts.isBindingElement(name) || !ts.isIdentifier(name.name))
          throw new NotTranslated(name, 'not a plain variable');
        const value = ts.isArrayLiteralExpression(from)
          ? read(from.elements[i], scope).text
          : ts.isCallExpression(from)
            ? readCall(from, scope, i).text
            : `${read(from, scope).text}[${String(i)}]`;
        scope.locals.set(symbolOf(checker, name.name), 'double');
        return `const double ${name.name.text} = ${value};`;
      })
      .join(' ');
  }

  function write(statement: ts.Statement, scope: Scope): string {
    if (ts.isBlock(statement)) return `{\n${statement.statements.map((s) => write(s, scope)).join('\n')}\n}`;
    if (ts.isReturnStatement(statement)) {
      if (statement.expression === undefined) return 'return;';
      return `return ${read(partOf(bare(statement.expression), scope.part), scope).text};`;
    }
    if (ts.isVariableStatement(statement)) return declare(statement.declarationList, scope, 'double');
    if (ts.isExpressionStatement(statement))
      return writeFill(statement.expression, scope) ?? `${read(statement.expression, scope).text};`;
    if (ts.isIfStatement(statement)) {
      const otherwise = statement.elseStatement ? ` else ${write(statement.elseStatement, scope)}` : '';
      return `if (${read(statement.expression, scope).text}) ${write(statement.thenStatement, scope)}${otherwise}`;
    }
    if (ts.isForStatement(statement)) {
      const { initializer, condition, incrementor } = statement;
      if ((initializer && !ts.isVariableDeclarationList(initializer)) || !condition || !incrementor) {
        throw new NotTranslated(statement, 'not a loop that counts');
      }
      const start = initializer ? declare(initializer, scope, 'int') : ';';
      const head = `${start} ${read(condition, scope).text}; ${read(incrementor, scope).text}`;
      return `for (${head}) ${write(statement.statement, scope)}`;
    }
    throw new NotTranslated(statement, 'a statement of an unknown form');
  }

  /** `array.fill(value)`; undefined for anything else. */
  function writeFill(node: ts.Expression, scope: Scope): string | undefined {
    if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return undefined;
    const { expression, name } = node.expression;
    if (name.text !== 'fill') return undefined;
    const { text, type } = read(expression, scope);
    const length = lengthOf(type);
    if (length === undefined) throw new NotTranslated(node, 'an array whose length is not known');
    return `for (int q = 0; q < ${String(length)}; q++) ${text}[q] = ${read(node.arguments[0], scope).text};`;
  }

  function read(node: ts.Expression, scope: Scope): Value {
    const double = (text: string): Value => ({ text, type: 'double' });
    if (ts.isNumericLiteral(node)) return double(/^\d+$/.test(node.text) ? `${node.text}.0` : node.text);
    if (ts.isParenthesizedExpression(node)) {
      const inner = read(node.expression, scope);
      return { ...inner, text: `(${inner.text})` };
    }
    if (ts.isIdentifier(node)) return readName(node, scope);
    if (ts.isPrefixUnaryExpression(node)) {
      const sign = node.operator === ts.SyntaxKind.MinusToken ? '-' : '!';
      if (node.operator !== ts.SyntaxKind.MinusToken && node.operator !== ts.SyntaxKind.ExclamationToken) {
        throw new NotTranslated(node, 'an unknown sign');
      }
      return double(`${sign}${read(node.operand, scope).text}`);
    }
    if (ts.isPostfixUnaryExpression(node)) {
      const sign = node.operator === ts.SyntaxKind.PlusPlusToken ? '++' : '--';
      return double(`${read(node.operand, scope).text}${sign}`);
    }
    if (ts.isBinaryExpression(node)) return readBinary(node, scope);
    if (ts.isConditionalExpression(node)) {
      const [condition, yes, no] = [node.condition, node.whenTrue, node.whenFalse].map((part) =>
        read(part, scope),
      );
      return double(`((${condition.text}) ? (${yes.text}) : (${no.text}))`);
    }
    if (ts.isElementAccessExpression(node)) {
      const array = read(node.expression, scope);
      const type = lengthOf(array.type) === undefined ? element[array.type] : 'double';
      if (type === undefined) throw new NotTranslated(node, `an entry of ${array.type}`);
      return { text: `${array.text}[${readIndex(node.argumentExpression, scope)}]`, type };
    }
    if (ts.isPropertyAccessExpression(node)) return readMember(node, scope);
    if (ts.isCallExpression(node)) return readCall(node, scope);
    throw new NotTranslated(node, 'an expression of an unknown form');
  }

  /** Two whole numbers make a whole one, but for their quotient, which is a number as in the source. */
  function readBinary(node: ts.BinaryExpression, scope: Scope): Value {
    const { kind } = node.operatorToken;
    const [left, right] = [read(node.left, scope), read(node.right, scope)];
    if (kind === ts.SyntaxKind.AsteriskAsteriskToken)
      return { text: `pow(${left.text}, ${right.text})`, type: 'double' };
    const operator = plainOperators[kind];
    if (operator === undefined) throw new NotTranslated(node, 'an unknown operator');
    const [a, b] = [wholeIn(node.left), wholeIn(node.right)];
    const whole =
      (left.type === 'int' && (right.type === 'int' || b !== undefined)) ||
      (a !== undefined && right.type === 'int');
    if (!whole) return { text: `${left.text} ${operator} ${right.text}`, type: 'double' };
    if (kind === ts.SyntaxKind.SlashToken)
      return { text: `(double)${left.text} / ${right.text}`, type: 'double' };
    return { text: `${a ?? left.text} ${operator} ${b ?? right.text}`, type: 'int' };
  }

  function readIndex(node: ts.Expression, scope: Scope): string {
    const worth = worthOf(checker, node);
    if (Number.isInteger(worth)) return String(worth);
    if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken) {
      return `${readIndex(node.left, scope)} + ${readIndex(node.right, scope)}`;
    }
    const value = read(node, scope);
    if (value.type !== 'int') throw new NotTranslated(node, 'an index that is not a whole number');
    return value.text;
  }

  function readName(node: ts.Identifier, scope: Scope): Value {
    const type = scope.locals.get(symbolOf(checker, node));
    if (type !== undefined) return { text: node.text, type };
    const given = scope.code.bound.get(symbolOf(checker, node));
    if (typeof given === 'boolean') return { text: given ? '1.0' : '0.0', type: 'double' };
    const worth = worthOf(checker, node);
    if (worth !== undefined) return { text: literal(worth), type: 'double' };
    const behind = constantBehind(checker, node);
    const room = behind && roomOf(checker, behind);
    if (behind && room !== undefined) {
      const known = scratch.get(behind) ?? `scratch_${String(scratch.size)}`;
      if (!scratch.has(behind)) functions.push(`static double ${known}[${String(room)}];`);
      scratch.set(behind, known);
      return { text: known, type: `double[${room}]` };
    }
    throw new NotTranslated(node, 'a name that is no local and no number');
  }

  function readMember(node: ts.PropertyAccessExpression, scope: Scope): Value {
    const text = node.getText();
    if (text === 'Math.LN10') return { text: 'M_LN10', type: 'double' };
    if (text === 'Number.NaN') return { text: 'NAN', type: 'double' };
    const worth = worthOf(checker, node);
    if (worth !== undefined) return { text: literal(worth), type: 'double' };
    const owner = read(node.expression, scope);
    if (owner.type !== 'const AcidBase *') throw new NotTranslated(node, `a member of ${owner.type}`);
    return { text: `${owner.text}->${node.name.text}`, type: 'double' };
  }

  /** @param part which entry of the list that is returned, where it is a list */
  function readCall(node: ts.CallExpression, scope: Scope, part?: number): Value {
    const callee = node.expression;
    if (callee.getText() === 'Number.isFinite')
      return { text: `isfinite(${read(node.arguments[0], scope).text})`, type: 'int' };
    const called = mathematicsName(checker, callee);
    if (called !== undefined) {
      const name = mathematics[called];
      if (name === undefined) throw new NotTranslated(node, 'an unknown function');
      const list = node.arguments.map((argument) => read(argument, scope).text).join(', ');
      return { text: `${name}(${list})`, type: 'double' };
    }
    const code = calledBy(checker, callee, scope.code);
    if (code === undefined) throw new NotTranslated(node, 'a call of an unknown form');
    const values = node.arguments.map((argument, index): Value => {
      const whole = ts.isNumericLiteral(argument) && /^\d+$/.test(argument.text);
      const place = code.node.parameters[index].type?.getText() === 'i32';
      return place || (whole && isPlace(checker, code, index))
        ? { text: readIndex(argument, scope), type: 'int' }
        : read(argument, scope);
    });
    const types = values.map(({ type }) => type);
    const list = values.map(({ text }) => text).join(', ');
    return { text: `${use(code, types, callee.getText(), part)}(${list})`, type: 'double' };
  }

  return { use, text: () => functions.join('\n\n') };
}
