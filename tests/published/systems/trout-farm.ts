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
    'In one draw of ten TAN or nitrite outrun the filter: its surface is assumed, and a cycled film holds no more cells than the feed of the ' +
    'start sustains, in water at 14 degC, where it grows slowly.',
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
        'Too much: 41 g of nitrate nitrogen per kg of feed where 24 were measured. A quarter of what trout give off was particles there, a ' +
        'tenth is here, and what is caught of them is drained; and nothing on carriers or walls denitrifies here.',
    },
  ],
};
