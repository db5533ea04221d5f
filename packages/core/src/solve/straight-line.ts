/**
 * Products worked by loops before code of its own pays: a year or two of a small system. New code is slow until it has
 * been compiled well, which costs more than a single run would gain.
 */
const HOT = 40_000_000;
/** Then it is called every so many calls, this often, while it is compiled beside the loops; and then always. */
const SELDOM = 32;
const WARMING = 64;
/** Above so many products code of its own is too large to be compiled well, and loops are used. */
const LARGEST = 40_000;
/** Products in one piece: functions much longer than this are not optimised. */
const PIECE = 250;

/** A piece of code that works on the arrays it was written for. */
type Piece = (...arrays: Float64Array[]) => void;

/** Gathers statements into pieces of fitting length. */
export interface Writer {
  /** Adds statements with so many products. */
  add(statements: string, products: number): void;
}

/**
 * Code written out for one shape, without loops and places to look up: several times as fast as loops over
 * short rows. It does the same operations in the same order as the loops beside it, so that results are the
 * same to the last bit. The text holds only the names of its parameters and numbers that index arrays. Where
 * making code from text is forbidden (a page's content security policy), the loops go on.
 */
export class StraightLine {
  /** Calls left until code is made, and after that until it is always used. */
  private cold: number;
  private warming = SELDOM * WARMING;
  private pieces: readonly Piece[] | undefined;
  private possible: boolean;

  /**
   * @param parameters names of the arrays
   * @param products how many products the code will have
   * @param write adds the statements in the order in which they run
   */
  constructor(
    private readonly parameters: readonly string[],
    products: number,
    private readonly write: (writer: Writer) => void,
  ) {
    this.possible = products <= LARGEST;
    this.cold = HOT / products;
  }

  /** The pieces, to be called in order; undefined where the caller must go by loops this time. */
  code(): readonly Piece[] | undefined {
    if (this.warming === 0) return this.pieces;
    if (!this.possible || --this.cold > 0) return undefined;
    if (this.pieces === undefined) this.compile();
    return --this.warming % SELDOM === 0 ? this.pieces : undefined;
  }

  private compile(): void {
    const texts: string[] = [];
    let text = '';
    let length = 0;
    this.write({
      add(statements, products) {
        if (length > 0 && length + products > PIECE) {
          texts.push(text);
          text = '';
          length = 0;
        }
        text += statements;
        length += products;
      },
    });
    texts.push(text);
    try {
      this.pieces = texts.map((piece) => functionOf(this.parameters, piece));
    } catch (error) {
      if (!(error instanceof EvalError)) throw error;
      this.possible = false;
    }
  }
}

function functionOf(parameters: readonly string[], text: string): Piece {
  // Written from indices alone, never from anything that was read.
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  return new Function(...parameters, `"use strict";${text}`) as Piece;
}

/** Shapes kept; the one used longest ago goes first. */
const KEPT = 16;

/**
 * Remembers what was made for a shape (arrays of places), so that many systems of one shape share an ordering
 * and code: runs of one model, members of an ensemble. It holds nothing that depends on values.
 */
export class ShapeMemo<T> {
  private entries: readonly { readonly shape: readonly Int32Array[]; readonly made: T }[] = [];

  get(shape: readonly Int32Array[], make: () => T): T {
    const found = this.entries.find((entry) => sameShape(entry.shape, shape));
    const entry = found ?? { shape: shape.map((part) => part.slice()), made: make() };
    this.entries = [entry, ...this.entries.filter((other) => other !== entry)].slice(0, KEPT);
    return entry.made;
  }
}

function sameShape(a: readonly Int32Array[], b: readonly Int32Array[]): boolean {
  return a.length === b.length && a.every((part, i) => sameNumbers(part, b[i]));
}

function sameNumbers(a: Int32Array, b: Int32Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}
