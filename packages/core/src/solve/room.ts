import { combine, factor, finite, solve, squares, sums } from './loops.js';

/** The loops by the names under which the module exports them. */
const loops = { combine, factor, finite, solve, squares, sums };

type Loops = typeof loops;
export type LoopName = keyof Loops;
type Numbers = Float64Array | Int32Array;

/** Who runs the loops: the WebAssembly module, or the same functions as JavaScript. The bytes that come out are the same. */
export type LoopsBy = 'module' | 'javascript';

/** An array that is laid out in a room; to be had once the room is open. */
class Place<T extends Numbers> {
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
type Ints = Place<Int32Array>;

/** A loop with all that it works on. The first run opens the room. */
export interface Bound<Result> {
  run: () => Result;
}

/** The arguments of a loop as they are given in a room. */
type Given<A> = { [I in keyof A]: A[I] extends Numbers ? Place<A[I]> : A[I] };

/** A memory, and the loops that work on it. */
export interface Opened {
  /** Who runs its loops. */
  readonly by: LoopsBy;
  readonly buffer: ArrayBuffer;
  /** A loop with arrays of the room and numbers. */
  readonly bind: (name: LoopName, args: readonly (Numbers | number)[]) => () => number;
}

/** Opens a memory of so many pages that the module works on; undefined where it cannot be made. */
type OpenMemory = (pages: number) => Opened | undefined;

/** How the module is opened, where a program has asked for it in this thread. No byte of a result depends on it. */
let openMemory: OpenMemory = () => undefined;

/** Has the module run the loops of all rooms that are opened from now on in this thread. */
export function openBy(open: OpenMemory): void {
  openMemory = open;
}

/** A memory that the same loops work on as JavaScript. */
function openPlain(bytes: number): Opened {
  return {
    by: 'javascript',
    buffer: new ArrayBuffer(bytes),
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

  /** @param by who is to run the loops; where the module was not asked for or cannot be made, JavaScript does */
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
          if (arg.room !== this) throw new RangeError(`${name}: an array of another room`);
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
    this.opened = (this.by === 'module' ? openMemory(pages) : undefined) ?? openPlain(this.bytes);
    for (const fill of this.contents) fill();
    return this.opened;
  }

  private lay(bytes: number): number {
    if (this.opened !== undefined) throw new RangeError('the room is open');
    const from = this.bytes;
    this.bytes += 8 * Math.ceil(bytes / 8);
    return from;
  }
}
