const place = String.raw`-?[\d.]+(?:e-?\d+)?,-?[\d.]+(?:e-?\d+)?`;

/** A path of straight strokes: a move, lines to places, and perhaps an end, as often as may be. */
const straight = new RegExp(`^(?:M${place}(?:L${place})*Z?)+$`);

/** A number of tenths as a path writes it: without a nought before the point. */
function tenths(count: number): string {
  return String(count / 10).replace(/^(-?)0\./, '$1.');
}

/** A number behind another: a minus divides them as well as a comma does. */
const next = (count: number): string => (count < 0 ? tenths(count) : `,${tenths(count)}`);

/**
 * A path of straight strokes in few signs, in tenths of a pixel: every place is rounded by itself and said by its distance
 * from the one before it, so that nothing adds up. A path of other strokes comes back as it was.
 */
export function shortPath(path: string): string {
  if (!straight.test(path)) return path;
  let [x, y] = [0, 0];
  let line = false;
  return [...path.matchAll(/([ML])([-\d.e]+),([-\d.e]+)|Z/g)]
    .map(([, stroke, across, down]) => {
      if (stroke !== 'M' && stroke !== 'L') {
        line = false;
        return 'Z';
      }
      const [toX, toY] = [Math.round(Number(across) * 10), Math.round(Number(down) * 10)];
      const [dx, dy] = [toX - x, toY - y];
      [x, y] = [toX, toY];
      if (stroke === 'M') {
        line = false;
        return `M${tenths(toX)}${next(toY)}`;
      }
      const sign = line ? (dx < 0 ? '' : ' ') : 'l';
      line = true;
      return `${sign}${tenths(dx)}${next(dy)}`;
    })
    .join('');
}
