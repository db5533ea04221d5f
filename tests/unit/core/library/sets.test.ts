import { describe, expect, it } from 'vitest';
import { names } from '../../../../packages/core/src/library/names.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { rowOf } from '../../../../packages/core/src/library/rows-in-use.js';
import { properties, type OpenGroup } from '../../../../packages/core/src/library/properties.js';
import { tableRows } from '../../../../packages/core/src/library/table-rows.js';

const counts = { fish: 13, crop: 23, feed: 5, media: 17, dose: 17, water: 6, aerator: 4, lime: 3 } as const;
const groups = Object.keys(counts) as OpenGroup[];
const low = (id: string): number => tableRows.get(id)?.low ?? NaN;
const value = (id: string): number => tableRows.get(id)?.value ?? NaN;
const high = (id: string): number => tableRows.get(id)?.high ?? NaN;

describe.each(groups)('%s', (group) => {
  const subjects = names(group);
  const { needed, further, together = [] } = properties[group];

  it('has the subjects it should', () => {
    expect(subjects).toHaveLength(counts[group]);
  });

  it.each(subjects)('%s has every property and no other', (subject) => {
    const prefix = `${group}.${subject}.`;
    const found = [...tableRows.keys()].filter((id) => id.startsWith(prefix));
    const own = found.map((id) => id.slice(prefix.length));
    const bears = own.some((property) => together.includes(property));
    expect(own.sort()).toEqual([...needed, ...further, ...(bears ? together : [])].sort());
  });
});

it('leaves the constants of water out of the names of waters', () => {
  expect(names('water')).toEqual([
    'rain',
    'soft-mains',
    'hard-mains',
    'well',
    'reverse-osmosis',
    'brackish-bore',
  ]);
});

it('gives every limit a value', () => {
  const missing = names('limit').filter((name) => !tableRows.has(`limit.${name}.value`));
  expect(missing).toEqual([]);
  expect(names('limit')).toContain('chloride-nitrite-ratio');
});

it('has what the crops and fish of a teaching system ask for', () => {
  for (const crop of 'lettuce-romaine lettuce-looseleaf basil pak-choi chard spinach watercress mint'.split(
    ' ',
  ))
    expect(names('crop')).toContain(crop);
  for (const crop of 'tomato cucumber pepper eggplant bean taro'.split(' '))
    expect(names('crop')).toContain(crop);
  for (const fish of 'nile-tilapia rainbow-trout common-carp channel-catfish european-perch'.split(' '))
    expect(names('fish')).toContain(fish);
  for (const fish of 'barramundi murray-cod silver-perch jade-perch'.split(' '))
    expect(names('fish')).toContain(fish);
});

it.each(names('fish'))('orders the lethal temperatures of %s outside those at which it feeds', (species) => {
  const at = (property: string): string => `fish.${species}.${property}`;
  expect(value(at('lethal-temperature-low'))).toBeLessThan(value(at('temperature-low')));
  expect(value(at('lethal-temperature-high'))).toBeGreaterThan(value(at('temperature-high')));
  expect(value(at('lethal-oxygen'))).toBeLessThan(value(at('limit-oxygen')));
  expect(value(at('lethal-ammonia'))).toBeGreaterThan(value(at('limit-ammonia')));
  expect(value(at('lethal-nitrite'))).toBeGreaterThan(value(at('limit-nitrite')));
});

const computed = names('crop').filter(
  (crop) => rowOf(createParameters(), `crop.${crop}.nitrogen-uptake`).source === 'computed-here',
);

it.each(computed)('takes up as much nitrogen of %s as its other rows make', (crop) => {
  const at = (property: string): number => value(`crop.${crop}.${property}`);
  const warmth = Math.min(22, at('optimum-temperature')) - at('base-temperature');
  const r = (at('growth') * warmth * 20) / (value('crop.k-light') + 20);
  const c = (at('light-use') * 20 * warmth) / (at('optimum-temperature') - at('base-temperature'));
  const dry = (c / r) * Math.log(1 + Math.expm1((r * at('seedling-mass')) / c) * Math.exp(r * at('days')));
  const critical = at('nitrogen-a') * Math.max(1, dry / 100) ** -at('nitrogen-b');
  expect((dry * critical) / at('days') / at('nitrogen-uptake')).toBeCloseTo(1, 1);
});

it('computes the uptake of all but two crops', () => {
  expect(computed).toHaveLength(21);
});

it.each(names('fish'))('orders the temperatures of %s at any draw', (species) => {
  const at = (property: string): string => `fish.${species}.temperature-${property}`;
  expect(high(at('low'))).toBeLessThan(low(at('optimum-low')));
  expect(high(at('optimum-low'))).toBeLessThanOrEqual(low(at('optimum-high')));
  expect(high(at('optimum-high'))).toBeLessThan(low(at('high')));
});

it.each(names('fish'))('leaves nitrogen to excrete of any feed at any draw of %s', (species) => {
  expect(high('fish.protein-retention')).toBeLessThan(1);
  expect(low(`fish.${species}.protein-digestibility`)).toBeGreaterThan(0);
});

it.each(names('fish'))('leaves room for fat in the body of %s at any draw', (species) => {
  const lean = (high(`fish.${species}.body-nitrogen`) / low('protein.nitrogen')) * high('protein.demand');
  expect(low(`fish.${species}.body-demand`)).toBeGreaterThan(lean);
});

it.each(names('crop'))('plants %s too small to close half its canopy at any draw', (crop) => {
  const at = (property: string): string => `crop.${crop}.${property}`;
  const best = value(at('optimum-temperature')) - value(at('base-temperature'));
  const filled = (high(at('growth')) * best * high(at('seedling-mass'))) / (low(at('light-use')) * 20);
  expect(1 - Math.exp(-filled)).toBeLessThan(0.5);
});
