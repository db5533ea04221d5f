import type { Run } from '../../../packages/core/src/run/run.js';
import { lastDays } from './last-days.js';
import type { Runs, SystemCase } from './system-case.js';
import { meanOf } from './unit-quantities.js';

const late = (runs: Runs, name: string): Run => lastDays(runs[name], 20);
const pH = (name: string): ((runs: Runs) => number) => {
  return (runs) => meanOf(late(runs, name), 'pH@tank');
};

/** Fish and sand, with plants and without, and no base. */
export const mcmurtry1997: SystemCase = {
  name: 'Tilapia and tomato on sand, without base',
  publication: 'McMurtry et al. 1997, J. World Aquac. Soc. 28, as cited',
  file: 'mcmurtry-1997',
  draws: 41,
  window: 20,
  fails:
    'In one draw of seven TAN or nitrite run up, as nobody doses base and pH falls to 3 to 5. And where it works the direction is not ' +
    'what was published: solids that stay in the sand denitrify what is made, which gives the base back, so that pH without plants stays ' +
    'near 8 in most draws; plants take that nitrate first, then TAN, which is acid. Sand that is watered and drained eight times a day ' +
    'has air between its grains; here its solids lie under water. Sand, tap water and evaporation are assumed.',
  runs: { planted: [], bare: [{ path: 'plantings.tomato.start', value: 'empty' }] },
  quantities: [
    {
      what: 'pH without plants',
      unit: '1',
      published: { low: 4, high: 6 },
      where: 'fell fast; under 6 is taken',
      mark: 'S',
      value: pH('bare'),
      blame: [
        {
          assumption: 'no denitrification',
          set: [{ path: 'parameters.denitrification.activity', value: '0.001' }],
          low: 4,
          high: 4.3,
        },
      ],
    },
    {
      what: 'pH with plants',
      unit: '1',
      published: { low: 5.5, high: 6.5 },
      where: 'near 6.0',
      mark: 'S',
      value: pH('planted'),
    },
  ],
};
