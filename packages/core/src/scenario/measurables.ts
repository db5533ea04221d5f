import type { Measurable } from './scenario.js';
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

/** What each is written in; pH has no unit. */
export const dimensionOf: Readonly<Record<Measurable, Dimension | undefined>> = {
  ammonia: 'ammonia',
  nitrite: 'nitrite',
  nitrate: 'nitrate',
  pH: undefined,
  alkalinity: 'alkalinity',
  oxygen: 'concentration',
  temperature: 'temperature',
  chloride: 'concentration',
  volume: 'volume',
};

/** The unit that each is told in; '' for pH. */
export const unitOfMeasurable: Readonly<Record<Measurable, string>> = /* @__PURE__ */ Object.freeze({
  ammonia: 'mg N/L',
  nitrite: 'mg N/L',
  nitrate: 'mg N/L',
  pH: '',
  alkalinity: 'meq/L',
  oxygen: 'mg/L',
  temperature: 'degC',
  chloride: 'mg/L',
  volume: 'm3',
});
