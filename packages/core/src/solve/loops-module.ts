import { LOOPS } from './loops.generated.js';
import { type LoopName, openBy, type Opened } from './room.js';

/** The part of WebAssembly that is used here. */
interface Assembly {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (
    module: object,
    imports: object,
  ) => { readonly exports: Readonly<Record<LoopName, (...args: number[]) => number>> };
  readonly Memory: new (size: { initial: number }) => { readonly buffer: ArrayBuffer };
  readonly CompileError: new (...args: string[]) => Error;
}

/** Made once in a thread, at the first wish; undefined where it may not be made. It holds no value of any run. */
let made: { readonly module: object | undefined } | undefined;

/** The module; undefined where the content security policy of a page forbids it. */
function moduleOf(wasm: Assembly): object | undefined {
  if (made !== undefined) return made.module;
  try {
    made = { module: new wasm.Module(bytesOf(LOOPS)) };
  } catch (error) {
    if (!(error instanceof wasm.CompileError)) throw error;
    made = { module: undefined };
  }
  return made.module;
}

/** The bytes that two hexadecimal digits each stand for. */
function bytesOf(digits: string): Uint8Array {
  const bytes = digits.match(/../g) ?? [];
  return Uint8Array.from(bytes, (byte) => parseInt(byte, 16));
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

function openModule(pages: number): Opened | undefined {
  const { WebAssembly: wasm } = globalThis as unknown as { readonly WebAssembly?: Assembly };
  const module = wasm && moduleOf(wasm);
  if (wasm === undefined || module === undefined) return undefined;
  const memory = memoryOf(wasm, pages);
  if (memory === undefined) return undefined;
  const { exports } = new wasm.Instance(module, { leat: { memory } });
  return {
    by: 'module',
    buffer: memory.buffer,
    bind: (name, args) => {
      const numbers = args.map((arg) => (typeof arg === 'number' ? arg : arg.byteOffset));
      return exports[name].bind(undefined, ...numbers);
    },
  };
}

/**
 * Has what runs in this thread from now on done by a module of WebAssembly where it can be: a first run takes less time, and many
 * of them too. Results are the same to the last byte. Where there is no WebAssembly, or a page's content security policy lacks
 * `'wasm-unsafe-eval'`, all goes on as JavaScript. Call it once in each thread, workers too; the module is made at the first run.
 */
export function useModule(): void {
  openBy(openModule);
}
