import type { BasePlan } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { baseLines } from '@leat/view/text';

const use = { product: 'potassium-bicarbonate', vessel: 'sump', mass: 1860, equivalents: 18.6, note: '' };
const plan: BasePlan = { days: 30, feed: 20.7, uses: [use], base: 18.6, acid: 0 };

describe('what is said of base and acid used', () => {
  it('is eq and grams a day, and eq per kg of feed', () => {
    expect(baseLines(plan)).toEqual([
      'base used: 0.62 eq/d (62 g/d potassium-bicarbonate), 0.899 eq per kg of feed',
    ]);
  });

  it('names the vessels where there are several, and acid apart', () => {
    const acid = { ...use, product: 'nitric-acid', vessel: 'tank', mass: 300, equivalents: -4.8 };
    expect(
      baseLines({ ...plan, uses: [use, { ...use, vessel: 'tank', mass: 30 }, acid], acid: 4.8, feed: 0 }),
    ).toEqual([
      'base used: 0.62 eq/d (62 g/d potassium-bicarbonate into sump, 1 g/d potassium-bicarbonate into tank)',
      'acid used: 0.16 eq/d (10 g/d nitric-acid)',
    ]);
  });

  it('is nothing where none was used, or no time went by', () => {
    expect(baseLines({ ...plan, uses: [], base: 0 })).toEqual([]);
    expect(baseLines({ ...plan, days: 0 })).toEqual([]);
  });
});
