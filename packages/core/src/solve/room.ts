import { combine, factor, finite, solve, squares, sums } from './loops.js';

/** The loops by the names under which the module exports them. */
const loops = { combine, factor, finite, solve, squares, sums };

type Loops = typeof loops;
type Numbers = Float64Array | Int32Array;

/** Who runs the loops: the WebAssembly module, or the same functions as JavaScript. The bytes that come out are the same. */
export type LoopsBy = 'module' | 'javascript';

/** What is laid out in a memory: an array, a record of such, or a list of records; to be had once the memory is open. */
export class Place<T extends object> {
  private view: T | undefined;

  /** @param from the byte at which it begins */
  constructor(
    readonly room: Layout,
    readonly from: number,
    private readonly cut: () => T,
  ) {}

  /** The array, record or list. The first call for one opens the memory. */
  get array(): T {
    return (this.view ??= this.cut());
  }
}

export type Floats = Place<Float64Array>;
export type Ints = Place<Int32Array>;

/** A loop with all that it works on. The first run opens the room. */
export interface Bound<Result> {
  run: () => Result;
}

/** What a function works on as it is laid out. */
export type Given<A> = { [I in keyof A]: A[I] extends object ? Place<A[I]> : A[I] };

/** Functions of a module, of which arrays, records and lists are the byte at which they begin. */
type ModuleFunctions = Readonly<Record<string, (...args: number[]) => number>>;

/** A memory, and the functions of a module that work on it; without them the same functions work on it as JavaScript. */
export interface Opened {
  readonly buffer: ArrayBuffer;
  readonly functions?: ModuleFunctions;
}

/** A module as it is used in a thread. */
export interface Module {
  /** Opens a memory of so many pages that it works on; undefined where it cannot be made. */
  readonly open: (pages: number) => Opened | undefined;
  /** Bytes of each memory, from 0 on, that it keeps for itself. */
  readonly statics: number;
  /** Lays out a list of records as it reads them; gives the byte at which it begins. */
  readonly list: (room: Layout, records: readonly object[]) => number;
}

/** The module of the loops, where a program has asked for it in this thread. No byte of a result depends on it. */
let loopsModule: Module | undefined;

/** Has the module run the loops of all rooms that are made from now on in this thread. */
export function useForLoops(module: Module): void {
  loopsModule = module;
}

const PAGE = 65_536;

/** Bytes of a list before its first record. */
export const HEAD = 8;

/**
 * Arrays in one memory, for functions in the subset of TypeScript and for the module that is made of them. All are laid out first; the
 * first look at one of them opens the memory, and its size is then fixed.
 */
export class Layout {
  private bytes: number;
  private opened: Opened | undefined;
  /** What fills the arrays whose numbers are known. */
  private readonly contents: (() => void)[] = [];

  /** @param module what is to run the functions; where there is none, or it cannot be made, JavaScript does */
  constructor(private readonly module: Module | undefined) {
    this.bytes = module?.statics ?? 0;
  }

  /** Lays out so many numbers, 0 at first, or numbers that are known. */
  floats(given: number | Float64Array): Floats {
    const length = typeof given === 'number' ? given : given.length;
    const from = this.lay(8 * length);
    const place = new Place(this, from, () => new Float64Array(this.open().buffer, from, length));
    if (typeof given !== 'number') this.contents.push(() => place.array.set(given));
    return place;
  }

  /** Lays out whole numbers that are known. */
  ints(given: Int32Array): Ints {
    const from = this.lay(4 * given.length);
    const place = new Place(this, from, () => new Int32Array(this.open().buffer, from, given.length));
    this.contents.push(() => place.array.set(given));
    return place;
  }

  /** Part of an array that is laid out here. */
  part<T extends Numbers>(whole: Place<T>, from: number, length: number, bytes = 8): Place<T> {
    return new Place(this, whole.from + bytes * from, () => whole.array.subarray(from, from + length) as T);
  }

  /** Lays out a list of records of whole numbers and arrays, whose fields stand in the order of their interface. */
  records<T extends object>(given: readonly Given<T>[]): Place<readonly T[]> {
    return new Place(this, this.module?.list(this, given) ?? 0, () =>
      given.map((record) => {
        const fields = Object.entries(record) as [string, number | Place<object>][];
        return Object.fromEntries(
          fields.map(([name, value]) => [name, typeof value === 'number' ? value : value.array]),
        ) as T;
      }),
    );
  }

  /** The record of a list of one. */
  record<T extends object>(given: Given<T>): Place<T> {
    const list = this.records<T>([given]);
    return new Place(this, list.from + HEAD, () => list.array[0]);
  }

  /** Opens the memory, or what was opened. */
  open(): Opened {
    if (this.opened !== undefined) return this.opened;
    const pages = Math.ceil(this.bytes / PAGE);
    this.opened = this.module?.open(pages) ?? { buffer: new ArrayBuffer(this.bytes) };
    for (const fill of this.contents) fill();
    return this.opened;
  }

  /** A function with what it works on. */
  bound(
    name: string,
    plain: (...all: never[]) => unknown,
    args: readonly (Place<object> | number)[],
  ): Bound<unknown> {
    const bound: Bound<unknown> = {
      run: () => {
        for (const arg of args)
          if (typeof arg !== 'number' && arg.room !== this)
            throw new RangeError(`${name}: an array of another room`);
        const { functions } = this.open();
        bound.run =
          functions === undefined
            ? plain.bind(
                undefined,
                ...(args.map((arg) => (typeof arg === 'number' ? arg : arg.array)) as never[]),
              )
            : functions[name].bind(
                undefined,
                ...args.map((arg) => (typeof arg === 'number' ? arg : arg.from)),
              );
        return bound.run();
      },
    };
    return bound;
  }

  private lay(bytes: number): number {
    if (this.opened !== undefined) throw new RangeError('the room is open');
    const from = this.bytes;
    this.bytes += 8 * Math.ceil(bytes / 8);
    return from;
  }
}

/** Room for the arrays of an integrator, in which its loops run. */
export class Room extends Layout {
  /** @param by who is to run the loops; where the module was not asked for or cannot be made, JavaScript does */
  constructor(by: LoopsBy = 'module') {
    super(by === 'module' ? loopsModule : undefined);
  }

  /** A loop on arrays of this room. */
  bind<Name extends keyof Loops>(
    name: Name,
    ...args: Given<Parameters<Loops[Name]>>
  ): Bound<ReturnType<Loops[Name]>> {
    return this.bound(name, loops[name], args as readonly (Place<object> | number)[]) as Bound<
      ReturnType<Loops[Name]>
    >;
  }
}
