import { firstOrder, proportional } from './kernels/first-order.js';
import type { Kernel } from './kernels/kernel.js';
import { arrhenius, monod, monodSlope } from './kernels/rate-terms.js';
import { mineralised } from './kernels/mineral.js';
import type { Process } from './process.js';

/** Aerobic mineralisation of suspended solids, per g dry: first order, with oxygen. */
export const solidsMineralisation: Process = {
  id: 'solids-mineralisation',
  title: 'mineralisation of suspended solids',
  place: 'water',
  unit: 'g dry',
  basis: 'volume',
  reads: ['oxygen', 'solids'],
  stoichiometry: () => mineralised('solids'),
  coefficients: (values, at) => [
    values.value('solids.mineralisation-suspended') * arrhenius(values.value('solids.theta'), at.temperature),
    values.value('solids.k-oxygen'),
  ],
  ...firstOrder,
};

/** Aerobic mineralisation of the share of settled solids that oxygen reaches, per g dry. */
export const sludgeMineralisation: Process = {
  id: 'sludge-mineralisation',
  title: 'mineralisation of settled solids',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  reads: ['oxygen', 'settled'],
  stoichiometry: () => mineralised('settled'),
  coefficients: (values, at) => [
    values.value('solids.mineralisation-settled') *
      arrhenius(values.value('solids.theta'), at.temperature) *
      values.value('solids.exposed'),
    values.value('solids.k-oxygen'),
  ],
  ...firstOrder,
};

/** Denitrification at every place: coefficients and variables as in `denitrification`. */
const denitrificationKernel: Kernel = {
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 3, o += 4) {
      const anoxic = 1 - k[o + 1] * monod(v[at[n]], k[o + 2]);
      r[row + i] = k[o] * anoxic * monod(v[at[n + 1]], k[o + 3]) * v[at[n + 2]];
    }
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 3, o += 4) {
      const settled = v[at[n + 2]];
      const anoxic = 1 - k[o + 1] * monod(v[at[n]], k[o + 2]);
      const nitrate = monod(v[at[n + 1]], k[o + 3]);
      d[n] = -k[o] * k[o + 1] * monodSlope(v[at[n]], k[o + 2]) * nitrate * settled;
      d[n + 1] = k[o] * anoxic * monodSlope(v[at[n + 1]], k[o + 3]) * settled;
      d[n + 2] = k[o] * anoxic * nitrate;
    }
  },
};

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

/** Suspended solids that sink to the floor, per g dry: settling velocity x floor x concentration. */
export const settling: Process = {
  id: 'settling',
  title: 'settling of solids',
  place: 'floor',
  where: ({ floor }) => floor > 0,
  unit: 'g dry',
  basis: 'whole',
  reads: ['solids'],
  stoichiometry: () => [
    { component: 'solids', coefficient: -1 },
    { component: 'settled', coefficient: 1 },
  ],
  coefficients: (values, at) => [values.value('solids.settling-velocity') * at.floor],
  ...proportional,
};

/** Suspended solids that hardly break down and sink to the floor, per g dry: as the others. */
export const settlingRefractory: Process = {
  ...settling,
  id: 'settling-refractory',
  title: 'settling of refractory solids',
  reads: ['refractory'],
  stoichiometry: () => [
    { component: 'refractory', coefficient: -1 },
    { component: 'settled-refractory', coefficient: 1 },
  ],
};

/**
 * Suspended solids caught from the through-flow, per g dry. In a mixed vessel a capture rate
 * Q e/(1-e) takes the share e of what flows in (steady state of Q Cin = Q C + k C).
 */
export const capture: Process = {
  id: 'capture',
  title: 'capture of solids from the flow',
  place: 'floor',
  where: (vessel) => vessel.capture > 0,
  unit: 'g dry',
  basis: 'whole',
  throughFlow: true,
  reads: ['solids'],
  stoichiometry: () => [
    { component: 'solids', coefficient: -1 },
    { component: 'settled', coefficient: 1 },
  ],
  coefficients: (_values, at) => [(at.inflow * at.capture) / (1 - at.capture)],
  ...proportional,
};

/** Suspended solids that hardly break down and are caught from the through-flow, per g dry: as the others. */
export const captureRefractory: Process = {
  ...capture,
  id: 'capture-refractory',
  title: 'capture of refractory solids from the flow',
  reads: ['refractory'],
  stoichiometry: () => [
    { component: 'refractory', coefficient: -1 },
    { component: 'settled-refractory', coefficient: 1 },
  ],
};
