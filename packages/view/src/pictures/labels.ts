/**
 * Moves labels that would overlap apart: each at least `gap` from the next, none outside [low, high] while
 * there is room, as near to where it belongs as may be, order kept.
 * @returns one place for each label, in the order given
 */
export function spreadLabels(
  wanted: readonly number[],
  gap: number,
  [low, high]: readonly [number, number],
): readonly number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a] - wanted[b] || a - b);
  const places = order.map((i) => wanted[i]);
  for (let i = 0; i < places.length; i += 1)
    places[i] = Math.max(places[i], i === 0 ? low : places[i - 1] + gap);
  for (let i = places.length - 1; i >= 0; i -= 1)
    places[i] = Math.min(places[i], i === places.length - 1 ? high : places[i + 1] - gap);
  const result = new Array<number>(wanted.length);
  order.forEach((label, i) => {
    result[label] = places[i];
  });
  return result;
}
