import * as z from 'zod';
import { kindComplaint } from './complaint.js';
import { word } from './values.js';

const tables = z
  .union([word('a file name'), z.array(word('a file name'))], {
    error: ({ input }) => kindComplaint(input, 'a file name such as "my-numbers.tsv", or a list of them'),
  })
  .meta({ description: 'tables of your own numbers (TSV), in place of those of the library or beside them' });

/** The key `tables`. */
export const tablesSchema = tables.optional();
