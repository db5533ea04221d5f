/**
 * Makes a WebAssembly module of functions in a small subset of TypeScript, that run as they stand in JavaScript too and then do the
 * same operations in the same order, so that results are the same to the last bit.
 *
 * The subset: functions of numbers, whole numbers (`i32`, which never leave 32 bits), truths, `Float64Array` and `Int32Array` (or
 * `ArrayLike<number>`: whichever of the two it is called with), records of an `interface` with such fields and lists of them
 * (`readonly Sites[]`); `let` and `const` with a value or with a pattern that parts a record or list, `if`, `for`, `for ... of` a
 * list, `while`, `break`, `continue`, `return`; arithmetic, comparisons, `&&`, `||`, `!`, `?:`, `&`, `>>` and `| 0`, which cuts to a
 * whole number and stops where that leaves 32 bits; entries of arrays; calls; `Number.isFinite` and those of `Math` that are rounded
 * alike everywhere; constants, variables and arrays of a file and of those that it imports. What a file does beside declaring is
 * done as the module is opened. A number that is written without a point is whole where it stands beside whole numbers, in brackets
 * and at the head of a loop; else it is a number like any other. Only what is called is read: anything in it that is not of the
 * subset is refused with file, line and what stands there.
 */
import ts from 'typescript';
import { kindOf, moduleBytes, signed, unsigned, walker } from './bytes.mjs';
import { Files, isExported, refuse } from './files.mjs';
import { Body, lowered } from './statements.mjs';

/** A module that is being made. */
class Whole {
  constructor(files) {
    this.files = new Files(files);
    /** Functions by what they are and the kinds of arrays that they are called with, in the order in which they were met. */
    this.known = new Map();
    this.functions = [];
    this.variables = [];
    /** Bytes that arrays of files take. */
    this.bytes = 0;
    this.reached = new Set();
  }

  /** What a name of a file stands for, with its place in the module. */
  find(file, name) {
    const entity = this.files.find(file, name);
    if (entity?.kind === 'array') return this.array(entity);
    if (entity?.kind === 'variable') return this.variable(entity);
    return entity;
  }

  array(entity) {
    if (entity.code === undefined) {
      this.reached.add(entity.file.path);
      const { node, file } = entity;
      const [given] = node.arguments;
      const whole = /^(\w+)\.buffer$/.exec(given.getText());
      entity.from = whole === null ? this.bytes : this.find(file, whole[1]).from;
      entity.code = [0x41, ...signed(entity.from)];
      if (whole === null)
        this.bytes += 8 * Math.ceil((this.count(given, file) * (entity.type === 'floats' ? 8 : 4)) / 8);
    }
    return entity;
  }

  variable(entity) {
    if (entity.code === undefined) {
      this.reached.add(entity.file.path);
      const { node, file } = entity;
      entity.type =
        node.type === undefined
          ? this.body(file).expressions.of(node.initializer).type
          : this.files.typeOf(node.type, file);
      entity.variable = this.variables.length;
      this.variables.push(lowered(entity.type));
      entity.code = [0x23, ...unsigned(entity.variable)];
    }
    return entity;
  }

  /** A body without parameters, for what stands in a file itself. */
  body(file) {
    return new Body(this, { file, parameters: [], result: 'void' });
  }

  /** A count that a file fixes. */
  count(node, file) {
    if (ts.isNumericLiteral(node)) return Number(node.text);
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken)
      return -this.count(node.operand, file);
    if (ts.isBinaryExpression(node)) {
      const [a, b] = [this.count(node.left, file), this.count(node.right, file)];
      const operations = { '+': a + b, '-': a - b, '*': a * b };
      return operations[node.operatorToken.getText()] ?? refuse(node, 'a count is expected');
    }
    const entity = ts.isIdentifier(node) ? this.files.find(file, node.text) : undefined;
    if (entity?.kind !== 'constant') return refuse(node, 'a count is expected');
    return this.count(entity.expression, entity.file);
  }

  /** How many things a list holds that is written down in a file. */
  lengthOf({ expression, file }) {
    const list = ts.isAsExpression(expression) ? expression.expression : expression;
    if (!ts.isArrayLiteralExpression(list)) return refuse(expression, 'a list is expected');
    const of = (each) => {
      if (!ts.isSpreadElement(each)) return 1;
      const spread = this.files.find(file, each.expression.getText());
      return spread?.kind === 'constant' ? this.lengthOf(spread) : refuse(each, 'a list is expected');
    };
    return list.elements.reduce((sum, each) => sum + of(each), 0);
  }

  /** A function as it is called with values of some types. */
  described({ node, file }, given = [], types = undefined) {
    if (node.body === undefined || node.typeParameters !== undefined || node.asteriskToken !== undefined)
      return refuse(node, 'no such function in the subset');
    const parameters = node.parameters.map((each, i) => {
      if (
        each.initializer !== undefined ||
        each.dotDotDotToken !== undefined ||
        each.questionToken !== undefined
      )
        return refuse(each, 'no such parameter in the subset');
      const type =
        each.type === undefined && types !== undefined
          ? types.parameters[i]
          : this.files.typeOf(each.type, file);
      if (type !== 'like') return { pattern: each.name, type };
      return { pattern: each.name, type: given[i] === 'ints' ? 'ints' : 'floats' };
    });
    // What it is handed and does not name.
    for (const type of types?.parameters.slice(parameters.length) ?? []) parameters.push({ type });
    const result =
      node.type === undefined && types !== undefined ? types.result : this.files.typeOf(node.type, file);
    if (result === 'floats' || result === 'ints') return refuse(node, 'a function gives no array');
    return { node, file, parameters, result, expression: expressionOf(node, parameters, result) };
  }

  /** The place of a function in the module. */
  indexOf(called) {
    const key = [called.file.path, called.node.pos, ...called.parameters.map(({ type }) => type)].join(' ');
    let index = this.known.get(key);
    if (index === undefined) {
      index = this.functions.length;
      this.known.set(key, index);
      this.reached.add(called.file.path);
      this.functions.push({
        called,
        exported: undefined,
        parameters: called.parameters.map(({ type }) => lowered(type)),
        results: called.result === 'void' ? [] : [lowered(called.result)],
      });
    }
    return index;
  }

  /** Makes what was met, and what is met by that. */
  finish() {
    for (const each of this.functions) {
      if (each.code === undefined) Object.assign(each, new Body(this, each.called).made());
    }
  }

  /** A function that does what the files that were reached do beside declaring, or -1 where they do nothing. */
  start(paths) {
    const doing = this.files
      .inOrder(paths)
      .flatMap((file) => (this.reached.has(file.path) ? file.doing.map((node) => ({ file, node })) : []));
    if (doing.length === 0) return -1;
    const body = this.body(doing[0].file);
    const code = doing.flatMap(({ file, node }) =>
      body.inFile(file, () => {
        if (!ts.isVariableDeclaration(node)) return body.statement(node);
        const found = this.find(file, node.name.text);
        return [...body.expressions.as(node.initializer, found.type), ...body.setting(found)];
      }),
    );
    this.functions.push({ parameters: [], results: [], locals: body.locals.map(lowered), code });
    return this.functions.length - 1;
  }
}

/** The expression that a function is, where it is no more than that and each of its parameters is one name. */
function expressionOf({ body }, parameters, result) {
  if (
    result === 'void' ||
    !parameters.every(({ pattern }) => pattern !== undefined && ts.isIdentifier(pattern))
  )
    return undefined;
  if (!ts.isBlock(body)) return body;
  const [only, ...more] = body.statements;
  return more.length === 0 && only !== undefined && ts.isReturnStatement(only) ? only.expression : undefined;
}

/** Objects of an interface that have a `name`: their names, and for each member of those its functions. */
function walked(whole, { path, type, members }) {
  const file = whole.files.files.get(path);
  const { node } = whole.files.find(file, type, 'types');
  const objects = [...whole.files.files.values()].flatMap((each) =>
    [...each.names.values()].filter((entity) => {
      const of = entity.kind === 'object' ? entity.type?.getText() : undefined;
      return of === type && whole.files.find(each, of, 'types')?.node === node;
    }),
  );
  const part = (object, name) =>
    object.node.properties.find((each) => each.name.getText() === name)?.initializer;
  const named = objects.filter((object) => part(object, 'name') !== undefined);
  const types = members.map((member) => {
    const { type: written } = node.members.find((each) => each.name.getText() === member);
    return {
      parameters: written.parameters.map((each) => whole.files.typeOf(each.type, file)),
      result: whole.files.typeOf(written.type, file),
    };
  });
  const indices = named.map((object) =>
    members.map((member, m) => {
      const given = { node: part(object, member), file: object.file };
      return whole.indexOf(whole.described(given, types[m].parameters, types[m]));
    }),
  );
  return { names: named.map((object) => part(object, 'name').text), table: indices.flat(), types };
}

/**
 * Makes the module.
 * @param files each with its `path`, for messages and imports, and its `text`
 * @param options `from`: paths of the files whose exported functions the module exports, all unless said otherwise; `walk`: the
 *   interface (`path`, `type`) of objects that lie in a table of functions by their `members`, each of which the module exports
 *   as a function that is handed a list of pairs (place in the table, address of a list), how many they are, and what else the
 *   member takes
 * @returns `bytes`; `statics`, bytes from 0 on that the module keeps for itself; `records`, the fields of each record in their
 *   order; `names`, of the objects of the table
 * @throws SyntaxError at what is not of the subset
 */
export function compiled(files, { from = files.map(({ path }) => path), walk } = {}) {
  const whole = new Whole(files);
  for (const path of from) {
    for (const [name, entity] of whole.files.files.get(path).names) {
      if (entity.kind !== 'function' || !isOut(entity.node)) continue;
      whole.functions[whole.indexOf(whole.described(entity))].exported = name;
    }
  }
  const objects = walk === undefined ? { names: [], table: [], types: [] } : walked(whole, walk);
  whole.finish();
  const start = whole.start([...whole.files.files.keys()]);
  whole.finish();
  const { functions, variables } = whole;
  objects.types.forEach(({ parameters }, offset) => {
    const kind = kindOf(functions, objects.table[offset]);
    const made = walker({ parameters: parameters.map(lowered), kind, offset });
    functions.push({ ...made, exported: walk.members[offset] });
  });
  return {
    bytes: moduleBytes(functions, { variables, start, table: objects.table }),
    statics: whole.bytes,
    records: Object.fromEntries(
      [...whole.files.records].map(([name, { fields }]) => [name, [...fields.keys()]]),
    ),
    names: objects.names,
  };
}

/** Whether a function, or the constant that it is, is exported. */
const isOut = (node) => isExported(ts.isArrowFunction(node) ? node.parent.parent.parent : node);
