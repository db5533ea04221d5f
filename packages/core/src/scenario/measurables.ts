import type { Measurable, Watched } from './scenario.js';
import type { Dimension } from '../base/units.js';

/** What may be measured, in the order of a test kit. */
export const measurables = [
  'ammonia',
  'nitrite',
  'nitrate',
  'pH',
  'alkalinity',
  'oxygen',
  'temperature',
  'chloride',
  'volume',
] as const satisfies readonly Measurable[];

/** What a rule may read. */
export const watched = [
  ...measurables,
  'conductivity',
  'fish-mass',
  'rain-tank',
] as const satisfies readonly Watched[];

/** What each is written in; pH has no unit. */
export const dimensionOf: Readonly<Record<Watched, Dimension | undefined>> = {
  ammonia: 'ammonia',
  nitrite: 'nitrite',
  nitrate: 'nitrate',
  pH: undefined,
  alkalinity: 'alkalinity',
  oxygen: 'concentration',
  temperature: 'temperature',
  chloride: 'concentration',
  volume: 'volume',
  conductivity: 'conductivity',
  'fish-mass': 'mass',
  'rain-tank': 'volume',
};

/** The unit that each is told in; '' for pH. */
export const unitOfMeasurable: Readonly<Record<Watched, string>> = /* @__PURE__ */ Object.freeze({
  ammonia: 'mg N/L',
  nitrite: 'mg N/L',
  nitrate: 'mg N/L',
  pH: '',
  alkalinity: 'meq/L',
  oxygen: 'mg/L',
  temperature: 'degC',
  chloride: 'mg/L',
  volume: 'm3',
  conductivity: 'mS/cm',
  'fish-mass': 'g',
  'rain-tank': 'm3',
});
