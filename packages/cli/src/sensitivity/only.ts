import { InputError, nearest, type TableRow } from '@leat/core';

/** Places of the rows whose id is like a pattern (`*`: anything; absent: all). Throws InputError when there are none. */
export function rowsLike(rows: readonly TableRow[], pattern: string | undefined): readonly number[] {
  if (pattern === undefined) return [...rows.keys()];
  const parts = pattern.split('*').map((part) => part.replace(/[.\\+?^${}()|[\]]/g, '\\$&'));
  const like = new RegExp(`^${parts.join('.*')}$`);
  const found = rows.flatMap(({ id }, i) => (like.test(id) ? [i] : []));
  if (found.length > 0) return found;
  const near = nearest(
    pattern,
    rows.map(({ id }) => id),
  );
  throw new InputError([
    {
      file: '--only',
      got: pattern,
      problem: 'no number with a range that this system uses is like that',
      expected: 'an id, or part of one with *, such as fish.*',
      ...(near && { nearest: near }),
    },
  ]);
}
