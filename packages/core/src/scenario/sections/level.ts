import * as z from 'zod';
import { boundProblem, describeBound } from '../../base/bounds.js';
import { describeDimension, parseQuantity } from '../../base/units.js';
import { levelRange } from '../checks/ranges.js';
import { kindComplaint } from '../file/complaint.js';
import type { Path } from '../file/tree.js';
import { described, type Reads } from '../file/values.js';
import { dimensionOf } from '../measurables.js';
import type { Watched } from '../scenario.js';
import type { ScenarioReader } from './scenario-reader.js';

/** A level as it is written: a bare number for pH, else a quantity with its unit. */
export type Level = string | number;

/** A level of whatever is measured: a quantity with its unit, or a bare number for pH. */
export function level(description: string, examples: readonly Level[]): Reads<Level, Level> {
  return z
    .union([z.string(), z.number()], { error: ({ input }) => kindComplaint(input, described(description)) })
    .meta({ description, examples: [...examples] });
}

/** A level of what is measured, in its internal unit; undefined (and a fault) where it is none. */
export function readLevel(
  reader: ScenarioReader,
  path: Path,
  written: Level,
  read: Watched,
): number | undefined {
  const dimension = dimensionOf[read];
  if (dimension === undefined) {
    const scale = levelRange(read);
    if (typeof written === 'number' && boundProblem(scale, written) === undefined) return written;
    reader.fault(path, 'not a pH', { expected: describeBound(scale) });
    return undefined;
  }
  if (typeof written === 'number') {
    reader.fault(path, 'a number without a unit', { expected: describeDimension(dimension) });
    return undefined;
  }
  const answer = parseQuantity(written, dimension);
  if ('value' in answer) return answer.value;
  reader.fault(path, answer.problem, answer);
  return undefined;
}
