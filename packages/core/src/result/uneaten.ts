import type { Row } from '../model/model.js';
import type { Run } from '../run/run.js';

/** Feed that a cohort left. */
export interface UneatenFeed {
  readonly cohort: string;
  /** Share of what it was given, 0..1. */
  readonly share: number;
  /** d: until when it is counted; absent: to the end. */
  readonly until?: number;
}

/** Whether a row has an entry of a component. */
const moves = ({ entries }: Row, component: string): boolean =>
  entries.some((entry) => entry.component === component);

/**
 * Feed not eaten by each cohort that was fed, in their order: of all that it is given, fish store a part of what they eat.
 * @param until to the last output by then, but to the first at least, d; absent: to the end
 */
export function uneatenOf({ model, samples }: Run, until = Infinity): readonly UneatenFeed[] {
  const [first] = samples;
  const last = samples.filter(({ time }, i) => i < 2 || time <= until).at(-1) ?? first;
  const sums = model.scenario.fish.map(() => ({ left: 0, all: 0 }));
  for (const { row, cohort } of model.instances) {
    if (cohort < 0 || !moves(model.rows[row], 'feed-demand')) continue;
    const extent = last.x[row] - first.x[row];
    sums[cohort].all += extent;
    if (!moves(model.rows[row], 'fish-fat')) sums[cohort].left += extent;
  }
  return model.scenario.fish.flatMap(({ name }, cohort): UneatenFeed[] => {
    const { left, all } = sums[cohort];
    return all > 0
      ? [{ cohort: name, share: left / all, ...(until < Infinity && { until: last.time }) }]
      : [];
  });
}
