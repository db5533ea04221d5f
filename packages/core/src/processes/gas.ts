import { exp } from '../base/elementary.js';
import { carbonDioxideInAir, carbonDioxideSaturation } from '../chemistry/acid-base.js';
import { carriedShare, oxygenSaturation } from '../chemistry/gases.js';
import type { Values } from '../library/values.js';
import { exchange, proportional } from './kernels/first-order.js';
import { arrhenius } from './kernels/rate-terms.js';
import type { Conditions, Process } from './process.js';

/** Oxygen between water and air, per g O2: transfer x (saturation - concentration). */
export const oxygenExchange: Process = {
  id: 'oxygen-exchange',
  title: 'oxygen exchange with air',
  place: 'water',
  unit: 'g O2',
  basis: 'whole',
  reads: ['oxygen'],
  stoichiometry: () => [
    { component: 'oxygen', coefficient: 1 },
    { component: 'oxygen-gas', coefficient: -1, outside: 'air' },
  ],
  coefficients: (values, at) => [
    oxygenTransfer(values, at),
    oxygenSaturation(values, at.temperature, at.pressure),
  ],
  ...exchange,
};

/**
 * Carbon dioxide between water and air, per mol: transfer x (saturation - dissolved CO2). An open surface gives 0.9 of
 * the transfer of oxygen. Air that rises in the water fills up with it and gives less.
 */
export const carbonDioxideExchange: Process = {
  id: 'carbon-dioxide-exchange',
  title: 'carbon dioxide exchange with air',
  place: 'water',
  unit: 'mol C',
  basis: 'whole',
  reads: ['carbon-dioxide'],
  stoichiometry: () => [
    { component: 'carbon', coefficient: 1 },
    { component: 'carbon-dioxide-gas', coefficient: -1, outside: 'air' },
  ],
  coefficients: (values, at) => [
    carbonDioxideTransfer(values, at),
    carbonDioxideSaturation(values, at.temperature, at.carbonDioxide, at.pressure),
  ],
  ...exchange,
};

/**
 * Water that a bed drains and is filled with again, m3 d-1, no more than flows in, as far as it comes to rest with the air
 * that takes its place: in the mean over the day, or, where its level goes up and down, while it fills.
 */
function flooded(values: Values, at: Conditions): number {
  return values.value('gas.flood-contact') * Math.min(at.flooded ?? 0, at.inflow);
}

const flooding = {
  place: 'water',
  where: (vessel) => (vessel.flooded ?? 0) > 0 || vessel.drain !== undefined,
  throughFlow: true,
  basis: 'whole',
} as const satisfies Partial<Process>;

/**
 * Oxygen from the air that draining draws into a bed, per g O2. A volume of water at rest with as much air
 * makes good r / (1 + r) of its want, with r the oxygen of air over that of water: 97 %.
 */
export const floodOxygen: Process = {
  ...flooding,
  id: 'flood-oxygen',
  title: 'oxygen from air drawn in by draining',
  unit: 'g O2',
  reads: ['oxygen'],
  stoichiometry: oxygenExchange.stoichiometry,
  coefficients: (values, at) => [
    flooded(values, at) / (1 + values.value('gas.oxygen-solubility')),
    oxygenSaturation(values, at.temperature, at.pressure),
  ],
  ...exchange,
};

/**
 * Carbon dioxide to the air that draining draws into a bed, per mol: as oxygen, but air holds no more of it
 * than water does, so that about half of the excess goes.
 */
export const floodCarbonDioxide: Process = {
  ...flooding,
  id: 'flood-carbon-dioxide',
  title: 'carbon dioxide to air drawn in by draining',
  unit: 'mol C',
  reads: ['carbon-dioxide'],
  stoichiometry: carbonDioxideExchange.stoichiometry,
  coefficients: (values, at) => {
    const ratio = carbonDioxideInAir(values, at.temperature);
    return [
      (flooded(values, at) * ratio) / (1 + ratio),
      carbonDioxideSaturation(values, at.temperature, at.carbonDioxide, at.pressure),
    ];
  },
  ...exchange,
};

/** Ammonia to air, per g N: velocity k e^(c(T-20)) x open surface x un-ionised ammonia (Stratton 1969). */
export const ammoniaLoss: Process = {
  id: 'ammonia-loss',
  title: 'ammonia to air',
  place: 'water',
  unit: 'g N',
  basis: 'whole',
  reads: ['ammonia'],
  stoichiometry: () => [
    { component: 'tan', coefficient: -1 },
    { component: 'ammonia-gas', coefficient: 1, outside: 'air' },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
  ],
  coefficients: (values, at) => [
    values.value('gas.ammonia-velocity') *
      exp(values.value('gas.ammonia-exponent') * (at.temperature - 20)) *
      at.open,
  ],
  ...proportional,
};

/** Oxygen transfer of a vessel, m3 d-1: aeration kLa x volume at the standpipe + velocity x open surface. */
function oxygenTransfer(values: Values, at: Conditions): number {
  return (
    arrhenius(values.value('gas.theta'), at.temperature) * (at.aeration * at.volume + surface(values, at))
  );
}

function surface(values: Values, at: Conditions): number {
  return values.value('gas.surface-velocity') * at.open;
}

/**
 * Transfer of carbon dioxide, m3 d-1. Air that is blown gives up a share of its oxygen (`airShare`), so its flow is known:
 * aeration x volume / (share x oxygen in water over that in air). A bubble that rises through water takes on carbon dioxide
 * as n = transfer / (flow x CO2 in air over that in water), and (1 - e^-n)/n of the transfer is left. With much air the
 * surface limits; with little the air leaves at rest with the water: flow x CO2 in air over that in water.
 */
function carbonDioxideTransfer(values: Values, at: Conditions): number {
  const warmth = arrhenius(values.value('gas.theta'), at.temperature);
  const ratio = values.value('gas.carbon-dioxide-ratio');
  const fill =
    (ratio * at.airShare * warmth) /
    (values.value('gas.oxygen-solubility') * carbonDioxideInAir(values, at.temperature));
  return ratio * warmth * (at.aeration * at.volume * carriedShare(fill) + surface(values, at));
}
