import type { Process } from './process.js';
import { ammoniaLoss } from './gas.js';
import { ammoniaOxidation } from './nitrifiers.js';
import { ammoniaOxidationIdle } from './nitrifiers.js';
import { aobDecay } from './nitrifiers.js';
import { capture } from './solids.js';
import { carbonDioxideExchange } from './gas.js';
import { cropGrowing } from './crops.js';
import { denitrification } from './solids.js';
import { feeding } from './fish.js';
import { mortality } from './fish.js';
import { mortalityCount } from './fish.js';
import { nitrateUptake } from './crops.js';
import { nitriteOxidation } from './nitrifiers.js';
import { nitriteOxidationIdle } from './nitrifiers.js';
import { nobDecay } from './nitrifiers.js';
import { oxygenExchange } from './gas.js';
import { settling } from './solids.js';
import { sludgeMineralisation } from './solids.js';
import { solidsMineralisation } from './solids.js';
import { tanUptake } from './crops.js';
import { uneatenFeed } from './fish.js';
import { upkeep } from './fish.js';

/** Every process, in the order of the printed table: fish, biofilm, solids, crops, air. */
export const processes: readonly Process[] = [
  feeding,
  uneatenFeed,
  upkeep,
  mortality,
  mortalityCount,
  ammoniaOxidation,
  ammoniaOxidationIdle,
  nitriteOxidation,
  nitriteOxidationIdle,
  aobDecay,
  nobDecay,
  solidsMineralisation,
  sludgeMineralisation,
  denitrification,
  settling,
  capture,
  cropGrowing,
  nitrateUptake,
  tanUptake,
  oxygenExchange,
  carbonDioxideExchange,
  ammoniaLoss,
];
