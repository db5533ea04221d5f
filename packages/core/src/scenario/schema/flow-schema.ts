import { positive, section, share, word } from './values.js';

/** One flow of `flows`: pumped (pump, rate) or by gravity (share). */
export const flowSchema = section(
  {
    from: word('the vessel it leaves'),
    to: word('the vessel it enters'),
    pump: word('the pump that drives it').optional(),
    rate: positive('volume-flow', 'flow while the pump runs').optional(),
    share: share('share of what leaves the vessel by gravity; a single flow takes all').optional(),
  },
  'water led from one vessel to another',
);
