import { displayOf, plainDisplay } from '@leat/view/text';
import { metric } from '@leat/core/units';
import { describe, expect, it } from 'vitest';
import { type CourseTrouble, troubleText } from '../../../../packages/view/src/report/course-troubles.js';
import type { RunSummary } from '../../../../packages/view/src/report/run-summary.js';

const one = [{} as RunSummary];
const forFish: CourseTrouble = {
  letter: 'A',
  limit: { harm: 'harmful', total: 2 },
  text: 'nitrite above 1 mg N/L for nile tilapia in tank',
  advice: false,
};
const forCrop: CourseTrouble = {
  letter: 'B',
  limit: { harm: 'crop', total: 9 },
  text: 'pH above 6.5 for basil in bed',
  advice: true,
};

describe('troubleText', () => {
  it('calls it trouble where fish are harmed, in any of the runs', () => {
    expect(troubleText([forFish], one, plainDisplay)).toBe(`In trouble: ${forFish.text}`);
    expect(troubleText([forFish, forCrop], [...one, ...one], plainDisplay)).toBe(
      `In trouble: A ${forFish.text}; B ${forCrop.text}`,
    );
  });

  it('calls it advice where a crop alone would like it otherwise', () => {
    expect(troubleText([forCrop], one, plainDisplay)).toBe(`Past what is advised: ${forCrop.text}`);
    const spanish = displayOf({ language: 'es', units: metric });
    expect(troubleText([forCrop], one, spanish)).toMatch(/^Fuera de lo aconsejado: /);
  });
});
