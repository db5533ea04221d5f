import type { RunVerdict } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { listed } from './names.js';

/** Order of the states of fish, filter and water, the best first. */
const order = {
  fish: ['safe', 'uncomfortable', 'at-risk', 'lethal', 'dead'],
  filter: ['keeps-up', 'caught-up', 'falls-behind'],
  water: ['enough', 'short', 'pump', 'dry'],
} as const;

/** Harvests nearer than this share are alike. */
const ALIKE = 0.02;

/** On what several runs are best, in a line: fish, filter, water, harvest. */
export function betterLine(
  runs: readonly { readonly name: string; readonly verdict: RunVerdict }[],
  display: Display = plainDisplay,
): string {
  const words = display.words.verdict.better;
  const best = (ranks: readonly (number | undefined)[]): string => {
    const known = ranks.filter((rank) => rank !== undefined);
    const top = Math.min(...known);
    if (known.length < 2 || known.every((rank) => rank === top)) return words.alike;
    return listed(
      runs.flatMap(({ name }, i) => (ranks[i] === top ? [name] : [])),
      display,
    );
  };
  const rank = (list: readonly string[], state: string | undefined): number | undefined =>
    state === undefined ? undefined : list.indexOf(state);
  const harvests = runs.map(({ verdict: { crops } }) =>
    crops?.harvested.reduce((total, { mass }) => total + mass, 0),
  );
  const most = Math.max(0, ...harvests.filter((mass) => mass !== undefined));
  const nearest = harvests.map((mass) =>
    mass === undefined ? undefined : mass >= most * (1 - ALIKE) ? 0 : 1,
  );
  return words.line(
    best(runs.map(({ verdict }) => rank(order.fish, verdict.fish?.state))),
    best(runs.map(({ verdict }) => rank(order.filter, verdict.filter?.state))),
    best(runs.map(({ verdict }) => rank(order.water, verdict.water.state))),
    best(nearest),
  );
}
