import { InputError } from '../../base/faults.js';
import type { Scenario } from '../../scenario/scenario.js';
import type { Plain } from '../../scenario/file/tree.js';
import { amountLess, isBox, type PlainFile, valueAt, withActions, withValue } from '../advice/file-edit.js';
import { valueRange } from '../design/value-range.js';
import type { PlanRange } from './plan-search.js';

/** A quantity that is planned, `from` one end `to` the other in so many `steps`, in which unit, and what it does to a file. */
export interface PlanQuantity extends PlanRange {
  /** What it is called: `beds`, `fish`, or the path of a value in the file. */
  readonly name: string;
  /** Of the ends; empty for a count or a bare number. */
  readonly unit: string;
  /** The file with so much of it: `value` in its unit. */
  readonly apply: (file: PlainFile, value: number) => PlainFile;
}

/** Steps between the ends of what is not counted. */
const STEPS = 32;

const total = (list: readonly number[]): number => list.reduce((all, each) => all + each, 0);

/** All beds together, m2: the area of every planting in proportion. */
function bedsOf({ plantings }: Scenario, from: number, to: number): PlanQuantity {
  const area = total(plantings.map((planting) => planting.area));
  return {
    ...{ name: 'beds', unit: 'm2', from, to, steps: STEPS },
    apply: (file, value) =>
      plantings.reduce((so, { name }) => {
        const path = ['plantings', name, 'area'];
        return withValue(so, path, amountLess(valueAt(so, path), value / area));
      }, file),
  };
}

/** Kinds of actions that count fish. */
const counting = ['stock', 'harvest-fish', 'lose-fish'];

/** All fish at the start together: the number of every cohort in proportion, with its fixed ration and what is done with it. */
function fishOf({ fish: cohorts }: Scenario, from: number, to: number): PlanQuantity {
  const fish = total(cohorts.map(({ number }) => number));
  const whole = (number: number, times: number): number => Math.max(1, Math.round(number * times));
  return {
    ...{ name: 'fish', unit: '', from, to, whole: true, steps: Math.min(to - from, 2 * STEPS) },
    apply: (file, value) => {
      const times = value / fish;
      const stocked = cohorts.reduce((so, { name, number, ration }) => {
        if (number === 0) return so;
        const fewer = withValue(so, ['fish', name, 'number'], whole(number, times));
        const path = ['fish', name, 'ration'];
        if (ration.kind !== 'mass') return fewer;
        return withValue(fewer, path, amountLess(valueAt(so, path), whole(number, times) / number));
      }, file);
      return withActions(stocked, (entry) => [
        Object.fromEntries(
          Object.entries(entry).map(([key, what]): [string, Plain] => {
            const number = counting.includes(key) && isBox(what) ? what['number'] : undefined;
            return typeof number === 'number'
              ? [key, { ...(what as PlainFile), number: whole(number, times) }]
              : [key, what];
          }),
        ),
      ]);
    },
  };
}

/** All that is dosed by plan, times what the file says: of `dosing` and of actions that dose. */
function dosesOf(from: number, to: number): PlanQuantity {
  const dosed = (entry: Plain, value: number): Plain => {
    if (!isBox(entry)) return entry;
    if ('product' in entry && 'mass' in entry) return { ...entry, mass: amountLess(entry['mass'], value) };
    const dose = entry['dose'];
    return isBox(dose) ? { ...entry, dose: { ...dose, mass: amountLess(dose['mass'], value) } } : entry;
  };
  const list = (file: PlainFile, key: string, value: number): PlainFile => {
    const entries = file[key] as Plain | undefined;
    return Array.isArray(entries)
      ? { ...file, [key]: (entries as readonly Plain[]).map((entry) => dosed(entry, value)) }
      : file;
  };
  return {
    ...{ name: 'doses', unit: '', from, to, steps: STEPS },
    apply: (file, value) => list(list(file, 'dosing', value), 'actions', value),
  };
}

/** The file with a value at a path such as `flows[0].rate`. */
function withPath(tree: Plain | undefined, [step, ...rest]: readonly string[], value: Plain): Plain {
  const inner = (below: Plain | undefined): Plain =>
    rest.length === 0 ? value : withPath(below, rest, value);
  if (Array.isArray(tree))
    return (tree as readonly Plain[]).map((item, i) => (String(i) === step ? inner(item) : item));
  const map = isBox(tree) ? tree : {};
  return { ...map, [step]: inner(map[step]) };
}

/** What must stand at the end of a path already. */
const stepsOf = (path: string): readonly string[] => path.replace(/\[(\d+)\]/g, '.$1').split('.');

function pathOf(path: string, file: PlainFile, from: string, to: string): PlanQuantity {
  const range = valueRange(from, to, { from: '--vary', to: '--vary' });
  if (!('unit' in range)) throw new InputError(range.map((fault) => ({ ...fault, key: path })));
  const there = stepsOf(path).reduce<Plain | undefined>(
    (at, step) =>
      Array.isArray(at) ? (at as readonly Plain[])[Number(step)] : isBox(at) ? at[step] : undefined,
    file,
  );
  if (there === undefined)
    throw new InputError([
      {
        file: '--vary',
        key: path,
        problem: 'no such entry',
        expected: 'beds, fish, doses, or a path as --set takes it',
      },
    ]);
  const whole =
    range.unit === '' &&
    Number.isInteger(there) &&
    Number.isInteger(range.from) &&
    Number.isInteger(range.to);
  return {
    ...{ name: path, unit: range.unit, from: range.from, to: range.to, whole },
    steps: whole ? Math.min(range.to - range.from, 2 * STEPS) : STEPS,
    apply: (before, value) => {
      return withPath(
        before,
        stepsOf(path),
        range.unit === '' ? value : `${value} ${range.unit}`,
      ) as PlainFile;
    },
  };
}

const expected =
  'NAME=FROM:TO, such as "beds=2 m2:12 m2", "fish=10:60" or "vessels.filter.media.volume=50 L:200 L"';

/**
 * Reads a quantity that is planned, `NAME=FROM:TO`: `beds` all planted area in m2, `fish` all fish at the start, `doses` all that is
 * dosed by plan, times what the file says, or the path of a value. Throws InputError with every fault.
 */
export function planQuantity(text: string, scenario: Scenario, file: PlainFile): PlanQuantity {
  const match = /^([^=]+)=([^:]+):([^:]+)$/.exec(text);
  const fault = (problem: string, more = expected): InputError =>
    new InputError([{ file: '--vary', got: JSON.stringify(text), problem, expected: more }]);
  if (match === null) throw fault('not a quantity with two ends');
  const [name, from, to] = match.slice(1).map((part) => part.trim());
  if (!['beds', 'fish', 'doses'].includes(name)) return pathOf(name, file, from, to);
  const range = valueRange(from, to, { from: '--vary', to: '--vary' });
  if (!('unit' in range)) throw new InputError(range.map((each) => ({ ...each, key: name })));
  if (name === 'doses') {
    if (!scenario.actions.some(({ action }) => action.kind === 'dose'))
      throw fault('nothing is dosed in this file', 'dosing');
    if (range.unit !== '' || !(range.from > 0))
      throw fault('not two numbers above 0', 'such as "doses=0.2:3"');
    return dosesOf(range.from, range.to);
  }
  if (name === 'beds') {
    if (scenario.plantings.length === 0) throw fault('nothing is planted in this file', 'plantings');
    if (range.unit !== 'm2' || !(range.from > 0))
      throw fault('not two areas above 0', 'such as "beds=2 m2:12 m2"');
    return bedsOf(scenario, range.from, range.to);
  }
  if (!scenario.fish.some(({ number }) => number > 0))
    throw fault('no fish at the start of this file', 'fish');
  if (range.unit !== '' || !Number.isInteger(range.from) || !Number.isInteger(range.to) || range.from < 1)
    throw fault('not two numbers of fish', 'such as "fish=10:60"');
  return fishOf(scenario, range.from, range.to);
}

/** Share of what a file has at which a plan begins, and how many times as many fish it goes to, where nobody says. */
const USUAL = { least: 0.1, fish: 2 };

/** What is planned where nobody says: all planted area up to that of the file, and up to twice its fish. */
export function usualQuantities(scenario: Scenario): readonly PlanQuantity[] {
  const area = total(scenario.plantings.map((planting) => planting.area));
  const fish = total(scenario.fish.map(({ number }) => number));
  return [
    ...(area > 0 ? [bedsOf(scenario, Number((area * USUAL.least).toPrecision(4)), area)] : []),
    ...(fish > 1 ? [fishOf(scenario, Math.max(1, Math.round(fish * USUAL.least)), fish * USUAL.fish)] : []),
  ];
}
