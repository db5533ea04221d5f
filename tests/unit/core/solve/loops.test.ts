import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import type { SparsePattern } from '../../../../packages/core/src/solve/contract.js';
import { useModule } from '../../../../packages/core/src/model/use-module.js';
import { type LoopsBy, Room } from '../../../../packages/core/src/solve/room.js';
import { sparseLu } from '../../../../packages/core/src/solve/sparse-lu.js';
import { groupProducts, SumsOfProducts } from '../../../../packages/core/src/solve/sums-of-products.js';

const SIZE = 37;

useModule();

/** Numbers over many powers of ten, with zeros of both signs among them. */
function numbers(seed: number, length: number): Float64Array {
  const random = createRandom(seed);
  return Float64Array.from({ length }, () => {
    const sign = random() < 0.5 ? -1 : 1;
    return random() < 0.1 ? sign * 0 : sign * random() * 10 ** Math.floor(12 * random() - 6);
  });
}

/** The bits of numbers, so that 0 and -0 are two. */
const bits = (values: Float64Array): string => [...new BigUint64Array(values.slice().buffer)].join();

/** A pattern of so many rows with a few entries in each, different for each seed. */
function patternOf(seed: number, size: number): SparsePattern {
  const random = createRandom(seed);
  const rows = Array.from({ length: size }, (_, i) => [
    ...new Set([i, ...Array.from({ length: 3 }, () => Math.floor(size * random()))]),
  ]);
  const start = new Int32Array(size + 1);
  rows.forEach((row, i) => (start[i + 1] = start[i] + row.length));
  return { start, column: Int32Array.from(rows.flat()) };
}

/** A system factorised and solved: whether it could be, the row that failed, its factors and its solution. */
function solved(by: LoopsBy, seed: number, diagonal: number): readonly string[] {
  const pattern = patternOf(seed, SIZE);
  const solver = sparseLu(pattern, new Room(by));
  const random = createRandom(seed + 1);
  for (let i = 0; i < SIZE; i++) {
    for (let p = pattern.start[i]; p < pattern.start[i + 1]; p++) {
      const own = pattern.column[p] === i ? diagonal : 0;
      solver.values[solver.place(i, pattern.column[p])] = own + random() - 0.5;
    }
  }
  const b = numbers(seed + 2, SIZE);
  const done = solver.factor();
  if (done) solver.solve(b);
  return [String(done), String(solver.failedRow), bits(solver.values), bits(b)];
}

/** What every loop on vectors leaves, and what it gives. */
function vectors(by: LoopsBy, seed: number): readonly string[] {
  const room = new Room(by);
  const [a, b, c, absolute] = [0, 1, 2, 3].map((k) => room.floats(numbers(seed + k, SIZE)));
  const many = room.floats(numbers(seed + 4, 6 * SIZE));
  const weights = room.floats(numbers(seed + 5, 6));
  const outs = Array.from({ length: 8 }, (_, k) => room.floats(numbers(seed + 7 + k, SIZE)));
  const bound = [
    ...[0, 1, 2, 3, 4, 5, 6].map((count) => room.bind('combine', a, weights, many, outs[count], SIZE, count)),
    room.bind('combine', outs[7], weights, many, outs[7], SIZE, 6),
  ];
  for (const loop of bound) loop.run();
  const given = [
    room.bind('finite', a, SIZE).run(),
    room.bind('squares', a, b, c, absolute, SIZE, 1e-5).run(),
  ];
  return [bits(Float64Array.from(given)), ...outs.map((out) => bits(out.array))];
}

function summed(by: LoopsBy, seed: number): readonly string[] {
  const random = createRandom(seed);
  const draw = (below: number): number[] => Array.from({ length: 300 }, () => Math.floor(below * random()));
  const places = groupProducts(draw(50), draw(40), draw(60), 51);
  const room = new Room(by);
  const [a, b] = [room.floats(numbers(seed, 40)), room.floats(numbers(seed + 1, 60))];
  return (['set', 'add', 'negate'] as const).map((mode) => {
    const here = new Room(by);
    const [left, right, out] = [a.array, b.array, numbers(seed + 2, 51)].map((each) => here.floats(each));
    new SumsOfProducts(places, mode).in(here)(left, right, out).run();
    return bits(out.array);
  });
}

const seeds = Array.from({ length: 40 }, (_, i) => 100 * i + 1);

describe('the module and the same loops as JavaScript', () => {
  it.each([
    ['factor and solve', (by: LoopsBy, seed: number) => solved(by, seed, 4)],
    ['factor what may be singular', (by: LoopsBy, seed: number) => solved(by, seed, -0.1)],
    ['combine and weigh vectors', vectors],
    ['sum products', summed],
  ])('%s to the last bit alike', (_name, work) => {
    const found = seeds.map((seed) => work('module', seed));
    expect(found).toEqual(seeds.map((seed) => work('javascript', seed)));
    expect(new Set(found.map((each) => each.join())).size).toBe(seeds.length);
  });

  it('name the same row of a matrix that has no factors', () => {
    for (const by of ['module', 'javascript'] as const) {
      const solver = sparseLu({ start: Int32Array.of(0, 1, 2), column: Int32Array.of(0, 1) }, new Room(by));
      solver.values[solver.place(0, 0)] = 1;
      expect(solver.factor(), by).toBe(false);
      expect(solver.failedRow, by).toBe(1);
      solver.values[solver.place(1, 1)] = Infinity;
      expect(solver.factor(), by).toBe(false);
      solver.values[solver.place(1, 1)] = 2;
      expect(solver.factor(), by).toBe(true);
      expect(solver.failedRow, by).toBe(-1);
    }
  });
});

describe('a room', () => {
  it('is run by the module once it is to be used and nothing else is asked for, and by JavaScript where it is', () => {
    expect(new Room().open().functions).toHaveProperty('factor');
    expect(new Room('javascript').open().functions).toBeUndefined();
  });

  it.each(['module', 'javascript'] as const)(
    'lays arrays side by side, and takes none once it is open: %s',
    (by) => {
      const room = new Room(by);
      const known = room.floats(Float64Array.of(1, 2, 3));
      const whole = room.ints(Int32Array.of(7, 8, 9));
      const empty = room.floats(2);
      const part = room.part(known, 1, 2);
      expect([...known.array, ...whole.array, ...empty.array]).toEqual([1, 2, 3, 7, 8, 9, 0, 0]);
      part.array[0] = 5;
      expect([...known.array]).toEqual([1, 5, 3]);
      expect(() => room.floats(1)).toThrow('the room is open');
      expect(() => room.ints(Int32Array.of(1))).toThrow(RangeError);
    },
  );

  it('refuses an array of another room', () => {
    const [room, other] = [new Room(), new Room()];
    const loop = room.bind('finite', other.floats(3), 3);
    expect(() => {
      loop.run();
    }).toThrow('finite: an array of another room');
  });
});
