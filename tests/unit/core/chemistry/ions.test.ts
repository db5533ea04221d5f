import { describe, expect, it } from 'vitest';
import {
  acidBaseConstants,
  carbonFromPh,
  hydrogenAt,
  hydrogenIon,
  hydrogenNear,
  speciate,
  SPECIATION,
} from '../../../../packages/core/src/chemistry/acid-base.js';
import { davies, openIonicStrength } from '../../../../packages/core/src/chemistry/ions.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';

const parameters = createParameters();
const molar = parameters.value('molar.nitrogen');

describe('activity coefficients', () => {
  // The equation of Davies at 25 degC with A 0.5108, worked out by other code.
  it.each([
    [0.005, 0.9269, 0.7381, 6.319, 9.279],
    [0.01, 0.9018, 0.6613, 6.307, 9.291],
    [0.05, 0.8209, 0.4542, 6.266, 9.332],
    [0.1, 0.7809, 0.3719, 6.245, 9.354],
  ])(
    'at ionic strength %d are those of Davies, and move pK1 and that of ammonium apart',
    (ionic, g1, g2, pK1, pKN) => {
      const { one, two } = davies(parameters, 25, ionic);
      expect(Math.abs(one - g1)).toBeLessThan(2e-4);
      expect(Math.abs(two - g2)).toBeLessThan(2e-4);
      const k = acidBaseConstants(parameters, 25, ionic);
      expect(Math.abs(-Math.log10(k.k1 / 1000) - pK1)).toBeLessThan(2e-3);
      expect(Math.abs(-Math.log10(k.ammonium / 1000) - pKN)).toBeLessThan(2e-3);
      expect(k.proton).toBe(1 / one);
    },
  );

  it('are 1 in water without ions, and stay what they are beyond 0.5 mol/L', () => {
    expect(davies(parameters, 20, 0)).toEqual({ one: 1, two: 1 });
    expect(davies(parameters, 20, 3)).toEqual(davies(parameters, 20, 0.5));
    expect(acidBaseConstants(parameters, 20, 0)).toEqual(acidBaseConstants(parameters, 20));
  });

  it('fall with warmth as the permittivity of water does: A 0.4944, 0.5064, 0.5155 at 5, 20, 30 degC', () => {
    for (const [temperature, a] of [
      [5, 0.4944],
      [20, 0.5064],
      [30, 0.5155],
    ]) {
      const root = Math.sqrt(0.01);
      const perA = root / (1 + root) - 0.3 * 0.01;
      expect(-Math.log10(davies(parameters, temperature, 0.01).one) / perA).toBeCloseTo(a, 4);
    }
  });
});

describe('ionic strength', () => {
  const strength = openIonicStrength(parameters);
  const none = { ammonia: 0, nitrite: 0, nitrate: 0, chloride: 0, alkalinity: 0, calcium: 0 };

  it('of potassium bicarbonate, potassium nitrate and ammonium chloride is their concentration (exact)', () => {
    expect(strength({ ...none, alkalinity: 4 })).toBeCloseTo(0.004, 12);
    expect(strength({ ...none, nitrate: 5 * molar })).toBeCloseTo(0.005, 12);
    const chloride = 3 * parameters.value('molar.chlorine');
    expect(strength({ ...none, ammonia: 3 * molar, chloride })).toBeCloseTo(0.003, 12);
  });

  it('of calcium chloride is three times its concentration, and of calcium bicarbonate too (exact)', () => {
    const chloride = 2 * parameters.value('molar.chlorine');
    expect(strength({ ...none, calcium: 1, chloride })).toBeCloseTo(0.003, 12);
    expect(strength({ ...none, calcium: 1, alkalinity: 2 })).toBeCloseTo(0.003, 12);
  });

  it('of nitric acid is its concentration: alkalinity below zero', () => {
    expect(strength({ ...none, nitrate: 2 * molar, alkalinity: -2 })).toBeCloseTo(0.002, 12);
  });
});

describe('pH at an ionic strength', () => {
  const water = { ammonia: 4, alkalinity: 1.3 };

  it('is found again from the carbon that makes it, by either search', () => {
    for (const ionic of [0, 0.004, 0.02, 0.1]) {
      for (const pH of [5.6, 6.8, 7.6, 8.9]) {
        const k = acidBaseConstants(parameters, 22, ionic);
        const carbon = carbonFromPh(parameters, water.alkalinity, pH, water.ammonia, 22, ionic);
        const h = hydrogenIon(water.alkalinity, carbon, water.ammonia / molar, k, Number.NaN);
        expect(h / hydrogenAt(pH)).toBeCloseTo(1, 9);
        const near = hydrogenNear(water.alkalinity, carbon, water.ammonia / molar, k, hydrogenAt(pH) * 1.1);
        expect(near / h).toBeCloseTo(1, 12);
      }
    }
  });

  it('and its partials are those of differences', () => {
    const k = acidBaseConstants(parameters, 22, 0.02);
    const at = ([tan, alkalinity, carbon]: readonly number[]): Float64Array => {
      const out = new Float64Array(SPECIATION);
      speciate(tan, carbon, hydrogenIon(alkalinity, carbon, tan / molar, k, Number.NaN), k, molar, out, 0);
      return out;
    };
    const point = [4, 1.3, 1.5];
    const here = at(point);
    point.forEach((value, m) => {
      const moved = (by: number): Float64Array => at(point.map((each, n) => (n === m ? each + by : each)));
      const step = 1e-5 * value;
      const [up, down] = [moved(step), moved(-step)];
      for (let each = 0; each < 4; each++) {
        const difference = (up[each] - down[each]) / (2 * step);
        expect(here[4 + 3 * each + m] / difference).toBeCloseTo(1, 6);
      }
    });
  });

  // Closed water at 25 degC without activities: acid, meq/L, that takes it to a pH; worked out by other code.
  it.each([
    [2, 8, [0.3383, 0.8111, 1.3747, 1.7523]],
    [5, 7.5, [0.6323, 1.8748, 3.355, 4.3439]],
  ])('is titrated: %d meq/L from pH %d to 7, 6.5, 6 and 5.5', (alkalinity, from, acids) => {
    const carbon = carbonFromPh(parameters, alkalinity, from, 0, 25);
    const k = acidBaseConstants(parameters, 25);
    [7, 6.5, 6, 5.5].forEach((pH, i) => {
      const h = hydrogenIon(alkalinity - acids[i], carbon, 0, k, Number.NaN);
      const slope = hydrogenIon(alkalinity - acids[i] - 2e-4, carbon, 0, k, Number.NaN) / h;
      // Within 0.0002 meq/L of the acid.
      expect(Math.abs(Math.log(h / hydrogenAt(pH)))).toBeLessThan(Math.log(slope));
    });
  });
});
