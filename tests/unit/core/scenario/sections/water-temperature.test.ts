import { describe, expect, it } from 'vitest';
import { followAir } from '../../../../../packages/core/src/scenario/sections/water-temperature.js';
import { readScenarioFully } from '../../../../../packages/core/src/scenario/read-scenario.js';
import type { DailyValue } from '../../../../../packages/core/src/scenario/scenario.js';
import { edited, messagesOf } from '../../../../product/faults/small-system.js';

describe('water that follows the air', () => {
  it('nears a step of the air by exp(-t/lag): each day has the exact mean of its hours', () => {
    const lag = 2;
    const got = followAir([10, 10, 10], lag, 20);
    got.forEach((mean, day) => {
      const integral = lag * (Math.exp(-day / lag) - Math.exp(-(day + 1) / lag));
      expect(mean).toBeCloseTo(10 + 10 * integral, 12);
    });
  });

  it('stays where the air stays, and is the air itself as the lag goes to nothing', () => {
    expect(followAir([18, 18, 18], 3, 18)).toEqual([18, 18, 18]);
    followAir([5, 25, 15], 1e-4, 10).forEach((mean, day) => {
      expect(mean).toBeCloseTo([5, 25, 15][day], 2);
    });
  });

  it('swings less than the air by 1 / sqrt(1 + (2 pi lag / period)^2)', () => {
    const period = 365;
    const lag = 20;
    const air = Array.from(
      { length: 4 * period },
      (_, day) => 20 + 10 * Math.sin((2 * Math.PI * day) / period),
    );
    const swing = Math.max(...followAir(air, lag, 20).slice(3 * period)) - 20;
    expect(swing).toBeCloseTo(10 / Math.hypot(1, (2 * Math.PI * lag) / period), 2);
  });
});

const water = 'water-temperature: 24 degC';
const follows = 'water-temperature: { follows: air, lag: 2 d, start: 20 degC }';
const air = '\n  air-temperature: 14 degC';
const temperatureOf = (text: string, vessel: number, load?: () => string): DailyValue =>
  readScenarioFully(text, { file: 'small.yaml', ...(load && { load }) }).scenario.vessels[vessel].temperature;

describe('`follows: air` in a file', () => {
  it('follows the air of the climate in all vessels', () => {
    const wanted = { kind: 'daily', values: followAir(new Array<number>(30).fill(14), 2, 20) };
    expect(temperatureOf(edited([water, follows + air]), 1)).toEqual(wanted);
  });

  it('follows it in one vessel, from the temperature of the air where no start is given', () => {
    const tank = 'aeration: 3 1/h, temperature: { follows: air, lag: 1 d }';
    const text = edited(
      [water, `${water}\n  air-temperature: { unit: degC, monthly: [14,9,9,9,9,9,9,9,9,9,9,9] }`],
      ['aeration: 3 1/h', tank],
    );
    expect(temperatureOf(text, 1)).toEqual({ kind: 'constant', value: 24 });
    const values = (temperatureOf(text, 0) as { values: readonly number[] }).values;
    expect(values.every((value) => Math.abs(value - 14) < 1e-12)).toBe(true);
  });

  it('follows the mean of the weather file where the climate names no air, and resolves without the file', () => {
    const weather =
      'et0: { weather: w.csv, method: hargreaves, latitude: 10, columns: { high: { column: x, unit: degC }, low: { column: n, unit: degC } } }';
    const text = edited([water, follows], ['et0: 4 mm/d', weather]);
    const load = (): string => `x,n\n${'20,8\n'.repeat(30)}`;
    const wanted = { kind: 'daily', values: followAir(new Array<number>(30).fill(14), 2, 20) };
    expect(temperatureOf(text, 0, load)).toEqual(wanted);
    const { resolved } = readScenarioFully(text, { file: 'small.yaml', load });
    expect(temperatureOf(JSON.stringify(resolved.plain), 0)).toEqual(wanted);
  });
});

describe('messages about it', () => {
  it.each([
    [
      'no air',
      edited([water, follows]),
      'small.yaml:5:33: climate.water-temperature.follows: no air temperature to follow; got "air"; expected climate.air-temperature, or climate.et0 from a weather file',
    ],
    [
      'no lag',
      edited([water, follows.replace('lag: 2 d, ', '') + air]),
      'small.yaml:5:3: climate.water-temperature.lag: missing; expected a time such as "30 d" or "6 h"',
    ],
    [
      'a lag of nothing',
      edited([water, follows.replace('2 d', '0 d') + air]),
      'small.yaml:5:43: climate.water-temperature.lag: must be more than zero; got "0 d"; expected a time such as "30 d" or "6 h"',
    ],
    [
      'frost',
      edited([water, follows + air.replace('14', '-14')]),
      'small.yaml:5:3: climate.water-temperature: out of range on day 2; got -4.157 degC; expected 0 degC to 45 degC',
    ],
    [
      'another thing to follow',
      edited([water, follows.replace('air', 'soil') + air]),
      'small.yaml:5:33: climate.water-temperature.follows: unknown word; got "soil"; expected one of air',
    ],
  ])('%s', (_, text, message) => {
    expect(messagesOf(text)).toEqual([message]);
  });
});
