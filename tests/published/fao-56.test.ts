import { createParameters, penmanMonteith } from '@leat/core';
import { expect, it } from 'vitest';

// The numbers of Examples 18 and 20 of FAO-56 stand in checks/evapotranspiration.ts.
const values = createParameters();

it('assumes nothing where all is measured (Example 18)', () => {
  const site = { latitude: 50.8, elevation: 100, windHeight: 10 };
  const day = {
    dayOfYear: 187,
    high: 21.5,
    low: 12.3,
    humidityHigh: 0.84,
    humidityLow: 0.63,
    wind: 10 / 3.6,
    sunshine: 9.25,
  };
  expect(penmanMonteith(values, site, day).assumed).toEqual([]);
});

it('says what it assumes where only temperatures are known (Example 20)', () => {
  const site = { latitude: 45 + 43 / 60, elevation: 200 };
  expect(penmanMonteith(values, site, { dayOfYear: 196, high: 26.6, low: 14.8 }).assumed).toEqual([
    'dew point from the lowest temperature',
    'solar radiation from the range of temperature (interior)',
    'wind of 2 m/s',
  ]);
});
