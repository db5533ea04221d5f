import type { Run } from '../run/run.js';

/** Feed that a cohort left, as a share of what it was given over the run, 0..1. */
export interface UneatenFeed {
  readonly cohort: string;
  readonly share: number;
}

/** Feed not eaten by each cohort that was fed, in their order. */
export function uneatenOf({ model, samples }: Run): readonly UneatenFeed[] {
  const [first, last] = [samples[0], samples[samples.length - 1]];
  const given = (process: string, cohort: string): number =>
    model.rows.reduce(
      (total, { id }, row) =>
        id === `${process}@${cohort}` || id.startsWith(`${process}@${cohort} (`)
          ? total + last.x[row] - first.x[row]
          : total,
      0,
    );
  return model.scenario.fish.flatMap(({ name }): UneatenFeed[] => {
    const left = given('uneaten-feed', name);
    const all = left + given('feeding', name);
    return all > 0 ? [{ cohort: name, share: left / all }] : [];
  });
}
