import { describe, expect, it } from 'vitest';
import {
  carbonDioxideInAir,
  acidBaseConstants,
  ammoniumPk,
  carbonDioxideSaturation,
  carbonFromPh,
  hydrogenIon,
  speciate,
  SPECIATION,
} from '../../../../packages/core/src/chemistry/acid-base.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { createRandom } from '../../../../packages/core/src/base/random.js';

const parameters = createParameters();
const NITROGEN = parameters.value('molar.nitrogen');

interface Water {
  readonly tan: number;
  readonly alkalinity: number;
  readonly carbon: number;
}

function speciationOf({ tan, alkalinity, carbon }: Water, temperature: number): Float64Array {
  const k = acidBaseConstants(parameters, temperature);
  const out = new Float64Array(SPECIATION);
  speciate(tan, carbon, hydrogenIon(alkalinity, carbon, tan / NITROGEN, k, 1e-4), k, NITROGEN, out, 0);
  return out;
}

const pK = (value: number): number => -Math.log10(value / 1000);

describe('constants of carbonic acid and water', () => {
  // Plummer & Busenberg 1982; coefficients [S], the values worked out from them [C].
  it.each([
    [0, 6.5786, 10.6286, 1.1084, 14.9421],
    [10, 6.4633, 10.4879, 1.2694, 14.5338],
    [20, 6.3819, 10.3756, 1.4069, 14.1682],
    [25, 6.3519, 10.3289, 1.4679, 13.9995],
    [35, 6.3102, 10.2523, 1.5766, 13.6875],
  ])('at %d degC are as tabled', (temperature, pK1, pK2, pKH, pKw) => {
    const k = acidBaseConstants(parameters, temperature);
    expect(Math.abs(pK(k.k1) - pK1)).toBeLessThan(6e-5);
    expect(Math.abs(pK(k.k2) - pK2)).toBeLessThan(6e-5);
    expect(Math.abs(-Math.log10(k.water / 1e6) - pKw)).toBeLessThan(6e-5);
    const henry =
      carbonDioxideSaturation(parameters, temperature) / 1000 / parameters.value('gas.carbon-dioxide-air');
    expect(Math.abs(-Math.log10(henry) - pKH)).toBeLessThan(6e-5);
  });

  it.each([
    [5, 6.517, 10.56],
    [15, 6.419, 10.43],
    [25, 6.352, 10.329],
  ])('at %d degC agree with textbook values (Stumm & Morgan [M])', (temperature, pK1, pK2) => {
    const k = acidBaseConstants(parameters, temperature);
    expect(Math.abs(pK(k.k1) - pK1)).toBeLessThan(1e-3);
    expect(Math.abs(pK(k.k2) - pK2)).toBeLessThan(1e-2);
  });
});

describe('carbon dioxide in air over that in water', () => {
  // By other code [C].
  it.each([
    [5, 0.68],
    [10, 0.8],
    [15, 0.93],
    [20, 1.06],
    [25, 1.2],
    [30, 1.345],
  ])('at %d degC is %f', (temperature, wanted) => {
    expect(Math.abs(carbonDioxideInAir(createParameters(), temperature) - wanted)).toBeLessThan(0.005);
  });
});

describe('un-ionised ammonia', () => {
  // Emerson et al. 1975: constants [S], pKa worked out from them [C].
  it.each([
    [5, 9.9047],
    [15, 9.5641],
    [25, 9.2464],
    [30, 9.0954],
  ])('has the pKa of Emerson et al. 1975 at %d degC', (temperature, pKa) => {
    expect(Math.abs(ammoniumPk(parameters, temperature) - pKa)).toBeLessThan(6e-5);
  });

  // Table of Emerson et al. 1975 as reprinted in extension sheet FA-16 [R].
  it.each([
    [7, 6, 0.0013],
    [7, 24, 0.0052],
    [7, 30, 0.008],
    [7.6, 14, 0.01],
    [7.6, 28, 0.0271],
    [8, 10, 0.0182],
    [8, 20, 0.0381],
    [8, 24, 0.0502],
    [8, 30, 0.0743],
    [8.4, 6, 0.0328],
    [8.4, 22, 0.1031],
    [8.4, 30, 0.1678],
  ])('at pH %f and %d degC is the printed share, to one unit in the last place', (pH, temperature, share) => {
    const carbon = carbonFromPh(parameters, 3, pH, 1, temperature);
    const out = speciationOf({ tan: 1, alkalinity: 3, carbon }, temperature);
    expect(out[0]).toBeCloseTo(pH, 10);
    expect(Math.abs(out[1] - share)).toBeLessThan(1.01e-4);
  });
});

describe('pH', () => {
  it('of pure water in equilibrium with air is 5.6 (textbook value at 25 degC; closed form sqrt(K1 CO2))', () => {
    const k = acidBaseConstants(parameters, 25);
    const dissolved = carbonDioxideSaturation(parameters, 25);
    expect((dissolved * 44.01) / 0.63).toBeCloseTo(1, 1);
    const h = Math.sqrt(k.k1 * dissolved);
    const carbon = dissolved + h;
    const { 0: pH } = speciationOf({ tan: 0, alkalinity: 0, carbon }, 25);
    expect(pH).toBeCloseTo(-Math.log10(h / 1000), 3);
    expect(pH).toBeGreaterThan(5.55);
    expect(pH).toBeLessThan(5.65);
  });

  it('of water with bicarbonate in equilibrium with air is pK1 + log (alkalinity / CO2) (closed form)', () => {
    const k = acidBaseConstants(parameters, 20);
    const dissolved = carbonDioxideSaturation(parameters, 20);
    const h = (k.k1 * dissolved) / 1;
    const water = {
      tan: 0,
      alkalinity: 1 + (2 * k.k2) / h + k.water / h - h,
      carbon: dissolved + 1 + k.k2 / h,
    };
    const { 0: pH } = speciationOf(water, 20);
    expect(pH).toBeCloseTo(-Math.log10(h / 1000), 8);
  });

  it('gives back the pH from which inorganic carbon was worked out, and falls as carbon is added', () => {
    for (const pH of [5, 6.2, 7, 8.3, 9.5]) {
      const carbon = carbonFromPh(parameters, 2, pH, 3, 22);
      expect(speciationOf({ tan: 3, alkalinity: 2, carbon }, 22)[0]).toBeCloseTo(pH, 10);
      expect(speciationOf({ tan: 3, alkalinity: 2, carbon: carbon + 0.1 }, 22)[0]).toBeLessThan(pH);
    }
  });

  it('is found from any starting guess, below zero alkalinity too, and is NaN for NaN', () => {
    const k = acidBaseConstants(parameters, 20);
    for (const alkalinity of [-3, -0.1, 0, 0.01, 5, 40]) {
      const roots = [1e-9, 1e-6, 1e-4, 1, 100, Number.NaN].map((guess) =>
        hydrogenIon(alkalinity, 2, 0.3, k, guess),
      );
      roots.forEach((root) => {
        expect(root / roots[0]).toBeCloseTo(1, 12);
      });
    }
    expect(hydrogenIon(Number.NaN, 2, 0.3, k, 1e-4)).toBeNaN();
  });

  it('is NaN where no root lies in pH 0-14', () => {
    const k = acidBaseConstants(parameters, 20);
    expect(hydrogenIon(1e9, 2, 0.3, k, 1e-4)).toBeNaN();
    expect(hydrogenIon(-1e9, 2, 0.3, k, 1e-4)).toBeNaN();
  });
});

describe('partials of pH, ammonia, carbon dioxide and saturation', () => {
  it('are those of central differences, in ordinary and in poor water', () => {
    const random = createRandom(21);
    for (let draw = 0; draw < 60; draw++) {
      const alkalinity = draw % 3 === 0 ? 0.2 * random() - 0.05 : 6 * random();
      const water: Water = { tan: 20 * random(), alkalinity, carbon: Math.max(0, alkalinity) + random() };
      const temperature = 5 + 30 * random();
      const stated = speciationOf(water, temperature);
      (['tan', 'alkalinity', 'carbon'] as const).forEach((component, c) => {
        const h = 1e-5;
        const up = speciationOf({ ...water, [component]: water[component] + h }, temperature);
        const down = speciationOf({ ...water, [component]: water[component] - h }, temperature);
        for (let which = 0; which < 4; which++) {
          const difference = (up[which] - down[which]) / (2 * h);
          const gap = Math.abs(stated[4 + 3 * which + c] - difference);
          expect(gap).toBeLessThan(1e-5 * (Math.abs(difference) + 0.01));
        }
      });
    }
  });
});
