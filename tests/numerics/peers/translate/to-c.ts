import ts from 'typescript';
import { declarationOf, NotTranslated, symbolOf, type Code, type Source } from './code.js';
import { calledBy, isPlace } from './usage.js';

/** Types that the translated subset knows. */
type CType = 'double' | 'int' | 'const double *' | 'double *' | 'const int *' | 'const AcidBase *';

/** Turns functions of the source into C, each once for the types that it is called with. */
export interface CWriter {
  /** Name of the C function for a function of the source; writes it, and what it calls, when new. */
  use(code: Code, types: readonly CType[], name: string): string;
  /** All functions written, callees first. */
  text(): string;
}

const element: Partial<Record<CType, CType>> = {
  'const double *': 'double',
  'double *': 'double',
  'const int *': 'int',
};

const mathematics: Readonly<Record<string, string>> = {
  exp: 'exp',
  log: 'log',
  log10: 'log10',
  sqrt: 'sqrt',
  abs: 'fabs',
  pow: 'pow',
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

/** Opens a writer of C for a source. */
export function openCWriter(source: Source): CWriter {
  const { checker } = source;
  const names = new Map<string, string>();
  const functions: string[] = [];
  const identities = new Map<object, number>();
  const identity = (thing: object): number => {
    const known = identities.get(thing) ?? identities.size;
    identities.set(thing, known);
    return known;
  };
  const keyOf = (code: Code, types: readonly CType[]): string =>
    [identity(code.node), ...[...code.bound.values()].map((inner) => identity(inner.node)), ...types].join(
      '|',
    );

  function use(code: Code, types: readonly CType[], name: string): string {
    const key = keyOf(code, types);
    const known = names.get(key);
    if (known !== undefined) return known;
    const unique = `${name.replaceAll(/\W/g, '_')}_${String(names.size)}`;
    names.set(key, unique);
    functions.push(writeFunction(code, types, unique));
    return unique;
  }

  function writeFunction(code: Code, types: readonly CType[], name: string): string {
    const locals = new Map<ts.Symbol, CType>();
    const parameters = code.node.parameters.map((parameter, index) => {
      if (!ts.isIdentifier(parameter.name)) throw new NotTranslated(parameter, 'not a plain parameter');
      locals.set(symbolOf(checker, parameter.name), types[index]);
      return `${types[index]} ${parameter.name.text}`;
    });
    const body = code.node.body;
    if (body === undefined) throw new NotTranslated(code.node, 'no body');
    const scope = { code, locals };
    const nothing = returnsNothing(code.node);
    const lines = ts.isBlock(body)
      ? body.statements.map((statement) => write(statement, scope))
      : [`return ${read(body, scope).text};`];
    return `static inline ${nothing ? 'void' : 'double'} ${name}(${parameters.join(', ')}) {\n${lines.join('\n')}\n}`;
  }

  function returnsNothing(node: Code['node']): boolean {
    const signature = checker.getSignatureFromDeclaration(node);
    if (signature === undefined) throw new NotTranslated(node, 'no signature');
    const type = checker.typeToString(checker.getReturnTypeOfSignature(signature));
    if (type !== 'void' && type !== 'number') throw new NotTranslated(node, `it returns ${type}`);
    return type === 'void';
  }

  interface Scope {
    readonly code: Code;
    readonly locals: Map<ts.Symbol, CType>;
  }

  function declare(list: ts.VariableDeclarationList, scope: Scope, type: CType): string {
    return list.declarations
      .map((declaration) => {
        if (!ts.isIdentifier(declaration.name) || declaration.initializer === undefined) {
          throw new NotTranslated(declaration, 'not a plain variable with a value');
        }
        const value = read(declaration.initializer, scope);
        scope.locals.set(symbolOf(checker, declaration.name), type);
        const constant = list.flags & ts.NodeFlags.Const ? 'const ' : '';
        return `${constant}${type} ${declaration.name.text} = ${value.text};`;
      })
      .join(' ');
  }

  function write(statement: ts.Statement, scope: Scope): string {
    if (ts.isBlock(statement)) return `{\n${statement.statements.map((s) => write(s, scope)).join('\n')}\n}`;
    if (ts.isReturnStatement(statement)) {
      return statement.expression === undefined
        ? 'return;'
        : `return ${read(statement.expression, scope).text};`;
    }
    if (ts.isVariableStatement(statement)) return declare(statement.declarationList, scope, 'double');
    if (ts.isExpressionStatement(statement)) return `${read(statement.expression, scope).text};`;
    if (ts.isIfStatement(statement)) {
      const otherwise = statement.elseStatement ? ` else ${write(statement.elseStatement, scope)}` : '';
      return `if (${read(statement.expression, scope).text}) ${write(statement.thenStatement, scope)}${otherwise}`;
    }
    if (ts.isForStatement(statement)) {
      const { initializer, condition, incrementor } = statement;
      if (!initializer || !ts.isVariableDeclarationList(initializer) || !condition || !incrementor) {
        throw new NotTranslated(statement, 'not a loop that counts');
      }
      const start = declare(initializer, scope, 'int');
      const head = `${start} ${read(condition, scope).text}; ${read(incrementor, scope).text}`;
      return `for (${head}) ${write(statement.statement, scope)}`;
    }
    throw new NotTranslated(statement, 'a statement of an unknown form');
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
    if (ts.isPostfixUnaryExpression(node) && node.operator === ts.SyntaxKind.PlusPlusToken) {
      return double(`${read(node.operand, scope).text}++`);
    }
    if (ts.isBinaryExpression(node)) {
      const left = read(node.left, scope).text;
      const right = read(node.right, scope).text;
      if (node.operatorToken.kind === ts.SyntaxKind.AsteriskAsteriskToken)
        return double(`pow(${left}, ${right})`);
      const operator = plainOperators[node.operatorToken.kind];
      if (operator === undefined) throw new NotTranslated(node, 'an unknown operator');
      return double(`${left} ${operator} ${right}`);
    }
    if (ts.isConditionalExpression(node)) {
      const [condition, yes, no] = [node.condition, node.whenTrue, node.whenFalse].map((part) =>
        read(part, scope),
      );
      return double(`((${condition.text}) ? (${yes.text}) : (${no.text}))`);
    }
    if (ts.isElementAccessExpression(node)) {
      const array = read(node.expression, scope);
      const type = element[array.type];
      if (type === undefined) throw new NotTranslated(node, `an entry of ${array.type}`);
      return { text: `${array.text}[${readIndex(node.argumentExpression, scope)}]`, type };
    }
    if (ts.isPropertyAccessExpression(node)) return readMember(node, scope);
    if (ts.isCallExpression(node)) return readCall(node, scope);
    throw new NotTranslated(node, 'an expression of an unknown form');
  }

  function readIndex(node: ts.Expression, scope: Scope): string {
    if (ts.isNumericLiteral(node) && /^\d+$/.test(node.text)) return node.text;
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
    const declaration = declarationOf(checker, node);
    const constant =
      ts.isVariableDeclaration(declaration) && ts.getCombinedNodeFlags(declaration) & ts.NodeFlags.Const;
    if (constant && declaration.initializer && ts.isNumericLiteral(declaration.initializer)) {
      return read(declaration.initializer, scope);
    }
    throw new NotTranslated(node, 'a name that is no local and no number');
  }

  function readMember(node: ts.PropertyAccessExpression, scope: Scope): Value {
    const text = node.getText();
    if (text === 'Math.LN10') return { text: 'M_LN10', type: 'double' };
    if (text === 'Number.NaN') return { text: 'NAN', type: 'double' };
    const owner = read(node.expression, scope);
    if (owner.type !== 'const AcidBase *') throw new NotTranslated(node, `a member of ${owner.type}`);
    return { text: `${owner.text}->${node.name.text}`, type: 'double' };
  }

  function readCall(node: ts.CallExpression, scope: Scope): Value {
    const callee = node.expression;
    if (ts.isPropertyAccessExpression(callee) && callee.expression.getText() === 'Math') {
      const name = mathematics[callee.name.text];
      if (name === undefined) throw new NotTranslated(node, 'an unknown function');
      const list = node.arguments.map((argument) => read(argument, scope).text).join(', ');
      return { text: `${name}(${list})`, type: 'double' };
    }
    const code = calledBy(checker, callee, scope.code);
    if (code === undefined) throw new NotTranslated(node, 'a call of an unknown form');
    const values = node.arguments.map((argument, index): Value => {
      const whole = ts.isNumericLiteral(argument) && /^\d+$/.test(argument.text);
      return whole && isPlace(checker, code, index)
        ? { text: argument.text, type: 'int' }
        : read(argument, scope);
    });
    const types = values.map(({ type }) => type);
    const list = values.map(({ text }) => text).join(', ');
    return { text: `${use(code, types, callee.getText())}(${list})`, type: 'double' };
  }

  return { use, text: () => functions.join('\n\n') };
}
