import { InputError, planChanges, shapley } from '@leat/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

describe('a difference split among what was changed', () => {
  it('gives what each adds where they do not interact', () => {
    // 3, -1 and 10, summed in every set.
    const values = Array.from(
      { length: 8 },
      (_, set) => 5 + 3 * (set & 1) - ((set >> 1) & 1) + 10 * ((set >> 2) & 1),
    );
    expect(shapley(values).map(({ value }) => value)).toEqual([3, -1, 10]);
    expect(shapley(values).map(({ alone }) => alone)).toEqual([3, -1, 10]);
  });

  it('shares evenly what two do together alone, and gives nothing to what does nothing', () => {
    // 8 only where both of the first two are made.
    const values = Array.from({ length: 8 }, (_, set) => ((set & 3) === 3 ? 8 : 0));
    expect(shapley(values)).toEqual([
      { value: 4, alone: 0 },
      { value: 4, alone: 0 },
      { value: 0, alone: 0 },
    ]);
  });

  it('sums to the whole whatever the values', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 16, maxLength: 16 }),
        (values) => {
          const total = shapley(values).reduce((sum, { value }) => sum + value, 0);
          expect(Math.abs(total - (values[15] - values[0]))).toBeLessThan(1e-8);
        },
      ),
    );
  });

  it('refuses values that are not those of every set', () => {
    expect(() => shapley([1, 2, 3])).toThrow(RangeError);
  });
});

describe('a plan of every set of changes', () => {
  const a = { vessels: { tank: 1 }, flows: [{ from: 'tank', to: 'sump' }], feed: 1 };
  const b = { vessels: { tank: 1, bed: 2 }, flows: [{ from: 'tank', to: 'bed' }], feed: 2 };

  /** A flow to a bed that is not there makes no system. */
  const read = (text: string): void => {
    if (text.includes('"to":"bed"') && !text.includes('"bed":2'))
      throw new InputError([{ problem: 'no such vessel' }]);
  };

  it('holds every set, and takes together what does not stand alone', () => {
    const plan = planChanges(a, b, 5, read);
    expect(plan.changes.length).toBe(2);
    expect(plan.texts.length).toBe(4);
    expect(plan.grouped).toEqual(['flows: tank + vessels.bed']);
    expect(JSON.parse(plan.texts[3])).toEqual(b);
    expect(JSON.parse(plan.texts[0])).toEqual(a);
  });

  it('takes together by section, then the rest, what are more than the most, and names them', () => {
    const many = (value: number) => ({
      fish: { a: value, b: value },
      start: { x: value },
      waters: { y: value },
    });
    const names = (most: number) =>
      planChanges(many(1), many(2), most, () => undefined).changes.map(({ name }) => name);
    expect(names(4)).toEqual(['fish.a', 'fish.b', 'start.x', 'waters.y']);
    expect(names(3)).toEqual(['fish.a + fish.b', 'start.x', 'waters.y']);
    expect(names(2)).toEqual(['fish.a + fish.b', 'start.x + waters.y']);
    expect(planChanges(many(1), many(2), 1, () => undefined).texts.length).toBe(2);
  });

  it('says where nothing differs', () => {
    expect(() => planChanges(a, a, 5, read)).toThrow(/both files say the same/);
  });
});
