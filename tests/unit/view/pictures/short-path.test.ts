import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shortPath } from '../../../../packages/view/src/pictures/short-path.js';
import { pathPlaces } from '../../../support/path-places.js';

const tenth = (value: number): number => Math.round(value * 10) / 10;

describe('shortPath', () => {
  it('says places by their distances, without noughts and commas that say nothing', () => {
    expect(shortPath('M10,20.04L10.51,19.5L9.5,19.5Z')).toBe('M10,20l.5-.5-1,0Z');
    expect(shortPath('M0.04,0L12,3M4,5L6,4.2L7,4.2')).toBe('M0,0l12,3M4,5l2-.8 1,0');
  });

  it('leaves other strokes as they are', () => {
    for (const path of ['', 'M1,1C2,2,3,3,4,4', 'M1,1h5', 'M1,1Z L2,2', 'M0,0A1,1,0,0,1,2,2'])
      expect(shortPath(path)).toBe(path);
  });

  it('goes through the same tenths of a pixel, however long', () => {
    const place = fc.tuple(
      fc.double({ min: -500, max: 2000, noNaN: true }),
      fc.double({ min: -500, max: 2000, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.array(fc.array(place, { minLength: 2, maxLength: 60 }), { minLength: 1, maxLength: 4 }),
        (all) => {
          const path = all.map((each) => `M${each.map(([x, y]) => `${x},${y}`).join('L')}`).join('Z');
          const places = pathPlaces(shortPath(path));
          const wanted = all.flat();
          expect(places).toHaveLength(wanted.length);
          for (const [i, [x, y]] of wanted.entries()) {
            expect(places[i][0]).toBeCloseTo(tenth(x), 6);
            expect(places[i][1]).toBeCloseTo(tenth(y), 6);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
