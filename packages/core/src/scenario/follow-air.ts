import { formatQuantity, internalUnit } from '../units.js';
import { waterTemperatures } from './read-daily.js';
import type { Reader } from './reader.js';
import type { DailyValue } from './scenario.js';
import type { FollowGiven } from './schema/water-temperature-schema.js';
import type { Path } from './tree.js';
import { valueOn } from './value-on.js';

/** The air that water follows, and the days for which it must. */
export interface Air {
  /** degC; undefined where none is known. */
  readonly outside: DailyValue | undefined;
  readonly startDate: string;
  readonly days: number;
}

/**
 * Means of each day, degC, of water that follows the air with a time constant `lag`, d:
 * dT/dt = (air - T) / lag, solved exactly over each day of constant air. The mean of a day is
 * air + (T - air) (lag / 1 d) (1 - exp(-1 d / lag)), T at its start.
 */
export function followAir(air: readonly number[], lag: number, start: number): readonly number[] {
  const left = Math.exp(-1 / lag);
  let temperature = start;
  return air.map((outside) => {
    const apart = temperature - outside;
    temperature = outside + apart * left;
    return outside + apart * lag * (1 - left);
  });
}

/** Water that follows the air, worked out for each day; a fault where there is no air or it leaves what water can be. */
export function readFollow(
  reader: Reader,
  path: Path,
  given: FollowGiven,
  { outside: followed, startDate, days }: Air,
): DailyValue | undefined {
  if (followed === undefined) {
    const written = reader.has(['climate', 'air-temperature']) || reader.has(['climate', 'et0', 'weather']);
    const expected = 'climate.air-temperature, or climate.et0 from a weather file';
    if (!written) reader.fault([...path, 'follows'], 'no air temperature to follow', { expected });
    return undefined;
  }
  const count = Math.max(1, Math.ceil(days));
  const air = Array.from({ length: count }, (_, day) => valueOn(followed, startDate, day));
  const values = followAir(air, given.lag, given.start ?? air[0]);
  const { low, high } = waterTemperatures;
  const outside = values.findIndex((value) => value < low || value > high);
  if (outside >= 0) {
    reader.fault(path, `out of range on day ${outside}`, {
      got: formatQuantity(Number(values[outside].toPrecision(4)), 'temperature'),
      expected: `${formatQuantity(low, 'temperature')} to ${formatQuantity(high, 'temperature')}`,
    });
    return undefined;
  }
  reader.defaults.push({ path, value: { daily: [...values], unit: internalUnit('temperature') } });
  return { kind: 'daily', values };
}
