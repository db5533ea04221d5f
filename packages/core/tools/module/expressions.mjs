/**
 * Expressions of the subset as WebAssembly. Each function gives { type, code }: `f64`, `i32` (whole numbers: places and counts),
 * `bool`, or what is in the module the byte at which it begins: `floats` and `ints`, which are arrays, `{Name}`, a record of that
 * interface, and `[Name]`, a list of them: how many they are, and from its eighth byte on one after another.
 */
import ts from 'typescript';
import { double, signed, unsigned } from './bytes.mjs';

const K = ts.SyntaxKind;

const ARITHMETIC = {
  [K.PlusToken]: { i32: 0x6a, f64: 0xa0 },
  [K.MinusToken]: { i32: 0x6b, f64: 0xa1 },
  [K.AsteriskToken]: { i32: 0x6c, f64: 0xa2 },
  [K.AmpersandToken]: { i32: 0x71 },
  [K.GreaterThanGreaterThanToken]: { i32: 0x75 },
  // What two whole numbers give by division is none.
  [K.SlashToken]: { f64: 0xa3 },
};
const COMPARISONS = {
  [K.LessThanToken]: { i32: 0x48, f64: 0x63 },
  [K.GreaterThanToken]: { i32: 0x4a, f64: 0x64 },
  [K.LessThanEqualsToken]: { i32: 0x4c, f64: 0x65 },
  [K.GreaterThanEqualsToken]: { i32: 0x4e, f64: 0x66 },
  [K.EqualsEqualsEqualsToken]: { i32: 0x46, bool: 0x46, f64: 0x61 },
  [K.ExclamationEqualsEqualsToken]: { i32: 0x47, bool: 0x47, f64: 0x62 },
};
/** Functions of `Math` that round alike everywhere and are one instruction: how many arguments, and which. */
const INTRINSICS = {
  'Math.abs': [1, 0x99],
  'Math.fround': [1, 0xb6, 0xbb],
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
  'Number.NaN': Number.NaN,
  'Number.EPSILON': Number.EPSILON,
  'Number.MIN_VALUE': Number.MIN_VALUE,
  'Math.E': Math.E,
  'Math.PI': Math.PI,
  'Math.LN10': Math.LN10,
  'Math.LN2': Math.LN2,
};
const IF = 0x04;
const ELSE = 0x05;
const END = 0x0b;
const EQZ = 0x45;
const TO_DOUBLE = 0xb7;
const TRUNCATED = 0xaa;
const LOWERED = { f64: 0x7c, i32: 0x7f, bool: 0x7f };
export const ELEMENT = { floats: 'f64', ints: 'i32' };
/** The first bytes of a list hold how many there are. */
export const HEAD = 8;

/** Reads a number of a type that lies so many bytes from an address. */
export const load = (type, offset) => [...(type === 'f64' ? [0x2b, 3] : [0x28, 2]), ...unsigned(offset)];

const isRecord = (type) => type.startsWith('{');
export const isList = (type) => type.startsWith('[');

/** The numbers in which an operation is done: others than any only where both sides are of the kind and it has a form for them. */
const meet = (left, right, forms) =>
  left.type === right.type && forms[left.type] !== undefined ? left.type : 'f64';

/** Makes expressions of a function; `body` finds what a name is and has its locals. */
export class Expressions {
  constructor(body) {
    this.body = body;
    this.refuse = body.refuse;
  }

  /** An expression as a value of a type. */
  as(node, type) {
    return this.cast(node, this.of(node), type);
  }

  /** What an expression gives as a value of a type. A whole number may stand for any number, never the other way round. */
  cast(node, given, type) {
    if (given.type === type) return given.code;
    if (type === 'f64' && given.type === 'i32') return this.double(node, given);
    return this.refuse(node, `${given.type} where ${type} is expected`);
  }

  /** A whole number as any number. What is worked out for it is worked out so from the beginning, as JavaScript does. */
  double(node, given) {
    if (given.literal !== undefined) return this.number(given.literal, 'f64').code;
    if (ts.isParenthesizedExpression(node)) return this.as(node.expression, 'f64');
    if (ts.isConditionalExpression(node)) return this.conditional(node, 'f64').code;
    const whole = ts.isBinaryExpression(node) && ARITHMETIC[node.operatorToken.kind]?.f64 !== undefined;
    return whole ? this.binary(node, 'f64').code : [...given.code, TO_DOUBLE];
  }

  number(value, type) {
    const code = type === 'i32' ? [0x41, ...signed(value)] : [0x44, ...double(value)];
    return { type, code, literal: value };
  }

  of(node) {
    if (ts.isParenthesizedExpression(node)) return this.of(node.expression);
    if (ts.isNumericLiteral(node)) return this.literal(node);
    if (ts.isIdentifier(node)) return this.name(node);
    if (ts.isPropertyAccessExpression(node)) return this.property(node);
    if (ts.isElementAccessExpression(node)) return this.element(node);
    if (ts.isPrefixUnaryExpression(node)) return this.unary(node);
    if (ts.isBinaryExpression(node)) return this.binary(node);
    if (ts.isConditionalExpression(node)) return this.conditional(node);
    if (ts.isCallExpression(node)) return this.call(node);
    return this.refuse(node, 'no such expression in the subset');
  }

  literal(node) {
    const value = Number(node.text);
    const whole = /^\d+$|^0x/.test(node.getText()) && value < 2 ** 31;
    return this.number(value, whole ? 'i32' : 'f64');
  }

  name(node) {
    const text = node.getText();
    if (Object.hasOwn(NUMBERS, text)) return this.number(NUMBERS[text], 'f64');
    const found = this.body.find(text);
    if (found === undefined) return this.refuse(node, 'unknown name');
    if (found.kind === 'constant') return this.body.inFile(found.file, () => this.of(found.expression));
    if (found.code === undefined) return this.refuse(node, 'no such expression in the subset');
    return found;
  }

  property(node) {
    const text = node.getText();
    if (Object.hasOwn(NUMBERS, text)) return this.number(NUMBERS[text], 'f64');
    const name = node.name.text;
    const listed = ts.isIdentifier(node.expression) ? this.body.find(node.expression.text) : undefined;
    if (listed?.kind === 'constant' && name === 'length')
      return this.number(this.body.lengthOf(listed), 'i32');
    const { type, code } = this.of(node.expression);
    if (isList(type) && name === 'length') return { type: 'i32', code: [...code, ...load('i32', 0)] };
    return this.field({ type, code }, node, name);
  }

  /** A field of a record. */
  field({ type, code }, node, name) {
    const found = isRecord(type) ? this.body.record(type).fields.get(name) : undefined;
    if (found === undefined) return this.refuse(node, 'unknown name');
    return { type: found.type, code: [...code, ...load(found.type, found.offset)] };
  }

  /** The byte from which an entry of an array lies so many bytes on, and the kind of array. */
  address(node) {
    const array = this.of(node.expression);
    if (ELEMENT[array.type] === undefined) return this.refuse(node, 'not an array');
    const shift = array.type === 'floats' ? 3 : 2;
    const place = node.argumentExpression;
    const index = this.of(place);
    if (index.type !== 'i32') return this.refuse(node, 'a place must be a whole number');
    if (index.literal >= 0) return { array: array.type, code: array.code, offset: index.literal << shift };
    const sum = ts.isBinaryExpression(place) && place.operatorToken.kind === K.PlusToken;
    const more = sum ? this.of(place.right).literal : undefined;
    const from = more >= 0 ? this.as(place.left, 'i32') : index.code;
    return {
      array: array.type,
      code: [...array.code, ...from, 0x41, shift, 0x74, 0x6a],
      offset: more >= 0 ? more << shift : 0,
    };
  }

  element(node) {
    const list = this.of(node.expression);
    if (isList(list.type)) return this.entry(list, this.as(node.argumentExpression, 'i32'));
    const { array, code, offset } = this.address(node);
    return { type: ELEMENT[array], code: [...code, ...load(ELEMENT[array], offset)] };
  }

  /** A record of a list. */
  entry({ type, code }, index) {
    const { size } = this.body.record(type);
    const place = [...index, 0x41, ...signed(size), 0x6c, 0x41, HEAD, 0x6a];
    return { type: `{${type.slice(1, -1)}}`, code: [...code, ...place, 0x6a] };
  }

  unary(node) {
    if (node.operator === K.ExclamationToken)
      return { type: 'bool', code: [...this.as(node.operand, 'bool'), EQZ] };
    if (node.operator !== K.MinusToken) return this.refuse(node, 'no such operation in the subset');
    const given = this.of(node.operand);
    if (given.literal > 0 && given.type === 'i32') return this.number(-given.literal, 'i32');
    // What is less than a whole number of 0 is a number of its own, -0.
    return { type: 'f64', code: [...this.cast(node.operand, given, 'f64'), 0x9a] };
  }

  /** @param wanted the numbers in which it is to be done, where it may be done in several */
  binary(node, wanted) {
    const operator = node.operatorToken.kind;
    if (operator === K.AmpersandAmpersandToken || operator === K.BarBarToken) {
      const [left, right] = [this.as(node.left, 'bool'), this.as(node.right, 'bool')];
      const branches = operator === K.BarBarToken ? [0x41, 1, ELSE, ...right] : [...right, ELSE, 0x41, 0];
      return { type: 'bool', code: [...left, IF, LOWERED.bool, ...branches, END] };
    }
    const [left, right] = [this.of(node.left), this.of(node.right)];
    // What is cut to a whole number must be one of 32 bits, else the module stops.
    if (operator === K.BarToken && left.type === 'f64' && right.literal === 0)
      return { type: 'i32', code: [...left.code, TRUNCATED] };
    if (COMPARISONS[operator] !== undefined && isRecord(left.type) && left.type === right.type)
      return { type: 'bool', code: [...left.code, ...right.code, COMPARISONS[operator].i32] };
    const forms = ARITHMETIC[operator] ?? COMPARISONS[operator];
    const type = forms === undefined ? undefined : (wanted ?? meet(left, right, forms));
    if (forms?.[type] === undefined) return this.refuse(node, 'no such operation in the subset');
    const code = [...this.cast(node.left, left, type), ...this.cast(node.right, right, type), forms[type]];
    return { type: ARITHMETIC[operator] === undefined ? 'bool' : type, code };
  }

  conditional(node, wanted) {
    const condition = this.as(node.condition, 'bool');
    const [yes, no] = [this.of(node.whenTrue), this.of(node.whenFalse)];
    const type = wanted ?? (yes.type === no.type ? yes.type : 'f64');
    if (ELEMENT[type] !== undefined) return this.refuse(node, 'a choice between arrays');
    const [left, right] = [this.cast(node.whenTrue, yes, type), this.cast(node.whenFalse, no, type)];
    return { type, code: [...condition, IF, LOWERED[type] ?? LOWERED.i32, ...left, ELSE, ...right, END] };
  }

  call(node) {
    const name = node.expression.getText();
    const parts = [...node.arguments];
    if (name === 'Number.isFinite' && parts.length === 1)
      return { type: 'bool', code: [...this.as(parts[0], 'f64'), 0x99, 0x44, ...double(Infinity), 0x63] };
    if (Object.hasOwn(INTRINSICS, name)) {
      const [count, ...instructions] = INTRINSICS[name];
      if (parts.length !== count) return this.refuse(node, `${name} of ${count} is expected`);
      return { type: 'f64', code: [...parts.flatMap((part) => this.as(part, 'f64')), ...instructions] };
    }
    const found = ts.isIdentifier(node.expression) ? this.body.find(name) : undefined;
    if (found?.kind !== 'function') return this.refuse(node, 'unknown function');
    const given = parts.map((part) => this.of(part));
    const called = this.body.called(found, given);
    if (parts.length !== called.parameters.length)
      return this.refuse(node, `${called.parameters.length} arguments are expected`);
    const values = parts.map((part, i) => this.cast(part, given[i], called.parameters[i].type));
    if (called.expression !== undefined) return this.body.unfolded(called, given, values);
    return { type: called.result, code: [...values.flat(), 0x10, ...unsigned(this.body.indexOf(called))] };
  }
}
