import { mcmurtryBare, mcmurtryPlanted } from './mcmurtry-1997.js';
import { nozzi2018 } from './nozzi-2018.js';
import { pantanella2012 } from './pantanella-2012.js';
import { quillere1995 } from './quillere-1995.js';
import type { SystemCase } from './system-case.js';
import { troutFarm } from './trout-farm.js';
import { tyson2008 } from './tyson-2008.js';
import { uviCurrent } from './uvi-current.js';
import { uviEarlier } from './uvi-earlier.js';
import { zou2016 } from './zou-2016.js';

/** The whole systems that Leat is held against. */
export const systemCases: readonly SystemCase[] = [
  uviCurrent,
  uviEarlier,
  tyson2008,
  pantanella2012,
  quillere1995,
  nozzi2018,
  zou2016,
  troutFarm,
  mcmurtryPlanted,
  mcmurtryBare,
];
