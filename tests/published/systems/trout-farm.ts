import type { Run } from '../../../packages/core/src/run/run.js';
import { lastDays } from './last-days.js';
import type { Runs, SystemCase } from './system-case.js';
import { meanOf } from './unit-quantities.js';

const late = (runs: Runs): Run => lastDays(runs['farm'], 30);

/** A recirculating trout farm whose alkalinity is held. */
export const troutFarm: SystemCase = {
  name: 'Recirculating trout farm at 200 mg/L of alkalinity',
  publication:
    'Figures of a farm, read and from memory: make-up, feed, nitrate; pH that goes with the alkalinity',
  file: 'trout-farm',
  draws: 41,
  window: 30,
  fails:
    'At 14 degC the assumed filter (4 m3 of carriers, its film begun at a share of its room) is at its limit. In four draws of nine most ' +
    'of the trout die: of un-ionised ammonia at pH 8 in two of three of these, else of nitrite beyond what 20 mg/L of chloride, which ' +
    'is assumed, keeps off. What surface such a farm has is not with us.',
  runs: { farm: [] },
  quantities: [
    {
      what: 'pH in the tanks',
      unit: '1',
      published: { low: 7.2, high: 7.8 },
      where: 'near 7.5 at 200 mg/L',
      mark: 'M',
      value: (runs) => meanOf(late(runs), 'pH@tanks'),
      miss:
        'The aeration that was assumed (6 1/h in the tanks) leaves 3-5 mg/L of carbon dioxide. 200 mg/L of alkalinity have pH 7.5 ' +
        'with 13 mg/L, as on a farm that brings oxygen in as gas. With a sixth of the air pH comes out, and oxygen is then low.',
      blame: [
        {
          assumption: 'a sixth of the air in the tanks, a fifth in the filter',
          set: [
            { path: 'vessels.tanks.aeration.rate', value: '1 1/h' },
            { path: 'vessels.filter.aeration.rate', value: '2 1/h' },
          ],
          low: 7.4,
          high: 7.6,
        },
      ],
    },
    {
      what: 'nitrate in the tanks',
      unit: 'mg N/L',
      published: { low: 95, high: 105 },
      where: 'near 100',
      mark: 'R',
      value: (runs) => meanOf(late(runs), 'nitrate@tanks'),
      vague:
        'From draws in which the trout die and hardly any nitrate is made to those in which they live. There 150-205 come out, too ' +
        'much: the model takes more of the nitrogen in feed to TAN and nitrate than was measured.',
    },
  ],
};
