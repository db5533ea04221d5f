import type { Fault } from './faults.js';
import { nearest } from './nearest.js';
import { type Dimension, dimensionsWith, inUnit, unitNames } from './units.js';

/** Systems of units that results may be shown in: those of the results, or US customary ones. */
export type UnitSystem = 'metric' | 'us';

/** Names that choose units of many quantities at once. */
const unitSystems: readonly UnitSystem[] = ['metric', 'us'];

/** A sort of quantity whose unit may be chosen by itself. */
export type Choosable = Extract<
  Dimension,
  'ammonia' | 'nitrite' | 'nitrate' | 'alkalinity' | 'temperature' | 'volume' | 'mass' | 'area' | 'length'
>;

/** All of them, in the order in which they are told. */
const choosable: readonly Choosable[] = [
  'ammonia',
  'nitrite',
  'nitrate',
  'alkalinity',
  'temperature',
  'volume',
  'mass',
  'area',
  'length',
];

/**
 * US customary units by the units that Leat shows. What a pound, a gallon and a foot are stands in `units.ts`, exact by
 * definition (NIST SP 811, Guide for the Use of the SI, 2008, appendix B.8).
 */
const customary: Readonly<Record<string, string>> = {
  degC: 'degF',
  m3: 'gal',
  'm³': 'gal',
  L: 'gal',
  g: 'oz',
  kg: 'lb',
  m2: 'ft2',
  'm²': 'ft²',
  m: 'ft',
  cm: 'in',
  mm: 'in',
};

/** Which sort of nitrogen or alkalinity a quantity is, where its unit does not say it. */
const sorts: Readonly<Record<string, Choosable>> = {
  tan: 'ammonia',
  ammonia: 'ammonia',
  'un-ionised-ammonia': 'ammonia',
  nitrite: 'nitrite',
  'nitrite-felt': 'nitrite',
  nitrate: 'nitrate',
  alkalinity: 'alkalinity',
};

const simple: Readonly<Record<string, Choosable>> = {
  degC: 'temperature',
  m3: 'volume',
  'm³': 'volume',
  L: 'volume',
  g: 'mass',
  kg: 'mass',
  m2: 'area',
  'm²': 'area',
  m: 'length',
  cm: 'length',
  mm: 'length',
};

/** Units as they were chosen. Plain data. */
export interface UnitChoice {
  readonly system: UnitSystem;
  /** Of single sorts of quantities, over those of the system. */
  readonly single: Readonly<Partial<Record<Choosable, string>>>;
}

/** Units as the results of a run have them. */
export const metric: UnitChoice = /* @__PURE__ */ Object.freeze({
  system: 'metric',
  single: Object.freeze({}),
});

const expected = 'metric, us, or units such as "mg/L as NO3", "mg N/L", dKH, "meq/L", degF, gal or lb';

const bareWord = (text: string): string =>
  text
    .trim()
    .replace(/^(["'])(.*)\1$/, '$2')
    .trim();

/** What is wrong with one unit that was chosen, without where it stands. */
export type UnitFault = Pick<Fault, 'got' | 'problem' | 'expected' | 'nearest'>;

function unitFault(word: string): UnitFault {
  if (word === 'mg/L' || word === 'ppm')
    return {
      got: word,
      problem: 'ambiguous unit: it does not say as what',
      expected: '"mg N/L", or "mg/L as NO3" (NO2, NH4, NH3, CaCO3, HCO3)',
    };
  const known = [...unitSystems, ...choosable.flatMap((sort) => unitNames(sort))];
  const near = nearest(word, known);
  return {
    ...{ got: word, problem: 'neither a unit to be shown in nor a system of units', expected },
    ...(near !== undefined && { nearest: near }),
  };
}

/**
 * Reads units to be shown in, one by one: `metric`, `us`, or the unit of one sort of quantity, which stands over that of
 * the system.
 * @returns what was chosen, and every word that is no such unit, or that gives a second one for the same quantity
 */
export function readUnitChoice(words: readonly string[]): {
  choice: UnitChoice;
  faults: readonly UnitFault[];
} {
  const faults: UnitFault[] = [];
  const single: Partial<Record<Choosable, string>> = {};
  let system: UnitSystem | undefined;
  const second = (got: string, what: string, before: string): void => {
    faults.push({ got, problem: `a second ${what} beside ${before}`, expected: 'one' });
  };
  for (const word of words.map(bareWord)) {
    const named = unitSystems.find((each) => each === word);
    if (named !== undefined) {
      if (system !== undefined && system !== named) second(word, 'system of units', system);
      system = named;
      continue;
    }
    const found = choosable.filter((sort) => dimensionsWith(word).includes(sort));
    if (found.length === 0) faults.push(unitFault(word));
    for (const sort of found) {
      const before = single[sort];
      if (before !== undefined && before !== word) second(word, `unit of ${sort}`, before);
      single[sort] = word;
    }
  }
  return { choice: { system: system ?? 'metric', single }, faults };
}

/** Words behind a unit that say of what, such as `dry`: they stay. */
const suffix = /^(\S+)( (?:dry|fresh|N|COD|O2|Cl))$/;

/** The simple units of a fraction such as `kg dry/m2` or `g/(m2 d)`: the first is above the line, the others below it. */
const simpleUnit = /[^\s/()]+(?: (?:dry|fresh|N|COD|O2|Cl)(?![^\s/)]))?/g;

/** The unit that a plain unit (no fraction) is shown in. */
function plainUnit(unit: string, choice: UnitChoice): string {
  const [, stem = unit, rest = ''] = suffix.exec(unit) ?? [];
  const sort = simple[stem] as Choosable | undefined;
  const chosen = sort === undefined ? undefined : choice.single[sort];
  const customed = choice.system === 'us' ? customary[stem] : undefined;
  return (chosen ?? customed ?? stem) + rest;
}

/** The unit of a quantity of nitrogen or alkalinity: the one chosen, free ammonia never as ammonium. */
function ofSort(quantity: string, choice: UnitChoice): string | undefined {
  const sort = sorts[quantity] as Choosable | undefined;
  const chosen = sort === undefined ? undefined : choice.single[sort];
  return quantity === 'un-ionised-ammonia' ? chosen?.replace(/ as NH4$/, ' as NH3') : chosen;
}

const concentration = /^(mg|g|ug) ?(N)?\/(L|m3)|^m?(eq|mol)\/(L|m3)|^mg\/L as /;

/** The unit that a unit of results is shown in, by what it is the unit of where that is known. */
export function unitShown(unit: string, choice: UnitChoice, quantity = ''): string {
  const chosen = ofSort(quantity, choice);
  if (chosen !== undefined && inUnit(1, unit, chosen) !== undefined) return chosen;
  if (concentration.test(unit)) return unit;
  return unit.replace(simpleUnit, (part) => plainUnit(part, choice));
}

const bare = (unit: string): string => (suffix.exec(unit)?.[1] ?? unit).replace('³', '3').replace('²', '2');

/**
 * A number of one unit in the unit it is shown in, as `unitShown` gives it: by the conversions of `@leat/core/units`, a
 * fraction of units part by part.
 * @param value in `unit`
 */
export function valueShown(value: number, unit: string, to: string): number {
  if (unit === to) return value;
  const whole = inUnit(value, bare(unit), bare(to));
  if (whole !== undefined) return whole;
  const [from, onto] = [unit.match(simpleUnit) ?? [], to.match(simpleUnit) ?? []];
  return from.reduce((result, part, i) => {
    const factor = part === onto[i] ? 1 : inUnit(1, bare(part), bare(onto[i]));
    if (factor === undefined) throw new RangeError(`no conversion from ${part} to ${onto[i]}`);
    return i === 0 ? result * factor : result / factor;
  }, value);
}
