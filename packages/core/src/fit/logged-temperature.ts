import { mean, group } from 'd3-array';
import type { WaterLog } from '../log/water-log.js';
import type { DailyValue, Scenario } from '../scenario/scenario.js';
import { valueOn } from '../scenario/value-on.js';
import { dayOf } from './observations.js';

/** Days whose mean stands for what comes after the last reading. */
const lately = 14;

interface Point {
  readonly day: number;
  readonly value: number;
}

/** Value on the line between points, held flat before the first; undefined after the last. */
function onLine(points: readonly Point[], day: number): number | undefined {
  const after = points.findIndex((point) => point.day >= day);
  if (after < 0) return undefined;
  if (after === 0 || points[after].day === day) return points[after].value;
  const [a, b] = [points[after - 1], points[after]];
  return a.value + ((day - a.day) / (b.day - a.day)) * (b.value - a.value);
}

/**
 * Water temperature of every vessel by day as the log has it. Between readings the line; after the last what the file
 * says, moved by the mean distance of the last 14 days with a reading. A vessel without a thermometer follows the file,
 * moved as the others are on the mean. Undefined where the log has no temperatures.
 */
export function loggedTemperature(
  log: WaterLog,
  scenario: Scenario,
  until: string,
): readonly DailyValue[] | undefined {
  const readings = log.readings.filter(
    ({ reads, date, low, high }) =>
      reads === 'temperature' && date <= until && Number.isFinite(low) && Number.isFinite(high),
  );
  const days = Math.ceil(scenario.days) + 1;
  const file = scenario.vessels.map(({ temperature }) =>
    Array.from({ length: days }, (_, day) => valueOn(temperature, scenario.startDate, day)),
  );
  const measured = scenario.vessels.map(({ name }, cell): number[] | undefined => {
    const own = readings.filter(({ vessel }) => vessel === name);
    if (own.length === 0) return undefined;
    const points = [...group(own, ({ date }) => dayOf(scenario, date))]
      .map(([day, all]): Point => ({ day, value: mean(all, ({ value }) => value) ?? 0 }))
      .sort((a, b) => a.day - b.day);
    const last = points.slice(-lately).filter(({ day }) => day >= 0 && day < days);
    const moved = mean(last, ({ day, value }) => value - file[cell][day]) ?? 0;
    return file[cell].map((value, day) => onLine(points, day) ?? value + moved);
  });
  const known = measured.flatMap((values, cell) => (values === undefined ? [] : [cell]));
  if (known.length === 0) return undefined;
  return file.map((own, cell): DailyValue => {
    const values =
      measured[cell] ??
      own.map((value, day) => value + (mean(known, (k) => (measured[k]?.[day] ?? 0) - file[k][day]) ?? 0));
    return { kind: 'daily', values };
  });
}
