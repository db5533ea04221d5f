import { teacher } from './00-for-the-teacher.js';
import { words as oneTank } from './01-one-tank-and-a-tap.js';
import { words as balance } from './02-reading-a-nitrogen-balance.js';
import { words as feed } from './03-where-the-feed-goes.js';
import { words as biofilter } from './04-starting-a-biofilter.js';
import { words as alkalinity } from './05-alkalinity-and-why-ph-falls.js';
import { words as unplanted } from './06-unplanted-beds.js';
import { words as drought } from './07-drought.js';
import { words as suddenStock } from './08-sudden-stock.js';
import { words as sizing } from './09-sizing-a-filter-before-you-buy-it.js';
import { words as howSure } from './10-how-sure-are-we.js';
import { words as ownLog } from './11-your-own-log.js';
import { words as notKnown } from './12-what-this-model-does-not-know.js';
import { words as testKit } from './13-reading-a-test-kit.js';
import { words as pumpStopped } from './14-the-pump-stopped-at-night.js';
import { words as droughtSummer } from './15-a-drought-summer.js';
import { words as designAFarm } from './16-design-a-farm.js';
import { frame, names } from './frame.js';
import { logColumns, site } from './site.js';

/** The English edition. Others have the same shape: see `support/edition.ts`. */
export const edition = {
  ...{ frame, names, site, logColumns, teacher },
  lessons: {
    oneTank,
    balance,
    feed,
    biofilter,
    alkalinity,
    unplanted,
    drought,
    suddenStock,
    sizing,
    howSure,
    ownLog,
    notKnown,
    testKit,
    pumpStopped,
    droughtSummer,
    designAFarm,
  },
};
