import { fitSystem } from './fit-system.js';
import { backyardKit } from './backyard-twin.js';
import { inventedLog } from './invented-log.js';

/** How many days the log of the invented backyard was kept. */
export const backyardDays = 95;

/**
 * Nitrate at the start of the system that was logged, mg N/L: what the keeper has written wrongly in
 * `backyard.yaml` (20). A fit to the log has to find it.
 */
export const backyardNitrate = 36;

/** Six days of 70 to 85 g, a seventh without feed. */
const fed = (day: number): number => (day % 7 === 6 ? 0 : 70 + 5 * (day % 4));

/** Autumn: a slow fall with warm and cold spells, degC. */
const warmth = (day: number): number => 24.5 - 0.02 * day + 0.6 * Math.sin(day);

/** The log `backyard.csv` that ships with the invented backyard, made by the model as it stands. */
export function backyardLog(): string {
  const { scenario } = fitSystem('backyard').read(
    [{ path: 'start.water.nitrate', value: `${backyardNitrate} mg N/L` }],
    backyardDays,
  );
  return inventedLog(scenario, {
    ...{ seed: 11, days: backyardDays, columns: backyardKit, spoilt: 0.04 },
    ...{ feed: fed, temperature: warmth },
  });
}
