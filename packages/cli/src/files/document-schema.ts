import { harms, marks, type TableRow } from '@leat/core';
import { z } from 'zod';
import { FileError } from './read.js';

/** A number of a saved document; null stands for one that JSON lacks. */
export const savedNumber = z
  .number()
  .nullable()
  .transform((value) => value ?? Number.NaN);

/** One of some names, checked to be text only: a document that says another is told as it is. */
export const savedName = <Name extends string>(): z.ZodCustom<Name> =>
  z.custom<Name>((value) => typeof value === 'string', 'expected text');

/** How a number of the tables came here. */
export const savedMark = z.custom<TableRow['mark']>(
  (value) => typeof value === 'string' && Object.hasOwn(marks, value),
  `expected one of ${Object.keys(marks).join(', ')}`,
);

/** A limit at its place, without how it was kept. */
export const savedLimit = {
  ...{ id: z.string(), quantity: z.string(), unit: z.string(), direction: z.enum(['above', 'below']) },
  harm: z.enum(harms),
  ...{ value: z.number(), averaging: z.number(), whom: z.string(), place: z.string() },
  ...{ source: z.string(), page: z.string(), mark: savedMark },
};

/** A rule of a schema: every list of a series is as long as the list of times. */
export function checkLengths(
  context: z.RefinementCtx,
  time: readonly number[],
  lists: Readonly<Record<string, readonly ArrayLike<number>[]>>,
): void {
  for (const [name, each] of Object.entries(lists))
    for (const { length } of each)
      if (length !== time.length) {
        const message = `expected a value for each of ${time.length} times, received ${length}`;
        context.addIssue({ code: 'custom', path: ['series', name], message });
      }
}

const pathText = (path: readonly PropertyKey[]): string =>
  path
    .map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`))
    .join('')
    .replace(/^\./, '');

/**
 * What a saved document says, by its schema. Throws FileError, naming the first place that is not as it should be.
 * @param command what wrote the document, such as `leat run --json`
 */
export function wholeDocument<Schema extends z.ZodType>(
  file: string,
  command: string,
  schema: Schema,
  document: unknown,
): z.output<Schema> {
  const { success, data, error } = schema.safeParse(document);
  if (success) return data;
  const [{ path, message }] = error.issues;
  const problem = message.replace(/^Invalid input: /, '');
  throw new FileError(`${file}: not a whole document of ${command}: see ${pathText(path)}: ${problem}`);
}
