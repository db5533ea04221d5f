import * as crops from './crops.js';
import * as dosers from './dosers.js';
import * as fish from './fish.js';
import * as gas from './gas.js';
import * as nitrifiers from './nitrifiers.js';
import type { Process } from './process.js';
import * as solids from './solids.js';

const list: readonly Process[] = [
  fish.feeding,
  fish.uneatenFeed,
  fish.upkeep,
  fish.mortality,
  fish.mortalityCount,
  nitrifiers.ammoniaOxidation,
  nitrifiers.ammoniaOxidationIdle,
  nitrifiers.nitriteOxidation,
  nitrifiers.nitriteOxidationIdle,
  nitrifiers.aobDecay,
  nitrifiers.nobDecay,
  nitrifiers.acclimating,
  solids.solidsMineralisation,
  solids.sludgeMineralisation,
  solids.denitrification,
  solids.settling,
  solids.capture,
  crops.cropGrowing,
  crops.nitrateUptake,
  crops.tanUptake,
  gas.oxygenExchange,
  gas.carbonDioxideExchange,
  gas.ammoniaLoss,
  dosers.dosingByPh,
  dosers.dosingByAlkalinity,
];

/** Every process, in the order of the printed table: fish, biofilm, solids, crops, air, dosers. Nobody can change it. */
export const processes: readonly Process[] = /* @__PURE__ */ Object.freeze(
  list.map((process) => Object.freeze(process)),
);
