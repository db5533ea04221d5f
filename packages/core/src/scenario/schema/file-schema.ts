import * as z from 'zod';
import { actionSchema, dosingSchema, drainPlanSchema } from './action-schema.js';
import { complain, kindComplaint } from './complaint.js';
import { ruleSchema } from './rule-schema.js';
import { parameterSchema, startSchema, startVesselSchema } from './start-schema.js';
import { cohortSchema, plantingSchema } from './stock-schema.js';
import { flowSchema, pumpSchema, vesselSchema } from './system-schema.js';
import { date } from './time-schema.js';
import { count, number, positive, section, word } from './values.js';
import { climateSchema, rainTankSchema, topUpSchema, waterSchema } from './water-schema.js';

/** Longest run, d: a century. */
const longestRun = 36_525;

/** The version of the form of a file. One that changes what a file of version 1 means takes the next number. */
const formVersion = z
  .literal(1, { error: complain({ problem: 'a file of another version', expected: 'version 1' }) })
  .meta({ description: 'version of the form of this file; default 1' });

/** The keys at the top of a file that are single values. */
export const headSchema = section(
  {
    version: formVersion.optional(),
    title: word('what the system is called'),
    note: word('whatever should be known of it').optional(),
    days: number('length of the run in days', 0.001, longestRun),
    every: positive('time', 'time between two outputs; default 1 d').optional(),
    'start-date': date('calendar date of day 0; default 2001-01-01').optional(),
    reservoir: word('the vessel that takes all change of level'),
    seed: count('seed of the errors of test kits; default 1', 0, Number.MAX_SAFE_INTEGER).optional(),
  },
  'the run',
);

const named = <Schema extends z.ZodType>(schema: Schema): z.ZodRecord<z.ZodString, Schema> =>
  z.record(z.string(), schema);
const files = z
  .union([z.string(), z.array(z.string())])
  .meta({ description: 'files that lie under this one' });
const tables = z
  .union([word('a file name'), z.array(word('a file name'))], {
    error: ({ input }) => kindComplaint(input, 'a file name such as "my-numbers.tsv", or a list of them'),
  })
  .meta({ description: 'tables of your own numbers (TSV), in place of those of the library or beside them' });

/** The key `tables`. */
export const tablesSchema = tables.optional();

const startWithVessels = startSchema.extend({ vessels: named(startVesselSchema).optional() });

/** A whole file. Sections are read one entry at a time, so that one fault hides no other. */
export const fileSchema = section(
  {
    include: files.optional(),
    ...headSchema.shape,
    climate: climateSchema,
    waters: named(waterSchema).optional(),
    vessels: named(vesselSchema),
    pumps: named(pumpSchema).optional(),
    flows: z.array(flowSchema).optional(),
    'top-up': topUpSchema.optional(),
    'rain-tank': rainTankSchema.optional(),
    fish: named(cohortSchema).optional(),
    plantings: named(plantingSchema).optional(),
    dosing: z.array(dosingSchema).optional(),
    'drain-solids': z.array(drainPlanSchema).optional(),
    start: startWithVessels,
    actions: z.array(actionSchema).optional(),
    rules: z.array(ruleSchema).optional(),
    tables: tablesSchema,
    parameters: named(parameterSchema).optional(),
  },
  'a system and what is done with it',
);

/** Every key that may stand at the top of a file. */
const topKeys: readonly string[] = Object.keys(fileSchema.shape);

/** Top keys that hold maps or lists of entries. */
export const sectionKeys: readonly string[] = topKeys.filter(
  (key) => !(key in headSchema.shape) && key !== 'include' && key !== 'tables',
);

/** Only the keys at the top, whatever they hold. */
export const topSchema = section(
  Object.fromEntries(topKeys.map((key) => [key, z.unknown().optional()])),
  'a system and what is done with it',
);
