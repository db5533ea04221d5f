/**
 * Expressions of the subset as WebAssembly. Each function gives { type, code }: `f64`, `i32` (whole numbers: places and counts),
 * `bool`, or `floats` and `ints`, which are arrays and in the module the byte at which they begin.
 */
import ts from 'typescript';
import { double, signed, unsigned } from './bytes.mjs';

const K = ts.SyntaxKind;

const ARITHMETIC = {
  [K.PlusToken]: { i32: 0x6a, f64: 0xa0 },
  [K.MinusToken]: { i32: 0x6b, f64: 0xa1 },
  [K.AsteriskToken]: { i32: 0x6c, f64: 0xa2 },
  // What two whole numbers give by division is none.
  [K.SlashToken]: { f64: 0xa3 },
};
const COMPARISONS = {
  [K.LessThanToken]: { i32: 0x48, f64: 0x63 },
  [K.GreaterThanToken]: { i32: 0x4a, f64: 0x64 },
  [K.LessThanEqualsToken]: { i32: 0x4c, f64: 0x65 },
  [K.GreaterThanEqualsToken]: { i32: 0x4e, f64: 0x66 },
  [K.EqualsEqualsEqualsToken]: { i32: 0x46, f64: 0x61 },
  [K.ExclamationEqualsEqualsToken]: { i32: 0x47, f64: 0x62 },
};
/** Functions of `Math` that round alike everywhere and are one instruction: how many arguments, and which. */
const INTRINSICS = {
  'Math.abs': [1, 0x99],
  'Math.ceil': [1, 0x9b],
  'Math.floor': [1, 0x9c],
  'Math.trunc': [1, 0x9d],
  'Math.sqrt': [1, 0x9f],
  'Math.min': [2, 0xa4],
  'Math.max': [2, 0xa5],
};
const NUMBERS = {
  Infinity,
  NaN,
  'Number.EPSILON': Number.EPSILON,
  'Math.LN10': Math.LN10,
  'Math.LN2': Math.LN2,
};
const GET = 0x20;
const IF = 0x04;
const ELSE = 0x05;
const END = 0x0b;
const EQZ = 0x45;
const TO_DOUBLE = 0xb7;
const LOWERED = { f64: 0x7c, i32: 0x7f, bool: 0x7f };
export const LOAD = { floats: [0x2b, 3, 0], ints: [0x28, 2, 0] };
export const ELEMENT = { floats: 'f64', ints: 'i32' };

/** The numbers in which an operation is done: whole ones only where both sides are whole and it has a form for them. */
const meet = (left, right, forms) =>
  left.type === 'i32' && right.type === 'i32' && forms.i32 !== undefined ? 'i32' : 'f64';

/** Makes expressions of a function; `names` finds what a name is, `refuse` throws with its place. */
export class Expressions {
  constructor(names, refuse) {
    this.names = names;
    this.refuse = refuse;
  }

  /** An expression as a value of a type. A whole number may stand for any number, never the other way round. */
  as(node, type) {
    const given = this.of(node);
    if (given.type === type) return given.code;
    if (type === 'f64' && given.type === 'i32') return this.double(node, given);
    return this.refuse(node, `${given.type} where ${type} is expected`);
  }

  /** A whole number as any number. What is worked out for it is worked out so from the beginning, as JavaScript does. */
  double(node, given) {
    if (given.literal !== undefined) return this.number(given.literal, 'f64').code;
    if (ts.isParenthesizedExpression(node)) return this.as(node.expression, 'f64');
    if (ts.isConditionalExpression(node)) return this.conditional(node, 'f64').code;
    if (ts.isBinaryExpression(node)) return this.binary(node, 'f64').code;
    return [...given.code, TO_DOUBLE];
  }

  number(value, type) {
    const code = type === 'i32' ? [0x41, ...signed(value)] : [0x44, ...double(value)];
    return { type, code, literal: value };
  }

  of(node) {
    if (ts.isParenthesizedExpression(node)) return this.of(node.expression);
    if (ts.isNumericLiteral(node)) return this.literal(node);
    if (ts.isIdentifier(node) || ts.isPropertyAccessExpression(node)) return this.name(node);
    if (ts.isElementAccessExpression(node)) return this.element(node);
    if (ts.isPrefixUnaryExpression(node)) return this.unary(node);
    if (ts.isBinaryExpression(node)) return this.binary(node);
    if (ts.isConditionalExpression(node)) return this.conditional(node);
    if (ts.isCallExpression(node)) return this.call(node);
    return this.refuse(node, 'no such expression in the subset');
  }

  literal(node) {
    const value = Number(node.text);
    const whole = /^\d+$/.test(node.getText()) && value < 2 ** 31;
    return this.number(value, whole ? 'i32' : 'f64');
  }

  name(node) {
    const text = node.getText();
    if (Object.hasOwn(NUMBERS, text)) return this.number(NUMBERS[text], 'f64');
    const found = this.names.find(text);
    if (found === undefined) return this.refuse(node, 'unknown name');
    if (found.expression !== undefined) return this.of(found.expression);
    return { type: found.type, code: [GET, ...unsigned(found.index)] };
  }

  /** The byte at which an entry of an array lies, and the kind of array. */
  address(node) {
    const array = this.of(node.expression);
    if (ELEMENT[array.type] === undefined) return this.refuse(node, 'not an array');
    const index = this.of(node.argumentExpression);
    if (index.type !== 'i32') return this.refuse(node, 'a place must be a whole number');
    const shift = array.type === 'floats' ? 3 : 2;
    return { array: array.type, code: [...array.code, ...index.code, 0x41, shift, 0x74, 0x6a] };
  }

  element(node) {
    const { array, code } = this.address(node);
    return { type: ELEMENT[array], code: [...code, ...LOAD[array]] };
  }

  unary(node) {
    if (node.operator === K.ExclamationToken)
      return { type: 'bool', code: [...this.as(node.operand, 'bool'), EQZ] };
    if (node.operator !== K.MinusToken) return this.refuse(node, 'no such operation in the subset');
    const given = this.of(node.operand);
    if (given.literal > 0 && given.type === 'i32') return this.number(-given.literal, 'i32');
    // What is less than a whole number of 0 is a number of its own, -0.
    return { type: 'f64', code: [...this.as(node.operand, 'f64'), 0x9a] };
  }

  /** @param wanted the numbers in which it is to be done, where it may be done in several */
  binary(node, wanted) {
    const operator = node.operatorToken.kind;
    if (operator === K.AmpersandAmpersandToken || operator === K.BarBarToken) {
      const [left, right] = [this.as(node.left, 'bool'), this.as(node.right, 'bool')];
      const branches = operator === K.BarBarToken ? [0x41, 1, ELSE, ...right] : [...right, ELSE, 0x41, 0];
      return { type: 'bool', code: [...left, IF, LOWERED.bool, ...branches, END] };
    }
    const forms = ARITHMETIC[operator] ?? COMPARISONS[operator];
    if (forms === undefined) return this.refuse(node, 'no such operation in the subset');
    const type = wanted ?? meet(this.of(node.left), this.of(node.right), forms);
    const code = [...this.as(node.left, type), ...this.as(node.right, type), forms[type]];
    return { type: ARITHMETIC[operator] === undefined ? 'bool' : type, code };
  }

  conditional(node, wanted) {
    const condition = this.as(node.condition, 'bool');
    const [yes, no] = [this.of(node.whenTrue), this.of(node.whenFalse)];
    const type = wanted ?? (yes.type === no.type ? yes.type : 'f64');
    if (LOWERED[type] === undefined) return this.refuse(node, 'a choice between arrays');
    const [left, right] = [this.as(node.whenTrue, type), this.as(node.whenFalse, type)];
    return { type, code: [...condition, IF, LOWERED[type], ...left, ELSE, ...right, END] };
  }

  call(node) {
    const name = node.expression.getText();
    const parts = [...node.arguments];
    if (name === 'Number.isFinite' && parts.length === 1)
      return { type: 'bool', code: [...this.as(parts[0], 'f64'), 0x99, 0x44, ...double(Infinity), 0x63] };
    if (Object.hasOwn(INTRINSICS, name)) {
      const [count, instruction] = INTRINSICS[name];
      if (parts.length !== count) return this.refuse(node, `${name} of ${count} is expected`);
      return { type: 'f64', code: [...parts.flatMap((part) => this.as(part, 'f64')), instruction] };
    }
    const called = this.names.functions.get(name);
    if (called === undefined) return this.refuse(node, 'unknown function');
    if (parts.length !== called.parameters.length)
      return this.refuse(node, `${called.parameters.length} arguments are expected`);
    const given = parts.flatMap((part, i) => this.as(part, called.parameters[i].type));
    return { type: called.result, code: [...given, 0x10, ...unsigned(called.index)] };
  }
}
