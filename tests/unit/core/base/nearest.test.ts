import { expect, it } from 'vitest';
import { nearest } from '../../../../packages/core/src/base/nearest.js';

const candidates = ['tank', 'settler', 'biofilter', 'sump'];

it.each([
  ['tnak', 'tank'],
  ['Settler', 'settler'],
  ['setler', 'settler'],
  ['biofliter', 'biofilter'],
  ['sumpp', 'sump'],
])('finds for %s the name %s', (name, expected) => {
  expect(nearest(name, candidates)).toBe(expected);
});

it('counts a swap of neighbours as one', () => {
  expect(nearest('ab', ['ba'])).toBe('ba');
});

it('suggests nothing far off, and nothing from nothing', () => {
  expect(nearest('greenhouse', candidates)).toBeUndefined();
  expect(nearest('tank', [])).toBeUndefined();
  expect(nearest('xy', ['ab'])).toBeUndefined();
});

it('takes the first of equals', () => {
  expect(nearest('bat', ['cat', 'hat'])).toBe('cat');
});
