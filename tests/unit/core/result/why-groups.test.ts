import { groupParts } from '@leat/core';
import { describe, expect, it } from 'vitest';

describe('parts of a difference that are one thing', () => {
  const groups = groupParts([
    { name: 'denitrification in settled solids', value: -9, did: 'more' },
    { name: 'transpiration', value: 5, did: 'more' },
    { name: 'top-up with mains', value: -4, did: 'more' },
    { name: 'evaporation', value: 0.5, did: 'less' },
    { name: 'denitrification with dissolved matter', value: -1, did: 'more' },
    { name: 'carried in from tank', value: 7, did: 'more' },
    { name: 'carried out to tank', value: -6.5, did: 'more' },
    { name: 'state at the start', value: 2 },
  ]);

  it('are netted: transpiration against top-up, what flows in against what flows out', () => {
    expect(groups.map(({ name, value }) => [name, value])).toEqual([
      ['denitrification', -10],
      ['state at the start', 2],
      ['water lost and topped up', 1.5],
      ['flow between here and tank', 0.5],
    ]);
  });

  it('say more or less only where all of them do', () => {
    expect(groups[0].did).toBe('more');
    expect(groups[2].did).toBeUndefined();
  });

  it('keep what they are made of, and sum as before', () => {
    expect(groups.flatMap(({ parts }) => parts).length).toBe(8);
    expect(groups.reduce((sum, { value }) => sum + value, 0)).toBe(-6);
  });
});
