/** Places that a path of moves and straight strokes goes through, px: of moves (M), lines (L, l) and ends (Z) alone. */
export function pathPlaces(path: string): readonly (readonly [x: number, y: number])[] {
  const places: (readonly [number, number])[] = [];
  let [x, y] = [0, 0];
  for (const [, stroke, numbers] of path.matchAll(/([MLlZ])([^MLlZ]*)/g)) {
    const all = [...numbers.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(([digits]) => Number(digits));
    for (let i = 0; i + 1 < all.length; i += 2) {
      const [across, down] = [all[i], all[i + 1]];
      [x, y] = stroke === 'l' ? [x + across, y + down] : [across, down];
      places.push([x, y]);
    }
  }
  return places;
}
