import type { Component } from '../processes/components.js';
import { conserved, type Conserved } from '../processes/components.js';
import type { Model, Row } from '../model/model.js';
import { sum } from '../base/sum.js';

/** One `coefficient` of a process: units of the component gained (+) or lost (-) per unit of extent. */
export interface TableEntry {
  readonly component: Component;
  /** Account outside, where the component is not in the system. */
  readonly outside?: string;
  readonly coefficient: number;
}

/** One process with the coefficients it has at some places. */
export interface TableProcess {
  readonly process: string;
  /** Unit of the extent; coefficients are per that. */
  readonly unit: string;
  /** Rows of the model that have these coefficients. */
  readonly rows: readonly string[];
  readonly entries: readonly TableEntry[];
  /** What the row makes (+) or destroys (-) of each conserved quantity, as a share of what it moves. */
  readonly closure: Readonly<Record<Conserved, number>>;
}

function closure(row: Row): Record<Conserved, number> {
  const share = (quantity: Conserved): number => {
    const moved = row.entries.map(({ coefficient, content }) => coefficient * content[quantity]);
    const scale = sum(moved.map(Math.abs));
    return scale === 0 ? 0 : sum(moved) / scale;
  };
  return Object.fromEntries(conserved.map((quantity) => [quantity, share(quantity)])) as Record<
    Conserved,
    number
  >;
}

function entriesOf(row: Row): readonly TableEntry[] {
  return row.entries.map(({ component, coefficient, state, place }) => ({
    component,
    ...(state < 0 ? { outside: place } : {}),
    coefficient,
  }));
}

/**
 * The stoichiometric table of a model: each process once, not at each place; a process whose
 * coefficients differ from place to place (species, feed, crop) once for each set. Transport by water is
 * left out: it moves each component one for one.
 */
export function processTable(model: Model): readonly TableProcess[] {
  const found = new Map<string, { row: Row; rows: string[] }>();
  for (const row of model.rows) {
    if (row.process === 'transport') continue;
    const key = JSON.stringify([row.process, entriesOf(row)]);
    const same = found.get(key);
    if (same === undefined) found.set(key, { row, rows: [row.id] });
    else same.rows.push(row.id);
  }
  return [...found.values()].map(({ row, rows }) => ({
    process: row.process,
    unit: row.unit,
    rows,
    entries: entriesOf(row),
    closure: closure(row),
  }));
}
