import type { Process } from './process.js';
/** Oxygen between water and air, per g O2: transfer x (saturation - concentration). */
export declare const oxygenExchange: Process;
/**
 * Carbon dioxide between water and air, per mol: transfer x (saturation - dissolved CO2). An open surface gives 0.9 of
 * the transfer of oxygen. Air that rises in the water fills up with it and gives less.
 */
export declare const carbonDioxideExchange: Process;
/**
 * Oxygen from the air that draining draws into a bed, mean over the day, per g O2. A volume of water at rest with as much air
 * makes good r / (1 + r) of its want, with r the oxygen of air over that of water: 97 %.
 */
export declare const floodOxygen: Process;
/**
 * Carbon dioxide to the air that draining draws into a bed, mean over the day, per mol: as oxygen, but air holds no more of it
 * than water does, so that about half of the excess goes.
 */
export declare const floodCarbonDioxide: Process;
/** Ammonia to air, per g N: velocity k e^(c(T-20)) x open surface x un-ionised ammonia (Stratton 1969). */
export declare const ammoniaLoss: Process;
//# sourceMappingURL=gas.d.ts.map