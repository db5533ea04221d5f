import { compact } from '../file/reader.js';
import type { FieldPath } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import { readFeed } from './stock.js';
import {
  type Cast,
  checkCart,
  checkChanges,
  checkOneWay,
  checkTargets,
  checkTopUp,
} from '../checks/actions.js';
import type { Action } from '../scenario.js';
import type { timedActionSchema } from './action-schema.js';
import type { Path } from '../file/tree.js';

/** What an action does, and what undoes it at the end of an interval (absent: it cannot be undone). */
export interface ActionPair {
  readonly doing: readonly Action[];
  readonly undoing?: readonly Action[];
  /** What the actions are part of, for the log. */
  readonly cause?: string;
}

type Given = ReturnType<typeof timedActionSchema.parse>;

/** Reads one verb; `path` leads to it. Undefined where there is a fault. */
export type ReadVerb<Verb extends keyof Given> = (
  given: NonNullable<Given[Verb]>,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
) => ActionPair | undefined;

/** The fields of an action that stand under its verb, one of them perhaps under another key. */
const under =
  (path: Path, renamed: Readonly<Record<string, string>> = {}): FieldPath =>
  (field) =>
    field === undefined ? path : [...path, renamed[field] ?? field];

/** The one field of an action that is its verb's own value. */
const alone =
  (path: Path): FieldPath =>
  () =>
    path;

/** A number or a share of fish: one of them. */
function readTake(
  kind: 'harvest-fish' | 'lose-fish',
  given: NonNullable<Given['harvest-fish']>,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair | undefined {
  const { cohort, share, number } = given;
  const action: Action = compact({ kind, cohort, share: share ?? 0, number });
  checkTargets(reader, action, cast, under(path));
  return checkOneWay(reader, path, 'how many', { share, number }) ? { doing: [action] } : undefined;
}

/** The name that stands for every cohort, unless one is called so. */
const ALL = 'all';

/** Reads a verb about one cohort for all of them where it says `cohort: all`. */
function forAll<Given extends { readonly cohort: string }>(
  read: (given: Given, reader: ScenarioReader, path: Path, cast: Cast) => ActionPair | undefined,
): typeof read {
  return (given, reader, path, cast) => {
    if (given.cohort !== ALL || cast.cohorts.has(ALL) || cast.cohorts.size === 0)
      return read(given, reader, path, cast);
    const pairs = [...cast.cohorts.keys()].map((cohort) => read({ ...given, cohort }, reader, path, cast));
    const found = pairs.filter((pair) => pair !== undefined);
    if (found.length < pairs.length) return undefined;
    const undoing = found.flatMap((pair) => pair.undoing ?? []);
    return { doing: found.flatMap(({ doing }) => doing), ...(undoing.length > 0 && { undoing }) };
  };
}

/** What is switched on or off: for good when on, until the end of an interval when off. */
const readSwitch =
  (switched: (name: string, running: boolean) => Action, running: boolean) =>
  (name: string, reader: ScenarioReader, path: Path, cast: Cast): ActionPair => {
    const action = switched(name, running);
    checkTargets(reader, action, cast, alone(path));
    return running ? { doing: [action] } : { doing: [action], undoing: [switched(name, true)] };
  };

const pumpRuns = (pump: string, running: boolean): Action => ({ kind: 'pump', pump, running });
const airRuns = (vessel: string, running: boolean): Action => ({ kind: 'aeration', vessel, running });
const dosersRun = (vessel: string, running: boolean): Action => ({ kind: 'control', vessel, running });

function readPowerCut(cast: Cast): ActionPair {
  const aerated = [...cast.vessels.values()].flatMap((vessel) =>
    vessel !== undefined && vessel.aeration > 0 ? [vessel.name] : [],
  );
  const dosed = [...new Set(cast.dosers.map(({ vessel }) => vessel))];
  const all = (running: boolean): Action[] => [
    ...[...cast.pumps.keys()].map((pump) => pumpRuns(pump, running)),
    ...aerated.map((vessel) => airRuns(vessel, running)),
    ...dosed.map((vessel) => dosersRun(vessel, running)),
  ];
  return { doing: all(false), undoing: all(true), cause: 'power cut' };
}

const readTopUpChange: ReadVerb<'top-up'> = (given, reader, path, { topUp }) => {
  const caps = given !== 'stopped' && given !== 'restored';
  if (!checkTopUp(reader, path, caps, topUp) || topUp === undefined) return undefined;
  const mains = topUp.sources.filter((source) => source.kind === 'mains');
  const [{ dailyCap, weeklyCap } = { dailyCap: Infinity }] = mains;
  const several = mains.some((source) => source.dailyCap !== dailyCap || source.weeklyCap !== weeklyCap);
  const restored: Action = compact({ kind: 'top-up', dailyCap, weeklyCap, stopped: false } as const);
  if (given === 'stopped')
    return { doing: [{ kind: 'top-up', stopped: true }], undoing: [{ kind: 'top-up', stopped: false }] };
  if (several) {
    reader.fault(path, 'more than one cap to go back to', {
      expected: 'supplies of top-up with the same cap',
    });
    return undefined;
  }
  return given === 'restored'
    ? { doing: [restored] }
    : { doing: [{ kind: 'top-up', ...given.cap }], undoing: [restored] };
};

const readSourceWater: ReadVerb<'source-water'> = ({ water, to }, reader, path, { waters }) => {
  const before = reader.lookup(waters, water, [...path, 'water'], 'water');
  const after = reader.lookup(waters, to, [...path, 'to'], 'water');
  if (before === undefined || after === undefined) return undefined;
  return {
    doing: [{ kind: 'source-water', water, to: after }],
    undoing: [{ kind: 'source-water', water, to: before }],
  };
};

const readChangeWater: ReadVerb<'change-water'> = ({ vessel, volume, share, water }, reader, path, cast) => {
  const action: Action = compact({ kind: 'change-water', vessel, volume, share, water } as const);
  checkTargets(reader, action, cast, under(path));
  return checkOneWay(reader, path, 'how much', { volume, share }) ? { doing: [action] } : undefined;
};

const readCartWater: ReadVerb<'cart-water'> = ({ volume, water, into }, reader, path, cast) => {
  const { rainTank } = cast;
  const usual = reader.has(['rain-tank']) ? 'rain-tank' : 'reservoir';
  const where = into ?? reader.fallback([...path, 'into'], usual, usual);
  if (!checkCart(reader, { into: where, water }, cast, under(path))) return undefined;
  if (where === 'reservoir') {
    if (water !== undefined) return { doing: [{ kind: 'cart-water', volume, into: where, water }] };
    reader.fault([...path, 'water'], 'missing', { expected: 'a name of `waters`' });
    return undefined;
  }
  if (rainTank === undefined) return undefined;
  return { doing: [{ kind: 'cart-water', volume, into: where, water: rainTank.water }] };
};

const readFeedChange: ReadVerb<'feed'> = (given, reader, path, cast) => {
  const { cohort, ration, factor } = given;
  const found = reader.lookup(cast.cohorts, cohort, [...path, 'cohort'], 'cohort');
  const otherFeed = given.feed !== undefined || given.protein !== undefined;
  const { feed: feedGiven, protein } = given;
  if (!checkChanges(reader, path, { ration, feed: feedGiven, protein, factor })) return undefined;
  const other = otherFeed ? readFeed(reader, path, given) : undefined;
  // Another protein alone leaves the name of the feed as it is.
  const feed =
    other === undefined || given.feed !== undefined
      ? other
      : { ...other, name: found?.feed.name ?? other.name };
  if (found === undefined || (otherFeed && feed === undefined)) return undefined;
  const doing: Action = compact({ kind: 'feed', cohort, ration, feed, factor } as const);
  const undoing: Action = compact({
    kind: 'feed',
    cohort,
    ration: ration === undefined ? undefined : found.ration,
    feed: feed === undefined ? undefined : found.feed,
    factor: factor === undefined ? undefined : 1,
  } as const);
  return { doing: [doing], undoing: [undoing] };
};

function readPlanting(action: Action, reader: ScenarioReader, path: Path, cast: Cast): ActionPair {
  checkTargets(reader, action, cast, alone(path));
  return { doing: [action] };
}

/** A dose, as an action or as part of a plan. */
export function readDose(
  given: { into: string; product: string; mass: number },
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair {
  const { into, product, mass } = given;
  const action = { kind: 'dose', vessel: into, product, mass } as const;
  checkTargets(reader, action, cast, under(path, { vessel: 'into' }));
  return { doing: [action] };
}

/** Draining solids, as an action or as part of a plan. */
export function readDrain(
  given: { vessel: string; share: number; water?: number | undefined },
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair {
  const { vessel, share, water } = given;
  const none = (): number => reader.fallback([...path, 'water'], 0, '0 m3');
  const action = { kind: 'drain-solids', vessel, share, water: water ?? none() } as const;
  checkTargets(reader, action, cast, under(path));
  return { doing: [action] };
}

/** One reader a verb of {@link timedActionSchema}. */
export const verbReaders: {
  readonly [Verb in keyof Omit<Given, 'at' | 'from' | 'until' | 'for' | 'every'>]-?: ReadVerb<Verb>;
} = {
  stock: ({ cohort, number, mass }, reader, path, cast) => {
    const action = { kind: 'stock', cohort, number, mass } as const;
    checkTargets(reader, action, cast, under(path));
    return { doing: [action] };
  },
  'harvest-fish': forAll((given, ...rest) => readTake('harvest-fish', given, ...rest)),
  'lose-fish': forAll((given, ...rest) => readTake('lose-fish', given, ...rest)),
  grade: (given, reader, path, cast) => {
    const { cohort, to, share } = given;
    const relativeMass = given['relative-mass'] ?? reader.fallback([...path, 'relative-mass'], 1, 1);
    const action = { kind: 'grade', cohort, share, relativeMass, to } as const;
    checkTargets(reader, action, cast, under(path));
    return { doing: [action] };
  },
  plant: (planting, ...rest) => readPlanting({ kind: 'plant', planting }, ...rest),
  'harvest-crop': ({ planting, replant }, reader, path, cast) => {
    const again = replant ?? reader.fallback([...path, 'replant'], true, true);
    return readPlanting(
      { kind: 'harvest-crop', planting, replant: again },
      reader,
      [...path, 'planting'],
      cast,
    );
  },
  'leave-empty': (planting, ...rest) => readPlanting({ kind: 'leave-empty', planting }, ...rest),
  feed: forAll(readFeedChange),
  'top-up': readTopUpChange,
  'source-water': readSourceWater,
  'change-water': readChangeWater,
  'cart-water': readCartWater,
  dose: readDose,
  'pump-off': readSwitch(pumpRuns, false),
  'pump-on': readSwitch(pumpRuns, true),
  'air-off': readSwitch(airRuns, false),
  'air-on': readSwitch(airRuns, true),
  'control-off': readSwitch(dosersRun, false),
  'control-on': readSwitch(dosersRun, true),
  'power-cut': (_all, _reader, _path, cast) => readPowerCut(cast),
  clean: ({ vessel, biofilm, solids, stuns }, reader, path, cast) => {
    const action = {
      kind: 'clean',
      vessel,
      biofilm: biofilm ?? 0,
      solids: solids ?? 0,
      ...(stuns !== undefined && { stuns }),
    } as const;
    checkTargets(reader, action, cast, under(path));
    if (biofilm === undefined && solids === undefined && stuns === undefined) {
      reader.fault(path, 'nothing that is removed', { expected: 'one or more of biofilm, solids, stuns' });
    }
    return { doing: [action] };
  },
  medicate: ({ vessel, kills, stuns }, reader, path, cast) => {
    const action = {
      kind: 'medicate',
      vessel,
      kills: kills ?? 0,
      ...(stuns !== undefined && { stuns }),
    } as const;
    checkTargets(reader, action, cast, under(path));
    if (kills === undefined && stuns === undefined) {
      reader.fault(path, 'nothing that is done to the biofilm', { expected: 'one or both of kills, stuns' });
    }
    return { doing: [action] };
  },
  'drain-solids': readDrain,
};
