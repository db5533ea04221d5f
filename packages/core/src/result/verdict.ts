// Reads numbers as: verdict
import { sum } from '../base/sum.js';
import { disturbing } from '../run/close-look.js';
import type { Run, RunEvent } from '../run/run.js';
import { closeRun } from './close-run.js';
import type { CauseOfDeath } from '../processes/kernels/hazard.js';
import { type CohortDeaths, deathsOf, sharesDead } from './deaths.js';
import { filterVerdict, type FilterVerdict } from './filter-verdict.js';
import { harvestOf } from './harvest.js';
import { cropNitrogenShare } from './crop-nitrogen.js';
import { limitsOf, type LimitResult } from './limits.js';
import { isRoutine } from './routine.js';
import { allSeries, type Series } from './series.js';
import { type LostWeight, lostWeightOf } from './lost-weight.js';
import { type UneatenFeed, uneatenOf } from './uneaten.js';
import { waterVerdict, type WaterVerdict } from './water-verdict.js';
import type { Harm } from './limit-check.js';

/** A limit that was passed, as a verdict names it: of what, for whom, in which vessels, from when, how long, how far. */
export interface Trouble extends Pick<LimitResult, 'quantity' | 'direction' | 'value' | 'unit' | 'whom'> {
  /** Vessels, the one that was passed first at the head. */
  readonly places: readonly string[];
  /** d: when first passed. */
  readonly first: number;
  /** d: how long, in the worst vessel. */
  readonly total: number;
  /** The farthest value, in the unit. */
  readonly worst: number;
  /** d: when it was farthest. */
  readonly worstAt: number;
}

/**
 * What became of the fish. `dead`: half or more of the fish of a cohort died; `lethal`: water that kills half of them;
 * `at-risk`: a limit that hurts them was passed; `uncomfortable`: one that puts them off their feed or their ease.
 */
export interface FishVerdict {
  readonly state: 'dead' | 'lethal' | 'at-risk' | 'uncomfortable' | 'safe';
  /** d: since when; absent when safe. */
  readonly from?: number;
  /** The limits that say it, all of the worst kind of harm, the longest passed first. */
  readonly troubles: readonly Trouble[];
  /** Cohorts of which a twentieth or more died, most first. */
  readonly deaths: readonly ToldDeaths[];
  /** Cohorts of which the file says that a twentieth or more were lost; absent: none. The model has no part in it. */
  readonly lost?: readonly ToldLosses[];
  /**
   * Cohorts that left more of their feed than a well-fed tank does (`limit.feed-uneaten`), most first; absent: none. Where fish
   * died, before anything that hurts them was passed: thereafter it is why they do not eat.
   */
  readonly uneaten?: readonly UneatenFeed[];
  /** Cohorts that lost a twentieth of their weight or more, most first; absent: none. Not told of fish that died. */
  readonly thin?: readonly LostWeight[];
}

/** Fish of a cohort that actions took out as dead: how many, which share of those that came, and from when, d. */
export interface ToldLosses {
  readonly cohort: string;
  /** Fish. */
  readonly number: number;
  /** Of those that came, 0..1. */
  readonly share: number;
  /** d since the start. */
  readonly from: number;
}

/** Deaths in one cohort as a verdict tells them. */
export interface ToldDeaths {
  readonly cohort: string;
  readonly vessel: string;
  /** Of those that were there; natural deaths apart. */
  readonly share: number;
  /** What most of them died of. */
  readonly cause: CauseOfDeath;
  /** d: by which half of them had died; absent: less than half. */
  readonly halfBy?: number;
  /** d: by which none was left; absent: some live, or were taken out. */
  readonly wipedOut?: number;
}

/** Deaths of every cohort that ever had fish, the most first. */
function toldDeaths(run: Run, deaths: readonly CohortDeaths[]): readonly ToldDeaths[] {
  const shares = sharesDead(closeRun(run));
  const all = deaths.flatMap(({ cohort, stocked, causes, wipedOut }, i): ToldDeaths[] =>
    stocked > 0
      ? [
          {
            ...{ cohort, vessel: run.model.scenario.fish[i].vessel, ...shares[i] },
            cause: causes.find(({ cause }) => cause !== 'other')?.cause ?? 'other',
            ...(wipedOut !== undefined && { wipedOut }),
          },
        ]
      : [],
  );
  return all.sort((a, b) => b.share - a.share);
}

/** Fish that the file says were lost, by cohort. */
function toldLosses(run: Run, deaths: readonly CohortDeaths[]): readonly ToldLosses[] {
  return deaths.flatMap(({ cohort, stocked }, i): ToldLosses[] => {
    const first = run.events.find(({ kind, place }) => kind === 'lose-fish' && place === cohort);
    if (first === undefined) return [];
    const { number: state } = run.model.layout.fish[i];
    const number = sum(
      run.postings.map((each) => (each.account === 'dead fish' && each.state === state ? -each.amount : 0)),
    );
    const share = stocked > 0 ? number / stocked : 0;
    return share < TOLD ? [] : [{ cohort, number, share, from: first.time }];
  });
}

/** What the crops gave, and what they were short of. */
export interface CropsVerdict {
  /** By crop its `mass`, g fresh (dry where the tables do not say how dry it is), most first. */
  readonly harvested: readonly { readonly crop: string; readonly mass: number; readonly dry: boolean }[];
  /** Share of the time that standing crops were short of nitrogen. */
  readonly shortOfNitrogen: number;
  /** Chloride above what a crop stands. */
  readonly salt?: Trouble;
}

/** Something that went wrong first, and what was done just before it. */
export interface Beginning {
  /** d. */
  readonly time: number;
  /** What went wrong. */
  readonly what:
    | { readonly kind: 'limit'; readonly trouble: Trouble }
    | { readonly kind: 'water'; readonly event: RunEvent }
    | { readonly kind: 'filter'; readonly filter: FilterVerdict };
  /** The last thing done to the system within the three days before that was no routine. */
  readonly after?: RunEvent;
}

/**
 * Until when a run is a forecast, d, and why no longer: what was outside the laws of the model, fish that would be dead, or a
 * run that broke off.
 */
export interface HoldsUntil {
  /** d. */
  readonly time: number;
  readonly why: 'domain' | 'fish' | 'broken-off';
  readonly trouble?: Trouble;
}

/** What a run comes to: fish, water, filter, crops, and where trouble began. Plain data. */
export interface RunVerdict {
  /** From when on it is no forecast; absent: it holds to the end. */
  readonly holdsUntil?: HoldsUntil;
  readonly fish?: FishVerdict;
  readonly water: WaterVerdict;
  readonly filter?: FilterVerdict;
  readonly crops?: CropsVerdict;
  readonly beginning?: Beginning;
}

/** Passed limits of one kind of harm as troubles, one for each quantity, direction and value, in order of time. */
function troubles(limits: readonly LimitResult[], harm: Harm): readonly Trouble[] {
  const groups = new Map<string, LimitResult[]>();
  for (const limit of limits) {
    if (limit.harm !== harm || !limit.passed) continue;
    const key = `${limit.quantity} ${limit.direction} ${limit.value} ${limit.whom}`;
    groups.set(key, [...(groups.get(key) ?? []), limit]);
  }
  return [...groups.values()].map(troubleOf).sort((a, b) => a.first - b.first);
}

function troubleOf(group: readonly LimitResult[]): Trouble {
  const byTime = [...group].sort((a, b) => (a.first ?? Infinity) - (b.first ?? Infinity));
  const [{ quantity, direction, value, unit, whom }] = byTime;
  const sign = direction === 'above' ? 1 : -1;
  const far = (limit: LimitResult): number => sign * (limit.worst ?? Number.NaN);
  const worst = group.reduce((most, limit) => (far(limit) > far(most) ? limit : most));
  return {
    ...{ quantity, direction, value, unit, whom },
    places: [...new Set(byTime.map(({ place }) => place))],
    first: byTime[0].first ?? Number.NaN,
    total: Math.max(...group.map(({ total }) => total)),
    worst: worst.worst ?? Number.NaN,
    worstAt: worst.worstAt ?? Number.NaN,
  };
}

/** Kinds of harm to fish, the worst first, and what a verdict calls them. */
const fishHarms = ['lethal', 'harmful', 'uncomfortable'] as const;
const stateOf = { lethal: 'lethal', harmful: 'at-risk', uncomfortable: 'uncomfortable' } as const;

/** Share of a cohort whose death is told. */
const TOLD = 0.05;

const longestFirst = (list: readonly Trouble[]): readonly Trouble[] =>
  [...list].sort((a, b) => b.total - a.total);

/** The quantity whose limits a cause of death is of. */
const quantityOf = (cause: CauseOfDeath | undefined): string | undefined =>
  cause === 'cold' || cause === 'heat' ? 'temperature' : cause;

/** Cohorts that left more of their feed than is usual, most first. */
function leftOver(run: Run, until?: number): readonly UneatenFeed[] {
  const usual = run.model.parameters.value('limit.feed-uneaten.value');
  return uneatenOf(run, until)
    .filter(({ share }) => share > usual)
    .sort((a, b) => b.share - a.share);
}

function fishVerdict(run: Run, limits: readonly LimitResult[]): FishVerdict | undefined {
  const numbers = run.model.layout.fish.map(({ number }) => number);
  if (!run.samples.some(({ y }) => numbers.some((state) => y[state] > 0))) return undefined;
  const died = deathsOf(closeRun(run));
  const all = toldDeaths(run, died);
  const losses = toldLosses(run, died);
  const deaths = all.filter(({ share }) => share >= TOLD);
  const dead = all.flatMap(({ halfBy }) => (halfBy === undefined ? [] : [halfBy]));
  const hurt = [...troubles(limits, 'lethal'), ...troubles(limits, 'harmful')];
  const deadly = dead.length > 0 || troubles(limits, 'lethal').length > 0;
  const leave = leftOver(run, deadly ? Math.min(...hurt.map(({ first }) => first)) : undefined);
  const thin = deadly ? [] : lostWeightOf(run).filter(({ share }) => share >= TOLD);
  const beside = {
    ...(losses.length > 0 && { lost: losses }),
    ...(leave.length > 0 && { uneaten: leave }),
    ...(thin.length > 0 && { thin: thin.sort((a, b) => b.share - a.share) }),
  };
  const worst = fishHarms
    .map((harm) => longestFirst(troubles(limits, harm)))
    .find(({ length }) => length > 0);
  const state =
    worst === undefined
      ? 'safe'
      : stateOf[fishHarms.find((harm) => troubles(limits, harm).length > 0) ?? 'lethal'];
  if (dead.length > 0) {
    const from = Math.min(...dead);
    // Of what: what was passed before half were dead, what they died of before all else, then the deadliest kind.
    const before = fishHarms
      .flatMap((harm) => longestFirst(troubles(limits, harm)))
      .filter(({ first }) => first <= from);
    const diedOf = quantityOf(all.find(({ halfBy }) => halfBy === from)?.cause);
    const told = [...before.filter((each) => each.quantity === diedOf), ...before].slice(0, 1);
    return { state: 'dead', from, troubles: told, deaths, ...beside };
  }
  const from = worst === undefined ? undefined : Math.min(...worst.map(({ first }) => first));
  return {
    state: deaths.length > 0 && state !== 'lethal' ? 'at-risk' : state,
    ...(from !== undefined && { from }),
    troubles: worst ?? [],
    deaths,
    ...beside,
  };
}

function cropsVerdict(run: Run, limits: readonly LimitResult[]): CropsVerdict | undefined {
  const { plantings } = run.model.scenario;
  if (plantings.length === 0) return undefined;
  const { crops } = harvestOf(run);
  const names = [...new Set(crops.map(({ crop }) => crop))];
  const harvested = names.map((crop) => {
    const those = crops.filter((each) => each.crop === crop);
    const dry = those.some(({ fresh }) => fresh === undefined);
    return { crop, dry, mass: sum(those.map((each) => each.fresh ?? each.dry)) };
  });
  const salt = troubles(limits, 'crop').find(({ quantity }) => quantity === 'chloride');
  return {
    harvested: harvested.sort((a, b) => b.mass - a.mass),
    shortOfNitrogen: cropNitrogenShare(run),
    ...(salt && { salt }),
  };
}

/** Days within which what was done is named beside what went wrong. */
const BEFORE = 3;

function beginningOf(
  run: Run,
  limits: readonly LimitResult[],
  water: WaterVerdict,
  filter: FilterVerdict | undefined,
): Beginning | undefined {
  const hurt = [...troubles(limits, 'lethal'), ...troubles(limits, 'harmful')];
  const found: Beginning[] = [
    ...hurt.map((trouble) => ({ time: trouble.first, what: { kind: 'limit' as const, trouble } })),
    ...(water.first === undefined
      ? []
      : [{ time: water.first.time, what: { kind: 'water' as const, event: water.first } }]),
    ...(filter?.from === undefined ? [] : [{ time: filter.from, what: { kind: 'filter' as const, filter } }]),
  ];
  if (found.length === 0) return undefined;
  const first = found.reduce((early, each) => (each.time < early.time ? each : early));
  const after = run.events
    .filter(
      (event) =>
        disturbing.has(event.kind) &&
        event.time <= first.time &&
        event.time >= first.time - BEFORE &&
        !(first.what.kind === 'water' && event === first.what.event) &&
        !isRoutine(run, event),
    )
    .at(-1);
  return { ...first, ...(after && { after }) };
}

/**
 * What a run comes to, for who runs the system: what happens to the fish, the water, the filter and the crops, and what
 * went wrong first. Worked out from limits by the harm of passing them, deaths, events and the harvest. A design aid: fish
 * welfare stays with local codes and licensed practice.
 * @param limits and series of the run, where they are at hand
 */
export function verdictOf(
  run: Run,
  limits: readonly LimitResult[] = limitsOf(run),
  series: readonly Series[] = allSeries(run),
): RunVerdict {
  const fish = fishVerdict(run, limits);
  const water = waterVerdict(run);
  const filter = filterVerdict(run, series);
  const crops = cropsVerdict(run, limits);
  const beginning = beginningOf(run, limits, water, filter);
  const [outside] = troubles(limits, 'domain') as readonly (Trouble | undefined)[];
  const ends: HoldsUntil[] = [
    ...(outside === undefined ? [] : [{ time: outside.first, why: 'domain' as const, trouble: outside }]),
    ...(fish !== undefined && (fish.state === 'dead' || fish.state === 'lethal')
      ? [
          {
            time: Math.min(fish.from ?? 0, ...troubles(limits, 'lethal').map(({ first }) => first)),
            why: 'fish' as const,
          },
        ]
      : []),
    ...(run.outcome.kind === 'done' ? [] : [{ time: run.outcome.time, why: 'broken-off' as const }]),
  ];
  return {
    ...(ends.length > 0 && {
      holdsUntil: ends.reduce((early, each) => (each.time < early.time ? each : early)),
    }),
    ...(fish && { fish }),
    water,
    ...(filter && { filter }),
    ...(crops && { crops }),
    ...(beginning && { beginning }),
  };
}
