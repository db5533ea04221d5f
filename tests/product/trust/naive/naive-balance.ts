import type { Component, Conserved } from '../../../../packages/core/src/processes/components.js';
import type { Budget } from '../../../../packages/core/src/result/budget.js';
import type { Run } from '../../../../packages/core/src/run/run.js';

/** What one unit of a component holds, as a chemist would say it: only what needs no table. */
const known: Partial<Record<Component, Partial<Record<Conserved, number>>>> = {
  tan: { nitrogen: 1, chloride: 0 },
  nitrite: { nitrogen: 1, carbon: 0 },
  nitrate: { nitrogen: 1, carbon: 0 },
  oxygen: { nitrogen: 0, 'oxygen-demand': -1 },
  chloride: { nitrogen: 0, chloride: 1 },
  carbon: { nitrogen: 0, carbon: 1 },
  alkalinity: { nitrogen: 0 },
};

/** A balance worked out from within, and how large the sums are that it is the difference of. */
export interface NaiveBalance {
  /** What the inside gained by all that happened. */
  readonly gained: number;
  /** What is more at the end than at the start. */
  readonly stored: number;
  readonly size: number;
}

/**
 * A second bookkeeping of a run: budgets of the library follow what crosses a boundary, from outside; this one follows what every
 * state within gains, one by one, and never asks what lies beyond.
 */
export function naiveBalance(
  run: Run,
  { quantity, place }: Pick<Budget, 'quantity' | 'place'>,
): NaiveBalance {
  const { layout, rows, streams } = run.model;
  const first = run.samples[0];
  const last = run.samples[run.samples.length - 1];
  const inside = (vessel: number): boolean =>
    vessel >= 0 && (place === 'system' || layout.vessels[vessel] === place);
  let [gained, stored, size] = [0, 0, 0];
  const gain = (amount: number): void => {
    gained += amount;
    size += Math.abs(amount);
  };
  if (quantity === 'water') {
    for (let i = 0; i < streams.length; i++) {
      const carried = last.carried[i] - first.carried[i];
      if (inside(streams[i].to)) gain(carried);
      if (inside(streams[i].from)) gain(-carried);
    }
    for (let v = 0; v < layout.vessels.length; v++) if (inside(v)) stored += last.volume[v] - first.volume[v];
  } else {
    const held = (state: number): number => run.model.contents[state][quantity];
    for (let i = 0; i < rows.length; i++) {
      for (const { state, coefficient } of rows[i].entries)
        if (state >= 0 && inside(layout.states[state].vessel))
          gain(coefficient * (last.x[i] - first.x[i]) * held(state));
    }
    for (let s = 0; s < layout.states.length; s++) {
      const { vessel, component } = layout.states[s];
      const content = known[component]?.[quantity];
      if (content !== undefined && content !== held(s))
        throw new Error(`${component} holds ${held(s)} ${quantity}`);
      if (!inside(vessel)) continue;
      stored += (last.y[s] - first.y[s]) * held(s);
      size += (Math.abs(last.y[s]) + Math.abs(first.y[s])) * Math.abs(held(s));
    }
  }
  for (let p = first.posted; p < last.posted; p++) {
    const { vessel, component, state, amount } = run.postings[p];
    if (!inside(layout.vessels.indexOf(vessel))) continue;
    const content =
      quantity === 'water'
        ? component === 'water'
          ? 1
          : 0
        : state < 0
          ? 0
          : run.model.contents[state][quantity];
    if (amount !== 0) gain(amount * content);
  }
  return { gained, stored, size };
}
