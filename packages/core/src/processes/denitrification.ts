import type { Process } from './process.js';
import { denitrificationKernel } from './kinetics/denitrification-kernel.js';
import { arrhenius, monod, monodSlope } from './kinetics/limits.js';

/**
 * Denitrification in settled solids, per g dry: the solids not reached by oxygen are mineralised on
 * nitrate (2.86 g COD per g N, 1 eq of alkalinity per mol N, by closure). Its share of the
 * mineralisation grows as oxygen falls: 1 - exposed x M(O2).
 */
export const denitrification: Process = {
  id: 'denitrification',
  title: 'denitrification in settled solids',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  reads: ['oxygen', 'nitrate', 'settled'],
  stoichiometry: (values) => {
    // Oxygen demand of a g of solids over that of nitrate going to nitrogen gas (5/4 mol O2 per mol N).
    const nitrate =
      (values.value('solids.demand') * values.value('molar.nitrogen')) /
      (1.25 * values.value('molar.oxygen-gas'));
    return [
      { component: 'settled', coefficient: -1 },
      { component: 'nitrate', coefficient: -nitrate },
      { component: 'dinitrogen', coefficient: nitrate, outside: 'air' },
      { component: 'tan', coefficient: values.value('solids.nitrogen') },
      { component: 'alkalinity', coefficient: { closes: 'charge' } },
      { component: 'carbon', coefficient: { closes: 'carbon' } },
    ];
  },
  coefficients: (values, at) => [
    values.value('solids.mineralisation-settled') *
      arrhenius(values.value('solids.theta'), at.temperature) *
      values.value('denitrification.activity'),
    values.value('solids.exposed'),
    values.value('solids.k-oxygen'),
    values.value('denitrification.k-nitrate'),
  ],
  rate: (v, at, k) => k[0] * (1 - k[1] * monod(v[at[0]], k[2])) * monod(v[at[1]], k[3]) * v[at[2]],
  partials: (v, at, k, d) => {
    const anoxic = 1 - k[1] * monod(v[at[0]], k[2]);
    const nitrate = monod(v[at[1]], k[3]);
    d[0] = -k[0] * k[1] * monodSlope(v[at[0]], k[2]) * nitrate * v[at[2]];
    d[1] = k[0] * anoxic * monodSlope(v[at[1]], k[3]) * v[at[2]];
    d[2] = k[0] * anoxic * nitrate;
  },
  kernel: denitrificationKernel,
};
