import * as z from 'zod';
import { parseQuantity } from '../../units.js';
import { complain, kindComplaint } from './complaint.js';
import { number, quantity, section, share, word, type Reads } from './values.js';
import { startWaterSchema } from './water-schema.js';

/** Biofilm at the start: grown in, new, a share of grown in, or each group as a share of the room. */
export type BiofilmGiven =
  | { readonly kind: 'uncycled' }
  | { readonly kind: 'cycled'; readonly share: number }
  | { readonly kind: 'shares'; readonly aob: number; readonly nob: number };

const expected = 'cycled, uncycled, a share of cycled such as "40 %", or a map of aob and nob';

const biofilmSchema: Reads<BiofilmGiven> = z
  .union(
    [
      z.string(),
      z.number(),
      section(
        {
          aob: share('ammonia oxidisers as a share of the room'),
          nob: share('nitrite oxidisers as a share of the room'),
        },
        'each group as a share of the room on the surface',
      ),
    ],
    { error: ({ input }) => kindComplaint(input, expected) },
  )
  .meta({ description: `biofilm: ${expected}`, examples: ['cycled', 'uncycled', '40 %'] })
  .transform((written, context): BiofilmGiven => {
    const refuse = (problem: string): never => {
      context.addIssue({ code: 'custom', message: complain({ problem, expected }) });
      return z.NEVER;
    };
    if (typeof written === 'object') {
      if (written.aob + written.nob > 1) return refuse('the shares of the room pass 1');
      return { kind: 'shares', ...written };
    }
    if (written === 'uncycled') return { kind: 'uncycled' };
    if (written === 'cycled') return { kind: 'cycled', share: 1 };
    const answer = typeof written === 'number' ? { value: written } : parseQuantity(written, 'share');
    if (!('value' in answer))
      return refuse(/^[a-z]/i.test(String(written)) ? 'unknown word' : answer.problem);
    if (answer.value < 0 || answer.value > 1) return refuse('out of range');
    return { kind: 'cycled', share: answer.value };
  });

/** What one vessel holds at the start, where it differs. */
export const startVesselSchema = section(
  {
    biofilm: biofilmSchema.optional(),
    water: startWaterSchema.optional(),
    settled: quantity('mass', 'settled solids, dry').optional(),
    volume: quantity('volume', 'water in the reservoir; other vessels are full').optional(),
  },
  'state of one vessel at the start',
);

/** The section `start` without its vessels. */
export const startSchema = section(
  {
    biofilm: biofilmSchema,
    water: startWaterSchema,
    saved: word('a state saved by a run, to go on from: it wins over what stands here').optional(),
    vessels: z.unknown().optional(),
  },
  'state at the start',
);

const parameterRange = section(
  {
    value: number('the number', -1e12, 1e12),
    low: number('lowest', -1e12, 1e12).optional(),
    high: number('highest', -1e12, 1e12).optional(),
  },
  'a number of the tables given anew with its range',
);

/** One entry of `parameters`: a number, in the unit of its table, with or without a range. */
export const parameterSchema = z.union(
  [number('a number in the unit of its table', -1e12, 1e12), parameterRange],
  {
    error: ({ input }) =>
      kindComplaint(input, 'a number in the unit of its table, or a map of value, low, high'),
  },
);
