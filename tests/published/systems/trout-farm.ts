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
        '35 g of nitrate nitrogen per kg of feed where 24 were measured. Trout keep 33 % of the nitrogen given here, 36 % of what they eat, as trout ' +
        'of 106 g on feeds of 20 % fat did (three feeds: see the papers above). By the same abstract trout of 175 g on an extruded feed of ' +
        '28 % fat took 0.90 g of it to a gram and released 30 kg of nitrogen per t, faeces among them: that would bring the 24 g about. Trout ' +
        'of the tables do not convert such a feed so well: at 0.94 % a day upkeep takes half of it. Particles, which are drained, hold a ' +
        'seventh of what leaves the fish, where a quarter was measured: undigested protein leaves no more. Nothing on carriers or walls ' +
        'denitrifies here.',
      blame: [
        {
          assumption: '4.5 % of nitrogen in particles',
          set: [{ path: 'parameters.solids.nitrogen', value: '0.045' }],
          low: 131,
          high: 137,
        },
        {
          assumption: 'feed of 28 % fat (1.55 g COD per g), eaten at the same rations',
          set: [{ path: 'parameters.feed.trout-42.demand', value: '1.55' }],
          low: 135,
          high: 141,
        },
      ],
    },
  ],
};
