import type { Process } from './process.js';
import { ammoniaLoss } from './ammonia-loss.js';
import { ammoniaOxidation } from './ammonia-oxidation.js';
import { ammoniaOxidationIdle } from './ammonia-oxidation-idle.js';
import { aobDecay } from './aob-decay.js';
import { capture } from './capture.js';
import { carbonDioxideExchange } from './carbon-dioxide-exchange.js';
import { cropGrowing } from './crop-growing.js';
import { denitrification } from './denitrification.js';
import { feeding } from './feeding.js';
import { mortality } from './mortality.js';
import { mortalityCount } from './mortality-count.js';
import { nitrateUptake } from './nitrate-uptake.js';
import { nitriteOxidation } from './nitrite-oxidation.js';
import { nitriteOxidationIdle } from './nitrite-oxidation-idle.js';
import { nobDecay } from './nob-decay.js';
import { oxygenExchange } from './oxygen-exchange.js';
import { settling } from './settling.js';
import { sludgeMineralisation } from './sludge-mineralisation.js';
import { solidsMineralisation } from './solids-mineralisation.js';
import { tanUptake } from './tan-uptake.js';
import { uneatenFeed } from './uneaten-feed.js';
import { upkeep } from './upkeep.js';

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
