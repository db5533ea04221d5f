// Reads numbers as: plan
import { sum } from '../../base/sum.js';
import { productsGiven } from '../../result/base-plan.js';
import type { Run, Sample } from '../../run/run.js';

/** Plants set out in a week: their `area`, and of a crop whose tables say how many stand on a square metre how many `plants`. */
export interface WeekOfCrop {
  readonly planting: string;
  /** m2. */
  readonly area: number;
  readonly plants?: number;
}

/** What a week gives of a crop. */
export interface WeekOfHarvest {
  readonly planting: string;
  /** g fresh, or dry where the tables do not say how dry the crop is. */
  readonly mass: number;
}

/** One week of a plan: what is to be done in it, and what it gives. Plain data. */
export interface PlanWeek {
  /** From 1. */
  readonly week: number;
  /** d: its first day. */
  readonly from: number;
  readonly setOut: readonly WeekOfCrop[];
  readonly gives: readonly WeekOfHarvest[];
  /** Feed by cohort: `perDay` g in the mean. */
  readonly feed: readonly { readonly cohort: string; readonly perDay: number }[];
  /** Products dosed by actions, plans and rules: `mass`, g. */
  readonly doses: readonly { readonly product: string; readonly vessel: string; readonly mass: number }[];
  /** Fish taken out alive: their `number` and `mass`, g. */
  readonly fishOut: readonly { readonly cohort: string; readonly number: number; readonly mass: number }[];
  /** Fish put in: their `number`. */
  readonly fishIn: readonly { readonly cohort: string; readonly number: number }[];
}

/** What stands at the start, planted that day or before: its `area`, m2, and how many `plants` where the tables say it. */
export interface PlanStart {
  readonly planting: string;
  readonly area: number;
  readonly plants?: number;
}

const WEEK = 7;

/** What was posted between two samples of a run, with the time of the first. */
function postedIn(run: Run, from: number, to: number, account: string) {
  const { samples, postings } = run;
  return samples.slice(1).flatMap((sample, i) => {
    const { time, posted } = samples[i];
    if (!(time >= from - 1e-9 && time < to - 1e-9)) return [];
    return postings
      .slice(posted, sample.posted)
      .filter((each) => each.account === account && each.state >= 0);
  });
}

/** Plants on so many square metres of a crop; undefined where the tables do not say. */
function plantsOn(run: Run, planting: number, area: number): { readonly plants?: number } {
  const { parameters, scenario } = run.model;
  const id = `crop.${scenario.plantings[planting].crop}.density`;
  return parameters.has(id) ? { plants: Math.round(area * parameters.value(id)) } : {};
}

/** Plantings with the total of what is counted of each, those alone that have some. */
function byPlanting(run: Run, found: readonly { planting: number; amount: number }[]) {
  return run.model.scenario.plantings.flatMap(({ name }, planting) => {
    const own = found.filter((each) => each.planting === planting);
    return own.length === 0 ? [] : [{ planting, name, amount: sum(own.map(({ amount }) => amount)) }];
  });
}

function setOutIn(run: Run, from: number, to: number): readonly WeekOfCrop[] {
  const { batches } = run.model.layout;
  const came = [
    ...postedIn(run, from, to, 'seedlings'),
    ...postedIn(run, from, to, 'transplants').filter(({ amount }) => amount > 0),
  ];
  const planted = came.flatMap(({ state }) => {
    const batch = batches.find(({ mass }) => mass === state);
    return batch === undefined ? [] : [{ planting: batch.planting, amount: batch.area }];
  });
  return byPlanting(run, planted).map(({ planting, name, amount }) => ({
    planting: name,
    area: amount,
    ...plantsOn(run, planting, amount),
  }));
}

function givesIn(run: Run, from: number, to: number): readonly WeekOfHarvest[] {
  const { layout, parameters, scenario } = run.model;
  const taken = postedIn(run, from, to, 'harvested crop').flatMap(({ state, amount }) => {
    const batch = layout.batches.find(({ mass, fruit }) => state === mass || (fruit >= 0 && state === fruit));
    if (batch === undefined) return [];
    const { crop, picks } = scenario.plantings[batch.planting];
    // Of a crop that bears fruit that is what is harvested.
    if (picks !== undefined && state === batch.mass) return [];
    const id = `crop.${crop}.${picks === undefined ? 'dry-matter' : 'fruit-dry-matter'}`;
    return [{ planting: batch.planting, amount: -amount / (parameters.has(id) ? parameters.value(id) : 1) }];
  });
  return byPlanting(run, taken).map(({ name, amount }) => ({ planting: name, mass: amount }));
}

function fishMoved(run: Run, from: number, to: number, account: 'harvested fish' | 'stocked fish') {
  const { layout, scenario } = run.model;
  const moved = postedIn(run, from, to, account);
  return layout.fish.flatMap(({ number, mass }, i) => {
    const of = (state: number): number =>
      sum(moved.filter((each) => each.state === state).map(({ amount }) => Math.abs(amount)));
    return of(number) > 0 ? [{ cohort: scenario.fish[i].name, number: of(number), mass: of(mass) }] : [];
  });
}

/** Feed by cohort between two samples, mean g/d. */
function feedBetween(run: Run, a: Sample, b: Sample): PlanWeek['feed'] {
  const days = b.time - a.time;
  return run.model.scenario.fish.map(({ name }) => {
    const rows = run.model.instances.filter(
      ({ process, place }) => process.unit === 'g feed' && place === name,
    );
    return { cohort: name, perDay: sum(rows.map(({ row }) => b.x[row] - a.x[row])) / days };
  });
}

/** What a run asks to be done week by week, and what it gives. A week begins on day 0, 7, 14 ... */
export function planWeeks(run: Run): readonly PlanWeek[] {
  const { samples, doses } = run;
  const end = samples[samples.length - 1].time;
  const start = Math.floor(samples[0].time / WEEK);
  const at = (time: number): Sample =>
    samples.filter((each) => each.time <= time + 1e-9).at(-1) ?? samples[0];
  return Array.from({ length: Math.ceil(end / WEEK - 1e-9) - start }, (_, i) => {
    const week = start + i;
    const from = week * WEEK;
    const to = Math.min(end, from + WEEK);
    const given = doses.filter(({ time }) => time >= from - 1e-9 && time < to - 1e-9);
    const kinds = [...new Set(given.map(({ product, vessel }) => `${product} ${vessel}`))];
    return {
      week: week + 1,
      from,
      setOut: setOutIn(run, from, to),
      gives: givesIn(run, from, to),
      feed: feedBetween(run, at(from), at(to)),
      doses: kinds.map((kind) => {
        const own = given.filter(({ product, vessel }) => `${product} ${vessel}` === kind);
        return {
          ...{ product: own[0].product, vessel: own[0].vessel },
          mass: sum(own.map(({ mass }) => mass)),
        };
      }),
      fishOut: fishMoved(run, from, to, 'harvested fish'),
      fishIn: fishMoved(run, from, to, 'stocked fish').map(({ cohort, number }) => ({ cohort, number })),
    };
  });
}

/** What stands on the beds at the start: plants set out that day, or batches that stand already. */
export function planStart(run: Run): readonly PlanStart[] {
  return run.model.scenario.plantings.flatMap(({ name, area, start }, i) =>
    start === 'empty' ? [] : [{ planting: name, area, ...plantsOn(run, i, area) }],
  );
}

/** What dosers that hold pH or alkalinity gave besides what is dosed by plan: `mass`, mean g a week, by product. */
export function dosersPerWeek(run: Run): readonly { readonly product: string; readonly mass: number }[] {
  const { samples, doses } = run;
  const weeks = (samples[samples.length - 1].time - samples[0].time) / WEEK;
  const all = productsGiven(run);
  return [...new Set(all.map(({ product }) => product))].flatMap((product) => {
    const total = sum(all.filter((each) => each.product === product).map(({ mass }) => mass));
    const planned = sum(doses.filter((each) => each.product === product).map(({ mass }) => mass));
    const left = total - planned;
    return left > 1e-6 * total ? [{ product, mass: left / weeks }] : [];
  });
}
