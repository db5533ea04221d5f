import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { names } from '../../../packages/core/src/library/names.js';
import { scopeTo } from '../../../packages/core/src/model/scope.js';
import {
  growth,
  growthCoefficients,
  usualFat,
} from '../../../packages/core/src/processes/kernels/fish-energy.js';
import { deaths, hazardCoefficients } from '../../../packages/core/src/processes/kernels/hazard.js';
import { intake } from '../../../packages/core/src/processes/kernels/intake.js';
import { anyConditions } from '../../../packages/core/src/processes/process.js';

const parameters = createParameters();
const species = names('fish');

/** Water of a tank: oxygen, un-ionised ammonia, nitrite, chloride (mg/L), carbon dioxide (mol m-3) and its temperature. */
interface Water {
  readonly oxygen: number;
  readonly ammonia: number;
  readonly nitrite: number;
  readonly chloride: number;
  readonly carbonDioxide: number;
  readonly temperature: number;
}

/** What 100 fish of 100 g, offered 3 % a day, do in a water: feed eaten, growth (g/d) and the share alive after four days. */
function life(name: string, water: Water): { eaten: number; grown: number; alive: number } {
  const values = scopeTo(parameters, { species: name, feed: { name: 'grower-32', protein: 0.32 } });
  const at = { ...anyConditions, temperature: water.temperature, fed: 0, fedShare: 0.03 };
  const mass = 10_000;
  const { oxygen, ammonia, nitrite, chloride, carbonDioxide } = water;
  const v = Float64Array.of(
    oxygen,
    ammonia,
    nitrite,
    chloride,
    carbonDioxide,
    mass,
    100,
    mass * usualFat(values, 1),
  );
  const places = [0, 1, 2, 3, 4, 5, 6, 7];
  const k = growthCoefficients(values, at);
  const hazard = deaths.rate(v, places, hazardCoefficients(values, at)) / mass;
  return { eaten: intake(v, places, k), grown: growth(v, places, k), alive: Math.exp(-4 * hazard) };
}

/** Sound water for a species. */
const sound = (name: string): Water => ({
  oxygen: 9,
  ammonia: 0.001,
  nitrite: 0.001,
  chloride: 5,
  carbonDioxide: 0.02,
  temperature: parameters.value(`fish.${name}.temperature-optimum-low`),
});

const steps = (from: number, to: number): readonly number[] =>
  Array.from({ length: 41 }, (_, i) => from * (to / from) ** (i / 40));
const degrees = (from: number, to: number): readonly number[] =>
  Array.from({ length: 46 }, (_, i) => from + ((to - from) * i) / 45);

/** Each stress, from none to deadly. */
const stresses: readonly (readonly [string, (name: string) => readonly Partial<Water>[]])[] = [
  ['want of oxygen', () => steps(9, 0.05).map((oxygen) => ({ oxygen }))],
  ['un-ionised ammonia', () => steps(0.001, 20).map((ammonia) => ({ ammonia }))],
  ['nitrite', () => steps(0.001, 400).map((nitrite) => ({ nitrite }))],
  [
    'nitrite that less chloride keeps out',
    (name) =>
      steps(500, 1).map((chloride) => ({
        chloride,
        nitrite: parameters.value(`fish.${name}.lethal-nitrite`),
      })),
  ],
  ['carbon dioxide', () => steps(0.02, 10).map((carbonDioxide) => ({ carbonDioxide }))],
  [
    'cold',
    (name) =>
      degrees(parameters.value(`fish.${name}.temperature-optimum-low`), 0).map((temperature) => ({
        temperature,
      })),
  ],
  [
    'heat',
    (name) =>
      degrees(parameters.value(`fish.${name}.temperature-optimum-high`), 45).map((temperature) => ({
        temperature,
      })),
  ],
];

describe.each(stresses)('more of %s', (_stress, levels) => {
  it.each(species)('never lets %s eat more, grow more or live longer', (name) => {
    const lives = levels(name).map((level) => life(name, { ...sound(name), ...level }));
    for (let i = 1; i < lives.length; i++) {
      const [before, after] = [lives[i - 1], lives[i]];
      for (const what of ['eaten', 'grown', 'alive'] as const)
        expect(after[what], what).toBeLessThanOrEqual(before[what] * (1 + 1e-6));
    }
    expect(lives[0].eaten).toBeGreaterThan(100);
    expect(lives[0].alive).toBeGreaterThan(0.99);
  });
});

describe('at its lethal values', () => {
  it.each(species)(
    '%s dies as these are defined: half in four days, of want of oxygen half in six hours',
    (name) => {
      const of = (property: string): number => parameters.value(`fish.${name}.lethal-${property}`);
      const gram = parameters.value('molar.carbon') + parameters.value('molar.oxygen-gas');
      const half = [
        { ammonia: of('ammonia') },
        { nitrite: of('nitrite'), chloride: 0 },
        { carbonDioxide: of('carbon-dioxide') / gram },
        { temperature: of('temperature-low') },
        { temperature: of('temperature-high') },
      ];
      for (const level of half) expect(life(name, { ...sound(name), ...level }).alive).toBeCloseTo(0.5, 1);
      const choked = life(name, { ...sound(name), oxygen: of('oxygen') });
      expect(choked.alive ** (1 / 16)).toBeCloseTo(0.5, 1);
    },
  );

  it.each(species)('%s outside the temperatures in which it feeds eats nothing', (name) => {
    const edge = (which: string): number => parameters.value(`fish.${name}.temperature-${which}`);
    for (const temperature of [edge('low'), edge('low') - 5, edge('high'), edge('high') + 3])
      expect(life(name, { ...sound(name), temperature }).eaten).toBe(0);
  });
});
