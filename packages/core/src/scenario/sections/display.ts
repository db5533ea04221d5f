import * as z from 'zod';
import { type Language, languages } from '../../base/languages.js';
import { readUnitChoice, type UnitChoice } from '../../base/unit-choice.js';
import { section } from '../file/values.js';
import type { ScenarioReader } from './scenario-reader.js';

/** How results of a file are told where the command is not asked for anything else. */
export interface FileDisplay {
  readonly language?: Language;
  readonly units?: UnitChoice;
}

const words = 'metric, us, and units of single quantities such as "mg/L as NO3" or dKH';

/** The section `display`. */
export const displaySchema = section(
  {
    language: z
      .enum(languages)
      .optional()
      .meta({
        description: 'language in which results are told; default: en',
        examples: ['es'],
      }),
    units: z
      .union([z.string(), z.array(z.string())])
      .optional()
      .meta({
        description: `units in which results are shown, one or a list: ${words}; default: metric`,
        examples: ['us', ['us', 'mg/L as NO3', 'dKH']],
      }),
  },
  'how results are told: the numbers of JSON and CSV stay as they are',
);

/** Reads the section `display`; undefined where there is none. What it says does not change a run. */
export function readDisplay(reader: ScenarioReader): FileDisplay | undefined {
  if (!reader.has(['display'])) return undefined;
  const written = reader.parse(displaySchema, ['display']);
  if (written === undefined) return undefined;
  const { language, units } = written;
  const list = units === undefined ? [] : typeof units === 'string' ? units.split(',') : units;
  const { choice, faults } = readUnitChoice(list);
  for (const { got, problem, expected, nearest } of faults)
    reader.fault(['display', 'units'], problem, {
      ...(got !== undefined && { got }),
      ...(expected !== undefined && { expected }),
      ...(nearest !== undefined && { nearest }),
    });
  return {
    ...(language !== undefined && { language }),
    ...(units !== undefined && { units: choice }),
  };
}
