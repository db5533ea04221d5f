import { expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';

const parameters = createParameters();
const value = (id: string): number => parameters.value(id);

it('doses by molar mass', () => {
  expect(value('dose.potassium-bicarbonate.alkalinity') * 100.115).toBeCloseTo(1, 4);
  expect(value('dose.calcium-carbonate.alkalinity') * value('molar.calcium-carbonate')).toBeCloseTo(2, 5);
  expect(value('dose.sodium-chloride.chloride')).toBeCloseTo(0.60663, 4);
});
