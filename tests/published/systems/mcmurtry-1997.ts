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
    'In nearly all draws nobody doses base, pH falls to 4 to 5 within weeks, and there inorganic carbon is short and ammonia oxidation ' +
    'stands still, so that TAN runs up: without plants, and somewhat later with them. Without plants that is what was published. With ' +
    'plants pH held near 6: the film there went on at little carbonate, so that the tomatoes took nitrate, which gives base back, where ' +
    'here they are left with TAN, which is acid. Less feed, a harder tap or three times the tomatoes put it off by weeks and change no ' +
    'more. Sand, feed, tap water and evaporation are assumed.',
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
      miss:
        'Ammonia oxidation stands still where acid water holds only the carbon dioxide of air, 0.02 mol/m3, a fifth of its ' +
        'half-saturation; then plants feed on TAN and give off acid. Films in acid soils and filters go on, so that the law of inorganic ' +
        'carbon, from water near pH 7.5, is too sharp there, or sand gave base.',
    },
  ],
};
