import { wholePower } from '../base/elementary.js';
import type { Values } from '../library/values.js';
import { proportional } from './kernels/first-order.js';
import {
  airlessCoefficients,
  anaerobic,
  anoxic,
  anoxicReads,
  breathCoefficients,
  nitrateTaken,
  oxic,
  oxicReads,
  sludgeKernel,
} from './kernels/sludge.js';
import { arrhenius } from './kernels/rate-terms.js';
import type { Conditions, Process, Term } from './process.js';

/** Matter of so much demand, g O2, and nitrogen, g N, brought into solution: dissolved, and organic nitrogen. */
const solved = (demand: number, nitrogen: number): readonly Term[] => [
  { component: 'dissolved', coefficient: demand },
  { component: 'organic-nitrogen', coefficient: nitrogen },
];

/**
 * Hydrolysis of suspended solids, per g dry: first order, with oxygen or without (bacteria of the gut come with faeces).
 * Henze et al. 1987 (ASM1): to dissolved matter, nitrogen organic first.
 */
export const solidsHydrolysis: Process = {
  id: 'solids-hydrolysis',
  title: 'hydrolysis of suspended solids',
  place: 'water',
  unit: 'g dry',
  basis: 'volume',
  reads: ['solids'],
  stoichiometry: (values) => [
    { component: 'solids', coefficient: -1 },
    ...solved(values.value('solids.demand'), values.value('solids.nitrogen')),
  ],
  coefficients: (values, at) => [
    values.value('solids.hydrolysis-suspended') * arrhenius(values.value('solids.theta'), at.temperature),
  ],
  ...proportional,
};

const refractoryRate = (values: Values, at: Conditions): readonly [number] => [
  values.value('solids.refractory-hydrolysis') * arrhenius(values.value('solids.theta'), at.temperature),
];

/** Hydrolysis of what hardly breaks down, per g dry of suspended solids: slow, first order. */
export const refractoryHydrolysis: Process = {
  id: 'refractory-hydrolysis',
  title: 'hydrolysis of refractory solids',
  place: 'water',
  unit: 'g dry',
  basis: 'volume',
  reads: ['refractory'],
  stoichiometry: (values) => [
    { component: 'refractory', coefficient: -1 },
    ...solved(values.value('solids.refractory-demand'), values.value('solids.refractory-nitrogen')),
  ],
  coefficients: refractoryRate,
  ...proportional,
};

/** The same of settled solids. */
export const refractorySludgeHydrolysis: Process = {
  id: 'refractory-sludge-hydrolysis',
  title: 'hydrolysis of refractory settled solids',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  reads: ['settled-refractory'],
  stoichiometry: (values) => [
    { component: 'settled-refractory', coefficient: -1 },
    ...solved(values.value('solids.refractory-demand'), values.value('solids.refractory-nitrogen')),
  ],
  coefficients: refractoryRate,
  ...proportional,
};

/**
 * Breakdown with oxygen of the share of settled solids that it reaches, per g dry hydrolysed: a share of the demand
 * stays as cells (`solids.yield`), which are settled solids again; the rest is burnt, its nitrogen to TAN.
 */
export const sludgeMineralisation: Process = {
  id: 'sludge-mineralisation',
  title: 'breakdown of settled solids with oxygen',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  reads: oxicReads,
  stoichiometry: (values) => [
    { component: 'settled', coefficient: values.value('solids.yield') - 1 },
    { component: 'tan', coefficient: { closes: 'nitrogen' } },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ],
  coefficients: breathCoefficients,
  ...oxic,
  kernel: sludgeKernel,
};

/**
 * Denitrification in settled solids, per g dry hydrolysed: what oxygen does not reach is burnt with nitrate (2.86 g COD
 * per g N, 1 eq of alkalinity per mol N, by closure), less the cells that stay, as fast as nitrate comes
 * through the still water over the floor.
 */
export const denitrification: Process = {
  id: 'denitrification',
  title: 'denitrification in settled solids',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  reads: anoxicReads,
  stoichiometry: (values) => {
    const nitrate = nitrateTaken(values);
    return [
      { component: 'settled', coefficient: values.value('solids.yield') - 1 },
      { component: 'nitrate', coefficient: -nitrate },
      { component: 'dinitrogen', coefficient: nitrate, outside: 'air' },
      { component: 'tan', coefficient: { closes: 'nitrogen' } },
      { component: 'alkalinity', coefficient: { closes: 'charge' } },
      { component: 'carbon', coefficient: { closes: 'carbon' } },
    ];
  },
  coefficients: airlessCoefficients,
  ...anoxic,
  kernel: sludgeKernel,
};

/**
 * Fermentation of settled solids, per g dry: where neither oxygen nor nitrate comes they go into solution (trout sludge without
 * air: two thirds to three quarters of it as fatty acids, Suhr et al. 2013); no cells are counted.
 */
export const sludgeFermentation: Process = {
  id: 'sludge-fermentation',
  title: 'fermentation of settled solids',
  place: 'floor',
  unit: 'g dry',
  basis: 'whole',
  reads: anoxicReads,
  stoichiometry: (values) => [
    { component: 'settled', coefficient: -1 },
    ...solved(values.value('solids.demand'), values.value('solids.nitrogen')),
  ],
  coefficients: airlessCoefficients,
  ...anaerobic,
  kernel: sludgeKernel,
};

/**
 * Suspended solids that sink to the floor, per g dry: settling velocity x floor x concentration, less where air stirs the
 * water over it. Air lifts by its power over a floor, and so by the oxygen it transfers there, kLa V / A: half settles at
 * `solids.stirring`. What keeps biosolids from settling in aerated lagoons and what lifts them all lie a factor of four
 * apart, one to nine parts and nine to one: the cube.
 */
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
  coefficients: (values, at) => [
    (values.value('solids.settling-velocity') * at.floor) /
      (1 + wholePower((at.aeration * at.volume) / (at.floor * values.value('solids.stirring')), 3)),
  ],
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
