import { degreeOfHardness } from '../base/hardness.js';
import { normalOf } from '../base/random.js';
import { waterState } from '../model/layout.js';
import type { Model } from '../model/model.js';
import { openConductivity } from '../chemistry/conductivity.js';
import { ionsIn, waterChemistry } from '../model/water-chemistry.js';
import { unitOfMeasurable } from '../scenario/measurables.js';
import type { Measurable, TestKit, Watched } from '../scenario/scenario.js';
import { componentOf } from '../scenario/supplies.js';

/** The water of a system at a moment. */
export interface Waters {
  readonly model: Model;
  readonly y: Float64Array;
  /** m3 in each vessel. */
  readonly volume: ArrayLike<number>;
  /** degC in each vessel. */
  readonly temperature: ArrayLike<number>;
  /** Ionic strength in each vessel, mol L-1. */
  readonly ionic: ArrayLike<number>;
}

/**
 * What is truly there: g m-3 (nitrogen as N), eq m-3, pH, degC, m3 or mS cm-1 (estimated). Not finite where a vessel is dry
 * or its water has no pH from 0 to 14.
 */
export function trueValue(read: Measurable | 'conductivity', waters: Waters, vessel: number): number {
  switch (read) {
    case 'pH':
      return waterChemistry(waters.model.parameters, waters, vessel).pH;
    case 'temperature':
      return waters.temperature[vessel];
    case 'volume':
      return waters.volume[vessel];
    case 'conductivity':
      return openConductivity(waters.model.parameters)(ionsIn(waters.y, waters.volume[vessel], vessel));
    default:
      return waters.y[waterState(vessel, componentOf(read))] / waters.volume[vessel];
  }
}

/** A level or reading in twelve digits, so that multiples of a resolution compare as they are written. */
export function twelveDigits(value: number): number {
  return Number(value.toPrecision(12));
}

/**
 * What a kit shows of a true value: a normal error added, then rounded to a whole multiple of the resolution.
 * A large absolute error may show less than zero. Draws numbers where the kit has an error, else none.
 *
 * @param random uniform numbers in [0, 1)
 */
export function readingOf(kit: TestKit, value: number, random: () => number): number {
  const { error, resolution } = kit;
  let shown = value;
  if (error !== undefined)
    shown += error.deviation * normalOf(random) * (error.kind === 'relative' ? value : 1);
  return twelveDigits(resolution === undefined ? shown : Math.round(shown / resolution) * resolution);
}

/** A reading or a level in words, four digits: `2.25 mg N/L`; alkalinity in degrees of hardness as well. */
export function describeReading(read: Watched, value: number): string {
  const digits = (number: number): string => String(Number(number.toPrecision(4)));
  const unit = unitOfMeasurable[read];
  const text = unit === '' ? digits(value) : `${digits(value)} ${unit}`;
  return read === 'alkalinity' ? `${text} (${digits(value / degreeOfHardness)} dKH)` : text;
}
