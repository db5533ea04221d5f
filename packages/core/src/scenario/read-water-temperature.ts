import { readFollow, type Air } from './follow-air.js';
import { readDaily, waterTemperatures } from './read-daily.js';
import type { Reader } from './reader.js';
import type { DailyValue } from './scenario.js';
import type { DailyGiven } from './schema/daily-schema.js';
import type { FollowGiven } from './schema/water-temperature-schema.js';
import type { Path } from './tree.js';

/** A water temperature, as given for each day or following the air. */
export function readWaterTemperature(
  reader: Reader,
  path: Path,
  given: DailyGiven | FollowGiven,
  air: Air,
): DailyValue | undefined {
  if ('follows' in given) return readFollow(reader, path, given, air);
  return readDaily(reader, path, given, { dimension: 'temperature', days: air.days, ...waterTemperatures });
}
