/** Statements of the subset as WebAssembly: the body of one function. */
import ts from 'typescript';
import { unsigned } from './bytes.mjs';
import { ELEMENT, Expressions, LOAD } from './expressions.mjs';

const K = ts.SyntaxKind;
const [BLOCK, LOOP, IF, ELSE, END] = [0x02, 0x03, 0x04, 0x05, 0x0b];
const [BRANCH, BRANCH_IF, RETURN, DROP] = [0x0c, 0x0d, 0x0f, 0x1a];
const [SET, TEE, GET] = [0x21, 0x22, 0x20];
const NOTHING = 0x40;
const EQZ = 0x45;
const STORE = { floats: [0x39, 3, 0], ints: [0x36, 2, 0] };
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
  constructor(shared, described, typeOf, refuse) {
    this.described = described;
    this.typeOf = typeOf;
    this.refuse = refuse;
    this.scopes = [new Map()];
    /** Types of all locals, parameters first. */
    this.locals = [];
    /** Open blocks, innermost last: `break` and `continue` name those that they leave. */
    this.open = [];
    const find = (name) =>
      this.scopes.findLast((scope) => scope.has(name))?.get(name) ?? shared.constants.get(name);
    this.expressions = new Expressions({ find, functions: shared.functions }, refuse);
    for (const { name, type } of described.parameters) this.declare(name, type, false);
  }

  /** The code, and the types of what is no parameter. */
  made() {
    const { body } = this.described.node;
    const code = this.block(body.statements);
    // The end of what gives a number is never reached: every way through it returns.
    if (this.described.result !== 'void') code.push(0x00);
    return { code, locals: this.locals.slice(this.described.parameters.length).map(lowered) };
  }

  declare(name, type, changes) {
    this.locals.push(type);
    const index = this.locals.length - 1;
    this.scopes.at(-1).set(name, { type, index, changes });
    return index;
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
    return list.declarations.flatMap((node) => {
      if (!ts.isIdentifier(node.name) || node.initializer === undefined)
        return this.refuse(node, 'one name with its value is expected');
      const given = this.expressions.of(node.initializer);
      const free = given.literal !== undefined && !counting ? 'f64' : given.type;
      const type = node.type === undefined ? free : this.typeOf(node.type);
      const code = this.expressions.as(node.initializer, type);
      return [...code, SET, ...unsigned(this.declare(node.name.text, type, changes))];
    });
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
      return [GET, ...unsigned(type.index), 0x41, 1, update, SET, ...unsigned(type.index)];
    }
    if (!ts.isBinaryExpression(node)) return this.refuse(node, 'no such statement in the subset');
    const operator = node.operatorToken.kind;
    const update = UPDATES[operator];
    if (operator !== K.EqualsToken && update === undefined)
      return this.refuse(node, 'no such operation in the subset');
    return ts.isElementAccessExpression(node.left) ? this.store(node, update) : this.assign(node, update);
  }

  variable(node) {
    const found = ts.isIdentifier(node) ? this.expressions.names.find(node.text) : undefined;
    if (found?.changes !== true) return this.refuse(node, 'a variable is expected');
    return found;
  }

  assign(node, update) {
    const { type, index } = this.variable(node.left);
    const place = unsigned(index);
    const value = this.expressions.as(node.right, type);
    if (update === undefined) return [...value, SET, ...place];
    if (update[type] === undefined) return this.refuse(node, `no such operation on ${type}`);
    return [GET, ...place, ...value, update[type], SET, ...place];
  }

  store(node, update) {
    const { array, code } = this.expressions.address(node.left);
    const type = ELEMENT[array];
    const value = this.expressions.as(node.right, type);
    if (update === undefined) return [...code, ...value, ...STORE[array]];
    if (update[type] === undefined) return this.refuse(node, `no such operation on ${type}`);
    this.locals.push('i32');
    const place = unsigned(this.locals.length - 1);
    return [...code, TEE, ...place, GET, ...place, ...LOAD[array], ...value, update[type], ...STORE[array]];
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
