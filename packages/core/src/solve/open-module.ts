import { HEAD, type Layout, type Module, type Opened, type Place } from './room.js';

/** The part of WebAssembly that is used here. */
interface Assembly {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (
    module: object,
    imports: object,
  ) => { readonly exports: NonNullable<Opened['functions']> };
  readonly Memory: new (size: { initial: number }) => { readonly buffer: ArrayBuffer };
  readonly CompileError: new (...args: string[]) => Error;
}

/** The module; undefined where the content security policy of a page forbids it. */
function moduleOf(wasm: Assembly, digits: string): object | undefined {
  try {
    return new wasm.Module(bytesOf(digits));
  } catch (error) {
    if (!(error instanceof wasm.CompileError)) throw error;
    return undefined;
  }
}

/** The bytes that two hexadecimal digits, in small letters, each stand for. */
function bytesOf(digits: string): Uint8Array {
  const valueAt = (at: number): number => {
    const code = digits.charCodeAt(at);
    return code < 58 ? code - 48 : code - 87;
  };
  return Uint8Array.from({ length: digits.length / 2 }, (_, i) => 16 * valueAt(2 * i) + valueAt(2 * i + 1));
}

/** A memory; undefined where none is to be had. Each takes gigabytes of addresses, and some machines allow few. */
function memoryOf(wasm: Assembly, pages: number): InstanceType<Assembly['Memory']> | undefined {
  try {
    return new wasm.Memory({ initial: pages });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return undefined;
  }
}

/** Lays out a list of records: how many there are, and the fields of each, numbers or where arrays begin. */
function layList(room: Layout, records: readonly object[]): number {
  const fields = records.map((record) => Object.values(record) as (number | Place<object>)[]);
  const head = HEAD / 4;
  const width = 2 * Math.ceil(Math.max(0, ...fields.map(({ length }) => length)) / 2);
  const numbers = new Int32Array(head + width * records.length);
  numbers[0] = records.length;
  fields.forEach((values, i) => {
    values.forEach((value, f) => {
      numbers[head + width * i + f] = typeof value === 'number' ? value : value.from;
    });
  });
  return room.ints(numbers).from;
}

/**
 * A module of WebAssembly by its bytes, two hexadecimal digits each. It is made at the first run that wants it, once in a thread, and
 * holds no value of any run.
 * @param statics bytes of each memory, from 0 on, that it keeps for itself
 */
export function moduleFrom(digits: string, statics: number): Module {
  let made: { readonly module: object | undefined } | undefined;
  return {
    statics,
    list: layList,
    open: (pages) => {
      const { WebAssembly: wasm } = globalThis as unknown as { readonly WebAssembly?: Assembly };
      if (wasm === undefined) return undefined;
      made ??= { module: moduleOf(wasm, digits) };
      const memory = made.module && memoryOf(wasm, pages);
      if (made.module === undefined || memory === undefined) return undefined;
      const { exports } = new wasm.Instance(made.module, { leat: { memory } });
      return { buffer: memory.buffer, functions: exports };
    },
  };
}
