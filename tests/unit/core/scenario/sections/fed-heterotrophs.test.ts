import { readScenario } from '@leat/core';
import { expect, it } from 'vitest';

/** Two tanks in a round, fish in the first; what stands in their films is looked at. */
const pair = (start: string): string => `
title: two tanks
days: 1
reservoir: sump
climate: { water-temperature: 20 degC, et0: 0 mm/d }
waters: { mains: { nitrate: 0 mg N/L, alkalinity: 100 mg/L as CaCO3, pH: 7.5, chloride: 20 mg/L } }
vessels:
  tank: { kind: fish-tank, volume: 1 m3, area: 1 m2, surface: 10 m2, aeration: 5 1/h }
  sump: { kind: sump, volume: 1 m3, area: 1 m2, surface: 40 m2 }
pumps: { main: { timer: { on: 30 min, off: 30 min }, inlet: 100 L, restart: 200 L } }
flows:
  - { from: sump, to: tank, pump: main, rate: 20 L/h }
  - { from: tank, to: sump }
fish: { fish: { in: tank, species: nile-tilapia, number: 30, mass: 200 g, ration: 1000 g/d, feed: grower-32 } }
start:
  ${start}
  water: { like: mains, ammonia: 0 mg N/L, pH: 7.5 }
`;

const stands = (start: string) => {
  const { start: vessels } = readScenario(pair(start), { file: 'pair.yaml' });
  return vessels.map(({ heterotrophs }) => heterotrophs);
};

// 1000 g of feed a day of 1.1 g COD per g, 0.04 not eaten, 0.25 not digested, 0.29 of that dissolved: 76.56 g COD a day. At 20
// degC growth of cells, 6/d, stands against their decay, 0.62/d, at 20 x 0.62 / 5.38 = 2.304833 g/m3; films clear 1.3 x 0.5
// m/d: 6.5 and 26 m3/d; bacteria of the water 0.5 m3/d of each tank; half of the time 0.48 m3/d go round. With c in the tank
// and s in the sump: 76.56 + 0.24 s + 6.5 x 2.304833 = (0.24 + 0.5 + 6.5) c, 0.24 c + 26 x 2.304833 = (0.24 + 0.5 + 26) s.
it('grows on cycled films what fish leave dissolved, by what each water holds', () => {
  const rest = (20 * 0.62) / 5.38;
  const [through, water, tank, sump] = [0.24, 0.5, 0.65 * 10, 0.65 * 40];
  const left = 1000 * 0.96 * 1.1 * 0.25 * 0.29;
  // Of the tank: left + through s + tank rest = (through + water + tank) c; put s of the sump into it.
  const c =
    (left + tank * rest + (through * sump * rest) / (through + water + sump)) /
    (through + water + tank - (through * through) / (through + water + sump));
  const s = (through * c + sump * rest) / (through + water + sump);
  expect(s).toBeGreaterThan(rest);
  const film = (at: number): number => (0.67 * 0.65 * (at - rest)) / 0.62;
  const [inTank, inSump] = stands('biofilm: cycled');
  expect(inTank).toBeCloseTo(film(c), 8);
  expect(inSump).toBeCloseTo(film(s), 8);
});

it('grows a share on films cycled to a share, and none on new ones or on those told by groups', () => {
  const [whole] = stands('biofilm: cycled');
  expect(stands('biofilm: 40 %')[0]).toBeCloseTo(0.4 * (whole ?? Number.NaN), 12);
  expect(stands('biofilm: uncycled')).toEqual([undefined, undefined]);
  expect(stands('biofilm: { aob: 40 %, nob: 10 % }')).toEqual([undefined, undefined]);
});
