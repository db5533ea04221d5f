import ts from 'typescript';
import { declarationOf, NotTranslated, symbolOf, type Code, type Source } from './code.js';
import { bare } from './constants.js';

/** Source of the rate of a process and of its partials. */
export interface ProcessCode {
  readonly rate: Code;
  readonly partials: Code;
}

type Bound = Code['bound'];
type Members = ReadonlyMap<string, { readonly value: ts.Expression; readonly bound: Bound }>;

/** Finds the source of every process in `processes/index.ts`, by its id. */
export function processCodes(source: Source): ReadonlyMap<string, ProcessCode> {
  const list = source.constant('processes/index.ts', 'list');
  if (!ts.isArrayLiteralExpression(list)) throw new NotTranslated(list, 'not a list of processes');
  return new Map(
    list.elements.map((element) => {
      const members = membersOf(source, element, new Map());
      const id = members.get('id')?.value;
      if (id === undefined || !ts.isStringLiteral(id)) throw new NotTranslated(element, 'no id');
      return [
        id.text,
        {
          rate: functionOf(source, element, members, 'rate'),
          partials: functionOf(source, element, members, 'partials'),
        },
      ];
    }),
  );
}

function functionOf(source: Source, at: ts.Node, members: Members, name: string): Code {
  const member = members.get(name);
  if (member === undefined) throw new NotTranslated(at, `no ${name}`);
  return codeOf(source, member.value, member.bound);
}

/** The function that an expression stands for. */
function codeOf(source: Source, value: ts.Expression, bound: Bound): Code {
  if (ts.isArrowFunction(value)) return { node: value, bound };
  if (!ts.isIdentifier(value)) throw new NotTranslated(value, 'not a function');
  const given = bound.get(symbolOf(source.checker, value));
  if (typeof given === 'object') return given;
  const declaration = declarationOf(source.checker, value);
  if (ts.isFunctionDeclaration(declaration)) return { node: declaration, bound: new Map() };
  if (ts.isVariableDeclaration(declaration) && declaration.initializer !== undefined) {
    return codeOf(source, declaration.initializer, new Map());
  }
  throw new NotTranslated(value, 'not a function');
}

/** Members of an object: written out, spread from a constant, or made by a function that returns one. */
function membersOf(source: Source, written: ts.Expression, bound: Bound): Members {
  const { checker } = source;
  const value = bare(written);
  if (ts.isObjectLiteralExpression(value)) {
    const members = new Map<string, { value: ts.Expression; bound: Bound }>();
    for (const property of value.properties) {
      if (ts.isSpreadAssignment(property)) {
        for (const [name, member] of membersOf(source, property.expression, bound)) members.set(name, member);
      } else if (ts.isPropertyAssignment(property)) {
        members.set(property.name.getText(), { value: property.initializer, bound });
      } else if (property.name !== undefined) {
        // Of another form: whoever asks for it is told that it is not there.
        members.delete(property.name.getText());
      }
    }
    return members;
  }
  // A constant of the module, or of a module imported whole.
  const name = ts.isPropertyAccessExpression(value) ? value.name : value;
  if (ts.isIdentifier(name)) {
    const declaration = declarationOf(checker, name);
    if (!ts.isVariableDeclaration(declaration) || declaration.initializer === undefined) {
      throw new NotTranslated(value, 'not a constant');
    }
    return membersOf(source, declaration.initializer, new Map());
  }
  if (ts.isCallExpression(value) && ts.isIdentifier(value.expression)) {
    const { parameters, object } = makerOf(checker, value.expression);
    const inner = new Map<ts.Symbol, Code | boolean>();
    parameters.forEach((parameter, index) => {
      if (!ts.isIdentifier(parameter.name)) throw new NotTranslated(parameter, 'not a plain parameter');
      const given = value.arguments[index];
      if (given === undefined) throw new NotTranslated(value, 'an argument is missing');
      inner.set(symbolOf(checker, parameter.name), truthOf(given) ?? codeOf(source, given, bound));
    });
    return membersOf(source, object, inner);
  }
  throw new NotTranslated(value, 'not an object');
}

/** `true` and `false`; undefined for anything else. */
function truthOf({ kind }: ts.Expression): boolean | undefined {
  if (kind === ts.SyntaxKind.TrueKeyword) return true;
  return kind === ts.SyntaxKind.FalseKeyword ? false : undefined;
}

/** Parameters of a function that only returns an object, and that object. */
function makerOf(
  checker: ts.TypeChecker,
  name: ts.Identifier,
): { readonly parameters: readonly ts.ParameterDeclaration[]; readonly object: ts.Expression } {
  const declaration = declarationOf(checker, name);
  if (ts.isVariableDeclaration(declaration) && declaration.initializer) {
    const arrow = bare(declaration.initializer);
    if (ts.isArrowFunction(arrow) && !ts.isBlock(arrow.body))
      return { parameters: [...arrow.parameters], object: arrow.body };
  }
  const body = ts.isFunctionDeclaration(declaration) ? declaration.body?.statements[0] : undefined;
  if (!ts.isFunctionDeclaration(declaration) || !body || !ts.isReturnStatement(body) || !body.expression) {
    throw new NotTranslated(name, 'not a function that only returns an object');
  }
  return { parameters: [...declaration.parameters], object: body.expression };
}
