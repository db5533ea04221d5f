import { exp } from '../base/elementary.js';
import type { Row } from '../model/model.js';
import type { Run } from '../run/run.js';

/** Weight that the fish of a cohort lost by living on their own bodies: too little feed, or water in which they do not eat. */
export interface LostWeight {
  readonly cohort: string;
  /** Share of what they weighed, 0..1, harvests, deaths and what came left aside. */
  readonly share: number;
  /** d since the start: when they were heaviest before. */
  readonly from: number;
  /** d since the start: when they had lost most. */
  readonly until: number;
}

/** Fewer than half a fish: none is left. */
const NONE = 0.5;

/** Wet mass that a unit of a row's extent makes of fat or uses up with oxygen, g; 0 of deaths, which take fish out as they are. */
const grown = ({ entries }: Row): number =>
  entries.some(({ component }) => component === 'fish-fat' || component === 'oxygen')
    ? (entries.find(({ component }) => component === 'fish-mass')?.coefficient ?? 0)
    : 0;

/**
 * The most that the fish of each cohort grew lighter from any output to a later one, of cohorts that did, in their order: the sum of
 * growth less upkeep over what stood there, so that it is the mean fish and not how many there are.
 */
export function lostWeightOf({ model, samples }: Run): readonly LostWeight[] {
  const { scenario, layout, instances, rows } = model;
  return scenario.fish.flatMap(({ name }, cohort): LostWeight[] => {
    const { mass, number } = layout.fish[cohort];
    const own = instances.filter((each) => each.cohort === cohort && grown(rows[each.row]) !== 0);
    let [weight, most, from] = [0, 0, samples[0].time];
    let worst = { fall: 0, from, until: from };
    for (let i = 1; i < samples.length; i++) {
      const [before, now] = [samples[i - 1], samples[i]];
      const standing = (before.y[mass] + now.y[mass]) / 2;
      if (!(before.y[number] > NONE && now.y[number] > NONE && standing > 0)) continue;
      for (const { row } of own) weight += (grown(rows[row]) * (now.x[row] - before.x[row])) / standing;
      if (weight > most) [most, from] = [weight, now.time];
      if (most - weight > worst.fall) worst = { fall: most - weight, from, until: now.time };
    }
    return worst.fall > 0
      ? [{ cohort: name, share: 1 - exp(-worst.fall), from: worst.from, until: worst.until }]
      : [];
  });
}
