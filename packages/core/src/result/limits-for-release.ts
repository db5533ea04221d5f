// Reads numbers as: limits for release
import { pow10 } from '../base/elementary.js';
import type { Values } from '../library/values.js';
import { type LimitCheck, limitFrom, type LimitReader } from './limit-check.js';

/** left/(1+10^(pivot-pH)) + right/(1+10^(pH-pivot)): how the criteria fall as pH rises. */
function byAcidity(pH: number, pivot: number, left: number, right: number): number {
  return left / (1 + pow10(pivot - pH)) + right / (1 + pow10(pH - pivot));
}

/** A criterion, g TAN-N m-3, at a pH and a temperature, degC. */
type Criterion = (pH: number, temperature: number) => number;

/** How the criterion of a kind falls as pH rises, with the numbers of `epa.<kind>.*`. */
function acidityFactor(values: Values, kind: 'acute' | 'chronic'): (pH: number) => number {
  const [factor, pivot, left, right] = ['factor', 'pivot', 'left', 'right'].map((name) =>
    values.value(`epa.${kind}.${name}`),
  );
  return (pH) => factor * byAcidity(pH, pivot, left, right);
}

/** As `acuteCriterion`, for many waters: the numbers are looked up once. */
function openAcuteCriterion(values: Values, trout: boolean): Criterion {
  const term = (name: string): number => values.value(`epa.acute.${name}`);
  const [mussel, slope, reference] = [term('mussel'), term('slope'), term('reference')];
  const shapeAt = acidityFactor(values, 'acute');
  const warmthAt = (temperature: number): number => mussel * pow10(slope * (reference - temperature));
  if (!trout) {
    const cap = term('cap');
    return (pH, temperature) => shapeAt(pH) * Math.min(cap, warmthAt(temperature));
  }
  const [pivot, left, right] = [term('pivot'), term('trout-left'), term('trout-right')];
  return (pH, temperature) =>
    Math.min(byAcidity(pH, pivot, left, right), shapeAt(pH) * warmthAt(temperature));
}

/** As `chronicCriterion`, for many waters: the numbers are looked up once. */
function openChronicCriterion(values: Values): Criterion {
  const term = (name: string): number => values.value(`epa.chronic.${name}`);
  const [reference, floor, mussel, slope] = ['reference', 'floor', 'mussel', 'slope'].map(term);
  const shapeAt = acidityFactor(values, 'chronic');
  return (pH, temperature) => {
    const warmth = reference - Math.max(temperature, floor);
    return shapeAt(pH) * mussel * pow10(slope * warmth);
  };
}

/**
 * Acute criterion (CMC, one-hour mean), g TAN-N m-3: US EPA 2013, EPA-822-R-13-001.
 * @param trout whether salmon and trout of the genus Oncorhynchus are present
 */
export function acuteCriterion(values: Values, pH: number, temperature: number, trout: boolean): number {
  return openAcuteCriterion(values, trout)(pH, temperature);
}

/** Chronic criterion (CCC, 30-day mean, mussels present), g TAN-N m-3: US EPA 2013, EPA-822-R-13-001. */
export function chronicCriterion(values: Values, pH: number, temperature: number): number {
  return openChronicCriterion(values)(pH, temperature);
}

/** Salmon and trout that the acute criterion has a value of its own for. */
const oncorhynchus = ['rainbow-trout'];

const always = (): boolean => true;

/** Checks of the water of one vessel, as total ammonia over the criterion at its pH and temperature. */
function checksAt(reader: LimitReader, vessel: string): readonly LimitCheck[] {
  const { parameters } = reader;
  const trout = reader.run.model.scenario.fish.some(({ species }) => oncorhynchus.includes(species));
  const tan = reader.values(`tan@${vessel}`);
  const pH = reader.values(`pH@${vessel}`);
  const temperature = reader.values(`temperature@${vessel}`);
  const acuteAt = openAcuteCriterion(parameters, trout);
  const chronicAt = openChronicCriterion(parameters);
  const acute = tan.map((each, i) => each / acuteAt(pH[i], temperature[i]));
  const chronic = tan.map((each, i) => each / chronicAt(pH[i], temperature[i]));
  const criterion = (kind: 'acute' | 'chronic', averaging: string, quantity: string) => ({
    ...limitFrom(parameters, {
      id: `epa.${kind}.factor`,
      averaging,
      quantity,
      unit: '1',
      direction: 'above',
      harm: 'release',
      whom: 'wild life',
    }),
    value: 1,
  });
  const peak = {
    ...criterion('chronic', 'epa.chronic.peak-averaging', 'ammonia-4-day-ratio'),
    value: parameters.value('epa.chronic.peak-factor'),
  };
  const check = (limit: LimitCheck['limit'], values: Float64Array): LimitCheck => ({
    limit,
    place: vessel,
    values,
    matters: always,
  });
  return [
    check(criterion('acute', 'epa.acute.averaging', 'ammonia-acute-ratio'), acute),
    check(criterion('chronic', 'epa.chronic.averaging', 'ammonia-chronic-ratio'), chronic),
    check(peak, chronic),
  ];
}

/**
 * The criteria of US EPA 2013 for ammonia, for the water that would be let out: the reservoir and every
 * vessel that discharges. They protect wild life in the water that receives it, before any dilution.
 */
export function limitsForRelease(reader: LimitReader): readonly LimitCheck[] {
  const { vessels, reservoir } = reader.run.model.scenario;
  return vessels
    .filter(({ name, exchange, leak }) => name === reservoir || exchange > 0 || leak > 0)
    .flatMap(({ name }) => checksAt(reader, name));
}
