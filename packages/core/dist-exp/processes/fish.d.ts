import type { Process } from './process.js';
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
export declare const feeding: Process;
/**
 * Feed not eaten, per g: breaks up into suspended particles of the same oxygen demand; nitrogen beyond that of these is
 * dissolved organic nitrogen, by closure.
 */
export declare const uneatenFeed: Process;
/** Growth of the lean body, per g wet: of nitrogen of the feed and of energy that the feed has left as fat. */
export declare const growing: Process;
/** Nitrogen that was digested and is not grown, per g N: given off as TAN, a share as urea and other organic nitrogen. */
export declare const excretion: Process;
/** Body fat burnt by upkeep, per g COD. */
export declare const upkeepOfFat: Process;
/** Lean body burnt by upkeep, per g COD: its nitrogen is given off as TAN. */
export declare const upkeep: Process;
//# sourceMappingURL=fish.d.ts.map