import { describe, expect, it } from 'vitest';
import { names, type SubjectGroup } from '../../../packages/core/src/library/names.js';
import { tableRows } from '../../../packages/core/src/library/table-rows.js';

const properties: Record<Exclude<SubjectGroup, 'limit'>, string> = {
  fish:
    'body-nitrogen body-demand feed-conversion reference-ration fasting-loss reference-temperature ' +
    'protein-digestibility mortality temperature-low temperature-high temperature-optimum-low ' +
    'temperature-optimum-high limit-ammonia limit-nitrite limit-nitrate limit-oxygen thermal-growth density-high',
  crop:
    'density days dry-matter seedling-mass final-mass growth base-temperature optimum-temperature nitrogen-a ' +
    'nitrogen-b nitrogen-plateau nitrogen-minimum kc-start kc-full kc-end chloride-high ph-low ph-high',
  feed: 'protein demand',
  media: 'surface porosity',
  dose: 'alkalinity carbon chloride tan',
  water: 'tan nitrite nitrate alkalinity ph oxygen chloride',
};
const counts = { fish: 9, crop: 14, feed: 4, media: 17, dose: 8, water: 4 } as const;
const low = (id: string): number => tableRows.get(id)?.low ?? NaN;
const high = (id: string): number => tableRows.get(id)?.high ?? NaN;

describe.each(Object.entries(properties))('%s', (group, list) => {
  const subjects = names(group as keyof typeof properties);

  it('has the subjects it should', () => {
    expect(subjects).toHaveLength(counts[group as keyof typeof counts]);
  });

  it.each(subjects)('%s has every property and no other', (subject) => {
    const prefix = `${group}.${subject}.`;
    const found = [...tableRows.keys()].filter((id) => id.startsWith(prefix));
    expect(found.map((id) => id.slice(prefix.length)).sort()).toEqual(list.split(' ').sort());
  });
});

it('leaves the constants of water out of the names of waters', () => {
  expect(names('water')).toEqual(['rain', 'soft-mains', 'hard-mains', 'well']);
});

it('gives every limit a value', () => {
  const missing = names('limit').filter((name) => !tableRows.has(`limit.${name}.value`));
  expect(missing).toEqual([]);
  expect(names('limit')).toContain('chloride-nitrite-ratio');
});

it.each(names('fish'))('orders the temperatures of %s at any draw', (species) => {
  const at = (property: string): string => `fish.${species}.temperature-${property}`;
  expect(high(at('low'))).toBeLessThan(low(at('optimum-low')));
  expect(high(at('optimum-low'))).toBeLessThanOrEqual(low(at('optimum-high')));
  expect(high(at('optimum-high'))).toBeLessThan(low(at('high')));
});

it.each(names('fish'))('leaves nitrogen to excrete of any feed at any draw of %s', (species) => {
  const retained = high(`fish.${species}.body-nitrogen`) / low(`fish.${species}.feed-conversion`);
  const digested = low('feed.low-25.protein') * 0.16 * low(`fish.${species}.protein-digestibility`);
  expect(retained).toBeLessThan(digested);
});

it.each(names('crop'))('keeps the least nitrogen of %s under the critical at any draw and mass', (crop) => {
  const at = (property: string): string => `crop.${crop}.${property}`;
  const tonnes = high(at('final-mass')) / 100;
  const critical = low(at('nitrogen-a')) * tonnes ** -high(at('nitrogen-b'));
  expect(high(at('nitrogen-minimum'))).toBeLessThan(critical);
});

it.each(names('crop'))('keeps a seedling of %s lighter than a tenth of the full stand', (crop) => {
  expect(high(`crop.${crop}.seedling-mass`)).toBeLessThan(low(`crop.${crop}.final-mass`) / 10);
});
