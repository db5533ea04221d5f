import type { Row } from '../model/model.js';
import type { Run } from '../run/run.js';

/** Feed that a cohort left. */
export interface UneatenFeed {
  readonly cohort: string;
  /** Share of what it was given over the run, 0..1. */
  readonly share: number;
}

/** Whether a row is of feed that a cohort is given, whichever feed it is: its place is the cohort, or the cohort and its feed. */
function isGiven({ id, entries }: Row, cohort: string): boolean {
  const place = id.slice(id.indexOf('@') + 1);
  const whose = place === cohort || place.startsWith(`${cohort} (`);
  return whose && entries.some(({ component }) => component === 'feed-demand');
}

/** Whether it is eaten: fish store a part of it. */
const isEaten = ({ entries }: Row): boolean => entries.some(({ component }) => component === 'fish-fat');

/** Feed not eaten by each cohort that was fed, in their order. */
export function uneatenOf({ model, samples }: Run): readonly UneatenFeed[] {
  const [first, last] = [samples[0], samples[samples.length - 1]];
  return model.scenario.fish.flatMap(({ name }): UneatenFeed[] => {
    let [left, all] = [0, 0];
    model.rows.forEach((row, i) => {
      if (!isGiven(row, name)) return;
      const extent = last.x[i] - first.x[i];
      all += extent;
      if (!isEaten(row)) left += extent;
    });
    return all > 0 ? [{ cohort: name, share: left / all }] : [];
  });
}
