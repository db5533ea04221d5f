import { describe, expect, it } from 'vitest';
import { openConductivity } from '../../../../packages/core/src/chemistry/conductivity.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';

const none = { ammonia: 0, nitrite: 0, nitrate: 0, chloride: 0, alkalinity: 0, calcium: 0 };
const molar = createParameters();
const chlorine = molar.value('molar.chlorine');

/** With the cation that is not known being one of the table: potassium 73.48, sodium 50.08 S cm2/eq. */
function withCation(value: number) {
  return openConductivity({
    value: (id) => (id === 'conductivity.cations' ? value : molar.value(id)),
  });
}

describe('electrical conductivity estimated from ions, at 25 degC', () => {
  // 0.01 and 0.1 mol/kg: CRC Handbook, standard KCl solutions (Wu et al. 1991, J. Res. NIST 96:191), 1408.23 and 12824.6 uS/cm;
  // in mol/L they are 0.00997 and 0.0995. 0.001 mol/L: 146.9, from memory of the tables of cells.
  it.each([
    [0.997, 0.1469 * 0.997, 0.005],
    [9.97, 1.40823, 0.01],
    [99.5, 12.8246, 0.02],
  ])('of %d mmol/L of potassium chloride is that of the standard solutions', (amount, published, within) => {
    const found = withCation(73.48)({ ...none, chloride: amount * chlorine });
    expect(Math.abs(found / published - 1)).toBeLessThan(within);
  });

  // Equivalent conductivities of Robinson & Stokes 1959, from memory: sodium chloride 118.45 and calcium chloride 120.3 S cm2/eq.
  it('of 10 meq/L of sodium chloride and of calcium chloride is within 2 % of published', () => {
    const salt = withCation(50.08)({ ...none, chloride: 10 * chlorine });
    expect(Math.abs(salt / 1.1845 - 1)).toBeLessThan(0.02);
    const lime = withCation(50.08)({ ...none, chloride: 10 * chlorine, calcium: 5 });
    expect(Math.abs(lime / 1.203 - 1)).toBeLessThan(0.02);
  });

  it('is 0 of pure water, and more with every salt', () => {
    const estimate = openConductivity(molar);
    expect(estimate(none)).toBe(0);
    const mains = { ...none, nitrate: 2, chloride: 35, alkalinity: 2.8, calcium: 1.1 };
    expect(estimate({ ...mains, nitrate: 40 })).toBeGreaterThan(estimate(mains));
    expect(estimate(mains)).toBeCloseTo(0.4214, 3);
  });
});
