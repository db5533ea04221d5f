import { runInThisContext } from 'node:vm';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../packages/core/src/base/random.js';
import { compiled } from '../../../packages/core/tools/module/compile.mjs';
import { full } from '../../support/length.js';
import { FLOATS, INTS, randomProgram } from './random-program.js';

type Argument = Float64Array | Int32Array | number;
type Run = (...args: Argument[]) => number | undefined;

/** The exported functions of a text as JavaScript. */
function asJavaScript(text: string): Record<string, Run> {
  const plain = ts
    .transpile(text, { target: ts.ScriptTarget.ES2022 })
    .replaceAll(/^export (?=function)/gm, '');
  const names = [...text.matchAll(/^export function (\w+)/gm)].map(([, name]) => name);
  return runInThisContext(`(() => {\n${plain}\nreturn { ${names.join()} };\n})()`) as Record<string, Run>;
}

/** The functions of a text as a module, on copies of arrays in its memory, which are handed back after. */
function asModule(text: string): Record<string, Run> {
  const memory = new WebAssembly.Memory({ initial: 1 });
  const module = new WebAssembly.Module(compiled([{ path: 'a.ts', text }]) as BufferSource);
  const { exports } = new WebAssembly.Instance(module, { leat: { memory } });
  return Object.fromEntries(
    Object.entries(exports).map(([name, run]) => [
      name,
      (...args) => {
        let at = 0;
        const lain = args.map((arg) => {
          if (typeof arg === 'number') return arg;
          const Kind = arg instanceof Int32Array ? Int32Array : Float64Array;
          const view = new Kind(memory.buffer, at, arg.length);
          view.set(arg);
          at += 8 * arg.length;
          return view;
        });
        const places = lain.map((each) => (typeof each === 'number' ? each : each.byteOffset));
        const given = (run as (...all: number[]) => number | undefined)(...places);
        args.forEach((arg, i) => {
          if (typeof arg !== 'number') arg.set(lain[i] as Float64Array);
        });
        return given;
      },
    ]),
  );
}

/** What both give, arrays too. Not a number is not a number, whatever its bits; 0 and -0 are two. */
function both(text: string): (args: () => Argument[]) => readonly (readonly unknown[])[] {
  const made = [asJavaScript(text), asModule(text)];
  return (args) =>
    made.map(({ run }) => {
      const given = args();
      return [run(...given), ...given.map((arg) => (typeof arg === 'number' ? arg : [...arg]))];
    });
}

const ODD = [0, -0, 1, -1, 0.5, -2.5, 2.5, 1e300, -1e-310, 1e308, Infinity, -Infinity, NaN, 2 ** 52 + 0.5];

describe('each intrinsic and operation of the subset, in JavaScript and in the module', () => {
  it.each(['abs', 'ceil', 'floor', 'trunc', 'sqrt'])('Math.%s', (name) => {
    const run = both(`export function run(x: number): number { return Math.${name}(x); }`);
    for (const x of ODD) {
      const [plain, module] = run(() => [x]);
      expect(module, String(x)).toEqual(plain);
    }
  });

  it.each([
    'Math.min(x, y)',
    'Math.max(x, y)',
    'x + y',
    'x - y',
    'x * y',
    'x / y',
    '-x',
    'Number.isFinite(x) ? 1 : 0',
    'x < y ? 1 : 0',
    'x > y ? 1 : 0',
    'x <= y ? 1 : 0',
    'x >= y ? 1 : 0',
    'x === y ? 1 : 0',
    'x !== y ? 1 : 0',
    '!(x < y) ? 1 : 0',
    'x < y && y > 1 ? x : y',
    'x < y || y > 1 ? x : y',
    'Number.EPSILON * x + Math.LN10 * Math.LN2 + y',
    'x === NaN || y === Infinity ? 1 : 0',
  ])('%s', (expression) => {
    const text = `export function run(x: number, y: number): number { return ${expression}; }`;
    const run = both(text);
    for (const x of ODD) {
      for (const y of ODD) {
        const [plain, module] = run(() => [x, y]);
        expect(module, `${String(x)}, ${String(y)}`).toEqual(plain);
      }
    }
  });

  it.each([
    ['i / j', 0.25],
    ['(i - 5) * (i - i)', -0],
    ['-(i - i)', -0],
    ['(i < j ? i : j) / 2', 0.5],
    ['2147483647 + i', 2_147_483_648],
    ['-7 - i', -8],
    ['3', 3],
    ['x[i] + k[i]', 9.5],
  ])('whole numbers as any numbers: %s', (expression, wanted) => {
    const text = `type i32 = number;
export function run(x: Float64Array, k: Int32Array, i: i32, j: i32): number { return ${expression}; }`;
    const args = (): Argument[] => [Float64Array.of(0, 2.5), Int32Array.of(0, 7), 1, 4];
    const [plain, module] = both(text)(args);
    expect(module).toEqual(plain);
    expect(module[0]).toBe(wanted);
  });
});

describe('programs of the subset drawn at random', () => {
  const count = full ? 1000 : 120;

  it(`${String(count)} of them give the same numbers and leave the same arrays`, () => {
    const random = createRandom(23);
    let telling = 0;
    for (let each = 0; each < count; each++) {
      const text = randomProgram(random);
      const seed = Math.floor(1e9 * random());
      const args = (): Argument[] => {
        const draw = createRandom(seed);
        const floats = () => Float64Array.from({ length: FLOATS }, () => 4 * draw() - 2);
        return [
          floats(),
          floats(),
          Int32Array.from({ length: INTS }, () => Math.floor(INTS * draw())),
          3,
          draw(),
        ];
      };
      const [plain, module] = both(text)(args);
      expect(module, text).toEqual(plain);
      if (Number.isFinite(plain[0]) && new Set(plain[1] as number[]).size > 8) telling += 1;
    }
    // That not all of them end in what is not a number.
    expect(telling).toBeGreaterThan(count / 4);
  });
});

describe('what is not of the subset', () => {
  it.each([
    ['return x ** 2;', 'a.ts:3: no such operation in the subset: x ** 2'],
    ['return Math.exp(x);', 'a.ts:3: unknown function: Math.exp(x)'],
    ['return y;', 'a.ts:3: unknown name: y'],
    ['return a[x];', 'a.ts:3: a place must be a whole number: a[x]'],
    ['return x[0];', 'a.ts:3: not an array: x[0]'],
    ['return x ? 1 : 2;', 'a.ts:3: f64 where bool is expected: x'],
    ['return a;', 'a.ts:3: floats where f64 is expected: a'],
    ['let y; return x;', 'a.ts:3: one name with its value is expected: y'],
    ['const y = x; y = 2; return y;', 'a.ts:3: a variable is expected: y'],
    ['x = 2; return x;', 'a.ts:3: a variable is expected: x'],
    ['const i: i32 = x; return i;', 'a.ts:3: f64 where i32 is expected: x'],
    ['let y = x; y++; return y;', 'a.ts:3: only whole numbers are counted on: y++'],
    ['let i: i32 = 4; i /= 2; return i;', 'a.ts:3: no such operation on i32: i /= 2'],
    ['switch (x) { default: return x; }', 'a.ts:3: no such statement in the subset: switch (x)'],
    ['break;', 'a.ts:3: break outside a loop: break;'],
    ['return;', 'a.ts:3: f64 is expected: return;'],
    ['return run(a);', 'a.ts:3: 2 arguments are expected: run(a)'],
    ['return Math.min(x);', 'a.ts:3: Math.min of 2 is expected: Math.min(x)'],
    ["return 'x';", "a.ts:3: no such expression in the subset: 'x'"],
  ])('%s', (line, message) => {
    const text = `type i32 = number;\nexport function run(a: Float64Array, x: number): number {\n${line}\n}`;
    expect(() => compiled([{ path: 'a.ts', text }])).toThrow(message);
  });

  it.each([
    ['let x = 1;', 'a.ts:1: no such declaration in the subset: let x = 1;'],
    ['function a(x = 1): void {}', 'a.ts:1: no such parameter in the subset: x = 1'],
    ['function a(x: string): void {}', 'no type of the subset: string'],
    ['function a(): Float64Array {}', 'a.ts:1: a function gives no array'],
    ['const x = 1;\nfunction x(): void {}', 'a.ts:2: a name given twice'],
    ['function a() {}', 'no type of the subset: nothing'],
  ])('%s', (text, message) => {
    expect(() => compiled([{ path: 'a.ts', text }])).toThrow(message);
  });
});
