import { conserved, type Conserved } from '../processes/components.js';
import type { Component } from '../processes/components.js';
import type { Run, Sample } from '../run/run.js';
import { sum } from '../base/sum.js';
import { crossings, type Boundary, type Crossing } from './crossings.js';
import { concernsOf } from './crossings.js';

/** Everything of one kind that crossed, one way. */
export interface BudgetLine {
  /** Such as `feed: feed-nitrogen` or `air: dinitrogen`; for a vessel, `sump: nitrate`. */
  readonly name: string;
  readonly beyond: string;
  readonly component: Component;
  /** Process, kind of stream, or `action`. */
  readonly by: string;
  /** Above 0: came in. Below 0: went out. */
  readonly amount: number;
}

/** The `amount` that one component gained (+) or lost (-) inside the boundary, in the unit of the budget. */
export interface StoredLine {
  readonly component: Component;
  readonly amount: number;
}

/**
 * The balance of one conserved quantity around one boundary, in its unit (nitrogen g N, oxygen-demand
 * g O2, charge eq, chloride g, carbon mol, water m3).
 *
 * `in`, `out` and `stored` (gain of what is inside) are over the whole run; `residual` = in - out - stored: what the run made from nothing (-) or lost (+). `throughput` = in +
 * out + what was there at the start (sum of absolute contents), so that a closed vessel, through which
 * nothing passes, is still measured against something.
 */
export interface Budget {
  readonly quantity: Conserved;
  /** `system` or the name of a vessel. */
  readonly place: string;
  readonly in: number;
  readonly out: number;
  readonly stored: number;
  readonly residual: number;
  readonly throughput: number;
  readonly lines: readonly BudgetLine[];
  readonly stores: readonly StoredLine[];
}

/** Contents of every state inside the boundary (for water: of every vessel). */
function contents(run: Run, quantity: Conserved, boundary: Boundary, sample: Sample): readonly StoredLine[] {
  if (quantity === 'water') {
    const volumes = boundary === 'system' ? [...sample.volume] : [sample.volume[boundary]];
    return volumes.map((amount) => ({ component: 'water' as const, amount }));
  }
  const { layout, contents: content } = run.model;
  const inside = boundary === 'system' ? [...layout.states.keys()] : concernsOf(run.model, boundary).states;
  return inside
    .map((i) => ({ state: layout.states[i], factor: content[i][quantity], held: sample.y[i] }))
    .filter(({ factor }) => factor !== 0)
    .map(({ state, factor, held }) => ({ component: state.component, amount: factor * held }));
}

/** Puts like with like, in the order in which each kind is first seen. */
function grouped<T>(items: readonly T[], key: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return [...groups.values()];
}

function linesOf(crossed: readonly Crossing[]): BudgetLine[] {
  const key = (c: Crossing): string => `${c.beyond}|${c.component}|${c.by}|${c.amount >= 0 ? '+' : '-'}`;
  return grouped(crossed, key).map((group) => ({
    name: `${group[0].beyond}: ${group[0].component}`,
    beyond: group[0].beyond,
    component: group[0].component,
    by: group[0].by,
    amount: sum(group.map((crossing) => crossing.amount)),
  }));
}

/**
 * Balance of one conserved quantity over a whole run.
 * @param boundary `system`, or the index of a vessel. The rain tank stands outside: its water comes in
 *   as top-up; what runs over its edge is the series `rain-tank-spilled@system`.
 */
export function budgetOf(run: Run, quantity: Conserved, boundary: Boundary): Budget {
  const crossed = crossings(run, quantity, boundary);
  const start = contents(run, quantity, boundary, run.samples[0]);
  const end = contents(run, quantity, boundary, run.samples[run.samples.length - 1]);
  const changes = [...end, ...start.map(({ component, amount }) => ({ component, amount: -amount }))];
  const came = sum(crossed.filter(({ amount }) => !(amount < 0)).map(({ amount }) => amount));
  const went = sum(crossed.filter(({ amount }) => amount < 0).map(({ amount }) => -amount));
  const stored = sum(changes.map(({ amount }) => amount));
  return {
    quantity,
    place: boundary === 'system' ? 'system' : run.model.layout.vessels[boundary],
    in: came,
    out: went,
    stored,
    residual: sum([came, -went, -stored]),
    throughput: sum([came, went, ...start.map(({ amount }) => Math.abs(amount))]),
    lines: linesOf(crossed),
    stores: grouped(changes, ({ component }) => component).map((group) => ({
      component: group[0].component,
      amount: sum(group.map(({ amount }) => amount)),
    })),
  };
}

/** Budgets of every conserved quantity: of the whole system first, then of each vessel in turn. */
export function budgetsOf(run: Run): readonly Budget[] {
  const boundaries: Boundary[] = ['system', ...run.model.layout.vessels.keys()];
  return boundaries.flatMap((boundary) => conserved.map((quantity) => budgetOf(run, quantity, boundary)));
}

/** Residual of a budget as a share of its throughput: 0 where both are 0, infinite where it cannot be told. */
export function relativeResidual(budget: Budget): number {
  if (budget.residual === 0) return 0;
  const share = Math.abs(budget.residual) / budget.throughput;
  return Number.isNaN(share) ? Infinity : share;
}

/**
 * The budget that closes worst, and the `share` of its throughput by which it does not close. Throws RangeError when
 * there is none.
 */
export function worstResidual(budgets: readonly Budget[]): {
  readonly budget: Budget;
  readonly share: number;
} {
  if (budgets.length === 0) throw new RangeError('no budgets to compare');
  return budgets
    .map((budget) => ({ budget, share: relativeResidual(budget) }))
    .reduce((worst, next) => (next.share > worst.share ? next : worst));
}
