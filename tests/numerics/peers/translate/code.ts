import ts from 'typescript';

/**
 * A function of the source and what its free names stand for: `growing(activity, partials)` returns
 * functions whose `activity` is bound to another function; `upkeepOf(true)` such whose `fatty` is true.
 */
export interface Code {
  readonly node: ts.ArrowFunction | ts.FunctionDeclaration;
  readonly bound: ReadonlyMap<ts.Symbol, Code | boolean>;
}

/** Tells apart functions of the source with what their names are bound to. */
export function openKeys(): (code: Code) => string {
  const identities = new Map<object, number>();
  const identity = (thing: object): number => {
    const known = identities.get(thing) ?? identities.size;
    identities.set(thing, known);
    return known;
  };
  return ({ node, bound }) =>
    [
      identity(node),
      ...[...bound.values()].map((inner) => (typeof inner === 'boolean' ? inner : identity(inner.node))),
    ].join('|');
}

/** Something in the source that the translation does not understand: refused, never guessed. */
export class NotTranslated extends Error {
  constructor(node: ts.Node, why: string) {
    const file = node.getSourceFile();
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    const text = node.getText().slice(0, 80);
    super(`${file.fileName}:${String(line + 1)}: ${why}: ${text}`);
  }
}

/** The source of the library, with its types. */
export interface Source {
  readonly checker: ts.TypeChecker;
  /** Top-level function of a file, by the file's path below the source. */
  function(file: string, name: string): Code;
  /** What an exported constant of a file is set to. */
  constant(file: string, name: string): ts.Expression;
}

/** Reads the source below a folder, starting from some files there. */
export function openSource(folder: string, files: readonly string[]): Source {
  const paths = files.map((file) => `${folder}/${file}`);
  const program = ts.createProgram(paths, {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    strict: true,
    noEmit: true,
    types: [],
  });
  const statements = (file: string): readonly ts.Statement[] => {
    const source = program.getSourceFile(`${folder}/${file}`);
    if (source === undefined) throw new RangeError(`no file ${file} in the source`);
    return source.statements;
  };
  return {
    checker: program.getTypeChecker(),
    function(file, name) {
      const found = statements(file).find(
        (statement): statement is ts.FunctionDeclaration =>
          ts.isFunctionDeclaration(statement) && statement.name?.text === name,
      );
      if (found === undefined) throw new RangeError(`no function ${name} in ${file}`);
      return { node: found, bound: new Map() };
    },
    constant(file, name) {
      const found = statements(file)
        .filter(ts.isVariableStatement)
        .flatMap((statement) => statement.declarationList.declarations)
        .find((declaration) => declaration.name.getText() === name);
      if (found?.initializer === undefined) throw new RangeError(`no constant ${name} in ${file}`);
      return found.initializer;
    },
  };
}

/** The declaration that a name stands for, through imports and shorthand. */
export function declarationOf(checker: ts.TypeChecker, name: ts.Identifier): ts.Declaration {
  const symbol = symbolOf(checker, name);
  const declaration = symbol.valueDeclaration ?? symbol.declarations?.[0];
  if (declaration === undefined) throw new NotTranslated(name, 'a name without a declaration');
  return declaration;
}

/** The symbol behind a name, through imports. */
export function symbolOf(checker: ts.TypeChecker, name: ts.Identifier): ts.Symbol {
  const symbol = checker.getSymbolAtLocation(name);
  if (symbol === undefined) throw new NotTranslated(name, 'an unknown name');
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}

/** The files of the library that stand for `Math`, whose functions have the names of what it has. */
const elementary = /\/base\/(?:elementary|trigonometry)\.ts$/;

/** The name of a function of mathematics that is called, of `Math` or of the library's own; undefined for any other. */
export function mathematicsName(checker: ts.TypeChecker, callee: ts.Expression): string | undefined {
  if (ts.isPropertyAccessExpression(callee))
    return callee.expression.getText() === 'Math' ? callee.name.text : undefined;
  if (!ts.isIdentifier(callee)) return undefined;
  const declaration = declarationOf(checker, callee);
  const own = ts.isFunctionDeclaration(declaration) && elementary.test(declaration.getSourceFile().fileName);
  return own ? declaration.name?.text : undefined;
}
