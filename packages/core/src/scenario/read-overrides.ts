import { createParameters, type Parameters } from '../library/parameters.js';
import { overrideRow } from '../library/override.js';
import type { Fault } from '../errors.js';
import { compact } from './compact.js';
import { Reader } from './reader.js';
import type { Override } from './scenario.js';
import { parameterSchema } from './schema/start-schema.js';
import type { Tree } from './tree.js';

/** Most numbers of the tables that one file gives anew. */
const mostOverrides = 5000;

/** The numbers given anew, the tables with them in place, and what is wrong with them. */
export interface OverrideReading {
  readonly overrides: readonly Override[];
  readonly parameters: Parameters;
  readonly faults: readonly Fault[];
}

/** Reads the section `parameters`. Comes first, since defaults of other sections are numbers of the tables. */
export function readOverrides(tree: Tree): OverrideReading {
  const reader = new Reader(tree, createParameters(), undefined);
  const keys = reader.keys(['parameters']);
  if (keys.length > mostOverrides)
    reader.fault(['parameters'], 'too many entries', { expected: `at most ${mostOverrides}` }, true);
  const overrides = keys.slice(0, mostOverrides).flatMap((id): Override[] => {
    const path = ['parameters', id];
    const given = reader.parse(parameterSchema, path);
    if (given === undefined) return [];
    const numbers = typeof given === 'number' ? { value: given } : given;
    const override = compact({ id, ...numbers, where: reader.where(path) });
    const { faults } = overrideRow(override);
    for (const { problem, got, expected, nearest } of faults) {
      const unknown = problem === 'no such number in the tables';
      reader.fault(path, problem, compact({ got: unknown ? undefined : got, expected, nearest }), unknown);
    }
    return faults.length > 0 ? [] : [override];
  });
  return { overrides, parameters: createParameters(overrides), faults: reader.faults };
}
