import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LeastFirst } from '../../../../packages/core/src/solve/sparse-order.js';

/** The same by looking through a list each time. */
class Plain {
  private readonly counts = new Map<number, number>();

  set(number: number, count: number): void {
    this.counts.set(number, count);
  }

  take(): number {
    const [first] = [...this.counts].sort(([n, a], [m, b]) => a - b || n - m);
    if (first === undefined) return -1;
    this.counts.delete(first[0]);
    return first[0];
  }
}

const SIZE = 9;
/** A number to set with its count, or to take one. */
const deed = fc.oneof(
  { weight: 3, arbitrary: fc.tuple(fc.nat(SIZE - 1), fc.nat(6)) },
  { weight: 2, arbitrary: fc.constant('take' as const) },
);

describe('LeastFirst', () => {
  it('takes the least count first, ties by the lower number, whatever was set, set anew or taken between', () => {
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 60 }), (deeds) => {
        const [queue, plain] = [new LeastFirst(SIZE), new Plain()];
        for (const each of deeds) {
          if (each === 'take') expect(queue.take()).toBe(plain.take());
          else for (const one of [queue, plain]) one.set(...each);
        }
        // All that is left, and then -1 for as long as is asked.
        for (let n = 0; n <= SIZE + 1; n++) expect(queue.take()).toBe(plain.take());
      }),
      { numRuns: 400 },
    );
  });

  it('takes many in the order of their counts', () => {
    const queue = new LeastFirst(200);
    const count = (n: number): number => (n * 73) % 200;
    for (let n = 0; n < 200; n++) queue.set(n, count(n));
    const taken = Array.from({ length: 200 }, () => count(queue.take()));
    expect(taken).toEqual(Array.from({ length: 200 }, (_, n) => n));
    expect(queue.take()).toBe(-1);
  });
});
