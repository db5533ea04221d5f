import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { removeCircles, type Link } from '../../../../packages/core/src/result/nitrogen-paths.js';

const link = (from: string, to: string, amount: number): Link => ({ from, to, amount });

const surplus = (links: readonly Link[], place: string): number =>
  links.reduce(
    (total, { from, to, amount }) => total + (to === place ? amount : 0) - (from === place ? amount : 0),
    0,
  );

describe('removeCircles', () => {
  it('takes the smallest amount of a circle out of each of its links', () => {
    const links = [link('a', 'b', 5), link('b', 'c', 3), link('c', 'a', 2), link('b', 'd', 1)];
    expect(removeCircles(links)).toEqual({
      links: [link('a', 'b', 3), link('b', 'c', 1), link('b', 'd', 1)],
      circled: 2,
    });
  });

  it('leaves links without a circle alone, but for those of nothing', () => {
    const links = [link('a', 'b', 5), link('a', 'c', 3), link('c', 'b', 2)];
    expect(removeCircles([...links, link('b', 'a', 0)])).toEqual({ links, circled: 0 });
  });

  it('keeps what each place receives less what it gives, whatever the links', () => {
    const places = ['a', 'b', 'c', 'd', 'e'];
    const any = fc.record({
      from: fc.constantFrom(...places),
      to: fc.constantFrom(...places),
      amount: fc.integer({ min: 1, max: 1000 }),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 14 }), (links) => {
        const { links: left } = removeCircles(links);
        for (const place of places) expect(surplus(left, place)).toBe(surplus(links, place));
        const rest = new Set(places);
        let free: string[];
        do {
          free = [...rest].filter((place) => !left.some(({ from, to }) => to === place && rest.has(from)));
          for (const place of free) rest.delete(place);
        } while (free.length > 0);
        expect(rest.size).toBe(0);
      }),
    );
  });
});
