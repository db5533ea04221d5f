import * as crops from './crops.js';
import * as deaths from './deaths.js';
import * as dissolved from './dissolved.js';
import * as dosers from './dosers.js';
import * as fish from './fish.js';
import * as gas from './gas.js';
import * as heterotrophs from './heterotrophs.js';
import * as lime from './lime.js';
import * as nitrifiers from './nitrifiers.js';
import * as solids from './solids.js';
const list = [
    fish.feeding,
    fish.uneatenFeed,
    fish.growing,
    fish.excretion,
    fish.upkeepOfFat,
    fish.upkeep,
    deaths.mortality,
    deaths.mortalityFat,
    deaths.mortalityCount,
    deaths.mortalityLeft,
    deaths.mortalityLeftFat,
    deaths.rot,
    deaths.rotFat,
    nitrifiers.ammoniaOxidation,
    nitrifiers.ammoniaOxidationIdle,
    nitrifiers.nitriteOxidation,
    nitrifiers.nitriteOxidationIdle,
    nitrifiers.aobDecay,
    nitrifiers.nobDecay,
    nitrifiers.acclimating,
    nitrifiers.wakening,
    heterotrophs.heterotrophGrowth,
    heterotrophs.heterotrophLoss,
    solids.solidsHydrolysis,
    solids.refractoryHydrolysis,
    solids.refractorySludgeHydrolysis,
    solids.sludgeMineralisation,
    solids.denitrification,
    solids.sludgeFermentation,
    solids.settling,
    solids.settlingRefractory,
    solids.capture,
    solids.captureRefractory,
    dissolved.dissolvedOxidation,
    dissolved.dissolvedDenitrification,
    dissolved.ammonification,
    crops.cropGrowing,
    crops.nitrateUptake,
    crops.tanUptake,
    crops.calciumUptake,
    crops.fruitGrowing,
    gas.oxygenExchange,
    gas.carbonDioxideExchange,
    gas.ammoniaLoss,
    gas.floodOxygen,
    gas.floodCarbonDioxide,
    lime.dissolution,
    lime.scale,
    dosers.dosingByPh,
    dosers.dosingByAlkalinity,
];
/** Every process, in the order of the printed table: fish, biofilm, solids, crops, air, dosers. Nobody can change it. */
export const processes = /* @__PURE__ */ Object.freeze(list.map((process) => Object.freeze(process)));
//# sourceMappingURL=index.js.map