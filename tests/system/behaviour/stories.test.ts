import { simulate, openModel, verdictOf } from '@leat/core';
import { verdictLines } from '@leat/view/text';
import { describe, expect, it } from 'vitest';
import { openStory, type Story, told } from '../../support/stories.js';

/** The first line that is said of a story. */
function firstLine(story: Story): string {
  const { reading } = openStory(story);
  const run = simulate(openModel(reading).model);
  return verdictLines(verdictOf(run), reading.scenario.startDate)[0];
}

const stories: readonly (readonly [story: string, story: Story, says: readonly RegExp[]])[] = [
  [
    'a drought: nobody tops up, the pump sucks air after a week, no water comes to the fish, and ammonia kills them',
    told.drought,
    [
      /^Fish: half or more dead by day 3\d/,
      /Dead: all of .*growers.*, of un-ionised ammonia/,
      /Pump main sucks air from day 2[678]/,
      /It began on day 20 .* the stop of top-up\.$/,
    ],
  ],
  [
    'empty beds and twice the dose: without crops the fish are well, because settled solids take the nitrate',
    told.emptyBeds,
    [/^Fish: safe\.$/],
  ],
  [
    'a pump that stops at night over tanks without air: most fish are dead by morning, of want of oxygen',
    told.pumpAtNight,
    [
      /^Fish: half or more dead by day 2[12]/,
      /Dead: 9\d % of .*, of want of oxygen/,
      /the stop of pump main\.$/,
    ],
  ],
  [
    'sixty fish at once into a small system that was never cycled: all dead in a week, of ammonia',
    told.sixtyFish,
    [/^Fish: half or more dead by day [5-9] /, /Dead: all of tilapia, of un-ionised ammonia/],
  ],
  [
    'water colder than the species bears: dead within days, of cold',
    told.cold,
    [/^Fish: half or more dead by day [1-5] /, /below 11 degC in tank/, /Dead: all of tilapia, of cold/],
  ],
  [
    'two kilograms of salt: the fish stand it and the basil does not',
    told.salt,
    [/^Crops: salt: chloride above 350 mg\/L for basil from day 2[01](\.\d)? /],
  ],
  [
    'more than seven times the feed: uneaten and eaten feed make more ammonia than the filter takes, and all fish die of it',
    told.overfeeding,
    [
      /^Fish: half or more dead by day 2[56]/,
      /Dead: all of growers and juveniles, of un-ionised ammonia\. What follows is no forecast\. It began on day 7/,
    ],
  ],
  [
    'a start-up with fish on a filter that was never cycled: ammonia from the second day, then nitrite',
    told.startUp,
    [/^Fish: at risk from day [12]/, /free ammonia above .* in tank-2 and tank-1 for 1\d/, /also nitrite/],
  ],
  [
    'a small filter scrubbed: fish at risk within a day, and it began with the cleaning',
    told.scrubbed,
    [/^Fish: at risk from day 6[01]/, /free ammonia above/, /It began \S+ h after clean of bed/],
  ],
  ['a good year', told.goodYear, [/^Fish: safe\.$/]],
];

describe('what is said first of', () => {
  it.each(stories)('%s', (_story, story, says) => {
    const line = firstLine(story);
    for (const words of says) expect(line).toMatch(words);
  });
});
