/**
 * Makes a WebAssembly module of functions in a small subset of TypeScript, that run as they stand in JavaScript too and then do the
 * same operations in the same order, so that results are the same to the last bit.
 *
 * The subset: functions of numbers, whole numbers (`i32`, which never leave 32 bits), `Float64Array` and `Int32Array`; `let` and
 * `const` with a value, `if`, `for`, `while`, `break`, `continue`, `return`; arithmetic, comparisons, `&&`, `||`, `!`, `?:`; entries of
 * arrays; calls among themselves; `Number.isFinite` and those of `Math` that are rounded alike everywhere; constants of the
 * file. A number that is written without a point is whole where it stands beside whole numbers, in brackets and at the head of a
 * loop; else it is a number like any other. Anything else is refused with file, line and what stands there.
 */
import ts from 'typescript';
import { moduleBytes } from './bytes.mjs';
import { Body, lowered } from './statements.mjs';

const TYPES = { number: 'f64', i32: 'i32', Float64Array: 'floats', Int32Array: 'ints', void: 'void' };

/** Throws with the place of a node. */
function refuse(node, why) {
  const file = node.getSourceFile();
  const { line } = file.getLineAndCharacterOfPosition(node.getStart());
  throw new SyntaxError(`${file.fileName}:${line + 1}: ${why}: ${node.getText().split('\n')[0]}`);
}

function typeOf(node) {
  const text = node?.getText() ?? 'nothing';
  if (!Object.hasOwn(TYPES, text)) throw new SyntaxError(`no type of the subset: ${text}`);
  return TYPES[text];
}

const isExported = (node) =>
  node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) === true;

/** A function as it is called. */
function described(node, index) {
  if (
    node.name === undefined ||
    node.body === undefined ||
    node.typeParameters !== undefined ||
    node.asteriskToken !== undefined
  )
    return refuse(node, 'no such function in the subset');
  const parameters = node.parameters.map((each) => {
    const plain =
      ts.isIdentifier(each.name) && each.initializer === undefined && each.dotDotDotToken === undefined;
    if (!plain || each.questionToken !== undefined) return refuse(each, 'no such parameter in the subset');
    return { name: each.name.text, type: typeOf(each.type) };
  });
  const result = typeOf(node.type);
  if (result === 'floats' || result === 'ints') return refuse(node, 'a function gives no array');
  return { node, index, parameters, result };
}

/** Functions and constants of all files, by name. */
function gathered(files) {
  const functions = new Map();
  const constants = new Map();
  const once = (node, name) => {
    if (functions.has(name) || constants.has(name)) refuse(node, 'a name given twice');
    return name;
  };
  for (const { path, text } of files) {
    const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
    for (const node of source.statements) {
      if (ts.isFunctionDeclaration(node)) {
        functions.set(once(node, node.name?.text), described(node, functions.size));
      } else if (ts.isVariableStatement(node) && (node.declarationList.flags & ts.NodeFlags.Const) !== 0) {
        for (const { name, initializer } of node.declarationList.declarations)
          constants.set(once(node, name.getText()), { expression: initializer });
      } else if (
        !ts.isImportDeclaration(node) &&
        !ts.isTypeAliasDeclaration(node) &&
        !ts.isInterfaceDeclaration(node)
      ) {
        refuse(node, 'no such declaration in the subset');
      }
    }
  }
  return { functions, constants };
}

/**
 * The bytes of the module whose exports are the exported functions of the files. Arrays are handed to them as the byte at which they
 * begin in the memory `leat.memory`.
 * @param files each with its `path`, for messages, and its `text`
 * @throws SyntaxError at what is not of the subset
 */
export function compiled(files) {
  const shared = gathered(files);
  return moduleBytes(
    [...shared.functions].map(([name, each]) => {
      const { code, locals } = new Body(shared, each, typeOf, refuse).made();
      return {
        name,
        exported: isExported(each.node),
        parameters: each.parameters.map(({ type }) => lowered(type)),
        results: each.result === 'void' ? [] : [lowered(each.result)],
        locals,
        code,
      };
    }),
  );
}
