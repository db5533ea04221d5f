import type { Run } from '../../../packages/core/src/run/run.js';
import { lastDays } from './last-days.js';
import type { Runs, SystemCase } from './system-case.js';
import { meanOf } from './unit-quantities.js';

/** The last four sales. */
const late = (runs: Runs): Run => lastDays(runs['farm'], 160);

/** A recirculating trout farm whose alkalinity is held. */
export const troutFarm: SystemCase = {
  name: 'Recirculating trout farm at 200 mg/L of alkalinity',
  publication:
    'Figures of a farm, read and from memory: make-up, feed, nitrate; pH that goes with the alkalinity',
  file: 'trout-farm',
  draws: 41,
  window: 160,
  runs: { farm: [] },
  quantities: [
    {
      what: 'pH in the tanks',
      unit: '1',
      published: { low: 7.2, high: 7.8 },
      where: 'near 7.5 at 200 mg/L',
      mark: 'M',
      value: (runs) => meanOf(late(runs), 'pH@tanks'),
    },
    {
      what: 'nitrate in the tanks',
      unit: 'mg N/L',
      published: { low: 95, high: 105 },
      where: 'near 100',
      mark: 'R',
      value: (runs) => meanOf(late(runs), 'nitrate@tanks'),
      miss:
        '34 g of nitrate nitrogen per kg of feed where 24 were measured. Trout keep 33 % of the nitrogen here, 35-48 in feeding trials; ' +
        'particles, which are drained, hold a seventh of what leaves the fish, where a quarter was measured: they are given 3 % of nitrogen, ' +
        'which is what undigested protein leaves. With 4.5 % two fifths of the gap are gone: nothing on carriers or walls denitrifies here.',
      blame: [
        {
          assumption: '4.5 % of nitrogen in particles',
          set: [{ path: 'parameters.solids.nitrogen', value: '0.045' }],
          low: 120,
          high: 128,
        },
      ],
    },
  ],
};
