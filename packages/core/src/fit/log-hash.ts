import { sha256 } from '../result/sha-256.js';
import type { WaterLog } from '../log/water-log.js';

/** Hash of what was read of a log up to a date, that date included: intervals, feed and when they were. */
export function logHash({ readings, feed }: WaterLog, until: string): string {
  const facts = readings
    .filter(({ date }) => date <= until)
    .map(({ date, hour, reads, vessel, low, high }) => [
      ...[date, hour, reads, vessel],
      ...[low, high].map(String),
    ]);
  const fed = feed
    .filter(({ date }) => date <= until)
    .map(({ date, cohort, grams }) => [date, cohort, grams]);
  return sha256(JSON.stringify([facts, fed]));
}
