import type { Fault } from '../base/faults.js';
import { nearest } from '../base/nearest.js';
import { formFor, rangedRow } from './ranged-row.js';
import { isOpenGroup, type OpenGroup, properties, type PropertyForm } from './properties.js';
import type { Override } from './own-row.js';
import type { RangedRow } from './table-row.js';

/** A row as the user wants it, its faults (then it must not be used), and what is unusual about it. */
export interface OverriddenRow {
  readonly row?: RangedRow;
  readonly faults: readonly Fault[];
  readonly warnings: readonly string[];
}

/** Quantities that may have any sign: offsets of a scale, coefficients of fitted curves, alkalinity of acids. */
const signed = (form: PropertyForm, table: string): boolean =>
  form.unit === 'degC' || table === 'constants' || (table === 'dosing' && form.unit === 'eq/g');

/** A share, such as a digestibility: unit 1 and never above 1 in the tables. What is counted in pH says so. */
const isShare = (form: PropertyForm): boolean => form.unit === '1' && form.low >= 0 && form.high <= 1;

/** Factors either way, which say nothing at 1, and a share that cannot be all: what each must be. */
const strict: Readonly<
  Record<string, { readonly holds: (value: number) => boolean; readonly rule: string }>
> = {
  'log.outlier-spread': {
    holds: (value) => value > 1,
    rule: 'more than 1: spoilt readings spread more than sound ones',
  },
  'log.start-spread': { holds: (value) => value > 1, rule: 'more than 1: it is a factor either way' },
  'log.outlier-share': {
    holds: (value) => value < 0.5,
    rule: 'less than 0.5: where most readings are spoilt, none tells',
  },
};

/** Numbers that were in the tables once, and what stands in their place. */
const replaced: Readonly<Record<string, string>> = {
  'aob.k-alkalinity': 'aob.k-carbon',
  'biofilm.seed': 'biofilm.seed-aob',
  'aob.ph-low': 'nitrifier.flank-fresh',
  'nob.ph-low': 'nitrifier.flank-fresh',
  'fish.fasting-theta': 'fish.maintenance-theta',
  'solids.exposed': 'solids.oxygen-diffusion',
  'solids.mineralisation-suspended': 'solids.hydrolysis-suspended',
  'solids.mineralisation-settled': 'solids.hydrolysis-settled',
};

/** Properties that subjects had once, and what stands in their place. */
const replacedProperties: Readonly<Partial<Record<OpenGroup, Readonly<Record<string, string>>>>> = {
  fish: {
    'feed-conversion': 'energy-retention',
    'reference-ration': 'appetite',
    'fasting-loss': 'maintenance',
  },
  crop: { 'final-mass': 'light-use', 'nitrogen-minimum': 'nitrogen-least' },
};

/** Why they are numbers no more. */
const replacedBecause: Readonly<Partial<Record<OpenGroup, string>>> = {
  fish: 'it comes out of the energy of the fish',
  crop: 'crops grow by light, along their curve of nitrogen',
};

/** Why an id is no number of the tables and may not be added to them; undefined when it may. */
export function idFault(id: string, rows: ReadonlyMap<string, RangedRow>): Fault | undefined {
  const [group, subject = '', property = '', ...more] = id.split('.');
  const unknown = (): Fault => {
    const near = (Object.hasOwn(replaced, id) ? replaced[id] : undefined) ?? nearest(id, rows.keys());
    return { problem: 'no such number in the tables', ...(near === undefined ? {} : { nearest: near }) };
  };
  if (!isOpenGroup(group) || subject === '' || property === '' || more.length > 0) return unknown();
  const { needed, further, together = [] } = properties[group];
  const all = [...needed, ...further, ...together];
  const instead = replacedProperties[group]?.[property];
  if (instead !== undefined) {
    const ask =
      property === 'feed-conversion' ? `; a measured one is given as feed-conversion of a group of fish` : '';
    return {
      problem: `no number any more: ${replacedBecause[group] ?? ''}${ask}`,
      nearest: rows.has(`${group}.${instead}`) ? `${group}.${instead}` : `${group}.${subject}.${instead}`,
    };
  }
  if (!all.includes(property)) {
    const ours = [...rows.keys()].some((known) => known.startsWith(`${group}.${subject}.`));
    if (ours) return unknown();
    const near = nearest(property, all);
    const hint = near === undefined ? { expected: `one of ${all.join(', ')}` } : { nearest: near };
    return { problem: `no such property of ${group}`, ...hint };
  }
  if (/^[a-z][a-z0-9-]{0,63}$/.test(subject)) return undefined;
  return {
    problem: 'not a name',
    got: subject,
    expected: 'a small letter, then small letters, digits and -',
  };
}

/** Puts a number given by the user in place of one of the rows, or beside them. */
export function overrideRow(override: Override, rows: ReadonlyMap<string, RangedRow>): OverriddenRow {
  const { id, value, row: given } = override;
  const key = override.where ?? id;
  const base = rows.get(id);
  const wrong = base !== undefined ? undefined : idFault(id, rows);
  if (wrong !== undefined || (base === undefined && given === undefined)) {
    const near = nearest(id, rows.keys());
    const hint = near === undefined ? {} : { nearest: near };
    const fault = wrong ?? { problem: 'no such number; a new one needs a row in a table', ...hint };
    return { faults: [{ key, got: id, ...fault }], warnings: [] };
  }
  const form = formFor(id, base);
  const low = override.low ?? value;
  const high = override.high ?? value;
  const faults = [...senseFaults(form, id, key, [low, value, high])];
  if (faults.length === 0 && (low > value || value > high)) {
    faults.push({
      key,
      got: `${low} .. ${value} .. ${high}`,
      problem: `range of ${id} does not hold its value`,
      expected: 'low <= value <= high',
    });
  }
  if (given !== undefined && faults.length === 0)
    faults.push(...spreadFaults(given.distribution, key, low, high));
  if (faults.length > 0) return { faults, warnings: [] };
  const outside = base !== undefined && (value < base.low || value > base.high);
  const warnings = outside
    ? [`${id} is ${value} ${base.unit}, outside its published range ${base.low} .. ${base.high}`]
    : [];
  return { row: rangedRow(override, base), faults, warnings };
}

function* spreadFaults(
  distribution: RangedRow['distribution'],
  key: string,
  low: number,
  high: number,
): Generator<Fault> {
  const got = `${low} .. ${high}`;
  if (distribution !== 'fixed' && low >= high) {
    yield { key, got, problem: `${distribution} needs a range`, expected: 'low < high, or fixed' };
  } else if (distribution === 'lognormal' && low <= 0) {
    yield { key, got, problem: 'lognormal must stay above zero', expected: 'low > 0' };
  }
}

function* senseFaults(
  form: PropertyForm & { readonly table: string },
  id: string,
  key: string,
  values: readonly number[],
): Generator<Fault> {
  const got = `${values.find((value) => !Number.isFinite(value)) ?? values[1]}`;
  const free = signed(form, form.table);
  if (!values.every(Number.isFinite)) {
    yield { key, got, problem: `${id} is not a finite number`, expected: `a number in ${form.unit}` };
  } else if (!free && values.some((value) => value < 0)) {
    yield { key, got: `${Math.min(...values)}`, problem: `${id} is below zero`, expected: 'zero or more' };
  } else if (!free && form.low > 0 && values.some((value) => value === 0)) {
    yield { key, got: '0', problem: `${id} is zero`, expected: 'more than zero' };
  } else if (isShare(form) && values.some((value) => value > 1)) {
    yield { key, got: `${Math.max(...values)}`, problem: `${id} is a share above 1`, expected: '0 to 1' };
  } else if (Object.hasOwn(strict, id) && !values.every(strict[id].holds)) {
    const wrong = values.find((value) => !strict[id].holds(value));
    yield { key, got: `${wrong ?? values[1]}`, problem: `${id} is out of sense`, expected: strict[id].rule };
  }
}
