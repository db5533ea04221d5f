// Reads numbers as: first guess of a design
import { pow } from '../../base/elementary.js';
import { oxygenSaturation } from '../../chemistry/gases.js';
import type { Parameters } from '../../library/parameters.js';
import { scopeTo } from '../../model/scope.js';
import { STATED_MASS, temperatureShare } from '../../processes/kernels/intake.js';

const checked = (name: string, value: number, above: boolean): number => {
  if (value < Infinity && (above ? value > 0 : value >= 0)) return value;
  throw new RangeError(`${name} is ${value}; expected ${above ? 'more than 0' : '0 or more'}`);
};

/**
 * Feed that fish eat to satiety in sound water within their best temperatures, as a share of their mass, d-1: appetite
 * of the species at 100 g, falling with size. The same numbers as in a run.
 * @param mass of one fish, g; throws RangeError unless it is above 0
 */
export function appetiteOf(parameters: Parameters, species: string, mass: number): number {
  const relative = checked('mass', mass, true) / STATED_MASS;
  const falls = pow(relative, -parameters.value('fish.appetite-exponent'));
  return parameters.value(`fish.${species}.appetite`) * falls;
}

/**
 * Share of full appetite of a species in water of a temperature, 0 to 1. The same numbers as in a run.
 * @param temperature degC
 */
export function appetiteShare(parameters: Parameters, species: string, temperature: number): number {
  return temperatureShare(scopeTo(parameters, { species }), temperature);
}

/** Growth that a species was seen to make, for a first guess of a size; not what a run grows by. */
export interface GrowthGuess {
  /** Of one fish at the start, g. */
  readonly mass: number;
  /** Of the water, mean, degC. */
  readonly temperature: number;
  /** d. */
  readonly days: number;
}

/**
 * Mass of a fish after some days by the thermal growth coefficient of its species, g: the cube root grows by the
 * coefficient times degree-days. Undefined where the tables have none (a species of one's own). Throws RangeError for a
 * mass that is not above 0, or a temperature or days below 0.
 */
export function massByGrowthCoefficient(
  parameters: Parameters,
  species: string,
  { mass, temperature, days }: GrowthGuess,
): number | undefined {
  const id = `fish.${species}.thermal-growth`;
  if (!parameters.has(id)) return undefined;
  const degreeDays = checked('temperature', temperature, false) * checked('days', days, false);
  const root = pow(checked('mass', mass, true), 1 / 3) + (parameters.value(id) / 1000) * degreeDays;
  return root * root * root;
}

/** What an aeration has to hold. */
export interface AirDemand {
  /** Oxygen taken up, g d-1. */
  readonly oxygen: number;
  /** Of the water, m3. */
  readonly volume: number;
  /** degC. */
  readonly temperature: number;
  /** Share of saturation at which the oxygen is held, 0 to below 1. */
  readonly heldAt: number;
}

/**
 * Oxygen transfer coefficient (kLa, d-1) of an aeration that brings as much oxygen as is taken up, while the water holds
 * a share of saturation: uptake over volume and deficit. At 20 degC and in other water it is a little other: a first
 * guess. Throws RangeError where a number is out of its range.
 */
export function aerationFor(parameters: Parameters, demand: AirDemand): number {
  const { oxygen, volume, temperature, heldAt } = demand;
  if (!(heldAt >= 0 && heldAt < 1)) throw new RangeError(`heldAt is ${heldAt}; expected 0 to below 1`);
  const deficit = (1 - heldAt) * oxygenSaturation(parameters, temperature);
  return checked('oxygen', oxygen, false) / (checked('volume', volume, true) * deficit);
}
