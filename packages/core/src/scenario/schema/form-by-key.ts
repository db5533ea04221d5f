import * as z from 'zod';
import { complain } from './complaint.js';
import type { Reads } from './values.js';

/**
 * A value that may be written in one of two forms: a map with a certain key, or anything else. Faults are
 * those of the form that the key tells.
 */
export function formByKey<Keyed, Other>(
  key: string,
  keyed: Reads<Keyed>,
  other: Reads<Other>,
): Reads<Keyed | Other> {
  return z.union([other, keyed], {
    error: ({ input }) => {
      const told = typeof input === 'object' && input !== null && key in input;
      return complain({ problem: 'of neither form', form: told ? 1 : 0 });
    },
  });
}
