import { createParameters } from '@leat/core';
import { scopeTo } from '../../../packages/core/src/model/scope.js';
import { aobCoefficients, nobCoefficients } from '../../../packages/core/src/processes/kernels/oxidiser.js';
import { anyConditions } from '../../../packages/core/src/processes/process.js';
import { about, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const values = scopeTo(createParameters(), {});
const chloride = values.value('molar.chlorine');
/** g per mol of sodium chloride. */
const saltMass = 58.44;

/** Share of what nitrifiers could do that salt of an ionic strength leaves, %: ammonia or nitrite oxidisers. */
function left(of: typeof aobCoefficients, ionic: number): number {
  const [salted] = of(values, { ...anyConditions, ionic });
  const [fresh] = of(values, { ...anyConditions, ionic: 0 });
  return (100 * salted) / fresh;
}

const groups = [
  ['ammonia oxidisers', 'aob', aobCoefficients, 64],
  ['nitrite oxidisers', 'nob', nobCoefficients, 89],
] as const;

const moussa = { source: 'moussa-2006', where: 'abstract: steady state', mark: 'R' } as const;
const suddenly =
  'salt of the law had come by steps, and films had time to get used to it; here a freshwater filter was salted at once. The range of the number reaches there';

/** Salt on nitrifiers. */
export const salt: Topic = {
  title: 'Salt on nitrifiers',
  kind: 'process',
  note: 'What is left of the rate in water without salt. Salt is sodium chloride: its ionic strength is that of its chloride.',
  checks: [
    ...groups.flatMap(([who, id, of, tenth]): readonly PublishedCheck[] =>
      [
        [10, tenth],
        [40, 5],
      ].map(([grams, published]) => ({
        id: `salt-${id}-${grams}`,
        ...moussa,
        what: `rate of ${who} left at ${grams} g/L of chloride`,
        unit: '%',
        ...about(published, 1, 'points'),
        chosen: `${id}.k-salt`,
        compute: () => left(of, grams / chloride),
      })),
    ),
    ...groups.map(([who, id, of]): PublishedCheck => ({
      id: `salt-at-once-${id}`,
      source: 'kinyage-2019',
      where: 'abstract: 0.10 and 0.12 to 0.01 g N/m2/d at 15 g of salt per L',
      mark: 'R',
      what: `rate of ${who} left of a freshwater filter salted at once to 15 g/L`,
      unit: '%',
      ...within(50, id === 'aob' ? 10 : 8.3),
      miss: suddenly,
      compute: () => left(of, 15 / saltMass),
    })),
  ],
};
