import { compileModel, createParameters, type Row } from '@leat/core';
import type { Component } from '../../packages/core/src/processes/components.js';
import { scenarioOf, vessel } from './scenario-builder.js';

const filter = vessel('filter', 1, { kind: 'biofilter', surface: 100, floor: 1 });
const { rows } = compileModel(scenarioOf([filter]), createParameters());

/** The compiled row of a process on a surface or floor. */
function rowOf(process: string): Row {
  const row = rows.find((each) => each.process === process);
  if (row === undefined) throw new RangeError(`no row of ${process}`);
  return row;
}

/** Coefficient of a component in the compiled row of a process, with the default numbers. */
export function coefficientOf(process: string, component: Component): number {
  const entry = rowOf(process).entries.find((each) => each.component === component);
  if (entry === undefined) throw new RangeError(`no ${component} in the row of ${process}`);
  return entry.coefficient;
}
