// Reads numbers as: harvest
import { dateAfter } from '../base/calendar.js';
import { sum } from '../base/sum.js';
import type { Run } from '../run/run.js';

/** What was harvested in one month of the calendar, `yyyy-mm`: its `mass`, g fresh of a crop, or g of fish. */
export interface MonthlyYield {
  readonly month: string;
  readonly mass: number;
}

/** What one planting gave in a run: its plants, or of a crop that bears fruit that alone. */
export interface CropYield {
  readonly planting: string;
  readonly crop: string;
  /** g. */
  readonly dry: number;
  /** g; absent where the tables do not say how dry the crop is. */
  readonly fresh?: number;
  /** Plants cut or pulled, where the tables say how many stand on a square metre; not of crops picked or cut to grow again. */
  readonly plants?: number;
  readonly months: readonly MonthlyYield[];
}

/** What one cohort gave in a run: the `number` of fish taken out alive. */
export interface FishYield {
  readonly cohort: string;
  readonly species: string;
  readonly number: number;
  /** g. */
  readonly mass: number;
  readonly months: readonly MonthlyYield[];
}

/** Everything harvested in a run, and what it took. */
export interface Harvest {
  readonly crops: readonly CropYield[];
  readonly fish: readonly FishYield[];
  /** Of all crops, g fresh. */
  readonly fresh: number;
  /** Planted area, m2. */
  readonly area: number;
  /** Feed given, g. */
  readonly feed: number;
  /** Water taken in from outside, m3. */
  readonly water: number;
}

/** g of feed given in a run, eaten or not. */
export function feedGiven({ model, samples }: Run): number {
  const first = samples[0];
  const last = samples[samples.length - 1];
  return sum(
    model.instances.flatMap(({ process, row }) =>
      process.unit === 'g feed' ? [last.x[row] - first.x[row]] : [],
    ),
  );
}

/** m3 of water taken in through the float valve. */
export function waterTaken({ model, samples }: Run): number {
  const first = samples[0];
  const last = samples[samples.length - 1];
  return sum(
    model.streams.flatMap(({ kind }, i) => (kind === 'top-up' ? [last.carried[i] - first.carried[i]] : [])),
  );
}

/** Something taken out at about a time (that of the output before it), by the state it came from. */
interface Taking {
  readonly time: number;
  readonly state: number;
  readonly amount: number;
}

/** All that was posted to an account between the first and the last sample. */
function takings({ samples, postings }: Run, account: string): readonly Taking[] {
  return samples.slice(1).flatMap((sample, i) =>
    postings
      .slice(samples[i].posted, sample.posted)
      .filter((posting) => posting.account === account && posting.state >= 0)
      .map(({ state, amount }) => ({ time: samples[i].time, state, amount: -amount })),
  );
}

function byMonth({ model }: Run, taken: readonly Taking[], factor: number): readonly MonthlyYield[] {
  const months = new Map<string, number[]>();
  for (const { time, amount } of taken) {
    const month = dateAfter(model.scenario.startDate, Math.floor(time)).slice(0, 7);
    months.set(month, [...(months.get(month) ?? []), amount * factor]);
  }
  return [...months].map(([month, masses]) => ({ month, mass: sum(masses) }));
}

function cropYields(run: Run): readonly CropYield[] {
  const { scenario, layout, parameters } = run.model;
  const all = takings(run, 'harvested crop');
  return scenario.plantings.map(({ name, crop, picks, cut: regrows }, index): CropYield => {
    const batches = layout.batches.filter(({ planting }) => planting === index);
    // Of a crop that bears fruit that is what is harvested; its plants are cleared away.
    const bears = picks !== undefined;
    const taken = all.filter(({ state }) =>
      batches.some(({ mass, fruit }) => (bears ? fruit : mass) === state),
    );
    const dry = sum(taken.map(({ amount }) => amount));
    const share = bears ? `crop.${crop}.fruit-dry-matter` : `crop.${crop}.dry-matter`;
    const density = `crop.${crop}.density`;
    const fresh = parameters.has(share) ? 1 / parameters.value(share) : undefined;
    const cut = sum(taken.map(({ state }) => batches.find(({ mass }) => mass === state)?.area ?? 0));
    return {
      planting: name,
      crop,
      dry,
      ...(fresh !== undefined && { fresh: dry * fresh }),
      ...(parameters.has(density) && !bears && !regrows && { plants: cut * parameters.value(density) }),
      months: byMonth(run, taken, fresh ?? 1),
    };
  });
}

function fishYields(run: Run): readonly FishYield[] {
  const { scenario, layout } = run.model;
  const all = takings(run, 'harvested fish');
  return scenario.fish.map(({ name, species }, index): FishYield => {
    const { mass, number } = layout.fish[index];
    const of = (state: number): readonly Taking[] => all.filter((taking) => taking.state === state);
    const masses = of(mass);
    return {
      cohort: name,
      species,
      number: sum(of(number).map(({ amount }) => amount)),
      mass: sum(masses.map(({ amount }) => amount)),
      months: byMonth(run, masses, 1),
    };
  });
}

/**
 * What a run harvested: crops by planting and month, fish by cohort, and feed and water beside them. A month is that of
 * the last output before, so with an output step of days some of it may stand a few days early. Fresh mass is the dry
 * mass over the dry share of the tables.
 */
export function harvestOf(run: Run): Harvest {
  const crops = cropYields(run);
  return {
    crops,
    fish: fishYields(run),
    fresh: sum(crops.map(({ fresh = 0 }) => fresh)),
    area: sum(run.model.scenario.plantings.map(({ area }) => area)),
    feed: feedGiven(run),
    water: waterTaken(run),
  };
}
