import { most } from '../checks/ranges.js';
import { expandTimes, type Occasion, type TimesGiven } from './times.js';
import { readDose, readDrain, verbReaders, type ActionPair, type ReadVerb } from './action-verbs.js';
import type { Cast } from '../checks/actions.js';
import type { RunFrame } from './run.js';
import type { TimedAction, Action } from '../scenario.js';
import { timedActionSchema, dosingSchema, drainPlanSchema, type actionSchema } from './action-schema.js';
import type { Path } from '../file/tree.js';
import type { ScenarioReader } from './scenario-reader.js';

/** Most actions and plans as written. */
const mostWritten = 10_000;

type ActionGiven = ReturnType<typeof actionSchema.parse>;
type Verb = keyof typeof verbReaders;

/** What is written in one place: what it does, and when. */
interface Plan {
  readonly path: Path;
  readonly pair: ActionPair;
  readonly occasions: readonly Occasion[];
  /** Whether it is done again and again. */
  readonly repeats: boolean;
}

function isVerb(key: string): key is Verb {
  return Object.hasOwn(verbReaders, key);
}

function readVerb(
  key: Verb,
  given: ActionGiven,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair | undefined {
  const value = given[key];
  const read = verbReaders[key] as ReadVerb<Verb>;
  return value === undefined ? undefined : read(value, reader, path, cast);
}

/** The one verb of an action; a fault where there is none or more than one. */
function onlyVerb(given: ActionGiven, reader: ScenarioReader, path: Path): Verb | undefined {
  const verbs = Object.keys(given).filter(isVerb);
  const [verb] = verbs;
  if (verb !== undefined && verbs.length === 1) return verb;
  const got = verb === undefined ? 'none' : verbs.join(' and ');
  const expected =
    verb === undefined ? `one of ${Object.keys(verbReaders).join(', ')}` : 'one action for each of them';
  reader.fault(path, 'an action does one thing', { got, expected });
  return undefined;
}

/** Reads what a rule does: one verb, without a time. Undefined (and a fault) where that is not so. */
export function readAction(
  given: ActionGiven,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair | undefined {
  const verb = onlyVerb(given, reader, path);
  return verb === undefined ? undefined : readVerb(verb, given, reader, [...path, verb], cast);
}

function readTimedAction(reader: ScenarioReader, path: Path, frame: RunFrame, cast: Cast): Plan | undefined {
  const given = reader.parse(timedActionSchema, path);
  if (given === undefined) return undefined;
  const verb = onlyVerb(given, reader, path);
  if (verb === undefined) return undefined;
  const occasions = expandTimes(reader, path, given, frame);
  const pair = readVerb(verb, given, reader, [...path, verb], cast);
  if (pair === undefined) return undefined;
  if (pair.undoing === undefined && occasions.some(({ end }) => end !== undefined)) {
    reader.fault(path, `${verb} cannot be undone`, { expected: 'at, not an interval' });
  }
  return { path, pair, occasions, repeats: given.every !== undefined };
}

interface PlanTimes extends TimesGiven {
  readonly every?: number | undefined;
}

function planOccasions(reader: ScenarioReader, path: Path, given: PlanTimes, frame: RunFrame): Occasion[] {
  if (given.at === undefined && given.every === undefined) {
    reader.fault(path, 'no time', { expected: 'at, every, or both' });
    return [];
  }
  return expandTimes(reader, path, given, frame, given.every);
}

function readPlans(reader: ScenarioReader, frame: RunFrame, cast: Cast): (Plan | undefined)[] {
  const dosing = reader.listed('dosing', mostWritten, (path): Plan | undefined => {
    const given = reader.parse(dosingSchema, path);
    if (given === undefined) return undefined;
    return {
      path,
      pair: readDose(given, reader, path, cast),
      occasions: planOccasions(reader, path, given, frame),
      repeats: given.every !== undefined,
    };
  });
  const draining = reader.listed('drain-solids', mostWritten, (path): Plan | undefined => {
    const given = reader.parse(drainPlanSchema, path);
    if (given === undefined) return undefined;
    return {
      path,
      pair: readDrain(given, reader, path, cast),
      occasions: planOccasions(reader, path, given, frame),
      repeats: given.every !== undefined,
    };
  });
  return [...dosing, ...draining];
}

interface Interval {
  readonly start: number;
  readonly end: number;
  readonly path: Path;
}

/** What an action switches off, where it does. */
function switchedOff(action: Action): string | undefined {
  if (action.kind === 'pump' && !action.running) return `pump ${action.pump}`;
  if (action.kind === 'control' && !action.running) return `control of ${action.vessel}`;
  return action.kind === 'aeration' && !action.running ? `aeration of ${action.vessel}` : undefined;
}

/** Two intervals in which the same thing is off must not overlap: the first to end would switch it on. */
function checkOverlaps(reader: ScenarioReader, plans: readonly Plan[]): void {
  const by = new Map<string, Interval[]>();
  for (const { pair, occasions, path } of plans) {
    for (const action of pair.doing) {
      const name = switchedOff(action);
      if (name === undefined) continue;
      const list = by.get(name) ?? [];
      list.push(...occasions.map(({ at, end }) => ({ start: at, end: end ?? at, path })));
      by.set(name, list);
    }
  }
  for (const [name, intervals] of by) {
    intervals.sort((a, b) => a.start - b.start);
    let before: Interval | undefined;
    for (const interval of intervals) {
      if (before !== undefined && interval.start < before.end) {
        const days = ({ start, end }: Interval): string =>
          `days ${Number(start.toPrecision(8))} to ${Number(end.toPrecision(8))}`;
        const got = `${days(before)} and ${days(interval)}`;
        reader.fault(interval.path, `overlapping intervals in which ${name} is off`, { got });
      }
      if (before === undefined || interval.end > before.end) before = interval;
    }
  }
}

function actionsOf(reader: ScenarioReader, { pair, occasions, path, repeats }: Plan): TimedAction[] {
  const common = {
    where: reader.where(path),
    ...(pair.cause !== undefined && { cause: pair.cause }),
    ...(repeats && { repeats: true as const }),
  };
  return occasions.flatMap(({ at, end }) => [
    ...pair.doing.map((action): TimedAction => ({ at, action, ...common })),
    ...(end === undefined
      ? []
      : (pair.undoing ?? []).map((action): TimedAction => ({ at: end, action, ...common }))),
  ]);
}

/**
 * Reads `dosing`, `drain-solids` and `actions` into one list of dated actions, repeats written out,
 * in order of time and, at the same time, of the file: plans first, then actions. What lies past the
 * end of a run that was cut short is left out.
 */
export function readActions(reader: ScenarioReader, frame: RunFrame, cast: Cast): TimedAction[] {
  const written = [
    ...readPlans(reader, frame, cast),
    ...reader.listed('actions', mostWritten, (path) => readTimedAction(reader, path, frame, cast)),
  ];
  const plans = written.filter((plan) => plan !== undefined);
  checkOverlaps(reader, plans);
  const total = plans.reduce((sum, { occasions, pair }) => sum + occasions.length * pair.doing.length, 0);
  if (total > most.actions) {
    reader.fault(['actions'], 'too many actions once repeats are written out', {
      got: String(total),
      expected: `at most ${most.actions}`,
    });
    return [];
  }
  const all = plans.flatMap((plan) => actionsOf(reader, plan)).filter(({ at }) => at < frame.days);
  return all.sort((a, b) => a.at - b.at);
}
