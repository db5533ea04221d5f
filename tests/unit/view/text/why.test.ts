import { describe, expect, it } from 'vitest';
import { processes } from '../../../../packages/core/src/processes/index.js';
import { groupParts, type Difference } from '@leat/core';
import { metric } from '@leat/core/units';
import { differenceTold, displayOf, signedParts } from '@leat/view/text';

const spanish = displayOf({ language: 'es', units: metric });

const difference: Difference = {
  quantity: 'nitrate@sump',
  unit: 'mg N/L',
  from: 20,
  to: 22.5,
  difference: 2.5,
  parts: [
    { name: 'nitrite oxidation by a full film', value: 6, did: 'more' },
    { name: 'carried in from tank', value: -5 },
    { name: 'carried out to tank', value: 2 },
    { name: 'nitrate uptake by crops', value: -0.504, did: 'less' },
    { name: 'settling of solids', value: 0.004 },
  ],
  residual: 0,
};
const grouped = groupParts(difference.parts);
const moments = [
  { startDate: '2025-10-01', day: 10 },
  { startDate: '2025-10-01', day: 30 },
] as const;

describe('differenceTold', () => {
  it('answers first, nets what goes to and fro, and its rows sum to the total as they are shown', () => {
    const told = differenceTold(difference, grouped, moments, { oneRun: true });
    expect(told.answer).toBe(
      'nitrate in sump is 2.5 mg N/L higher on day 30 (31 Oct), at 22.5, than on day 10 (11 Oct), at 20 mg N/L: ' +
        '+6.00 by nitrite oxidation by a full film, -3.00 by flow between here and tank, ' +
        '-0.50 by nitrate uptake by crops and 0.00 by 1 smaller',
    );
    expect(told.rows.map(({ name, value }) => [name, value])).toEqual([
      ['nitrite oxidation by a full film', '+6.00'],
      ['flow between here and tank', '-3.00'],
      ['nitrate uptake by crops', '-0.50'],
      ['1 more, each under half a last digit', '0.00'],
    ]);
    expect(told.rows.reduce((sum, { value }) => sum + Number(value), 0)).toBeCloseTo(Number(told.total), 9);
    expect(told.netted).toBe(1);
  });

  it('says more or less between two runs, and each process by itself on request', () => {
    const told = differenceTold(difference, difference.parts, moments, { oneRun: false });
    expect(told.answer).toContain('nitrate in sump is 2.5 mg N/L higher in B (22.5) than in A (20 mg N/L)');
    expect(told.rows[0].name).toBe('more nitrite oxidation by a full film');
    expect(told.rows.map(({ name }) => name)).toContain('carried in from tank');
    expect(told.netted).toBe(0);
  });

  it('speaks Spanish of every process there is, and of every group of them', () => {
    const { causes } = spanish.words.why;
    const parts = processes.map(({ title }) => ({ name: title, value: 1 }));
    const named = [...parts, ...groupParts(parts)].map(({ name }) => name);
    expect(named.filter((name) => !(name in causes))).toEqual([]);
    const told = differenceTold(difference, grouped, moments, { oneRun: true }, spanish);
    expect(told.answer).toContain('+6,00 por oxidación de nitrito por una biopelícula completa');
    expect(told.rows[1].name).toBe('corriente entre aquí y tank');
  });
});

describe('signedParts', () => {
  it('rounds parts so that they sum to the rounded total', () => {
    const { parts, total } = signedParts([1 / 3, 1 / 3, 1 / 3], 1);
    expect(total).toBe('+1.00');
    expect(parts.reduce((sum, part) => sum + Number(part), 0)).toBeCloseTo(1, 12);
  });
});
