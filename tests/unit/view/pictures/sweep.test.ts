import { describe, expect, it } from 'vitest';
import { zeroLine } from '../../../../packages/view/src/pictures/sweep.js';

const columns = [0, 1, 2, 3];
const rows = [0, 10, 20];
const grid = (of: (x: number, y: number) => number): number[] =>
  rows.flatMap((y) => columns.map((x) => of(x, y)));

describe('zeroLine', () => {
  it('is exact for a plane, and in one piece from edge to edge', () => {
    const pieces = zeroLine(
      columns,
      rows,
      grid((x, y) => x + y / 10 - 1.7),
    );
    for (const { x1, y1, x2, y2 } of pieces) {
      expect(x1 + y1 / 10).toBeCloseTo(1.7, 12);
      expect(x2 + y2 / 10).toBeCloseTo(1.7, 12);
    }
    const ends = pieces.flatMap(({ x1, y1, x2, y2 }) => [`${x1} ${y1}`, `${x2} ${y2}`]);
    const once = ends.filter((end) => ends.filter((other) => other === end).length === 1);
    expect(pieces).toHaveLength(3);
    expect(once).toHaveLength(2);
  });

  it('is nothing where the sign never changes', () => {
    expect(
      zeroLine(
        columns,
        rows,
        grid(() => 1),
      ),
    ).toEqual([]);
    expect(
      zeroLine(
        columns,
        rows,
        grid(() => -1),
      ),
    ).toEqual([]);
  });

  it('is two pieces where opposite corners are alike', () => {
    expect(zeroLine([0, 1], [0, 1], [1, -1, -1, 1])).toHaveLength(2);
  });

  it('leaves out squares with a corner that has no value', () => {
    const holed = grid((x) => x - 1.5);
    holed[1] = Number.NaN;
    expect(zeroLine(columns, rows, holed)).toEqual([{ x1: 1.5, y1: 10, x2: 1.5, y2: 20 }]);
  });
});
