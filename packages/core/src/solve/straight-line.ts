/** Calls after which a shape is worked often enough that code of its own pays. */
const HOT = 150;
/** Above so many products code of its own is too large to be compiled well, and loops are used. */
const LARGEST = 40_000;
/** Products in one piece: functions much longer than this are not optimised. */
const PIECE = 500;

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
  private calls = 0;
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
  }

  /** The pieces, to be called in order; undefined where the caller must go by loops. */
  code(): readonly Piece[] | undefined {
    if (this.pieces === undefined && this.possible && ++this.calls >= HOT) this.compile();
    return this.pieces;
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
