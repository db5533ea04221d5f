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
  const made = compiled([{ path: 'a.ts', text }]);
  const module = new WebAssembly.Module(made.bytes as BufferSource);
  const { exports } = new WebAssembly.Instance(module, { leat: { memory } });
  return Object.fromEntries(
    Object.entries(exports).map(([name, run]) => [
      name,
      (...args) => {
        let at = made.statics;
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
  it.each(['abs', 'ceil', 'floor', 'fround', 'trunc', 'sqrt'])('Math.%s', (name) => {
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
    'x < y === y > 1 ? 1 : 0',
    'Number.MIN_VALUE * x + Math.E * Math.PI - y',
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
    ['(j & 5) + (0xff & i)', 5],
    ['(i - j) >> 1', -2],
    ['(x[i] | 0) / 4', 0.5],
    ['(-x[i] - 0.25 | 0) + 0.5', -1.5],
  ])('whole numbers as any numbers: %s', (expression, wanted) => {
    const text = `type i32 = number;
export function run(x: Float64Array, k: Int32Array, i: i32, j: i32): number { return ${expression}; }`;
    const args = (): Argument[] => [Float64Array.of(0, 2.5), Int32Array.of(0, 7), 1, 4];
    const [plain, module] = both(text)(args);
    expect(module).toEqual(plain);
    expect(module[0]).toBe(wanted);
  });
});

/** Places, and a table of the module itself, as the kernels of rates have them. */
const kernel = `interface Sites { readonly count: i32; readonly row: i32; readonly at: Int32Array; readonly k: Float64Array; }
interface Kernel {
  readonly name?: string;
  readonly rates: (sites: readonly Sites[], v: Float64Array, r: Float64Array) => void;
}`;

describe('what stands in several files', () => {
  const files = [
    { path: 'a/kernel.ts', text: kernel },
    {
      path: 'b.ts',
      text: `export const all = ['x', 'y'] as const;
const powers = new Float64Array(4);
const whole = new Int32Array(powers.buffer);
for (let k = 0, power = 1.5; k < 4; k++, power *= 2) powers[k] = power;
const low = whole[0] === 0 ? 2 : 1;
let last: i32 = 0;
export const half = (x: number): number => 0.5 * x;
export function power(k: i32): number { last = k; return powers[k] * low; }
export const before = (): i32 => last;`,
    },
    {
      path: 'a/c.ts',
      text: `import type { Kernel, Sites } from './kernel.js';
import { all, before, half as halved, power } from '../b.js';
const more = [...all, 'z'] as const;
const SIZE = more.length;
function most(some: readonly Sites[]): Sites {
  let most = some[0];
  for (const each of some) if (each.count > most.count) most = each;
  return most;
}
function entry(from: ArrayLike<number>, i: i32): number { if (i > 9) return 0; return from[i]; }
const first: Kernel = {
  name: 'first',
  rates: ([a, { row }], v, r) => {
    const { count, at, k } = a;
    for (let i = 0; i < count; i++) r[a.row + i] = halved(v[at[i]]) + k[i] * SIZE + power(i) + before() + entry(at, i) + entry(k, i);
    r[row] = some(all.length);
  },
};
const some = (x: number): number => x * x;
const second: Kernel = {
  name: 'second',
  rates: (rows, v, r) => {
    const chosen = most(rows);
    for (const each of rows) {
      if (each === chosen) continue;
      r[each.row] = rows.length * v[0];
    }
    const [x, y] = [v[1], v[2]];
    r[chosen.row] = x - y;
  },
};
const unnamed: Kernel = { rates: () => { throw new Error('not of the subset'); } };`,
    },
  ];

  it('is one module: records, lists, arrays and variables of files, and a table of functions', () => {
    const made = compiled(files, {
      from: [],
      walk: { path: 'a/kernel.ts', type: 'Kernel', members: ['rates'] },
    });
    expect(made.names).toEqual(['first', 'second']);
    expect(made.records).toEqual({ Sites: ['count', 'row', 'at', 'k'] });
    expect(made.statics).toBe(32);
    const memory = new WebAssembly.Memory({ initial: 1 });
    const module = new WebAssembly.Module(made.bytes as BufferSource);
    const { rates } = new WebAssembly.Instance(module, { leat: { memory } }).exports as Record<string, Run>;
    const whole = new Int32Array(memory.buffer);
    const numbers = new Float64Array(memory.buffer);
    expect([...numbers.subarray(0, 4)]).toEqual([1.5, 3, 6, 12]);
    // A list of two records at byte 64, places at 128, coefficients at 160, values at 200, rates at 240, what to do at 320.
    whole.set([2, 0, 2, 0, 128, 160, 3, 2, 128, 160], 16);
    whole.set([1, 2, 0], 32);
    numbers.set([10, 20], 20);
    numbers.set([1, 4, 16], 25);
    whole.set([0, 64], 80);
    rates(320, 1, 200, 240);
    expect([...numbers.subarray(30, 33)]).toEqual([2 + 30 + 3 + 0 + 1 + 10, 8 + 60 + 6 + 1 + 2 + 20, 4]);
    whole.set([1, 64], 82);
    rates(320, 2, 200, 240);
    expect([...numbers.subarray(30, 33)]).toEqual([2, 8 + 60 + 6 + 1 + 2 + 20, 4 - 16]);
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
    ['var x = 1;', 'a.ts:1: no such declaration in the subset: var x = 1;'],
    ['class A {}', 'a.ts:1: no such declaration in the subset: class A {}'],
    ['export function a(x = 1): void {}', 'a.ts:1: no such parameter in the subset: x = 1'],
    ['export function a(x: string): void {}', 'a.ts:1: no type of the subset: string'],
    ['export function a(): Float64Array {}', 'a.ts:1: a function gives no array'],
    ['const x = 1;\nfunction x(): void {}', 'a.ts:2: a name given twice'],
    ['export function a() {}', 'a.ts:1: no type of the subset: export function a() {}'],
    [
      'export function a(x: number): number { return x > 0 ? a(x - 1) : 0; }',
      'a.ts:1: a function that calls itself must be written in statements',
    ],
    ['interface A { f: string }\nexport function a(x: A): void {}', 'a.ts:1: no type of the subset: string'],
  ])('%s', (text, message) => {
    expect(() => compiled([{ path: 'a.ts', text }])).toThrow(message);
  });
});
