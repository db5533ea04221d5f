import { InputError } from '../base/faults.js';
import type { Model } from '../model/model.js';
import type { Run, Sample } from '../run/run.js';
import { sum } from '../base/sum.js';
import { noSeriesNamed } from './no-series.js';
import { seriesNames, seriesOf, seriesUnits } from './series.js';
import { heldBy, historyOf, START, type History } from './why-history.js';
import { quantitiesOf, type WhyQuantity, type Store } from './why-quantities.js';

/** A run at one of its output times: a `day`, d since the start. */
export interface Moment {
  readonly run: Run;
  readonly day: number;
}

/** One cause of a difference: a `value` above 0 (in the unit of the quantity) raises it. */
export interface DifferencePart {
  readonly name: string;
  readonly value: number;
  /**
   * Whether the cause did more or less at the second moment than at the first, whichever way that moved the
   * quantity: less uptake raises it. Counted in water for a flow, in the amount for all else, since the
   * start of each run. Absent where it is no doing (the state at the start, a size, the place itself).
   */
  readonly did?: 'more' | 'less';
}

/** A difference of one quantity, split into what made it. */
export interface Difference {
  readonly quantity: string;
  readonly unit: string;
  /** `to` less `from`. */
  readonly difference: number;
  /** Value at the first moment. */
  readonly from: number;
  /** Value at the second. */
  readonly to: number;
  /** Largest first; causes that changed nothing are left out. */
  readonly parts: readonly DifferencePart[];
  /** Difference less the sum of the parts: rounding only. */
  readonly residual: number;
}

/** How `why` draws the line between inside and outside. */
export interface WhyOptions {
  /**
   * `place`: around the place itself; what other vessels send is one part each. `system`: for a
   * concentration in one vessel, around all water: flows between vessels cancel, and one part says how the
   * vessel stands against the mean of all water; other quantities have no such line. Default `place`.
   */
  readonly around?: 'place' | 'system';
}

function quantityOf(run: Run, quantity: string): WhyQuantity {
  const measures = quantitiesOf(run);
  const found = measures.find(({ name }) => name === quantity);
  if (found !== undefined) return found;
  const names = measures.map(({ name }) => name);
  if (seriesNames(run).includes(quantity)) {
    const place = quantity.slice(quantity.indexOf('@') + 1);
    const expected = names.filter((name) => name.endsWith(`@${place}`) && !name.includes('-amount@'));
    const problem = 'not a sum of what processes and flows did, so it has no parts';
    throw new InputError([{ got: quantity, problem, expected: `one of ${expected.join(', ')}` }]);
  }
  throw new InputError([noSeriesNamed(quantity, names)]);
}

/** Names of every quantity of a model's runs that `valueOn` knows: what `why` splits, and every series. */
export function whyNames(model: Model): readonly string[] {
  const split = quantitiesOf({ model, samples: [] }).map(({ name }) => name);
  return [...new Set([...seriesUnits(model).keys(), ...split])];
}

/** A day that a person writes is rounded further than the times of a run are, d: wider than `INSTANT`. */
const ROUNDED = 1e-9;

function sampleAt({ run, day }: Moment): Sample {
  const found = run.samples.find(({ time }) => Math.abs(time - day) <= ROUNDED);
  if (found !== undefined) return found;
  const times = run.samples.map(({ time }) => time);
  const close = times.reduce((best, time) => (Math.abs(time - day) < Math.abs(best - day) ? time : best));
  const expected = `an output time of the run, ${times[0]} to ${times[times.length - 1]} d`;
  throw new InputError([
    {
      got: `${day} d`,
      problem: 'not an output time',
      expected,
      ...(Number.isFinite(day) && { nearest: `${close} d` }),
    },
  ]);
}

/**
 * What a quantity is at a moment, its `value` in its `unit`: any that `why` splits, or any series, such as `pH@tank`.
 * @throws InputError with the nearest name, and for a day that is no output time
 */
export function valueOn(quantity: string, moment: Moment): { readonly value: number; readonly unit: string } {
  const { run } = moment;
  const sample = sampleAt(moment);
  const found = quantitiesOf(run).find(({ name }) => name === quantity);
  if (found !== undefined) {
    const { amount, per, unit } = found;
    return { value: heldBy(sample, amount) / (per === undefined ? 1 : heldBy(sample, per)), unit };
  }
  const { values } = seriesOf(run, quantity);
  return { value: values[run.samples.indexOf(sample)], unit: seriesUnits(run.model).get(quantity) ?? '' };
}

/** Both moments of a measure: what is held and how it came there. */
interface Side {
  readonly held: number;
  readonly history: History;
}

const one: Side = { held: 1, history: new Map() };

function sideOf(moment: Moment, sample: Sample, store: Store | undefined): Side {
  if (store === undefined) return one;
  return { held: heldBy(sample, store), history: historyOf(moment.run, sample, store) };
}

/** Change of each cause from one history to the other. */
function changes(from: History, to: History): Map<string, number> {
  const causes = new Set([...from.keys(), ...to.keys()]);
  return new Map([...causes].map((cause) => [cause, (to.get(cause) ?? 0) - (from.get(cause) ?? 0)]));
}

/**
 * Whether a cause did more or less. Water tells it for a flow; where that is the same to rounding, as for
 * what is no flow, the amount does.
 */
function doing(
  name: string,
  histories: readonly (readonly [from: History, to: History])[],
): Pick<DifferencePart, 'did'> {
  for (const [from, to] of histories) {
    const before = Math.abs(from.get(name) ?? 0);
    const after = Math.abs(to.get(name) ?? 0);
    if (Math.abs(after - before) > 1e-9 * Math.max(before, after))
      return { did: after > before ? 'more' : 'less' };
  }
  return {};
}

/** Value of a measure at both moments and the parts of the difference, in no order. */
function split(
  [from, to]: readonly [Moment, Moment],
  [a, b]: readonly [Sample, Sample],
  [first, second]: readonly [WhyQuantity, WhyQuantity],
): { from: number; to: number; parts: DifferencePart[] } {
  const amountA = sideOf(from, a, first.amount);
  const amountB = sideOf(to, b, second.amount);
  const perA = sideOf(from, a, first.per);
  const perB = sideOf(to, b, second.per);
  const byAmount = (1 / perA.held + 1 / perB.held) / 2;
  const byPer = -(amountA.held + amountB.held) / 2 / (perA.held * perB.held);
  const amounts = changes(amountA.history, amountB.history);
  const pers = changes(perA.history, perB.history);
  const histories = [
    [perA.history, perB.history],
    [amountA.history, amountB.history],
  ] as const;
  const parts = [...new Set([...amounts.keys(), ...pers.keys()])].map((name) => ({
    name,
    value: byAmount * (amounts.get(name) ?? 0) + byPer * (pers.get(name) ?? 0),
    ...(name === START || (first.per?.kind === 'size' && name === first.per.name)
      ? {}
      : doing(name, histories)),
  }));
  return { from: amountA.held / perA.held, to: amountB.held / perB.held, parts };
}

/**
 * Why one quantity differs between two moments: of two runs, or of one run at two days. The parts are
 * the processes, flows and actions that made the difference, from the integrated extents and the
 * postings; they sum to it but for rounding (`residual`).
 *
 * An amount A is a sum of what each cause k brought, so its difference is one too. A concentration
 * c = A/V (and any amount per another) is split by the exact identity for finite differences
 *
 *     c2 - c1 = (A2 - A1) (1/V1 + 1/V2)/2  -  (V2 - V1) (A1 + A2)/2 / (V1 V2)
 *
 * where both A2 - A1 and V2 - V1 are sums over causes. So a flow has one part: what it carried and how
 * much its water diluted or (evaporation) concentrated.
 *
 * @param quantity such as `nitrate@sump`, `nitrate@system` (mean of all water), `nitrate-amount@sump`,
 *   `crop-nitrogen@lettuce`; days must be output times
 * @throws InputError for an unknown quantity (with the nearest name), one that is no such sum (such as
 *   pH), a day that is no output time, and one on which the quantity has no value
 */
export function why(quantity: string, from: Moment, to: Moment, options: WhyOptions = {}): Difference {
  const measures = [quantityOf(from.run, quantity), quantityOf(to.run, quantity)] as const;
  const samples = [sampleAt(from), sampleAt(to)] as const;
  const own = split([from, to], samples, measures);
  for (const [moment, value] of [
    [from, own.from],
    [to, own.to],
  ] as const) {
    if (Number.isFinite(value)) continue;
    throw new InputError([{ got: `${quantity} at ${moment.day} d`, problem: 'has no value then' }]);
  }
  const difference = own.to - own.from;
  let parts = own.parts;
  const [first, second] = measures;
  if (options.around === 'system' && first.whole !== undefined && second.whole !== undefined) {
    const mean = split([from, to], samples, [first.whole, second.whole]);
    const place = quantity.slice(quantity.indexOf('@') + 1);
    const apart = own.to - mean.to - (own.from - mean.from);
    parts = [...mean.parts, { name: `${place} against the mean of all water`, value: apart }];
  }
  return {
    quantity,
    unit: first.unit,
    difference,
    from: own.from,
    to: own.to,
    parts: parts
      .filter(({ value }) => value !== 0)
      .sort((p, q) => Math.abs(q.value) - Math.abs(p.value) || (p.name < q.name ? -1 : 1)),
    residual: sum([difference, ...parts.map(({ value }) => -value)]),
  };
}
