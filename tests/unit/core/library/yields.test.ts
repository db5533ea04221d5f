import { expect, it } from 'vitest';
import { conditionsOf } from '../../../../packages/core/src/library/conditions.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { names } from '../../../../packages/core/src/library/names.js';

const parameters = createParameters();
const value = (id: string): number => parameters.value(id);

it.each(names('crop'))('brings the yield that the table of %s says at 22 degC', (crop) => {
  const at = (property: string): number => value(`crop.${crop}.${property}`);
  const said = Number(
    /bring ([\d.]+) kg\/m2/.exec(conditionsOf(parameters.row(`crop.${crop}.final-mass`)))?.[1],
  );
  const warmth = Math.min(22, at('optimum-temperature')) - at('base-temperature');
  const final = at('final-mass');
  const grown = Math.exp(-at('growth') * warmth * at('days'));
  const dry = final / (1 + (final / at('seedling-mass') - 1) * grown);
  expect(Math.abs(dry / at('dry-matter') / 1000 / said - 1)).toBeLessThan(0.02);
});

it('doses by molar mass', () => {
  expect(value('dose.potassium-bicarbonate.alkalinity') * 100.115).toBeCloseTo(1, 4);
  expect(value('dose.calcium-carbonate.alkalinity') * value('molar.calcium-carbonate')).toBeCloseTo(2, 5);
  expect(value('dose.sodium-chloride.chloride')).toBeCloseTo(0.60663, 4);
});
