import { createRandom } from '../../../packages/core/src/base/random.js';
import type { Model } from '../../../packages/core/src/model/model.js';
import type { Rates } from '../../../packages/core/src/model/rates.js';
import { jacobianTerms } from './jacobian-terms.js';
import { replayYear, type Recording } from './record-year.js';

/** One point in every segment: its number, the time since its start, and a state near the recorded one. */
export function randomPoints({ segments }: Recording, seed: number): number[][] {
  const random = createRandom(seed);
  return segments.map(({ from, to, start }, i) => [
    i,
    // As the library sees it, by the difference of two moments.
    from + random() * (to - from) - from,
    ...Array.from(start, (value) => value * (0.7 + 0.6 * random())),
  ]);
}

/** A value, and the sum of its parts without their signs: what rounding is measured by. */
export interface Summed {
  readonly value: number;
  readonly turnover: number;
}

/** Slopes of the states and entries of the Jacobian, column by column, at the point of each segment, by the library itself. */
export function evaluateHere(
  { model, segments }: Recording,
  points: readonly (readonly number[])[],
): Summed[][] {
  const evaluated: Summed[][] = [];
  const measure = openMeasure(model);
  replayYear(
    model,
    segments.map(({ end }) => end),
    (rates) => {
      const [, since, ...state] = points[evaluated.length];
      evaluated.push(measure(rates, since, Float64Array.from(state)));
    },
  );
  return evaluated;
}

function openMeasure(model: Model): (rates: Rates, since: number, y: Float64Array) => Summed[] {
  const { stoichiometry: s } = model;
  const terms = jacobianTerms(model);
  const columnOf = terms.columnStart
    .slice(1)
    .flatMap((end, j) => Array<number>(end - terms.columnStart[j]).fill(j));
  const r = new Float64Array(model.rows.length);
  const rt = new Float64Array(model.rows.length);
  const dr = new Float64Array(model.dependence.column.length);
  return ({ system, regime }, since, y) => {
    system.evaluate(regime.time + since, y, r);
    system.differentiate(regime.time + since, y, dr, rt);
    const slopes = Array.from(y, () => ({ value: 0, turnover: 0 }));
    r.forEach((rate, k) => {
      for (let e = s.start[k]; e < s.start[k + 1]; e++) add(slopes[s.column[e]], s.value[e] * rate);
    });
    const entries = terms.row.map((_, e) => {
      const sum = { value: 0, turnover: 0 };
      for (let q = terms.termStart[e]; q < terms.termStart[e + 1]; q++) {
        add(sum, terms.coefficient[q] * dr[terms.partial[q]]);
      }
      return sum;
    });
    // An entry may vanish by cancellation inside a rate (the top of a bell): its row is the measure, each
    // entry of it by what it makes of the whole state.
    const rows = new Float64Array(y.length);
    entries.forEach(({ turnover }, e) => (rows[terms.row[e]] += turnover * Math.abs(y[columnOf[e]])));
    entries.forEach((entry, e) => {
      if (y[columnOf[e]] !== 0) entry.turnover = rows[terms.row[e]] / Math.abs(y[columnOf[e]]);
    });
    return [...slopes, ...entries];
  };
}

function add(sum: { value: number; turnover: number }, part: number): void {
  sum.value += part;
  sum.turnover += Math.abs(part);
}
