import { compact } from '../file/reader.js';
import type { Named } from '../file/report.js';
import type { ScenarioReader } from './scenario-reader.js';
import { readFeed } from './stock.js';
import type {
  Action,
  Cohort,
  Doser,
  Planting,
  Pump,
  RainTank,
  SourceWater,
  TopUp,
  Vessel,
} from '../scenario.js';
import type { timedActionSchema } from './action-schema.js';
import type { Path } from '../file/tree.js';

/** Everything an action may name. */
export interface Cast {
  readonly vessels: Named<Vessel>;
  readonly waters: Named<SourceWater>;
  readonly pumps: Named<Pump>;
  readonly cohorts: Named<Cohort>;
  readonly plantings: Named<Planting>;
  readonly topUp: TopUp | undefined;
  readonly rainTank: RainTank | undefined;
  readonly dosers: readonly Doser[];
}

/** What an action does, and what undoes it at the end of an interval (absent: it cannot be undone). */
export interface ActionPair {
  readonly doing: readonly Action[];
  readonly undoing?: readonly Action[];
}

type Given = ReturnType<typeof timedActionSchema.parse>;

/** Reads one verb; `path` leads to it. Undefined where there is a fault. */
export type ReadVerb<Verb extends keyof Given> = (
  given: NonNullable<Given[Verb]>,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
) => ActionPair | undefined;

/** A number or a share of fish: one of them. */
function readTake(
  kind: 'harvest-fish' | 'lose-fish',
  given: NonNullable<Given['harvest-fish']>,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair | undefined {
  const { cohort, share, number } = given;
  reader.known(cohort, cast.cohorts, [...path, 'cohort'], 'cohort');
  if ((share === undefined) === (number === undefined)) {
    reader.fault(path, 'not one way to say how many', { expected: 'one of share, number' });
    return undefined;
  }
  return { doing: [compact({ kind, cohort, share: share ?? 0, number })] };
}

function readPump(
  pump: string,
  running: boolean,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair {
  reader.known(pump, cast.pumps, path, 'pump');
  const action = (state: boolean): Action => ({ kind: 'pump', pump, running: state });
  return running ? { doing: [action(true)] } : { doing: [action(false)], undoing: [action(true)] };
}

function readAir(
  vessel: string,
  running: boolean,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair {
  const found = reader.lookup(cast.vessels, vessel, path, 'vessel');
  if (found?.aeration === 0) reader.fault(path, 'a vessel without aeration');
  const action = (state: boolean): Action => ({ kind: 'aeration', vessel, running: state });
  return running ? { doing: [action(true)] } : { doing: [action(false)], undoing: [action(true)] };
}

function readControlSwitch(
  vessel: string,
  running: boolean,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair {
  const known = reader.known(vessel, cast.vessels, path, 'vessel');
  if (known && !cast.dosers.some((doser) => doser.vessel === vessel))
    reader.fault(path, 'a vessel without a doser', { expected: 'a vessel of `control`' });
  const action = (state: boolean): Action => ({ kind: 'control', vessel, running: state });
  return running ? { doing: [action(true)] } : { doing: [action(false)], undoing: [action(true)] };
}

function readPowerCut(cast: Cast): ActionPair {
  const aerated = [...cast.vessels.values()].flatMap((vessel) =>
    vessel !== undefined && vessel.aeration > 0 ? [vessel.name] : [],
  );
  const dosed = [...new Set(cast.dosers.map(({ vessel }) => vessel))];
  const all = (running: boolean): Action[] => [
    ...[...cast.pumps.keys()].map((pump): Action => ({ kind: 'pump', pump, running })),
    ...aerated.map((vessel): Action => ({ kind: 'aeration', vessel, running })),
    ...dosed.map((vessel): Action => ({ kind: 'control', vessel, running })),
  ];
  return { doing: all(false), undoing: all(true) };
}

const readTopUpChange: ReadVerb<'top-up'> = (given, reader, path, { topUp }) => {
  if (topUp === undefined) {
    if (!reader.has(['top-up']))
      reader.fault(path, 'no top-up in this file', { expected: 'a section top-up' });
    return undefined;
  }
  const mains = topUp.sources.filter((source) => source.kind === 'mains');
  const [{ dailyCap, weeklyCap } = { dailyCap: Infinity }] = mains;
  const several = mains.some((source) => source.dailyCap !== dailyCap || source.weeklyCap !== weeklyCap);
  const restored: Action = compact({ kind: 'top-up', dailyCap, weeklyCap, stopped: false } as const);
  if (given === 'stopped')
    return { doing: [{ kind: 'top-up', stopped: true }], undoing: [{ kind: 'top-up', stopped: false }] };
  if (given !== 'restored' && mains.length === 0) {
    reader.fault(path, 'no supply that a cap could hold for', { expected: 'a water in top-up.from' });
    return undefined;
  }
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
  const found = reader.lookup(cast.vessels, vessel, [...path, 'vessel'], 'vessel');
  reader.known(water, cast.waters, [...path, 'water'], 'water');
  if ((share === undefined) === (volume === undefined)) {
    reader.fault(path, 'not one way to say how much', { expected: 'one of volume, share' });
    return undefined;
  }
  if (volume !== undefined && found !== undefined && volume > found.volume) {
    reader.fault([...path, 'volume'], `more than ${vessel} holds`, {
      expected: `at most ${found.volume} m3`,
    });
  }
  return { doing: [compact({ kind: 'change-water', vessel, volume, share, water } as const)] };
};

const readCartWater: ReadVerb<'cart-water'> = ({ volume, water, into }, reader, path, cast) => {
  const { rainTank, waters } = cast;
  const hasTank = reader.has(['rain-tank']);
  const usual = hasTank ? 'rain-tank' : 'reservoir';
  const where = into ?? reader.fallback([...path, 'into'], usual, usual);
  if (where === 'rain-tank' && !hasTank)
    reader.fault([...path, 'into'], 'no rain tank in this file', { expected: 'a section rain-tank' });
  if (water !== undefined && !reader.known(water, waters, [...path, 'water'], 'water')) return undefined;
  if (where === 'reservoir') {
    if (water !== undefined) return { doing: [{ kind: 'cart-water', volume, into: where, water }] };
    reader.fault([...path, 'water'], 'missing', { expected: 'a name of `waters`' });
    return undefined;
  }
  if (rainTank === undefined) return undefined;
  if (water !== undefined && water !== rainTank.water) {
    reader.fault([...path, 'water'], 'not what the rain tank holds', {
      expected: `${rainTank.water}, or into: reservoir`,
    });
    return undefined;
  }
  return { doing: [{ kind: 'cart-water', volume, into: where, water: rainTank.water }] };
};

const readFeedChange: ReadVerb<'feed'> = (given, reader, path, cast) => {
  const { cohort, ration, factor } = given;
  const found = reader.lookup(cast.cohorts, cohort, [...path, 'cohort'], 'cohort');
  const otherFeed = given.feed !== undefined || given.protein !== undefined;
  if (ration === undefined && factor === undefined && !otherFeed) {
    reader.fault(path, 'nothing that changes', { expected: 'one or more of ration, feed, protein, factor' });
    return undefined;
  }
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

function readPlanting(
  name: string,
  action: Action,
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair {
  reader.known(name, cast.plantings, path, 'planting');
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
  reader.known(into, cast.vessels, [...path, 'into'], 'vessel');
  reader.known(product, reader.names('dose'), [...path, 'product'], 'product');
  return { doing: [{ kind: 'dose', vessel: into, product, mass }] };
}

/** Draining solids, as an action or as part of a plan. */
export function readDrain(
  given: { vessel: string; share: number; water?: number | undefined },
  reader: ScenarioReader,
  path: Path,
  cast: Cast,
): ActionPair {
  const { vessel, share, water } = given;
  reader.known(vessel, cast.vessels, [...path, 'vessel'], 'vessel');
  const none = (): number => reader.fallback([...path, 'water'], 0, '0 m3');
  return { doing: [{ kind: 'drain-solids', vessel, share, water: water ?? none() }] };
}

/** One reader a verb of {@link timedActionSchema}. */
export const verbReaders: {
  readonly [Verb in keyof Omit<Given, 'at' | 'from' | 'until' | 'for' | 'every'>]-?: ReadVerb<Verb>;
} = {
  stock: ({ cohort, number, mass }, reader, path, cast) => {
    reader.known(cohort, cast.cohorts, [...path, 'cohort'], 'cohort');
    return { doing: [{ kind: 'stock', cohort, number, mass }] };
  },
  'harvest-fish': (given, ...rest) => readTake('harvest-fish', given, ...rest),
  'lose-fish': (given, ...rest) => readTake('lose-fish', given, ...rest),
  grade: (given, reader, path, cast) => {
    const { cohort, to, share } = given;
    reader.known(cohort, cast.cohorts, [...path, 'cohort'], 'cohort');
    reader.known(to, cast.cohorts, [...path, 'to'], 'cohort');
    if (to === cohort) reader.fault([...path, 'to'], 'a cohort graded into itself');
    const relativeMass = given['relative-mass'] ?? reader.fallback([...path, 'relative-mass'], 1, 1);
    return { doing: [{ kind: 'grade', cohort, share, relativeMass, to }] };
  },
  plant: (planting, ...rest) => readPlanting(planting, { kind: 'plant', planting }, ...rest),
  'harvest-crop': ({ planting, replant }, reader, path, cast) => {
    const again = replant ?? reader.fallback([...path, 'replant'], true, true);
    return readPlanting(
      planting,
      { kind: 'harvest-crop', planting, replant: again },
      reader,
      [...path, 'planting'],
      cast,
    );
  },
  'leave-empty': (planting, ...rest) => readPlanting(planting, { kind: 'leave-empty', planting }, ...rest),
  feed: readFeedChange,
  'top-up': readTopUpChange,
  'source-water': readSourceWater,
  'change-water': readChangeWater,
  'cart-water': readCartWater,
  dose: readDose,
  'pump-off': (pump, ...rest) => readPump(pump, false, ...rest),
  'pump-on': (pump, ...rest) => readPump(pump, true, ...rest),
  'air-off': (vessel, ...rest) => readAir(vessel, false, ...rest),
  'air-on': (vessel, ...rest) => readAir(vessel, true, ...rest),
  'control-off': (vessel, ...rest) => readControlSwitch(vessel, false, ...rest),
  'control-on': (vessel, ...rest) => readControlSwitch(vessel, true, ...rest),
  'power-cut': (_all, _reader, _path, cast) => readPowerCut(cast),
  clean: ({ vessel, biofilm, solids }, reader, path, cast) => {
    reader.known(vessel, cast.vessels, [...path, 'vessel'], 'vessel');
    if (biofilm === undefined && solids === undefined) {
      reader.fault(path, 'nothing that is removed', { expected: 'one or both of biofilm, solids' });
    }
    return { doing: [{ kind: 'clean', vessel, biofilm: biofilm ?? 0, solids: solids ?? 0 }] };
  },
  medicate: ({ vessel, kills }, reader, path, cast) => {
    reader.known(vessel, cast.vessels, [...path, 'vessel'], 'vessel');
    return { doing: [{ kind: 'medicate', vessel, kills }] };
  },
  'drain-solids': readDrain,
};
