import type { Values } from '../library/values.js';
import { fedFishKernel, NITROGEN, OFFERED } from './kernels/fed-fish.js';
import {
  digestedNitrogen,
  fatUpkeep,
  feedNitrogen,
  growth,
  growthCoefficients,
  growthPartialsAt,
  growthReads,
  leanUpkeep,
  retainedDemand,
  upkeepCoefficients,
  upkeepReads,
} from './kernels/fish-energy.js';
import { intake, intakeCoefficients, intakePartialsAt, intakeReads } from './kernels/intake.js';
import { leanDemand } from './kernels/lean-body.js';
import { mineralised } from './kernels/mineral.js';
import { brokenUp } from './kernels/particles.js';
import type { Process, Term } from './process.js';

/**
 * Energy and nitrogen of fish. What is eaten (`feeding`) leaves faeces, is stored as fat for the part of its digested energy
 * that is retained, and is respired for the rest. `growing` makes lean body of that fat and of nitrogen of the feed;
 * nitrogen that was digested and not grown is given off (`excretion`). Upkeep burns fat and lean body, fed or fasting, so
 * that what is retained is k (DE - M): Lupatsch et al. 1998, Rodehutscord & Pfeffer 1999.
 */

/**
 * Feed eaten, per g. Faeces are what is not digested: of its oxygen demand a share is dissolved; the rest is particles, as
 * many as its demand and its nitrogen both allow, and what is over of either is dissolved too.
 */
export const feeding: Process = {
  id: 'feeding',
  title: 'feed eaten',
  place: 'cohort',
  perFeed: true,
  unit: 'g feed',
  basis: 'whole',
  reads: intakeReads,
  stoichiometry: (values) => {
    const nitrogen = feedNitrogen(values) - digestedNitrogen(values);
    const demand = values.value('feed.demand');
    const faecal = demand * (1 - values.value('species.energy-digestibility'));
    return [
      { component: 'feed-nitrogen', coefficient: -nitrogen, outside: 'feed' },
      { component: 'feed-demand', coefficient: -demand, outside: 'feed' },
      ...brokenUp(values, nitrogen, faecal, values.value('fish.faecal-dissolved')),
      ...burntAndKept(values, demand - faecal),
    ];
  },
  coefficients: intakeCoefficients,
  rate: intake,
  partials: (v, at, k, d) => {
    intakePartialsAt(v, at, 0, k, 0, d, 0);
  },
  kernel: fedFishKernel,
};

/** What becomes of digested oxygen demand: so much is kept as fat, the rest burnt. */
function burntAndKept(values: Values, digested: number): readonly Term[] {
  const kept = retainedDemand(values);
  return [
    { component: 'fish-fat', coefficient: kept },
    { component: 'oxygen', coefficient: kept - digested },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ];
}

/**
 * Feed not eaten, per g: breaks up into suspended particles of the same oxygen demand; nitrogen beyond that of these is
 * dissolved organic nitrogen, by closure.
 */
export const uneatenFeed: Process = {
  id: 'uneaten-feed',
  title: 'feed not eaten',
  place: 'cohort',
  perFeed: true,
  unit: 'g feed',
  basis: 'whole',
  reads: intakeReads,
  stoichiometry: (values) => {
    const nitrogen = feedNitrogen(values);
    const demand = values.value('feed.demand');
    return [
      { component: 'feed-nitrogen', coefficient: -nitrogen, outside: 'feed' },
      { component: 'feed-demand', coefficient: -demand, outside: 'feed' },
      ...brokenUp(values, nitrogen, demand, 0, values.value('solids.refractory-feed')),
    ];
  },
  coefficients: (values, at) => [...intakeCoefficients(values, at), at.fed, at.fedShare],
  rate: (v, at, k) => k[OFFERED] + k[OFFERED + 1] * v[at[5]] - intake(v, at, k),
  partials: (v, at, k, d) => {
    intakePartialsAt(v, at, 0, k, 0, d, 0);
    for (let m = 0; m < intakeReads.length; m++) d[m] = -d[m];
    d[5] += k[OFFERED + 1];
  },
  kernel: fedFishKernel,
};

/** Growth of the lean body, per g wet: of nitrogen of the feed and of energy that the feed has left as fat. */
export const growing: Process = {
  id: 'growing',
  title: 'growth of fish',
  place: 'cohort',
  perFeed: true,
  unit: 'g fish',
  basis: 'whole',
  reads: growthReads,
  stoichiometry: (values) => [
    { component: 'feed-nitrogen', coefficient: -values.value('species.body-nitrogen'), outside: 'feed' },
    { component: 'fish-fat', coefficient: -leanDemand(values) },
    { component: 'fish-mass', coefficient: 1 },
  ],
  coefficients: growthCoefficients,
  rate: growth,
  partials: (v, at, k, d) => {
    growthPartialsAt(v, at, 0, k, 0, intakePartialsAt(v, at, 0, k, 0, d, 0), d, 0);
  },
  kernel: fedFishKernel,
};

/** Nitrogen that was digested and is not grown, per g N: given off as TAN, a share as urea and other organic nitrogen. */
export const excretion: Process = {
  id: 'excretion',
  title: 'nitrogen given off by fish',
  place: 'cohort',
  perFeed: true,
  unit: 'g N',
  basis: 'whole',
  reads: growthReads,
  stoichiometry: (values) => {
    const ammonia = values.value('fish.ammonia-share');
    return [
      { component: 'feed-nitrogen', coefficient: -1, outside: 'feed' },
      { component: 'tan', coefficient: ammonia },
      { component: 'organic-nitrogen', coefficient: 1 - ammonia },
      { component: 'alkalinity', coefficient: { closes: 'charge' } },
    ];
  },
  coefficients: (values, at) => [
    ...growthCoefficients(values, at),
    digestedNitrogen(values),
    values.value('species.body-nitrogen'),
  ],
  rate: (v, at, k) => k[NITROGEN] * intake(v, at, k) - k[NITROGEN + 1] * growth(v, at, k),
  partials: (v, at, k, d) => {
    const byIntake = new Float64Array(intakeReads.length);
    const eaten = intakePartialsAt(v, at, 0, k, 0, byIntake, 0);
    for (let m = 0; m < intakeReads.length; m++) d[m] = byIntake[m];
    growthPartialsAt(v, at, 0, k, 0, eaten, d, 0);
    for (let m = 0; m < growthReads.length; m++) d[m] *= -k[NITROGEN + 1];
    for (let m = 0; m < intakeReads.length; m++) d[m] += k[NITROGEN] * byIntake[m];
  },
  kernel: fedFishKernel,
};

/** Body fat burnt by upkeep, per g COD. */
export const upkeepOfFat: Process = {
  id: 'upkeep-fat',
  title: 'upkeep of fish from fat',
  place: 'cohort',
  unit: 'g COD',
  basis: 'whole',
  reads: upkeepReads,
  stoichiometry: () => [
    { component: 'fish-fat', coefficient: -1 },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
    { component: 'carbon', coefficient: { closes: 'carbon' } },
  ],
  coefficients: upkeepCoefficients,
  ...fatUpkeep,
};

/** Lean body burnt by upkeep, per g COD: its nitrogen is given off as TAN. */
export const upkeep: Process = {
  id: 'upkeep',
  title: 'upkeep of fish from lean body (fasting excretion)',
  place: 'cohort',
  unit: 'g COD',
  basis: 'whole',
  reads: upkeepReads,
  stoichiometry: (values) => mineralised('fish-mass', 1 / leanDemand(values)),
  coefficients: upkeepCoefficients,
  ...leanUpkeep,
};
