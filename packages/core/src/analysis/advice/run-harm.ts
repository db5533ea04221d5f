import { sum } from '../../base/sum.js';
import type { Harm } from '../../result/limit-check.js';
import { limitsOf, type LimitResult } from '../../result/limits.js';
import { harvestOf } from '../../result/harvest.js';
import { sharesDead, deathsOf } from '../../result/deaths.js';
import { verdictOf, type RunVerdict } from '../../result/verdict.js';
import { allSeries } from '../../result/series.js';
import type { Run } from '../../run/run.js';
import type { Condition } from '../measures/condition.js';
import { judgeRun } from '../design/trial.js';

/**
 * The harm of a run in numbers, the worst kind first: how two runs are held against each other. Days of limits are the
 * sum over every limit of that harm at every place.
 */
export interface RunHarm {
  /** Days that are missing at the end of a run that broke off. */
  readonly missing: number;
  /** Share of all fish that died, natural deaths apart. */
  readonly died: number;
  /** Days outside what the model knows, and in water that kills. */
  readonly lethal: number;
  /** Days in water that hurts fish. */
  readonly harmful: number;
  /** Conditions of one's own that do not hold. */
  readonly broken: number;
  /** Days on which a pump sucked air or a vessel was dry. */
  readonly water: number;
  /** Days in water too salty for a crop. */
  readonly salt: number;
  /** Days in water that puts fish off their ease, with a low reservoir, and with a filter behind to the end. */
  readonly unease: number;
}

/** What a run came to, as far as advice is given by it. Plain data. */
export interface AdviceOutcome {
  readonly harm: RunHarm;
  readonly verdict: RunVerdict;
  /** Crops harvested, kg fresh. */
  readonly crops: number;
  /** Fish at the end and taken out, less those of the start and those put in, kg. */
  readonly fish: number;
  /** Feed given, kg. */
  readonly feed: number;
  /** Water taken in by the float valve, and poured in by actions, m3. */
  readonly water: number;
}

const daysOf = (limits: readonly LimitResult[], harm: Harm): number =>
  sum(limits.map((limit) => (limit.harm === harm && limit.passed ? limit.total : 0)));

function harmOf(
  run: Run,
  limits: readonly LimitResult[],
  { fish, water, crops, filter }: RunVerdict,
  conditions: readonly Condition[],
): RunHarm {
  const { days } = run.model.scenario;
  const end = run.samples[run.samples.length - 1].time;
  const stocked = deathsOf(run).map((each) => each.stocked);
  const shares = sharesDead(run).map(({ share }) => share);
  const all = sum(stocked);
  const { holds, margins } = judgeRun(run, Number.NaN, conditions);
  return {
    missing: Math.max(0, days - end),
    // What the verdict does not tell is no harm here either.
    died:
      fish === undefined || fish.deaths.length === 0 ? 0 : sum(shares.map((s, i) => s * stocked[i])) / all,
    lethal: daysOf(limits, 'domain') + daysOf(limits, 'lethal'),
    harmful: daysOf(limits, 'harmful'),
    broken: holds ? 0 : margins.filter((margin) => !(margin > 0)).length,
    water:
      sum(water.pumps.map(({ total }) => total)) + (water.dryFirst === undefined ? 0 : end - water.dryFirst),
    salt: crops?.salt?.total ?? 0,
    unease:
      daysOf(limits, 'uncomfortable') +
      water.lowDays +
      (filter?.state === 'falls-behind' ? end - (filter.from ?? end) : 0),
  };
}

/** kg of fish gained: at the end and taken out, less those of the start and those put in; what died is lost. */
function fishGained(run: Run): number {
  const { samples, postings, model } = run;
  const { fish } = model.layout;
  const last = samples[samples.length - 1];
  const states = new Set(fish.map(({ mass }) => mass));
  const booked = (account: string): number =>
    sum(
      postings
        .slice(samples[0].posted, last.posted)
        .filter((posting) => posting.account === account && states.has(posting.state))
        .map(({ amount }) => amount),
    );
  const there = sum(fish.map(({ mass }) => last.y[mass] - samples[0].y[mass]));
  return (there - booked('harvested fish') - booked('stocked fish')) / 1000;
}

/** m3 of water brought in from outside: through the float valve, and by water changes and carting. */
function waterIn(run: Run, byValve: number): number {
  const poured = run.samples[run.samples.length - 1].posted;
  const booked = run.postings
    .slice(run.samples[0].posted, poured)
    .filter(({ account, state }) => account === 'source water' && state < 0)
    .map(({ amount }) => amount);
  return byValve + sum(booked);
}

/** What a run came to, with conditions of one's own that it must keep too. */
export function adviceOutcome(run: Run, conditions: readonly Condition[] = []): AdviceOutcome {
  const series = allSeries(run);
  const limits = limitsOf(run, series);
  const verdict = verdictOf(run, limits, series);
  const harvest = harvestOf(run);
  return {
    harm: harmOf(run, limits, verdict, conditions),
    verdict,
    crops: harvest.fresh / 1000,
    fish: fishGained(run),
    feed: harvest.feed / 1000,
    water: waterIn(run, harvest.water),
  };
}

/** What must be gone for a run to be good: all that harms, or where nothing does what is only uneasy. */
export type AdviceAim = 'harm' | 'unease' | 'nothing';

/** Kinds of harm, the worst first; `unease` is none. */
const harmful = ['missing', 'died', 'lethal', 'harmful', 'broken', 'water', 'salt'] as const;
const ordered = [...harmful, 'unease'] as const;

/** What there is to be mended in a run. */
export function aimOf(harm: RunHarm): AdviceAim {
  if (harmful.some((kind) => harm[kind] > 0)) return 'harm';
  return harm.unease > 0 ? 'unease' : 'nothing';
}

/** Whether a run has what an aim asks of it. */
export function isReached(harm: RunHarm, aim: AdviceAim): boolean {
  return aim === 'harm' ? aimOf(harm) !== 'harm' : aimOf(harm) === 'nothing';
}

/** Share below which two amounts of a kind of harm are the same. */
const ALIKE = 0.01;

/** Order of two runs by their harm, for sorting: below 0 where the first is the better. The worst kind decides. */
export function compareHarm(a: RunHarm, b: RunHarm): number {
  for (const kind of ordered) {
    const [first, second] = [a[kind], b[kind]];
    if (Math.abs(first - second) > ALIKE * Math.max(first, second)) return first - second;
  }
  return 0;
}
