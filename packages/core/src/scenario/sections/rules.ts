import { boundProblem } from '../../base/bounds.js';
import { convert, parseQuantity } from '../../base/units.js';
import { compact } from '../file/reader.js';
import type { ScenarioReader } from './scenario-reader.js';
import type { Path } from '../file/tree.js';
import { bounded, choice, positive, section, word } from '../file/values.js';
import { measurables } from '../measurables.js';
import type { Measurable, Rule, TestKit } from '../scenario.js';
import { actionSchema } from './action-schema.js';
import type { Cast } from '../checks/actions.js';
import { errorRanges, kitRanges, most as mostOf, ruleRanges } from '../checks/ranges.js';
import { checkBounded, checkRelative, checkUntil } from '../checks/rules.js';
import { readAction } from './actions.js';
import { type Level, level as anyLevel, readLevel } from './level.js';

const level = (description: string) => anyLevel(description, ['2 mg N/L', '4 dKH', 6.8]);

const whenSchema = section(
  {
    read: choice('what is measured; ammonia is total ammonia nitrogen (TAN)', measurables),
    in: word('the vessel whose water is measured'),
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
  },
  'a reading and the level at which something is done',
);

const kitSchema = section(
  {
    resolution: level(
      'readings are rounded to whole multiples of this; range: more than 0; default: not rounded',
    ).optional(),
    error: level(
      'standard deviation of a reading: a quantity, or a share of the reading such as "10 %"; range: more than 0, at most 100 %; default: none',
    ).optional(),
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
function readStep(reader: ScenarioReader, path: Path, written: Level, read: Measurable): number | undefined {
  const level = readLevel(reader, path, written, read);
  if (level === undefined) return undefined;
  const unit = String(written).replace(/^[+-]?[\d.]+(?:e[+-]?\d+)?/i, '');
  const zero = read === 'temperature' ? convert(0, unit, 'temperature') : { value: 0 };
  const step = 'value' in zero ? level - zero.value : Number.NaN;
  if (step > 0) return step;
  reader.fault(path, 'must be more than zero', { expected: 'a step of the scale, or no such key' });
  return undefined;
}

function readError(reader: ScenarioReader, path: Path, written: Level, read: Measurable): TestKit['error'] {
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

function readKit(reader: ScenarioReader, path: Path, given: Given['kit'], read: Measurable): TestKit {
  const usual = (): number => reader.fallback([...path, 'every'], 1, '1 d');
  const every = given?.every ?? usual();
  const { resolution, error } = given ?? {};
  const whole = Math.round(every);
  if (boundProblem(kitRanges.every, whole) !== undefined || Math.abs(every - whole) > 1e-9) {
    reader.fault([...path, 'every'], 'not whole days: readings are taken at day boundaries', {
      expected: 'a time such as "1 d" or "7 d"',
    });
  }
  return {
    every: Math.max(whole, 1),
    ...compact({
      resolution:
        resolution === undefined ? undefined : readStep(reader, [...path, 'resolution'], resolution, read),
      error: error === undefined ? undefined : readError(reader, [...path, 'error'], error, read),
    }),
  };
}

type Condition = Pick<Rule, 'side' | 'level'> & { readonly until?: number };

function readCondition(reader: ScenarioReader, path: Path, given: Given['when']): Condition | undefined {
  const { read, above, below, until } = given;
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
  return { side, level, ...compact({ until: back }) };
}

function readRule(reader: ScenarioReader, path: Path, cast: Cast): Rule | undefined {
  const given = reader.parse(ruleSchema, path);
  if (given === undefined) return undefined;
  const { when, wait, most } = given;
  reader.known(when.in, cast.vessels, [...path, 'when', 'in'], 'vessel');
  const condition = readCondition(reader, [...path, 'when'], when);
  const kit = readKit(reader, [...path, 'kit'], given.kit, when.read);
  const pair = readAction(given.do, reader, [...path, 'do'], cast);
  const undo = given.undo === undefined ? undefined : readAction(given.undo, reader, [...path, 'undo'], cast);
  if (pair === undefined) return undefined;
  const ends = when.until !== undefined || wait !== undefined || most !== undefined;
  const what = Object.keys(given.do).join(', ');
  const sets = checkBounded(reader, path, pair.doing, ends || given.undo !== undefined, what);
  if (condition === undefined) return undefined;
  return {
    read: when.read,
    vessel: when.in,
    ...condition,
    kit,
    doing: pair.doing,
    undoing: undo?.doing ?? pair.undoing ?? [],
    stands: sets || given.undo !== undefined || (when.until !== undefined && wait === undefined),
    wait: wait ?? 0,
    most: most ?? Infinity,
  };
}

/** Reads `rules`, in the order of the file: what is done when a reading passes a level. */
export function readRules(reader: ScenarioReader, cast: Cast): Rule[] {
  return reader
    .listed('rules', mostOf.rules, (path) => readRule(reader, path, cast))
    .filter((rule) => rule !== undefined);
}
