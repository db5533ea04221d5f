import { LOOPS } from './loops.generated.js';
import { add, addShare, combine, factor, finite, setShare, setSum, solve, squares, sums } from './loops.js';

/** The loops by the names under which the module exports them. */
const loops = { add, addShare, combine, factor, finite, setShare, setSum, solve, squares, sums };

type Loops = typeof loops;
type Numbers = Float64Array | Int32Array;

/** Who runs the loops: the WebAssembly module, or the same functions as JavaScript. The bytes that come out are the same. */
export type LoopsBy = 'module' | 'javascript';

/** The part of WebAssembly that is used here; absent where it is not to be had. */
interface Assembly {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object, imports: object) => {
    readonly exports: Readonly<Record<keyof Loops, (...args: number[]) => number>>;
  };
  readonly Memory: new (size: { initial: number }) => { readonly buffer: ArrayBuffer };
  readonly CompileError: new (...args: string[]) => Error;
}

const assembly = (): Assembly | undefined => (globalThis as { WebAssembly?: Assembly }).WebAssembly;

/** Made once in a thread, at the first wish; undefined where pages may not make it. It holds no value of any run. */
let made: { readonly module: object | undefined } | undefined;

/** The module; undefined where there is no WebAssembly, or where a page's content security policy forbids it. */
function loopsModule(): object | undefined {
  if (made !== undefined) return made.module;
  const wasm = assembly();
  if (wasm === undefined) return undefined;
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
  return Uint8Array.from({ length: digits.length / 2 }, (_, i) => parseInt(digits.slice(2 * i, 2 * i + 2), 16));
}

/** An array that is laid out in a room; to be had once the room is open. */
export class Place<T extends Numbers> {
  private view: T | undefined;

  constructor(
    readonly room: Room,
    private readonly cut: (buffer: ArrayBuffer) => T,
  ) {}

  /** The array. The first call for one opens the room. */
  get array(): T {
    return (this.view ??= this.cut(this.room.open().buffer));
  }
}

export type Floats = Place<Float64Array>;
export type Ints = Place<Int32Array>;

/** A loop with all that it works on. The first run opens the room. */
export interface Bound<Result> {
  run: () => Result;
}

/** The arguments of a loop as they are given in a room. */
type Given<A> = { [I in keyof A]: A[I] extends Numbers ? Place<A[I]> : A[I] };

interface Opened {
  readonly buffer: ArrayBuffer;
  /** A loop with arrays of the room and numbers. */
  readonly bind: (name: keyof Loops, args: readonly (Numbers | number)[]) => () => number;
}

/** A memory that the module works on; undefined where there is none. */
function openModule(pages: number): Opened | undefined {
  const wasm = assembly();
  const module = loopsModule();
  if (wasm === undefined || module === undefined) return undefined;
  const memory = new wasm.Memory({ initial: pages });
  const { exports } = new wasm.Instance(module, { leat: { memory } });
  return {
    buffer: memory.buffer,
    bind: (name, args) => {
      const numbers = args.map((arg) => (typeof arg === 'number' ? arg : arg.byteOffset));
      return exports[name].bind(undefined, ...numbers);
    },
  };
}

/** A memory that the same loops work on as JavaScript. */
function openPlain(pages: number): Opened {
  return {
    buffer: new ArrayBuffer(PAGE * pages),
    bind: (name, args) => (loops[name] as (...all: unknown[]) => number).bind(undefined, ...args),
  };
}

const PAGE = 65_536;

/**
 * Room for arrays in one memory, in which the loops run. All arrays are laid out first; the first look at one of them, or the
 * first loop, opens the room, and its size is then fixed.
 */
export class Room {
  private bytes = 0;
  private opened: Opened | undefined;
  /** What fills the arrays whose numbers are known. */
  private readonly contents: (() => void)[] = [];

  /** @param by who is to run the loops; where the module cannot be made, JavaScript does */
  constructor(private readonly by: LoopsBy = 'module') {}

  /** Lays out so many numbers, 0 at first, or numbers that are known. */
  floats(given: number | Float64Array): Floats {
    const length = typeof given === 'number' ? given : given.length;
    const from = this.lay(8 * length);
    const place = new Place(this, (buffer) => new Float64Array(buffer, from, length));
    if (typeof given !== 'number') this.contents.push(() => place.array.set(given));
    return place;
  }

  /** Lays out whole numbers that are known. */
  ints(given: Int32Array): Ints {
    const from = this.lay(4 * given.length);
    const place = new Place(this, (buffer) => new Int32Array(buffer, from, given.length));
    this.contents.push(() => place.array.set(given));
    return place;
  }

  /** Part of an array that is laid out here. */
  part(whole: Floats, from: number, length: number): Floats {
    return new Place(this, () => whole.array.subarray(from, from + length));
  }

  /** A loop on arrays of this room. */
  bind<Name extends keyof Loops>(
    name: Name,
    ...args: Given<Parameters<Loops[Name]>>
  ): Bound<ReturnType<Loops[Name]>> {
    const bound: Bound<ReturnType<Loops[Name]>> = {
      run: () => {
        const given = (args as readonly (Place<Numbers> | number)[]).map((arg) => {
          if (typeof arg === 'number') return arg;
          if (arg.room !== this) throw new RangeError(`${name} is given an array of another room`);
          return arg.array;
        });
        bound.run = this.open().bind(name, given) as typeof bound.run;
        return bound.run();
      },
    };
    return bound;
  }

  /** Opens the room, or what was opened. */
  open(): Opened {
    if (this.opened !== undefined) return this.opened;
    const pages = Math.ceil(this.bytes / PAGE);
    this.opened = (this.by === 'module' ? openModule(pages) : undefined) ?? openPlain(pages);
    for (const fill of this.contents) fill();
    return this.opened;
  }

  private lay(bytes: number): number {
    if (this.opened !== undefined) throw new RangeError('a room that is open has no place for more');
    const from = this.bytes;
    this.bytes += 8 * Math.ceil(bytes / 8);
    return from;
  }
}
