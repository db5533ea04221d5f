import { exp } from '../../base/elementary.js';
import { formatQuantity, internalUnit } from '../../base/units.js';
import type { Reader } from '../file/reader.js';
import type { Path } from '../file/tree.js';
import { choice, formByKey, positive, quantity, type Reads, section } from '../file/values.js';
import type { DailyValue } from '../scenario.js';
import { valueOn } from '../value-on.js';
import { dailyRanges } from '../checks/ranges.js';
import { daily, type DailyGiven, readDaily } from './daily.js';

/** Water that follows the air: the temperature nears that of the air with a time constant. */
const follow = section(
  {
    follows: choice(
      'what it nears: the air-temperature of the climate or, where that is not given, the mean of the ' +
        'highest and lowest in the weather file of et0',
      ['air'],
    ),
    lag: positive('time', 'time constant: after it, 63 % of a step is made up'),
    start: quantity('temperature', 'at the start; range: 0 to 45 degC; default: that of the air').optional(),
  },
  'water that follows the air',
);

/** Such water as written. */
export type FollowGiven = ReturnType<typeof follow.parse>;

/** A water temperature: a daily value, or `{follows: air, lag: 2 d}`. */
export function waterTemperature(description: string): Reads<FollowGiven | DailyGiven> {
  return formByKey('follows', follow, daily('temperature', description));
}

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
  const left = exp(-1 / lag);
  let temperature = start;
  return air.map((outside) => {
    const apart = temperature - outside;
    temperature = outside + apart * left;
    return outside + apart * lag * (1 - left);
  });
}

/** Water that follows the air, worked out for each day; a fault where there is no air or it leaves what water can be. */
function readFollow(
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
  const { low, high } = dailyRanges.water;
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

/** A water temperature, as given for each day or following the air. */
export function readWaterTemperature(
  reader: Reader,
  path: Path,
  given: DailyGiven | FollowGiven,
  air: Air,
): DailyValue | undefined {
  if ('follows' in given) return readFollow(reader, path, given, air);
  return readDaily(reader, path, given, { ...dailyRanges.water, days: air.days });
}
