/** So much went from one place to another. */
export interface Link {
  readonly from: string;
  readonly to: string;
  /** Above 0. */
  readonly amount: number;
}

/** The first circle that is met going from link to link in their order, as indices; undefined where there is none. */
function circleIn(links: readonly Link[]): readonly number[] | undefined {
  const clear = new Set<string>();
  const search = (
    place: string,
    path: readonly number[],
    seen: readonly string[],
  ): readonly number[] | undefined => {
    const back = seen.indexOf(place);
    if (back >= 0) return path.slice(back);
    if (clear.has(place)) return undefined;
    for (const [i, link] of links.entries()) {
      if (link.from !== place) continue;
      const found = search(link.to, [...path, i], [...seen, place]);
      if (found !== undefined) return found;
    }
    clear.add(place);
    return undefined;
  };
  for (const { from } of links) {
    const found = search(from, [], []);
    if (found !== undefined) return found;
  }
  return undefined;
}

/**
 * Takes out what only goes round: of every circle of links the smallest amount, from each of its links. What every
 * place receives less what it gives stays as it was.
 * @returns the links that are left, and all that was taken out, counted once for each circle
 */
export function removeCircles(links: readonly Link[]): {
  readonly links: readonly Link[];
  readonly circled: number;
} {
  let left = links.filter(({ amount }) => amount > 0);
  let circled = 0;
  for (let circle = circleIn(left); circle !== undefined; circle = circleIn(left)) {
    const around = new Set(circle);
    const least = Math.min(...circle.map((i) => left[i].amount));
    circled += least;
    left = left
      .map((link, i) => (around.has(i) ? { ...link, amount: link.amount - least } : link))
      .filter(({ amount }) => amount > 0);
  }
  return { links: left, circled };
}
