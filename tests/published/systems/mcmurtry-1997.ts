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
    'Without base and in soft water little inorganic carbon is left at pH 4 to 6, ammonia oxidisers wait for it, and TAN stands ' +
    'at tens of mg N/L in most draws, planted or not. The published beds had more to give: sand, tap water and evaporation ' +
    'are assumed.',
  runs: { planted: [], bare: [{ path: 'plantings.tomato.start', value: 'empty' }] },
  quantities: [
    {
      what: 'pH without plants',
      unit: '1',
      published: { low: 4, high: 6 },
      where: 'fell fast; under 6 is taken',
      mark: 'S',
      value: pH('bare'),
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
