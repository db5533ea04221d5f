import { InputError } from '../errors.js';
import type { Model } from '../model/model.js';
import type { Course, Run } from '../run/run.js';
import { nearest } from '../suggest.js';
import { cohortSources } from './series-of-cohort.js';
import { plantingSources } from './series-of-planting.js';
import { systemSources } from './series-of-system.js';
import { vesselSources } from './series-of-vessel.js';
import type { SeriesSource } from './series-source.js';

/** The course of one quantity at one place. */
export interface Series {
  /** `quantity@place`, such as `nitrate@sump`; the whole system is `@system`. */
  readonly name: string;
  readonly unit: string;
  /** One value for each output time of the run. */
  readonly values: Float64Array;
  /**
   * Value at a time, d, on the straight line between output times.
   * Throws RangeError outside the run.
   */
  at(time: number): number;
}

function interpolate(times: readonly number[], values: Float64Array, name: string, time: number): number {
  const last = times.length - 1;
  if (!(time >= times[0] && time <= times[last])) {
    throw new RangeError(`${name}: no value at ${time} d; the run goes from ${times[0]} to ${times[last]} d`);
  }
  let after = times.findIndex((each) => each >= time);
  if (times[after] === time) return values[after];
  after = Math.max(after, 1);
  const share = (time - times[after - 1]) / (times[after] - times[after - 1]);
  return values[after - 1] + share * (values[after] - values[after - 1]);
}

function sourcesOf(run: Course): readonly SeriesSource[] {
  return [...vesselSources(run), ...cohortSources(run), ...plantingSources(run), ...systemSources(run)];
}

const timesOf = ({ samples }: Course): readonly number[] => samples.map(({ time }) => time);

function seriesFrom({ samples }: Course, source: SeriesSource, times: readonly number[]): Series {
  const values = new Float64Array(samples.length);
  for (let i = 0; i < samples.length; i++) values[i] = source.value(samples[i], i);
  const { name, unit } = source;
  return { name, unit, values, at: (time) => interpolate(times, values, name, time) };
}

/** Names of every series of a run: vessels, cohorts, plantings, the whole system. */
export function seriesNames(run: Run): readonly string[] {
  return sourcesOf(run).map(({ name }) => name);
}

/** Unit of every series that a run of a model will have, by name, in the order of `seriesNames`. */
export function seriesUnits(model: Model): ReadonlyMap<string, string> {
  return new Map(sourcesOf({ model, samples: [] }).map(({ name, unit }) => [name, unit]));
}

/** One series by its name. Throws InputError with the nearest name when there is none. */
export function seriesOf(run: Run, name: string): Series {
  const sources = sourcesOf(run);
  const source = sources.find((each) => each.name === name);
  if (source !== undefined) return seriesFrom(run, source, timesOf(run));
  const near = nearest(
    name,
    sources.map((each) => each.name),
  );
  throw new InputError([
    { problem: 'no such series', got: name, ...(near === undefined ? {} : { nearest: near }) },
  ]);
}

/** Every series of a run, in the order of `seriesNames`. */
export function allSeries(run: Course): readonly Series[] {
  const times = timesOf(run);
  return sourcesOf(run).map((source) => seriesFrom(run, source, times));
}
