import type { Values } from '../model/composition.js';

/** left/(1+10^(pivot-pH)) + right/(1+10^(pH-pivot)): how the criteria fall as pH rises. */
function byAcidity(pH: number, pivot: number, left: number, right: number): number {
  return left / (1 + 10 ** (pivot - pH)) + right / (1 + 10 ** (pH - pivot));
}

/** The same with the numbers of `epa.<kind>.*`. */
function acidityFactor(values: Values, kind: 'acute' | 'chronic', pH: number): number {
  const term = (name: string): number => values.value(`epa.${kind}.${name}`);
  return term('factor') * byAcidity(pH, term('pivot'), term('left'), term('right'));
}

/**
 * Acute criterion (CMC, one-hour mean), g TAN-N m-3: US EPA 2013, EPA-822-R-13-001.
 * @param trout whether salmon and trout of the genus Oncorhynchus are present
 */
export function acuteCriterion(values: Values, pH: number, temperature: number, trout: boolean): number {
  const term = (name: string): number => values.value(`epa.acute.${name}`);
  const warmth = term('mussel') * 10 ** (term('slope') * (term('reference') - temperature));
  const shape = acidityFactor(values, 'acute', pH);
  return trout
    ? Math.min(byAcidity(pH, term('pivot'), term('trout-left'), term('trout-right')), shape * warmth)
    : shape * Math.min(term('cap'), warmth);
}

/** Chronic criterion (CCC, 30-day mean, mussels present), g TAN-N m-3: US EPA 2013, EPA-822-R-13-001. */
export function chronicCriterion(values: Values, pH: number, temperature: number): number {
  const term = (name: string): number => values.value(`epa.chronic.${name}`);
  const warmth = term('reference') - Math.max(temperature, term('floor'));
  return acidityFactor(values, 'chronic', pH) * term('mussel') * 10 ** (term('slope') * warmth);
}
