/** Files of the subset: what each of them declares by name, what the names of another file in it stand for, and types. */
import ts from 'typescript';

const TYPES = {
  number: 'f64',
  i32: 'i32',
  boolean: 'bool',
  Float64Array: 'floats',
  Int32Array: 'ints',
  void: 'void',
  // Whichever of the two kinds of array it is called with.
  'ArrayLike<number>': 'like',
};

/** Throws with the place of a node. */
export function refuse(node, why) {
  const file = node.getSourceFile();
  const { line } = file.getLineAndCharacterOfPosition(node.getStart());
  throw new SyntaxError(`${file.fileName}:${line + 1}: ${why}: ${node.getText().split('\n')[0]}`);
}

export const isExported = (node) =>
  node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) === true;

/** Whether what a name stands for has to be worked out as the module is opened: it reads arrays or calls. */
function isWorkedOut(node) {
  if (ts.isElementAccessExpression(node) || ts.isCallExpression(node)) return true;
  return ts.forEachChild(node, isWorkedOut) ?? false;
}

const ARRAYS = { Float64Array: 'floats', Int32Array: 'ints' };

/** What a name of a file stands for by its declaration. */
function declared(node, file, changes) {
  const value = node.initializer;
  if (value === undefined) return refuse(node, 'one name with its value is expected');
  if (ts.isArrowFunction(value)) return { kind: 'function', node: value, file };
  if (ts.isObjectLiteralExpression(value)) return { kind: 'object', node: value, type: node.type, file };
  if (ts.isNewExpression(value) && Object.hasOwn(ARRAYS, value.expression.getText()))
    return { kind: 'array', node: value, type: ARRAYS[value.expression.getText()], file };
  if (changes || isWorkedOut(value)) return { kind: 'variable', node, changes, file };
  return { kind: 'constant', expression: value, file };
}

/** Path of a file that another imports. */
function pathOf(specifier, from) {
  const parts = from.split('/').slice(0, -1);
  for (const part of specifier.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.') parts.push(part);
  }
  return parts.join('/').replace(/\.js$/, '.ts');
}

/** Reads the files. */
export class Files {
  constructor(files) {
    this.files = new Map();
    this.records = new Map();
    for (const { path, text } of files) this.read(path, text);
  }

  read(path, text) {
    const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
    const file = { path, source, names: new Map(), types: new Map(), imports: [], doing: [] };
    const put = (map, node, name, entity) => {
      if (map.has(name)) refuse(node, 'a name given twice');
      map.set(name, entity);
    };
    for (const node of source.statements) {
      if (ts.isFunctionDeclaration(node))
        put(file.names, node, node.name?.text, { kind: 'function', node, file });
      else if (ts.isVariableStatement(node)) this.variables(node, file, put);
      else if (ts.isImportDeclaration(node)) this.imports(node, file, put);
      else if (ts.isInterfaceDeclaration(node))
        put(file.types, node, node.name.text, { kind: 'interface', node, file, name: node.name.text });
      else if (ts.isExpressionStatement(node) || ts.isForStatement(node)) file.doing.push(node);
      else if (!ts.isTypeAliasDeclaration(node)) refuse(node, 'no such declaration in the subset');
    }
    this.files.set(path, file);
  }

  variables(node, file, put) {
    const changes = (node.declarationList.flags & ts.NodeFlags.Const) === 0;
    if (changes && (node.declarationList.flags & ts.NodeFlags.Let) === 0)
      refuse(node, 'no such declaration in the subset');
    for (const each of node.declarationList.declarations) {
      const entity = declared(each, file, changes);
      put(file.names, each, each.name.getText(), entity);
      if (entity.kind === 'variable') file.doing.push(each);
    }
  }

  imports(node, file, put) {
    const path = pathOf(node.moduleSpecifier.text, file.path);
    const bindings = node.importClause?.namedBindings;
    if (bindings === undefined || !ts.isNamedImports(bindings)) return;
    file.imports.push(path);
    for (const each of bindings.elements) {
      const entity = { kind: 'import', path, name: (each.propertyName ?? each.name).text };
      put(file.names, each, each.name.text, entity);
      file.types.set(each.name.text, entity);
    }
  }

  /** What a name stands for in a file; undefined where nothing of the files does. */
  find(file, name, among = 'names') {
    const entity = file[among].get(name);
    if (entity?.kind !== 'import') return entity;
    const other = this.files.get(entity.path);
    return other === undefined ? undefined : this.find(other, entity.name, among);
  }

  /** A type as it is written in a file. */
  typeOf(node, file) {
    const text = node?.getText() ?? 'nothing';
    if (Object.hasOwn(TYPES, text)) return TYPES[text];
    const list = /^readonly (\w+)\[\]$/.exec(text);
    const entity = this.find(file, list?.[1] ?? text, 'types');
    if (entity?.kind !== 'interface') return refuse(node ?? file.source, 'no type of the subset');
    const known = this.records.get(entity.name);
    if (known === undefined) this.records.set(entity.name, this.laid(entity));
    else if (known.file !== entity.file) return refuse(entity.node, 'a name given twice');
    return list === null ? `{${entity.name}}` : `[${entity.name}]`;
  }

  /** A record, or what is in a list of them, by its type: bytes of each, and its fields. */
  record(type) {
    return this.records.get(type.slice(1, -1));
  }

  laid({ node, file }) {
    let size = 0;
    const fields = new Map();
    for (const member of node.members) {
      if (!ts.isPropertySignature(member)) return refuse(member, 'no such field in the subset');
      const type = this.typeOf(member.type, file);
      const bytes = type === 'f64' ? 8 : 4;
      size = bytes * Math.ceil(size / bytes);
      fields.set(member.name.getText(), { type, offset: size });
      size += bytes;
    }
    return { fields, size: 8 * Math.ceil(size / 8), file };
  }

  /** A file and those that it imports, those first. */
  inOrder(paths, seen = new Set()) {
    return paths.flatMap((path) => {
      const file = this.files.get(path);
      if (file === undefined || seen.has(path)) return [];
      seen.add(path);
      return [...this.inOrder(file.imports, seen), file];
    });
  }
}
