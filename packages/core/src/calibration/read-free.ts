// Reads numbers as: what a fit may vary
import { InputError, type Fault } from '../base/faults.js';
import type { Parameters } from '../library/parameters.js';
import { overrideRow } from '../library/override.js';
import { rangedOf } from '../library/ranged-row.js';
import { tableValues } from '../library/table-values.js';
import { nearest } from '../base/nearest.js';
import type { Scenario } from '../scenario/scenario.js';
import { startQuantities, type Free, type StartQuantity } from './free-parameter.js';
import type { Prior } from './free-parameter.js';
import { startAmount } from './start-water.js';

const startUnits: Readonly<Record<StartQuantity, string>> = {
  ammonia: 'g/m3',
  nitrite: 'g/m3',
  nitrate: 'g/m3',
  alkalinity: 'eq/m3',
  oxygen: 'g/m3',
  chloride: 'g/m3',
  solids: 'g/m3',
  settled: 'g',
};

/** Least that is taken for the middle of what may stand at the start, in its unit: what a kit hardly sees. */
const least: Readonly<Record<StartQuantity, number>> = {
  ammonia: 0.1,
  nitrite: 0.05,
  nitrate: 1,
  alkalinity: 0.2,
  oxygen: 1,
  chloride: 5,
  solids: 1,
  settled: 10,
};

interface Range {
  readonly low: number;
  readonly value?: number;
  readonly high: number;
  readonly unit: string;
}

const number = String.raw`[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?`;
const rangePattern = new RegExp(
  String.raw`^(${number})\s*\.\.\s*(?:(${number})\s*\.\.\s*)?(${number})\s*(\S.*)?$`,
  'i',
);

/** `1..2 m3` or `1..1.5..2 m3`. */
function readRange(text: string): Range | undefined {
  const found = rangePattern.exec(text.trim());
  if (found === null) return undefined;
  const [, low, value, high, unit] = found;
  return {
    low: Number(low),
    high: Number(high),
    unit: (unit ?? '').trim(),
    ...(value === undefined ? {} : { value: Number(value) }),
  };
}

/** A range given on the command line: even between its bounds, or a triangle about its middle number. */
function priorOf({ low, value, high }: Range): Prior {
  return value === undefined
    ? { value: (low + high) / 2, low, high, distribution: 'uniform' }
    : { value, low, high, distribution: 'triangular' };
}

interface Context {
  readonly scenario: Scenario;
  readonly parameters: Parameters;
}

type Answer = Free | Fault;

function readStart(name: string, range: Range | undefined, { scenario, parameters }: Context): Answer {
  const [, quantity, , vessel] = /^start\.([a-z]+)(@(.+))?$/.exec(name) ?? [];
  const known = startQuantities.find((each) => each === quantity);
  if (known === undefined) {
    const near = nearest(quantity ?? name, startQuantities);
    return {
      key: '--free',
      got: name,
      problem: 'nothing that water holds at the start',
      expected: startQuantities.map((each) => `start.${each}`).join(', '),
      ...(near === undefined ? {} : { nearest: `start.${near}` }),
    };
  }
  const vessels = scenario.vessels.map((each) => each.name);
  if (vessel !== undefined && !vessels.includes(vessel)) {
    const near = nearest(vessel, vessels);
    return {
      key: '--free',
      got: name,
      problem: `no vessel ${vessel}`,
      ...(near === undefined ? {} : { nearest: near }),
    };
  }
  if (scenario.saved !== undefined)
    return { key: '--free', got: name, problem: 'the system goes on from a saved state: its start is given' };
  if (range !== undefined && range.unit !== '' && range.unit !== startUnits[known]) {
    return {
      key: '--free',
      got: `${name}=... ${range.unit}`,
      problem: 'another unit than water is counted in here',
      expected: startUnits[known],
    };
  }
  const spread = parameters.value('log.start-spread');
  const value = Math.max(startAmount(scenario, known, vessel), least[known]);
  const prior: Prior =
    range === undefined
      ? { value, low: value / spread, high: value * spread, distribution: 'lognormal' }
      : priorOf(range);
  return { name, kind: 'start', unit: startUnits[known], prior };
}

function readNumber(name: string, range: Range | undefined, { parameters }: Context): Answer {
  const row = rangedOf(parameters.number(name));
  const { unit, value, low, high, distribution } = row;
  if (range !== undefined) {
    const prior = priorOf(range);
    // What makes no sense as a number of the user's makes none as one to be looked for.
    const [wrong] = overrideRow({ id: name, ...prior, where: '--free' }, new Map([[name, row]])).faults;
    if (wrong !== undefined) return { ...wrong, got: `${name}=${range.low}..${range.high}` };
    return range.unit === '' || range.unit === unit
      ? { name, kind: 'number', unit, prior }
      : {
          key: '--free',
          got: `${name}=... ${range.unit}`,
          problem: 'another unit than that of its table',
          expected: unit,
        };
  }
  if (distribution === 'fixed' || low === high) {
    return {
      key: '--free',
      got: name,
      problem: 'this number has no range to look in',
      expected: `one beside it, such as "${name}=${value / 2}..${value * 2}"`,
    };
  }
  return { name, kind: 'number', unit, prior: { value, low, high, distribution } };
}

function readOne(written: string, context: Context): Answer {
  const cut = written.indexOf('=');
  const name = (cut < 0 ? written : written.slice(0, cut)).trim();
  const range = cut < 0 ? undefined : readRange(written.slice(cut + 1));
  if (cut >= 0 && (range === undefined || !(range.low < range.high))) {
    return { key: '--free', got: written, problem: 'no range', expected: 'such as 1..2 m3, or 1..1.2..2 m3' };
  }
  if (range?.value !== undefined && (range.value < range.low || range.value > range.high))
    return { key: '--free', got: written, problem: 'the middle number lies outside its bounds' };
  const startPath = /^start\.(vessels|water|biofilm|saved)\b/.test(name);
  if (name.startsWith('start.') && !startPath) return readStart(name, range, context);
  // A number of the user's own tables is in the parameters alone.
  if (tableValues.has(name) || context.parameters.has(name)) return readNumber(name, range, context);
  if (range === undefined) {
    const near = nearest(name, tableValues.keys());
    return {
      key: '--free',
      got: name,
      problem: 'no number of the tables; a path of the file needs a range',
      expected: `an id of the tables, start.nitrate, or such as "${name}=1..2 m3"`,
      ...(near === undefined ? {} : { nearest: near }),
    };
  }
  return { name, kind: 'path', unit: range.unit, prior: priorOf(range) };
}

/**
 * Reads what may vary: ids of the tables (their ranges are the prior), what water holds at the start, paths of the file
 * with a range; `=LOW..HIGH UNIT` gives a range anew.
 * @throws InputError with every fault
 */
export function readFree(
  written: readonly string[],
  scenario: Scenario,
  parameters: Parameters,
): readonly Free[] {
  const answers = written.map((each) => readOne(each, { scenario, parameters }));
  const faults = answers.filter((answer): answer is Fault => 'problem' in answer);
  const free = answers.filter((answer): answer is Free => 'prior' in answer);
  free.forEach(({ name }, i) => {
    if (free.findIndex((each) => each.name === name) < i)
      faults.push({ key: '--free', got: name, problem: 'named twice' });
  });
  if (faults.length > 0) throw new InputError(faults);
  return free;
}
