import type { Conditions } from '../process.js';

/** Conditions of no place: for asking what a process reads and how many coefficients it has, which no place changes. */
export const anyConditions: Conditions = {
  temperature: 20,
  air: 20,
  volume: 1,
  surface: 1,
  open: 1,
  floor: 1,
  capture: 0.5,
  aeration: 1,
  inflow: 1,
  fed: 1,
  fedShare: 0.01,
  area: 1,
};
