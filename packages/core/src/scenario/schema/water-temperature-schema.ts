import { daily, type DailyGiven } from './daily-schema.js';
import { formByKey } from './form-by-key.js';
import { choice, positive, quantity, section, type Reads } from './values.js';

/** Water that follows the air: the temperature nears that of the air with a time constant. */
const follow = section(
  {
    follows: choice(
      'what it nears: the air-temperature of the climate or, where that is not given, the mean of the ' +
        'highest and lowest in the weather file of et0',
      ['air'],
    ),
    lag: positive('time', 'time constant: after it, 63 % of a step is made up'),
    start: quantity('temperature', 'at the start; default: that of the air').optional(),
  },
  'water that follows the air',
);

/** Such water as written. */
export type FollowGiven = ReturnType<typeof follow.parse>;

/** A water temperature: a daily value, or `{follows: air, lag: 2 d}`. */
export function waterTemperature(description: string): Reads<FollowGiven | DailyGiven> {
  return formByKey('follows', follow, daily('temperature', description));
}
