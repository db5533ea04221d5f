import { lastDays } from './last-days.js';
import type { Runs, SystemCase } from './system-case.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import {
  feedMass,
  harvested,
  harvestMass,
  netHarvest,
  perTank,
  retention,
  survival,
  tonnesPerYear,
} from './unit-quantities.js';

/** The last two harvests: fish that lived from stocking to harvest within the run. */
const harvests = (runs: Runs): Run => lastDays(runs['unit'], 84);

const feedGiven = 'the feed was worked out from the published yield and feed conversion';

/** The earlier unit of the University of the Virgin Islands, with leaf lettuce. */
export const uviEarlier: SystemCase = {
  name: 'UVI earlier unit, 91.6 m3',
  publication: 'Rakocy, Bailey, Shultz & Cole 1997, ISTA 4',
  file: 'uvi-earlier',
  draws: 41,
  window: 168,
  runs: { unit: [] },
  quantities: [
    {
      what: 'retention in the rearing tanks',
      unit: 'h',
      published: { low: 0.75, high: 0.85 },
      where: 'system design',
      mark: 'R',
      value: (runs) => retention(harvests(runs), 'rearing'),
      chosen: 'volumes and pump are published: this checks the water, not the numbers',
    },
    {
      what: 'density at harvest, gross',
      unit: 'kg/m3',
      published: { low: 81.05, high: 81.15 },
      where: 'last 11 of 19 harvests',
      mark: 'R',
      value: (runs) => perTank(harvested(harvests(runs)), harvests(runs), 4.4),
    },
    {
      what: 'density at harvest, net',
      unit: 'kg/m3',
      published: { low: 73.15, high: 73.25 },
      where: 'last 11 of 19 harvests',
      mark: 'R',
      value: (runs) => perTank(netHarvest(harvests(runs)), harvests(runs), 4.4),
      chosen: feedGiven,
    },
    {
      what: 'mean mass at harvest',
      unit: 'g',
      published: { low: 487.15, high: 487.25 },
      where: 'last 11 of 19 harvests',
      mark: 'R',
      value: (runs) => harvestMass(harvests(runs)),
    },
    {
      what: 'growth',
      unit: 'g/d',
      published: { low: 2.845, high: 2.855 },
      where: 'last 11 of 19 harvests',
      mark: 'R',
      value: (runs) => (harvestMass(harvests(runs)) - 43.4) / 168,
    },
    {
      what: 'feed per gain',
      unit: 'g/g',
      published: { low: 1.755, high: 1.765 },
      where: 'last 11 of 19 harvests',
      mark: 'R',
      value: (runs) => feedMass(harvests(runs)) / netHarvest(harvests(runs)),
      chosen: feedGiven,
    },
    {
      what: 'net fish output',
      unit: 't/yr',
      published: { low: 2.795, high: 2.805 },
      where: '322 kg in 42 d',
      mark: 'C',
      value: (runs) => tonnesPerYear(netHarvest(harvests(runs)), harvests(runs)),
      chosen: feedGiven,
    },
    {
      what: 'survival',
      unit: '%',
      published: { low: 91.55, high: 91.65 },
      where: 'last 11 of 19 harvests',
      mark: 'R',
      value: (runs) => survival(harvests(runs)),
      blame: [
        {
          assumption: 'mortality of 5.2e-4 a day',
          set: [{ path: 'parameters.fish.nile-tilapia.mortality', value: '5.2e-4' }],
          low: 91.5,
          high: 91.7,
        },
      ],
    },
  ],
};
