import * as z from 'zod';
import { cap } from './cap.js';
import { complain, kindComplaint } from '../file/complaint.js';
import { fishCount, rationSchema } from './stock.js';
import { moment, planTimes } from './times.js';
import { bounded, choice, positive, section, truth, word } from '../file/values.js';
import { actionRanges, feedRanges, words } from '../checks/ranges.js';
const cohort = word('a cohort of `fish`');
const planting = word('a name of `plantings`');
const vessel = word('a name of `vessels`');
const take = {
    cohort,
    share: bounded(actionRanges['harvest-fish'].share, 'share of the fish; default: none, where a number is given').optional(),
    number: fishCount.meta({ description: 'number of fish; default: none, where a share is given' }).optional(),
};
const capText = '`stopped`, `restored` or a map with cap';
const topUpChange = z.union([
    z.enum(['stopped', 'restored']),
    section({ cap: cap('most in one day or one week, as written') }, 'a cap'),
], {
    error: ({ input }) => typeof input === 'string'
        ? complain({ problem: 'unknown word', expected: capText })
        : kindComplaint(input, capText),
});
const feedChange = section({
    cohort,
    ration: rationSchema
        .meta({ description: 'another ration; range: 0 or more; default: as it is' })
        .optional(),
    feed: word('a feed of the library; default: as it is').optional(),
    protein: bounded(feedRanges.protein, 'protein in the feed; default: that of the feed').optional(),
    factor: bounded(actionRanges.feed.factor, 'times the ration written; default: as it is').optional(),
}, 'another ration, feed, or a factor on the ration');
const change = {
    vessel,
    volume: bounded(actionRanges['change-water'].volume, 'water changed; range: more than 0, at most what the vessel holds; default: none, where a share is given').optional(),
    share: bounded(actionRanges['change-water'].share, 'share of the water changed; default: none, where a volume is given').optional(),
    water: word('a name of `waters`'),
};
/** What an action may do: one of these keys in each action. */
const verbs = {
    stock: section({ cohort, number: fishCount, mass: bounded(actionRanges.stock.mass, 'mean mass of a fish') }, 'put fish in').optional(),
    'harvest-fish': section(take, 'take fish out, the same share of every size').optional(),
    'lose-fish': section(take, 'fish die and are removed').optional(),
    grade: section({
        cohort,
        to: word('the cohort they join'),
        share: bounded(actionRanges.grade.share, 'share of the fish moved'),
        'relative-mass': bounded(actionRanges.grade.relativeMass, 'their mean mass over that of the cohort; default: 1').optional(),
    }, 'move a share of a cohort to another').optional(),
    plant: planting.meta({ description: 'plant a bed: a name of `plantings`' }).optional(),
    'harvest-crop': section({ planting, replant: truth('plant again at once; default: true').optional() }, 'harvest a crop now').optional(),
    'leave-empty': planting
        .meta({ description: 'take a crop out and leave its bed empty: a name of `plantings`' })
        .optional(),
    feed: feedChange.optional(),
    'top-up': topUpChange
        .meta({ description: 'stop the top-up, restore it as it was, or set another cap' })
        .optional(),
    'source-water': section({ water: word('the water that changes'), to: word('what it becomes') }, 'a supply becomes another water').optional(),
    'change-water': section(change, 'discharge water and put other water in').optional(),
    'cart-water': section({
        volume: bounded(actionRanges['cart-water'].volume, 'water brought; what does not fit runs over'),
        water: word('a name of `waters`; default: into a rain tank, the water it holds').optional(),
        into: choice('where it is poured; default: the rain tank where there is one', words.cartedInto).optional(),
    }, 'bring water by tanker').optional(),
    dose: section({
        into: vessel,
        product: word('a product of the library'),
        mass: bounded(actionRanges.dose.mass, 'mass of product'),
    }, 'put a product in').optional(),
    'pump-off': word('a pump').meta({ description: 'a pump stops: its name' }).optional(),
    'pump-on': word('a pump').meta({ description: 'a pump runs again: its name' }).optional(),
    'air-off': word('a vessel').meta({ description: 'the aeration of a vessel stops: its name' }).optional(),
    'air-on': word('a vessel')
        .meta({ description: 'the aeration of a vessel runs again: its name' })
        .optional(),
    'control-off': word('a vessel')
        .meta({ description: 'the dosers of a vessel (`control`) stop: its name' })
        .optional(),
    'control-on': word('a vessel')
        .meta({ description: 'the dosers of a vessel run again: its name' })
        .optional(),
    'power-cut': choice('all pumps, all aeration and all dosers stop', ['all']).optional(),
    clean: section({
        vessel,
        biofilm: bounded(actionRanges.clean.biofilm, 'share of the biofilm removed; default: 0').optional(),
        solids: bounded(actionRanges.clean.solids, 'share of settled solids removed; default: 0').optional(),
        stuns: bounded(actionRanges.clean.stuns, 'share of the nitrifiers that stay which is stunned, as where they are left dry; default: 0').optional(),
    }, 'clean a vessel').optional(),
    medicate: section({
        vessel,
        kills: bounded(actionRanges.medicate.kills, 'share of the biofilm killed; default: 0').optional(),
        stuns: bounded(actionRanges.medicate.stuns, 'share of the nitrifiers that live on which is stunned and comes back; default: 0').optional(),
    }, 'kill or stun part of a biofilm').optional(),
    'drain-solids': section({
        vessel,
        share: bounded(actionRanges['drain-solids'].share, 'share of settled solids'),
        water: bounded(actionRanges['drain-solids'].water, 'water that goes with them; default: 0').optional(),
    }, 'drain settled solids').optional(),
};
/** What a rule does: one verb. */
export const actionSchema = section(verbs, 'what is done');
/** One action of `actions`: when, and one verb. */
export const timedActionSchema = section({
    at: moment('when, or first when; default: none, `from` and `until` then say it').optional(),
    from: moment('start of an interval; default: none').optional(),
    until: moment('end of an interval or of repeating: not on that moment; default: none').optional(),
    for: positive('time', 'how long; then it is undone; default: for good').optional(),
    every: positive('time', 'time between one and the next; default: once').optional(),
    ...verbs,
}, 'something done at a time');
/** One plan of `dosing`. */
export const dosingSchema = section({
    into: vessel,
    product: word('a product of the library'),
    mass: bounded(actionRanges.dose.mass, 'mass of product each time'),
    ...planTimes,
}, 'a dosing plan');
/** One plan of `drain-solids`. */
export const drainPlanSchema = section({
    vessel,
    share: bounded(actionRanges['drain-solids'].share, 'share of settled solids drained each time'),
    water: bounded(actionRanges['drain-solids'].water, 'water that goes with them each time; default: 0').optional(),
    ...planTimes,
}, 'a plan of draining solids');
//# sourceMappingURL=action-schema.js.map