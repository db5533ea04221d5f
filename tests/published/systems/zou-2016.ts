import { seriesOf } from '@leat/core';
import type { Run } from '../../../packages/core/src/run/run.js';
import type { Setting } from '../../../packages/core/src/scenario/file/set-value.js';
import { lastDays, nitrogenWith, postedWith } from './last-days.js';
import type { Runs, SystemCase } from './system-case.js';
import { meanOf } from './unit-quantities.js';

/** Held at a pH by base below and acid above. */
const held = (pH: number): readonly Setting[] => [
  { path: 'start.water.pH', value: String(pH) },
  { path: 'control[0].at', value: String(pH - 0.05) },
  { path: 'control[1].at', value: String(pH + 0.05) },
];

/** What came to stand in fish and crops or was harvested, less what was planted, % of the nitrogen in feed. */
function used(run: Run): number {
  const gained = (name: string): number => {
    const { values } = seriesOf(run, name);
    return values[values.length - 1] - values[0];
  };
  const body = run.model.parameters.value('fish.nile-tilapia.body-nitrogen');
  const dead = -postedWith(run, 'dead fish', 'fish-mass');
  const harvested = -nitrogenWith(run, 'harvested crop') - nitrogenWith(run, 'seedlings');
  const crop = gained('crop-nitrogen@pak-choi') + harvested;
  return (100 * (body * (gained('fish-mass@tilapia') + dead) + crop)) / nitrogenWith(run, 'feed');
}

/** After a first month. */
const late = (runs: Runs, pH: string): Run => lastDays(runs[`pH ${pH}`], 30);
const share = (pH: string): ((runs: Runs) => number) => {
  return (runs) => used(late(runs, pH));
};

/** Media beds at three values of pH. */
export const zou2016: SystemCase = {
  name: 'Media beds held at pH 6.0, 7.5 and 9.0',
  publication: 'Zou et al. 2016, Bioresour. Technol. 210:81-87',
  file: 'zou-2016',
  draws: 41,
  window: 30,
  runs: { 'pH 6': held(6), 'pH 7.5': held(7.5), 'pH 9': held(9) },
  quantities: [
    {
      what: 'TAN at pH 6',
      unit: 'mg N/L',
      published: { low: 0, high: 5 },
      where: 'abstract: within what fish bear',
      mark: 'R',
      value: (runs) => meanOf(late(runs, '6'), 'tan@tank'),
      vague:
        'From films that keep up at 0.4 mg N/L to those that hardly do at 9: inorganic carbon is short at pH 6, and how short is within ' +
        'the range of its half-saturation.',
      chosen: 'one-sided: any low value hits; what may not come is counted above',
    },
    {
      what: 'nitrogen used by fish and plants at pH 7.5, of feed',
      unit: '%',
      published: { low: 47.25, high: 47.35 },
      where: 'abstract',
      mark: 'R',
      value: share('7.5'),
      chosen: 'fish, feed and area of plants are assumed, so that the level says little',
    },
    {
      what: 'nitrogen used at pH 6.0 over that at 7.5',
      unit: '1',
      published: { low: 1.07, high: 1.08 },
      where: 'abstract, 50.9 and 47.3 %',
      mark: 'R',
      value: (runs) => share('6')(runs) / share('7.5')(runs),
    },
    {
      what: 'nitrogen used at pH 9.0 over that at 7.5',
      unit: '1',
      published: { low: 0.94, high: 0.95 },
      where: 'abstract, 44.7 and 47.3 %',
      mark: 'R',
      value: (runs) => share('9')(runs) / share('7.5')(runs),
    },
  ],
};
