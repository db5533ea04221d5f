import { buildScenario, type Scenario } from '@leat/core';

/** An invented tank of 2 m3 with 60 m2 for biofilm and 30 tilapia that are fed a share of their mass a day. */
export function tank(ration = 0.015, days = 30): Scenario {
  const water = { pH: 7.5, alkalinity: 2, nitrate: 5, chloride: 50 };
  const vessel = { name: 'tank', volume: 2, temperature: 26, surface: 60, aeration: 100, aob: 0.1, nob: 0.1 };
  const fish = { name: 'fish', vessel: 'tank', species: 'nile-tilapia', number: 30, mass: 100 };
  return buildScenario({
    days,
    startDate: '2027-03-01',
    vessels: [{ ...vessel, water }],
    fish: [{ ...fish, ration, feed: 'grower-32' }],
  });
}
