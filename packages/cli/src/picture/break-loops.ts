/** A way from one vessel to another. */
interface Way {
  readonly from: string;
  readonly to: string;
}

/**
 * Ways that close a loop, seen from a vessel: following the water from there, those that lead back to a vessel that
 * was passed on the way. Without them what is left can be drawn from left to right.
 * @returns their indices
 */
export function loopWays(ways: readonly Way[], start: string): ReadonlySet<number> {
  const closing = new Set<number>();
  const done = new Set<string>();
  const follow = (vessel: string, passed: readonly string[]): void => {
    if (done.has(vessel)) return;
    ways.forEach(({ from, to }, i) => {
      if (from !== vessel) return;
      if (to === vessel || passed.includes(to)) closing.add(i);
      else follow(to, [...passed, vessel]);
    });
    done.add(vessel);
  };
  for (const vessel of [start, ...ways.map(({ from }) => from)]) follow(vessel, []);
  return closing;
}
