import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { rowsOf } from '../../../../packages/core/src/library/rows-in-use.js';
import type { TableRow } from '../../../../packages/core/src/library/table-row.js';

/**
 * How wide the range of a row must be that is from memory (M), from weak memory (W) or common practice (P): a
 * share of the value; of a share above one half, of what is wanting to 1; of a temperature coefficient, of what is
 * above 1. Temperatures and pH have a scale without a zero, so theirs is a difference.
 */
const least = { M: 0.1, W: 0.15, P: 0.15 } as const;
const leastOnScale: Readonly<Record<string, typeof least>> = {
  degC: { M: 1, W: 2, P: 2 } as unknown as typeof least,
  pH: { M: 0.5, W: 0.8, P: 0.8 } as unknown as typeof least,
};

/** Numbers that are what they are by definition or choice, with the reason. */
const exact: readonly (readonly [reason: string, which: (row: TableRow) => boolean])[] = [
  ['coefficients of a published formula', ({ table }) => table === 'constants' || table === 'weather'],
  ['what a slip of the pen is, is a choice of ours', ({ table }) => table === 'log'],
  ['an averaging time is a choice of ours', ({ id }) => id.endsWith('.averaging')],
  ['critical curves are stated from 1 t/ha', ({ id }) => id.endsWith('.nitrogen-plateau')],
  ['6.25 g of protein per g N is a convention', ({ id }) => id === 'protein.nitrogen'],
];

/** Known to be narrower than asked for: drawn rows whose range stands as published, read from weak memory. */
const narrow = /^(fish\..*\.body-nitrogen|feed\.starter-42\.protein)$/;

function scaleOf({ id, unit, value }: TableRow): number {
  if (id.endsWith('theta')) return value - 1;
  return unit === '1' && value > 0.5 && value < 1 ? 1 - value : Math.abs(value);
}

const weak = (row: TableRow): row is TableRow & { mark: 'M' | 'W' | 'P' } => row.mark in least;
const all = [...rowsOf(createParameters())];
const held = all.filter(weak).filter((row) => !exact.some(([, which]) => which(row)));

describe('rows of which no publication was read', () => {
  it('are most of the table', () => {
    expect(held.length).toBeGreaterThan(400);
  });

  it('have a range as wide as their mark asks for', () => {
    const bad = held.filter((row) => {
      const wanted =
        row.unit in leastOnScale ? leastOnScale[row.unit][row.mark] : least[row.mark] * scaleOf(row);
      return !narrow.test(row.id) && row.high - row.low < wanted * (1 - 1e-9);
    });
    expect(bad.map(({ id, mark, low, high }) => `${id} ${mark} ${low} .. ${high}`)).toEqual([]);
  });

  it('are at least not points where they are narrower', () => {
    const rows = held.filter(({ id }) => narrow.test(id));
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.filter(({ low, high, value }) => high - low < 0.07 * value).map(({ id }) => id)).toEqual([]);
  });

  it('are exempt only where the reason holds for some row', () => {
    for (const [, which] of exact) expect(all.some(which)).toBe(true);
  });
});
