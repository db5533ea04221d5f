import { acclimation, acclimationCoefficients } from './kernels/acclimation.js';
import { covering } from './kernels/film-coefficients.js';
import { arrhenius } from './kernels/rate-terms.js';
import { detached } from './kernels/waste.js';
import {
  aobActivity,
  aobActivityPartials,
  aobCoefficients,
  aobReads,
  growing,
  idling,
  nobActivity,
  nobActivityPartials,
  nobCoefficients,
  nobReads,
} from './kernels/oxidiser.js';
import { aobKernel, nobKernel } from './kernels/population.js';
import { bareDecay, waking } from './kernels/resting.js';
import type { Process } from './process.js';

/**
 * Growth of ammonia oxidisers on ammonia, per g COD of cells: 1/Y g N to nitrite, cell nitrogen
 * from TAN; oxygen, alkalinity and inorganic carbon by closure (3.43 - Y g O2 per g N, 2 eq per mol N).
 * Henze et al. 1987 (Monod growth); inorganic carbon as a substrate (Guisasola et al. 2007), free ammonia and nitrous
 * acid as inhibitors (Park & Bae 2009); rate per surface limited by the room of this population.
 */
export const ammoniaOxidation: Process = {
  id: 'ammonia-oxidation',
  title: 'growth of ammonia oxidisers',
  place: 'surface',
  unit: 'g COD',
  basis: 'whole',
  reads: aobReads,
  stoichiometry: (values) => [
    { component: 'aob', coefficient: 1 },
    { component: 'nitrite', coefficient: 1 / values.value('aob.yield') },
    { component: 'tan', coefficient: -1 / values.value('aob.yield') - values.value('nitrifier.nitrogen') },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ],
  salted: true,
  coefficients: aobCoefficients,
  ...growing(aobActivity, aobActivityPartials),
  kernel: aobKernel,
};

/**
 * Ammonia oxidised without growth where their room is full, per g N: TAN to nitrite,
 * NH4+ + 3/2 O2 -> NO2- + H2O + 2 H+ (3.43 g O2 and 2 eq of alkalinity per mol N).
 */
export const ammoniaOxidationIdle: Process = {
  id: 'ammonia-oxidation-idle',
  title: 'ammonia oxidation by a full film',
  place: 'surface',
  unit: 'g N',
  basis: 'whole',
  reads: aobReads,
  stoichiometry: () => [
    { component: 'tan', coefficient: -1 },
    { component: 'nitrite', coefficient: 1 },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
  ],
  salted: true,
  coefficients: aobCoefficients,
  ...idling(aobActivity, aobActivityPartials),
  kernel: aobKernel,
};

/** Decay of ammonia oxidisers, per g COD: what heterotrophs leave bare dies and becomes solids. Henze et al. 1987. */
export const aobDecay: Process = {
  id: 'aob-decay',
  title: 'decay of ammonia oxidisers',
  place: 'surface',
  unit: 'g COD',
  basis: 'whole',
  reads: ['oxygen', 'aob', 'heterotrophs'],
  stoichiometry: (values) => detached('aob', values),
  coefficients: (values, at) => [
    values.value('aob.decay') * arrhenius(values.value('aob.decay-theta'), at.temperature),
    values.value('aob.k-oxygen'),
    ...covering(values, at),
  ],
  ...bareDecay,
};

/**
 * Growth of nitrite oxidisers, per g COD of cells: 1/Y g N of nitrite to nitrate (1.14 - Y g O2 per
 * g N), cell nitrogen from nitrite too, by assimilatory reduction, so that growth ends with its own
 * substrate; inhibited by free ammonia and nitrous acid (Park & Bae 2009).
 */
export const nitriteOxidation: Process = {
  id: 'nitrite-oxidation',
  title: 'growth of nitrite oxidisers',
  place: 'surface',
  unit: 'g COD',
  basis: 'whole',
  reads: nobReads,
  stoichiometry: (values) => [
    { component: 'nob', coefficient: 1 },
    {
      component: 'nitrite',
      coefficient: -1 / values.value('nob.yield') - values.value('nitrifier.nitrogen'),
    },
    { component: 'nitrate', coefficient: 1 / values.value('nob.yield') },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ],
  salted: true,
  coefficients: nobCoefficients,
  ...growing(nobActivity, nobActivityPartials),
  kernel: nobKernel,
};

/** Nitrite oxidised without growth where their room is full, per g N: NO2- + 1/2 O2 -> NO3- (1.14 g O2). */
export const nitriteOxidationIdle: Process = {
  id: 'nitrite-oxidation-idle',
  title: 'nitrite oxidation by a full film',
  place: 'surface',
  unit: 'g N',
  basis: 'whole',
  reads: nobReads,
  stoichiometry: () => [
    { component: 'nitrite', coefficient: -1 },
    { component: 'nitrate', coefficient: 1 },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
  ],
  salted: true,
  coefficients: nobCoefficients,
  ...idling(nobActivity, nobActivityPartials),
  kernel: nobKernel,
};

/** Decay of nitrite oxidisers, per g COD: what heterotrophs leave bare dies and becomes solids. Henze et al. 1987. */
export const nobDecay: Process = {
  id: 'nob-decay',
  title: 'decay of nitrite oxidisers',
  place: 'surface',
  unit: 'g COD',
  basis: 'whole',
  reads: ['oxygen', 'nob', 'heterotrophs'],
  stoichiometry: (values) => detached('nob', values),
  coefficients: (values, at) => [
    values.value('nob.decay') * arrhenius(values.value('nob.decay-theta'), at.temperature),
    values.value('nob.k-oxygen'),
    ...covering(values, at),
  ],
  ...bareDecay,
};

/**
 * The film gets used to the pH of its water, per pH: the lower flank of the bell of both populations moves to `distance`
 * below it, within its ends, in a time constant. Films that grew in acid water nitrified at pH 4.3 and 5 as well as
 * others at 7 (Tarre & Green 2004), within 60 d of the change (Water Sci. Technol. 55(8-9):363); one that was new to it
 * did at pH 6 a quarter of what it did at 8 (Tyson et al. 2008).
 */
export const acclimating: Process = {
  id: 'acclimating',
  title: 'acclimation of nitrifiers to pH',
  place: 'surface',
  unit: 'pH',
  basis: 'whole',
  reads: ['pH', 'acclimation'],
  stoichiometry: () => [{ component: 'acclimation', coefficient: 1 }],
  coefficients: acclimationCoefficients,
  ...acclimation,
};

/**
 * Cells awake again, as a share of all nitrifiers of a surface: those that a bath, a dry spell or lack of air has stunned
 * keep their room and what they are made of, and come back faster than others would grow in their place.
 */
export const wakening: Process = {
  id: 'wakening',
  title: 'wakening of stunned nitrifiers',
  place: 'surface',
  unit: '1',
  basis: 'whole',
  reads: ['oxygen', 'awake'],
  stoichiometry: () => [{ component: 'awake', coefficient: 1 }],
  coefficients: (values) => [
    values.value('biofilm.wakening'),
    values.value('aob.k-oxygen'),
    values.value('biofilm.stunning'),
  ],
  ...waking,
};
