import * as z from 'zod';
import { boundProblem } from '../../base/bounds.js';
import { convert, parseQuantity } from '../../base/units.js';
import { compact } from '../file/reader.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import { bounded, choice, formByKey, positive, section, word } from '../file/values.js';
import { watched } from '../measurables.js';
import type { Rule, RuleCondition, TestKit, Watched } from '../scenario.js';
import { actionSchema } from './action-schema.js';
import type { Cast } from '../checks/actions.js';
import { errorRanges, kitRanges, most as mostOf, ruleRanges } from '../checks/ranges.js';
import { checkBounded, checkRelative, checkUntil } from '../checks/rules.js';
import { readAction } from './actions.js';
import { type Level, level as anyLevel, readLevel } from './level.js';

const level = (description: string) => anyLevel(description, ['2 mg N/L', '4 dKH', 6.8]);

const condition = {
  read: choice(
    'what is read; ammonia is total ammonia nitrogen (TAN), conductivity (EC) is estimated from the ions, fish-mass is the ' +
      'mean mass of a fish, rain-tank the water in it, volume that in a vessel (its water level)',
    watched,
  ),
  in: word('the vessel whose water is read; default: none, for fish-mass and rain-tank').optional(),
  of: word('the group of fish of fish-mass; default: none').optional(),
  above: level(
    'acts when the reading is above this; range: of what is read; default: none, one of the two is needed',
  ).optional(),
  below: level(
    'acts when the reading is below this; range: of what is read; default: none, one of the two is needed',
  ).optional(),
  until: level(
    'goes on until the reading is on the other side of this; range: on the other side of the level acted on; ' +
      'default: the level acted on',
  ).optional(),
};

const oneSchema = section(condition, 'a reading and the level at which something is done');

const shownBy = {
  resolution: level(
    'readings are rounded to whole multiples of this; range: more than 0; default: not rounded',
  ).optional(),
  error: level(
    'standard deviation of a reading: a quantity, or a share of the reading such as "10 %"; range: more than 0, at most 100 %; default: none',
  ).optional(),
};

const eachSchema = section(
  {
    ...condition,
    kit: section(shownBy, 'how this one is measured')
      .meta({
        description: 'how this one is measured; default: every reading is true',
      })
      .optional(),
  },
  'one of several readings, with its level',
);

type One = ReturnType<typeof oneSchema.parse>;
type Each = ReturnType<typeof eachSchema.parse>;

const listSchema = (description: string) =>
  z.array(eachSchema).min(2).max(mostOf.conditions).meta({ description });

const allSchema = section(
  { all: listSchema('acts when all of these hold, until one is past its `until`; range: 2 to 10') },
  'several readings at once',
);

const anySchema = section(
  { any: listSchema('acts when one of these holds, until all are past theirs; range: 2 to 10') },
  'one of several readings',
);

const whenSchema = formByKey('all', allSchema, formByKey('any', anySchema, oneSchema));

const kitSchema = section(
  {
    ...shownBy,
    every: positive(
      'time',
      'time between two readings, from day 0; range: whole days; default: 1 d',
    ).optional(),
  },
  'how it is measured; default: every reading is true, one a day',
);

/** One rule of `rules`: a reading, and what is done about it. */
export const ruleSchema = section(
  {
    when: whenSchema,
    kit: kitSchema.optional(),
    do: actionSchema,
    undo: actionSchema
      .meta({
        description: 'what is done when the rule lets go; default: what undoes `do`, where something does',
      })
      .optional(),
    wait: bounded(ruleRanges.wait, 'least time between one `do` and the next; default: none').optional(),
    most: bounded(ruleRanges.most, 'most times that `do` is done in a run; default: no limit').optional(),
  },
  'something done when a reading passes a level',
);

type Given = ReturnType<typeof ruleSchema.parse>;
/** A step of a scale, more than zero: as a level, but degrees count from nothing. */
function readStep(reader: ScenarioReader, path: Path, written: Level, read: Watched): number | undefined {
  const level = readLevel(reader, path, written, read);
  if (level === undefined) return undefined;
  const unit = String(written).replace(/^[+-]?[\d.]+(?:e[+-]?\d+)?/i, '');
  const zero = read === 'temperature' ? convert(0, unit, 'temperature') : { value: 0 };
  const step = 'value' in zero ? level - zero.value : Number.NaN;
  if (step > 0) return step;
  reader.fault(path, 'must be more than zero', { expected: 'a step of the scale, or no such key' });
  return undefined;
}

function readError(reader: ScenarioReader, path: Path, written: Level, read: Watched): TestKit['error'] {
  const isShare = typeof written === 'string' && /%\s*$/.test(written);
  if (!isShare) {
    const deviation = readStep(reader, path, written, read);
    return deviation === undefined ? undefined : { kind: 'absolute', deviation };
  }
  if (!checkRelative(reader, path, read)) return undefined;
  const answer = parseQuantity(written, 'share');
  if ('value' in answer && boundProblem(errorRanges.relative, answer.value) === undefined) {
    return { kind: 'relative', deviation: answer.value };
  }
  reader.fault(path, 'problem' in answer ? answer.problem : 'out of range', {
    expected: 'more than 0 % to 100 %',
  });
  return undefined;
}

/** How a reading is rounded and how far it errs. */
function readShown(
  reader: ScenarioReader,
  path: Path,
  { resolution, error }: Pick<NonNullable<Given['kit']>, 'resolution' | 'error'>,
  read: Watched,
): Omit<TestKit, 'every'> {
  return compact({
    resolution:
      resolution === undefined ? undefined : readStep(reader, [...path, 'resolution'], resolution, read),
    error: error === undefined ? undefined : readError(reader, [...path, 'error'], error, read),
  });
}

/** Whole days between two readings. */
function readEvery(reader: ScenarioReader, path: Path, given: Given['kit']): number {
  const every = given?.every ?? reader.fallback([...path, 'every'], 1, '1 d');
  const whole = Math.round(every);
  if (boundProblem(kitRanges.every, whole) !== undefined || Math.abs(every - whole) > 1e-9) {
    reader.fault([...path, 'every'], 'not whole days: readings are taken at day boundaries', {
      expected: 'a time such as "1 d" or "7 d"',
    });
  }
  return Math.max(whole, 1);
}

/** What is read of what; undefined (and faults) where that is not said rightly. */
function readPlace(reader: ScenarioReader, path: Path, given: One, cast: Cast): string | undefined {
  const { read, in: vessel, of: group } = given;
  const [key, other] = read === 'fish-mass' ? (['of', 'in'] as const) : (['in', 'of'] as const);
  const needed = read !== 'rain-tank';
  for (const extra of needed ? [other] : (['in', 'of'] as const)) {
    if (given[extra] === undefined) continue;
    reader.fault(
      [...path, extra],
      `not with ${read}`,
      { expected: needed ? `${key}, and only that` : 'neither in nor of' },
      true,
    );
    return undefined;
  }
  if (!needed) {
    if (cast.rainTank === undefined) reader.lacks([...path, 'read'], 'rain tank', 'rain-tank');
    return '';
  }
  const name = read === 'fish-mass' ? group : vessel;
  if (name === undefined) {
    const expected = read === 'fish-mass' ? 'the group of fish' : 'the vessel whose water is measured';
    reader.fault([...path, key], 'missing', { expected });
    return undefined;
  }
  const [names, what] =
    read === 'fish-mass' ? ([cast.cohorts, 'group of fish'] as const) : ([cast.vessels, 'vessel'] as const);
  reader.known(name, names, [...path, key], what);
  return name;
}

function readCondition(
  reader: ScenarioReader,
  path: Path,
  given: One,
  cast: Cast,
): Omit<RuleCondition, 'kit'> | undefined {
  const { read, above, below, until } = given;
  const place = readPlace(reader, path, given, cast);
  if ((above === undefined) === (below === undefined)) {
    reader.fault(path, 'not one level to act on', { expected: 'one of above, below' });
    return undefined;
  }
  const side = above === undefined ? 'below' : 'above';
  const level = readLevel(reader, [...path, side], above ?? below ?? 0, read);
  const back = until === undefined ? undefined : readLevel(reader, [...path, 'until'], until, read);
  if (level === undefined || (until !== undefined && back === undefined)) return undefined;
  const written = JSON.stringify(given[side]);
  if (!checkUntil(reader, path, { side, level, until: back }, written)) return undefined;
  return place === undefined ? undefined : { read, vessel: place, side, level, ...compact({ until: back }) };
}

/** The conditions of a rule with several, and whether all or any of them are meant; undefined where there is one. */
function listsOf(
  when: Given['when'],
): { readonly how: 'all' | 'any'; readonly each: readonly Each[] } | undefined {
  if ('all' in when) return { how: 'all', each: when.all };
  return 'any' in when ? { how: 'any', each: when.any } : undefined;
}

type Conditions = Pick<Rule, keyof RuleCondition | 'also'>;

/** All conditions of a rule, in the order written; undefined (and faults) where one cannot be read. */
function readWhen(reader: ScenarioReader, path: Path, given: Given, cast: Cast): Conditions | undefined {
  const { when, kit } = given;
  const every = readEvery(reader, [...path, 'kit'], kit);
  const lists = listsOf(when);
  if (lists === undefined) {
    const one = when as One;
    const read = readCondition(reader, [...path, 'when'], one, cast);
    const shown = readShown(reader, [...path, 'kit'], kit ?? {}, one.read);
    return read && { ...read, kit: { every, ...shown } };
  }
  const { how, each } = lists;
  for (const key of ['resolution', 'error'] as const) {
    if (kit?.[key] === undefined) continue;
    const expected = `${key} in the kit of each condition`;
    reader.fault([...path, 'kit', key], 'several readings of different kinds', { expected }, true);
  }
  const list = each.map((one, index) => {
    const at = [...path, 'when', how, index];
    const read = readCondition(reader, at, one, cast);
    const shown = readShown(reader, [...at, 'kit'], one.kit ?? {}, one.read);
    return read && { ...read, kit: { every, ...shown } };
  });
  const [first, ...others] = list.filter((one) => one !== undefined);
  if (first === undefined || others.length + 1 < list.length) return undefined;
  return { ...first, also: { how, conditions: others } };
}

function readRule(reader: ScenarioReader, path: Path, cast: Cast): Rule | undefined {
  const given = reader.parse(ruleSchema, path);
  if (given === undefined) return undefined;
  const { wait, most } = given;
  const conditions = readWhen(reader, path, given, cast);
  const pair = readAction(given.do, reader, [...path, 'do'], cast);
  const undo = given.undo === undefined ? undefined : readAction(given.undo, reader, [...path, 'undo'], cast);
  if (pair === undefined) return undefined;
  const until = whenUntil(given.when);
  const ends = until || wait !== undefined || most !== undefined;
  const what = Object.keys(given.do).join(', ');
  const sets = checkBounded(reader, path, pair.doing, ends || given.undo !== undefined, what);
  if (conditions === undefined) return undefined;
  return {
    ...conditions,
    doing: pair.doing,
    undoing: undo?.doing ?? pair.undoing ?? [],
    stands: sets || given.undo !== undefined || (until && wait === undefined),
    wait: wait ?? 0,
    most: most ?? Infinity,
  };
}

/** Whether a level is written at which a condition lets go. */
function whenUntil(when: Given['when']): boolean {
  const conditions = listsOf(when)?.each ?? [when as One];
  return conditions.some(({ until }) => until !== undefined);
}

/** Reads `rules`, in the order of the file: what is done when a reading passes a level. */
export function readRules(reader: ScenarioReader, cast: Cast): Rule[] {
  return reader
    .listed('rules', mostOf.rules, (path) => readRule(reader, path, cast))
    .filter((rule) => rule !== undefined);
}
