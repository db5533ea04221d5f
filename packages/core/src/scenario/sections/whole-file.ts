import * as z from 'zod';
import { timedActionSchema, dosingSchema, drainPlanSchema } from './action-schema.js';
import { controlSchema } from './control.js';
import { headSchema } from './run.js';
import { ruleSchema } from './rules.js';
import { goingOnSchema, parameterSchema, startVesselSchema } from './start.js';
import { cohortSchema, plantingSchema } from './stock.js';
import { flowSchema } from './flows.js';
import { displaySchema } from './display.js';
import { pricesSchema } from './prices.js';
import { pumpSchema } from './pumps.js';
import { vesselSchema } from './vessels.js';
import { tablesSchema } from './parameters.js';
import { formByKey, section } from '../file/values.js';
import { likenessSchema } from './likeness.js';
import { climateSchema } from './run.js';
import { rainTankSchema, topUpSchema } from './top-up.js';
import { waterSchema } from './waters.js';

const named = <Schema extends z.ZodType>(schema: Schema): z.ZodRecord<z.ZodString, Schema> =>
  z.record(z.string(), schema);
const files = z
  .union([z.string(), z.array(z.string())])
  .meta({ description: 'files that lie under this one; default: none', examples: ['system.yaml'] });
const startWithVessels = goingOnSchema.extend({ vessels: named(startVesselSchema).optional() });

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
    control: z.array(controlSchema).optional(),
    'drain-solids': z.array(drainPlanSchema).optional(),
    start: startWithVessels,
    actions: z.array(timedActionSchema).optional(),
    rules: z.array(ruleSchema).optional(),
    prices: pricesSchema.optional(),
    display: displaySchema.optional(),
    tables: tablesSchema,
    parameters: named(formByKey('like', likenessSchema, parameterSchema)).optional(),
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
