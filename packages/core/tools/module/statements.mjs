/** Statements of the subset as WebAssembly: the body of one function. */
import ts from 'typescript';
import { signed, unsigned } from './bytes.mjs';
import { ELEMENT, Expressions, HEAD, isList, load } from './expressions.mjs';
import { refuse } from './files.mjs';

const K = ts.SyntaxKind;
const [BLOCK, LOOP, IF, ELSE, END] = [0x02, 0x03, 0x04, 0x05, 0x0b];
const [BRANCH, BRANCH_IF, RETURN, DROP] = [0x0c, 0x0d, 0x0f, 0x1a];
const [SET, TEE, GET, SET_SHARED] = [0x21, 0x22, 0x20, 0x24];
const NOTHING = 0x40;
const EQZ = 0x45;
const STORE = { floats: [0x39, 3], ints: [0x36, 2] };
/** `x += e` and its like: the operation on the numbers. */
const UPDATES = {
  [K.PlusEqualsToken]: { i32: 0x6a, f64: 0xa0 },
  [K.MinusEqualsToken]: { i32: 0x6b, f64: 0xa1 },
  [K.AsteriskEqualsToken]: { i32: 0x6c, f64: 0xa2 },
  [K.SlashEqualsToken]: { f64: 0xa3 },
};
export const lowered = (type) => (type === 'f64' ? 'f64' : 'i32');

/** Makes the body of a function. */
export class Body {
  /** @param whole the module that is made: see compile.mjs */
  constructor(whole, described) {
    this.whole = whole;
    this.described = described;
    this.file = described.file;
    this.refuse = refuse;
    this.scopes = [new Map()];
    /** Types of all locals, parameters first. */
    this.locals = [];
    /** Open blocks, innermost last: `break` and `continue` name those that they leave. */
    this.open = [];
    /** Functions that are being put in the place of their calls. */
    this.unfolding = [];
    this.expressions = new Expressions(this);
    /** What parts the parameters that are no single name. */
    this.parting = [];
    for (const { type } of described.parameters) this.locals.push(type);
    described.parameters.forEach(({ pattern, type }, index) => {
      if (pattern === undefined) return;
      const value = { type, code: [GET, ...unsigned(index)] };
      if (ts.isIdentifier(pattern)) this.name(pattern.text, { ...value, index, changes: false });
      else this.parting.push(...this.parts(pattern, value));
    });
  }

  /** The code, and the types of what is no parameter. */
  made() {
    const { node } = this.described;
    const code = [...this.parting];
    if (ts.isBlock(node.body)) code.push(...this.block(node.body.statements));
    else if (this.described.result === 'void') code.push(...this.effect(node.body));
    else code.push(...this.expressions.as(node.body, this.described.result), RETURN);
    // The end of what gives a number is never reached: every way through it returns.
    if (this.described.result !== 'void') code.push(0x00);
    return { code, locals: this.locals.slice(this.described.parameters.length).map(lowered) };
  }

  /** What a name stands for: what is declared in the function, or in its file. */
  find(name) {
    return this.scopes.findLast((scope) => scope.has(name))?.get(name) ?? this.whole.find(this.file, name);
  }

  record(type) {
    return this.whole.files.record(type);
  }

  lengthOf(constant) {
    return this.whole.lengthOf(constant);
  }

  called(entity, given) {
    return this.whole.described(
      entity,
      given.map(({ type }) => type),
    );
  }

  indexOf(called) {
    return this.whole.indexOf(called);
  }

  /** What is made with the names of another file alone. */
  inFile(file, make) {
    const held = [this.file, this.scopes];
    [this.file, this.scopes] = [file, [new Map()]];
    const made = make();
    [this.file, this.scopes] = held;
    return made;
  }

  /** A function that is one expression, in the place of its call. */
  unfolded({ file, node, parameters, expression, result }, given, values) {
    if (this.unfolding.includes(node))
      return this.refuse(node, 'a function that calls itself must be written in statements');
    const code = [];
    const named = parameters.map(({ type }, i) => {
      const { literal, index: from } = given[i];
      const whole = type === given[i].type;
      // What is one name or one number need not be held twice.
      if (whole && from !== undefined) return { type, code: values[i], index: from };
      if (literal !== undefined) return { type, code: values[i], literal: whole ? literal : undefined };
      const index = this.local(type);
      code.push(...values[i], SET, ...unsigned(index));
      return { type, code: [GET, ...unsigned(index)], index };
    });
    this.unfolding.push(node);
    const body = this.inFile(file, () => {
      parameters.forEach(({ pattern }, i) => this.name(pattern.text, named[i]));
      return this.expressions.as(expression, result);
    });
    this.unfolding.pop();
    return { type: result, code: [...code, ...body] };
  }

  local(type) {
    this.locals.push(type);
    return this.locals.length - 1;
  }

  name(name, value) {
    this.scopes.at(-1).set(name, value);
  }

  declare(name, type, changes) {
    const index = this.local(type);
    this.name(name, { type, code: [GET, ...unsigned(index)], index, changes });
    return index;
  }

  /** Names fields of a record, or the first ones of a list. */
  parts(pattern, value) {
    return [...pattern.elements].flatMap((each, i) => {
      if (ts.isOmittedExpression(each)) return [];
      if (each.initializer !== undefined || each.dotDotDotToken !== undefined)
        return this.refuse(each, 'one name with its value is expected');
      const part = ts.isObjectBindingPattern(pattern)
        ? this.expressions.field(value, each, (each.propertyName ?? each.name).getText())
        : this.expressions.entry(value, [0x41, ...signed(i)]);
      if (ts.isIdentifier(each.name))
        return [...part.code, SET, ...unsigned(this.declare(each.name.text, part.type, false))];
      const index = this.local(part.type);
      const held = { type: part.type, code: [GET, ...unsigned(index)] };
      return [...part.code, SET, ...unsigned(index), ...this.parts(each.name, held)];
    });
  }

  block(statements) {
    this.scopes.push(new Map());
    const code = [...statements].flatMap((statement) => this.statement(statement));
    this.scopes.pop();
    return code;
  }

  statement(node) {
    if (ts.isBlock(node)) return this.block(node.statements);
    if (ts.isVariableStatement(node)) return this.declarations(node.declarationList, false);
    if (ts.isExpressionStatement(node)) return this.effect(node.expression);
    if (ts.isIfStatement(node)) return this.choice(node);
    if (ts.isForStatement(node)) return this.loop(node, node.initializer, node.condition, node.incrementor);
    if (ts.isForOfStatement(node)) return this.each(node);
    if (ts.isWhileStatement(node)) return this.loop(node, undefined, node.expression, undefined);
    if (ts.isReturnStatement(node)) return this.leave(node);
    if (ts.isBreakStatement(node) && node.label === undefined) return this.jump(node, 'break');
    if (ts.isContinueStatement(node) && node.label === undefined) return this.jump(node, 'continue');
    return this.refuse(node, 'no such statement in the subset');
  }

  /** @param counting whether they stand at the head of a loop, where a literal that is whole begins a count */
  declarations(list, counting) {
    if ((list.flags & (ts.NodeFlags.Let | ts.NodeFlags.Const)) === 0)
      return this.refuse(list, 'let or const is expected');
    const changes = (list.flags & ts.NodeFlags.Const) === 0;
    return [...list.declarations].flatMap((node) => this.declaration(node, changes, counting));
  }

  declaration(node, changes, counting) {
    const { name, initializer } = node;
    if (initializer === undefined) return this.refuse(node, 'one name with its value is expected');
    if (ts.isArrayBindingPattern(name) && ts.isArrayLiteralExpression(initializer)) {
      if (
        name.elements.length !== initializer.elements.length ||
        !name.elements.every((each) => ts.isBindingElement(each) && ts.isIdentifier(each.name))
      )
        return this.refuse(node, 'one name with its value is expected');
      const given = initializer.elements.map((each) => this.expressions.of(each));
      return name.elements.flatMap((each, i) => [
        ...given[i].code,
        SET,
        ...unsigned(this.declare(each.name.text, given[i].type, changes)),
      ]);
    }
    const given = this.expressions.of(initializer);
    if (ts.isObjectBindingPattern(name)) {
      const index = this.local(given.type);
      const held = { type: given.type, code: [GET, ...unsigned(index)] };
      return [...given.code, SET, ...unsigned(index), ...this.parts(name, held)];
    }
    if (!ts.isIdentifier(name)) return this.refuse(node, 'one name with its value is expected');
    const free = given.literal !== undefined && !counting ? 'f64' : given.type;
    const type = node.type === undefined ? free : this.whole.files.typeOf(node.type, this.file);
    const code = this.expressions.cast(initializer, given, type);
    return [...code, SET, ...unsigned(this.declare(name.text, type, changes))];
  }

  effect(node) {
    if (ts.isCallExpression(node)) {
      const { type, code } = this.expressions.of(node);
      return type === 'void' ? code : [...code, DROP];
    }
    const one = ts.isPostfixUnaryExpression(node) || ts.isPrefixUnaryExpression(node);
    if (one && (node.operator === K.PlusPlusToken || node.operator === K.MinusMinusToken)) {
      const [type, update] = [this.variable(node.operand), node.operator === K.PlusPlusToken ? 0x6a : 0x6b];
      if (type.type !== 'i32') return this.refuse(node, 'only whole numbers are counted on');
      return [...type.code, 0x41, 1, update, ...this.setting(type)];
    }
    if (!ts.isBinaryExpression(node)) return this.refuse(node, 'no such statement in the subset');
    const operator = node.operatorToken.kind;
    if (operator === K.CommaToken) return [...this.effect(node.left), ...this.effect(node.right)];
    const update = UPDATES[operator];
    if (operator !== K.EqualsToken && update === undefined)
      return this.refuse(node, 'no such operation in the subset');
    return ts.isElementAccessExpression(node.left) ? this.store(node, update) : this.assign(node, update);
  }

  variable(node) {
    const found = ts.isIdentifier(node) ? this.find(node.text) : undefined;
    if (found?.changes !== true) return this.refuse(node, 'a variable is expected');
    return found;
  }

  /** Sets a variable of the function, or of the module. */
  setting({ index, variable }) {
    return variable === undefined ? [SET, ...unsigned(index)] : [SET_SHARED, ...unsigned(variable)];
  }

  assign(node, update) {
    const found = this.variable(node.left);
    const { type } = found;
    const value = this.expressions.as(node.right, type);
    if (update === undefined) return [...value, ...this.setting(found)];
    if (update[type] === undefined) return this.refuse(node, `no such operation on ${type}`);
    return [...found.code, ...value, update[type], ...this.setting(found)];
  }

  store(node, update) {
    const { array, code, offset } = this.expressions.address(node.left);
    const type = ELEMENT[array];
    const put = [...STORE[array], ...unsigned(offset)];
    const value = this.expressions.as(node.right, type);
    if (update === undefined) return [...code, ...value, ...put];
    if (update[type] === undefined) return this.refuse(node, `no such operation on ${type}`);
    const place = unsigned(this.local('i32'));
    return [...code, TEE, ...place, GET, ...place, ...load(type, offset), ...value, update[type], ...put];
  }

  /** What is made while a block is open. */
  within(label, make) {
    this.open.push(label);
    const code = make();
    this.open.pop();
    return code;
  }

  choice(node) {
    const condition = this.expressions.as(node.expression, 'bool');
    const [yes, no] = this.within('if', () => [
      this.block([node.thenStatement]),
      node.elseStatement === undefined ? undefined : this.block([node.elseStatement]),
    ]);
    return [...condition, IF, NOTHING, ...yes, ...(no === undefined ? [] : [ELSE, ...no]), END];
  }

  loop(node, first, condition, next) {
    this.scopes.push(new Map());
    const begin = first === undefined ? [] : this.beginning(first);
    const inside = this.within('break', () =>
      this.within('loop', () => {
        const stop =
          condition === undefined ? [] : [...this.expressions.as(condition, 'bool'), EQZ, BRANCH_IF, 1];
        const body = this.within('continue', () => this.block([node.statement]));
        const step = next === undefined ? [] : this.effect(next);
        return [...stop, BLOCK, NOTHING, ...body, END, ...step, BRANCH, 0];
      }),
    );
    this.scopes.pop();
    return [...begin, BLOCK, NOTHING, LOOP, NOTHING, ...inside, END, END];
  }

  /** A loop over the records of a list. */
  each(node) {
    const list = this.expressions.of(node.expression);
    const names = ts.isVariableDeclarationList(node.initializer) ? node.initializer.declarations : [];
    if (!isList(list.type) || names.length !== 1) return this.refuse(node, 'no such statement in the subset');
    this.scopes.push(new Map());
    const [at, end] = [this.local('i32'), this.local('i32')].map(unsigned);
    const { size } = this.record(list.type);
    const begin = [
      ...list.code,
      TEE,
      ...at,
      0x41,
      HEAD,
      0x6a,
      GET,
      ...at,
      ...load('i32', 0),
      0x41,
      ...signed(size),
      0x6c,
      0x6a,
      SET,
      ...end,
    ];
    const first = [GET, ...at, 0x41, HEAD, 0x6a, SET, ...at];
    const inside = this.within('break', () =>
      this.within('loop', () => {
        const record = { type: `{${list.type.slice(1, -1)}}`, code: [GET, ...at] };
        const { name } = names[0];
        const parted = ts.isIdentifier(name)
          ? [...record.code, SET, ...unsigned(this.declare(name.text, record.type, false))]
          : this.parts(name, record);
        const body = this.within('continue', () => this.block([node.statement]));
        const stop = [GET, ...at, GET, ...end, 0x46, BRANCH_IF, 1];
        return [
          ...stop,
          ...parted,
          BLOCK,
          NOTHING,
          ...body,
          END,
          GET,
          ...at,
          0x41,
          ...signed(size),
          0x6a,
          SET,
          ...at,
          BRANCH,
          0,
        ];
      }),
    );
    this.scopes.pop();
    return [...begin, ...first, BLOCK, NOTHING, LOOP, NOTHING, ...inside, END, END];
  }

  beginning(node) {
    return ts.isVariableDeclarationList(node) ? this.declarations(node, true) : this.effect(node);
  }

  jump(node, label) {
    const at = this.open.lastIndexOf(label);
    if (at < 0) return this.refuse(node, `${label} outside a loop`);
    return [BRANCH, ...unsigned(this.open.length - 1 - at)];
  }

  leave(node) {
    const { result } = this.described;
    if (node.expression === undefined)
      return result === 'void' ? [RETURN] : this.refuse(node, `${result} is expected`);
    return [...this.expressions.as(node.expression, result), RETURN];
  }
}
