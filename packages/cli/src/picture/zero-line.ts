/** A piece of a line. */
export interface Piece {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

type Corner = readonly [x: number, y: number, value: number];

/** Where the straight line between the values of two corners is zero, if they differ in sign. */
function crossing([x, y, a]: Corner, [u, v, b]: Corner): readonly [number, number] | undefined {
  if (Number.isNaN(a) || Number.isNaN(b) || a > 0 === b > 0) return undefined;
  const share = a / (a - b);
  return [x + share * (u - x), y + share * (v - y)];
}

/**
 * The line on which a quantity given at the points of a grid is zero, in straight pieces: between four neighbours it
 * runs from edge to edge (marching squares). No piece where one of the four has no value.
 * @param values row after row
 */
export function zeroLine(
  columns: readonly number[],
  rows: readonly number[],
  values: readonly number[],
): readonly Piece[] {
  const corner = (row: number, column: number): Corner => [
    columns[column],
    rows[row],
    values[row * columns.length + column],
  ];
  const pieces: Piece[] = [];
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let column = 0; column + 1 < columns.length; column++) {
      const around = [
        corner(row, column),
        corner(row, column + 1),
        corner(row + 1, column + 1),
        corner(row + 1, column),
      ];
      if (around.some(([, , value]) => Number.isNaN(value))) continue;
      const points = around.flatMap((from, i) => {
        const point = crossing(from, around[(i + 1) % 4]);
        return point === undefined ? [] : [point];
      });
      // Two crossings make one piece; four, with unlike corners over both diagonals, make two.
      for (let i = 0; i + 1 < points.length; i += 2) {
        const [[x1, y1], [x2, y2]] = [points[i], points[i + 1]];
        pieces.push({ x1, y1, x2, y2 });
      }
    }
  }
  return pieces;
}
