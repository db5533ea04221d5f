/** A point with one input put elsewhere. */
export function moved(point: Float64Array, input: number, to: number): Float64Array {
  const other = Float64Array.from(point);
  other[input] = to;
  return other;
}
