import { seriesOf } from '@leat/core';
import type { Run } from '../../../packages/core/src/run/run.js';
import type { Runs, SystemCase } from './system-case.js';

/** Feed offered up to a day, kg: the ration of each morning, to the first order that of the day. */
function feedTo(run: Run, day: number): number {
  const { values } = seriesOf(run, 'feed@fish');
  return values.slice(0, day).reduce((sum, each) => sum + each, 0) / 1000;
}

function feedPerGain({ unit }: Runs): number {
  const mass = seriesOf(unit, 'fish-mass@fish');
  return (1000 * feedTo(unit, 57)) / (mass.at(57) - mass.at(0));
}

/** Three like systems with lettuce and herbs. */
export const nozzi2018: SystemCase = {
  name: 'Fifty tilapia over lettuce and herbs, 4.2 m3',
  publication: 'Nozzi et al. 2018, Agronomy 8:27',
  file: 'nozzi-2018',
  draws: 61,
  runs: { unit: [] },
  quantities: [
    {
      what: 'feed per gain',
      unit: 'g/g',
      published: { low: 1.16, high: 1.49 },
      where: 'three systems',
      mark: 'S',
      value: feedPerGain,
    },
    {
      what: 'feed in 32 d',
      unit: 'kg',
      published: { low: 9.2, high: 9.74 },
      where: 'three systems; dates of the text',
      mark: 'S',
      value: ({ unit }) => feedTo(unit, 32),
    },
  ],
};
