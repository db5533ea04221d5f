import type { Fault } from '../base/faults.js';

/** Where the weather was measured. */
export interface WeatherSite {
  /** Degrees north; south is below 0. */
  readonly latitude: number;
  /** m above the sea. */
  readonly elevation: number;
  /** On or near a coast: decides how radiation is estimated from temperature. Default: inland. */
  readonly coastal?: boolean;
  /** Height of the wind meter above the ground, m. Default 2. */
  readonly windHeight?: number;
}

/** What was measured in one day; all but the temperatures may be missing. */
export interface WeatherDay {
  /** 1 on 1 January. */
  readonly dayOfYear: number;
  /** Highest air temperature, degC. */
  readonly high: number;
  /** Lowest air temperature, degC. */
  readonly low: number;
  /** degC. */
  readonly dewPoint?: number;
  /** Highest relative humidity, 0..1. */
  readonly humidityHigh?: number;
  /** Lowest relative humidity, 0..1. */
  readonly humidityLow?: number;
  /** Mean relative humidity, 0..1. */
  readonly humidity?: number;
  /** Solar radiation, MJ m-2 d-1. */
  readonly radiation?: number;
  /** Hours of bright sunshine. */
  readonly sunshine?: number;
  /** Mean wind at the height of the meter, m/s. */
  readonly wind?: number;
}

type Range = readonly [key: string, value: number | undefined, low: number, high: number, unit: string];

function* outside(ranges: readonly Range[]): Generator<Fault> {
  for (const [key, value, low, high, unit] of ranges) {
    if (value === undefined || (value >= low && value <= high)) continue;
    yield { key, got: `${value}`, problem: 'outside what can be', expected: `${low} to ${high} ${unit}` };
  }
}

/** What cannot be true of a site and a day of weather, one fault a value; keys are those of the two types. */
export function weatherFaults(site: WeatherSite, day: WeatherDay): readonly Fault[] {
  const { high, low } = day;
  const faults = [
    ...outside([
      ['latitude', site.latitude, -90, 90, 'degrees'],
      ['elevation', site.elevation, -500, 9000, 'm'],
      ['windHeight', site.windHeight, 0.5, 200, 'm'],
      ['dayOfYear', day.dayOfYear, 1, 366, 'd'],
      ['high', high, -90, 60, 'degC'],
      ['low', low, -90, 60, 'degC'],
      ['dewPoint', day.dewPoint, -90, 60, 'degC'],
      ['humidityHigh', day.humidityHigh, 0, 1, '(share)'],
      ['humidityLow', day.humidityLow, 0, 1, '(share)'],
      ['humidity', day.humidity, 0, 1, '(share)'],
      ['radiation', day.radiation, 0, 50, 'MJ m-2 d-1'],
      ['sunshine', day.sunshine, 0, 24, 'h'],
      ['wind', day.wind, 0, 100, 'm/s'],
    ]),
  ];
  if (low > high) {
    faults.push({
      key: 'low',
      got: `${low}`,
      problem: 'above the highest',
      expected: `at most ${high} degC`,
    });
  }
  return faults;
}
