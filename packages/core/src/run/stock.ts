// Reads numbers as: fish that are stocked
import type { Model } from '../model/model.js';
import { scopeTo } from '../model/scope.js';
import { STATED_MASS } from '../processes/kernels/intake.js';
import { usualFat } from '../processes/kernels/fish-energy.js';

/** Body fat that is usual in so many fish of a mean mass (g) of a cohort, g COD. */
export function fatOf({ scenario, parameters }: Model, cohort: number, number: number, mass: number): number {
  const values = scopeTo(parameters, { species: scenario.fish[cohort].species });
  return number * mass * usualFat(values, mass / STATED_MASS);
}

/** A mass in words, four digits. */
export const grams = (value: number): string => `${Number(value.toPrecision(4))} g`;
