import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { modesOf } from '../../../../../packages/core/src/analysis/steady/modes.js';
import { newton } from '../../../../../packages/core/src/analysis/steady/newton.js';

const state = (component: 'tan' | 'nitrite' | 'nitrate', place: string) => ({
  component,
  place,
  vessel: 0,
});

describe('time constants', () => {
  it('are those of a chain, slowest first, each with what takes part in it', () => {
    // TAN goes at 2 a day to nitrite, nitrite at 0.5 to nitrate, nitrate out at 0.01.
    const chain = new Matrix([
      [-2, 0, 0],
      [2, -0.5, 0],
      [0, 0.5, -0.01],
    ]);
    const states = [state('tan', 'a'), state('nitrite', 'a'), state('nitrate', 'a')];
    const modes = modesOf(chain, [1, 1, 100], states);
    expect(modes.map(({ time }) => Number(time.toPrecision(12)))).toEqual([100, 2, 0.5]);
    expect(modes.map(({ parts }) => parts[0].component)).toEqual(['nitrate', 'nitrite', 'tan']);
    expect(modes[0].recovery).toBeCloseTo(100 * Math.log(20), 9);
  });

  it('join the two vectors of a swing into one mode with its period', () => {
    const swing = new Matrix([
      [-0.1, -1],
      [1, -0.1],
    ]);
    const modes = modesOf(swing, [1, 1], [state('tan', 'a'), state('nitrite', 'b')]);
    expect(modes).toHaveLength(1);
    expect(modes[0].time).toBeCloseTo(10, 12);
    expect(modes[0].swing).toBeCloseTo(2 * Math.PI, 12);
    expect(modes[0].parts.map(({ share }) => share)).toEqual([0.5, 0.5]);
  });

  it('say everywhere where no one place leads, and put what grows first', () => {
    const two = new Matrix([
      [-1, 0.9],
      [0.9, -1],
    ]);
    const [slow] = modesOf(two, [1, 1], [state('tan', 'a'), state('tan', 'b')]);
    expect(slow.parts).toEqual([{ component: 'tan', place: 'everywhere', share: 1 }]);
    const grows = modesOf(new Matrix([[0.5]]), [1], [state('tan', 'a')]);
    expect(grows[0]).toMatchObject({ time: -2, parts: [{ component: 'tan', place: 'a', share: 1 }] });
  });

  it('are none of no states', () => {
    expect(modesOf(Matrix.zeros(0, 0), [], [])).toEqual([]);
  });
});

describe('Newton', () => {
  const equation = (f: (y: number) => number, slope: (y: number) => number) => ({
    free: [0],
    mayBeNegative: () => false,
    scale: Float64Array.of(1),
    evaluate: (y: Float64Array) => ({
      residual: Float64Array.of(f(y[0])),
      matrix: new Matrix([[slope(y[0])]]),
    }),
  });

  it('finds a root to rounding', () => {
    const ending = newton(
      Float64Array.of(3),
      equation(
        (y) => y * y - 2,
        (y) => 2 * y,
      ),
    );
    expect(ending).toMatchObject({ kind: 'found' });
    expect(ending.kind === 'found' ? ending.y[0] : Number.NaN).toBeCloseTo(Math.SQRT2, 14);
  });

  it('does not let an amount jump below zero on its way', () => {
    // From 10 the plain step of this Monod balance goes to -30.
    const monod = equation(
      (y) => 1 - (2 * y) / (y + 1),
      (y) => -2 / (y + 1) ** 2,
    );
    const ending = newton(Float64Array.of(10), monod);
    expect(ending.kind === 'found' ? ending.y[0] : Number.NaN).toBeCloseTo(1, 12);
  });

  it.each([
    [
      'singular',
      equation(
        () => 1,
        () => 0,
      ),
    ],
    [
      'not-finite',
      equation(
        () => Number.NaN,
        () => 1,
      ),
    ],
  ] as const)('says that it is lost: %s', (reason, lost) => {
    expect(newton(Float64Array.of(1), lost)).toEqual({ kind: 'lost', reason });
  });
});
