import type { Process } from './process.js';
/**
 * Hydrolysis of suspended solids, per g dry: first order, with oxygen or without (bacteria of the gut come with faeces).
 * Henze et al. 1987 (ASM1): to dissolved matter, nitrogen organic first.
 */
export declare const solidsHydrolysis: Process;
/** Hydrolysis of what hardly breaks down, per g dry of suspended solids: slow, first order. */
export declare const refractoryHydrolysis: Process;
/** The same of settled solids. */
export declare const refractorySludgeHydrolysis: Process;
/**
 * Breakdown with oxygen of the share of settled solids that it reaches, per g dry hydrolysed: a share of the demand
 * stays as cells (`solids.yield`), which are settled solids again; the rest is burnt, its nitrogen to TAN.
 */
export declare const sludgeMineralisation: Process;
/**
 * Denitrification in settled solids, per g dry hydrolysed: what oxygen does not reach is burnt with nitrate (2.86 g COD
 * per g N, 1 eq of alkalinity per mol N, by closure), less the cells that stay, as fast as nitrate comes
 * through the still water over the floor.
 */
export declare const denitrification: Process;
/**
 * Fermentation of settled solids, per g dry: where neither oxygen nor nitrate comes they go into solution (trout sludge without
 * air: two thirds to three quarters of it as fatty acids, Suhr et al. 2013); no cells are counted.
 */
export declare const sludgeFermentation: Process;
/**
 * Suspended solids that sink to the floor, per g dry: settling velocity x floor x concentration, less where air stirs the
 * water over it. Air lifts by its power over a floor, and so by the oxygen it transfers there, kLa V / A: half settles at
 * `solids.stirring`. What keeps biosolids from settling in aerated lagoons and what lifts them all lie a factor of four
 * apart, one to nine parts and nine to one: the cube.
 */
export declare const settling: Process;
/** Suspended solids that hardly break down and sink to the floor, per g dry: as the others. */
export declare const settlingRefractory: Process;
/**
 * Suspended solids caught from the through-flow, per g dry. In a mixed vessel a capture rate
 * Q e/(1-e) takes the share e of what flows in (steady state of Q Cin = Q C + k C).
 */
export declare const capture: Process;
/** Suspended solids that hardly break down and are caught from the through-flow, per g dry: as the others. */
export declare const captureRefractory: Process;
//# sourceMappingURL=solids.d.ts.map