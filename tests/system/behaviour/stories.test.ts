import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compileModel, createParameters, readScenario, simulate, verdictOf } from '@leat/core';
import { verdictLines } from '@leat/view/text';
import { describe, expect, it } from 'vitest';

const folder = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const load = (path: string): string => readFileSync(path, 'utf8');

/** A shipped scenario, with values over it at some paths. */
interface Story {
  readonly scenario: string;
  readonly set?: Readonly<Record<string, string>>;
  readonly days?: number;
}

/** The first line that is said of a story. */
function firstLine({ scenario: name, set = {}, days }: Story): string {
  const file = `${folder}${name}.yaml`;
  const values = Object.entries(set).map(([path, value]) => ({ path, value }));
  const scenario = readScenario(load(file), { file, load, set: values, ...(days !== undefined && { days }) });
  const run = simulate(compileModel(scenario, createParameters(scenario.overrides)));
  return verdictLines(verdictOf(run), scenario.startDate)[0];
}

const trade =
  '{ at: 14 d, every: 14 d, harvest-fish: { cohort: growers, number: 12 } }, ' +
  '{ at: 14 d, every: 14 d, grade: { cohort: juveniles, to: growers, share: 20 % } }, ' +
  '{ at: 14 d, every: 14 d, stock: { cohort: juveniles, number: 12, mass: 20 g } }';
const bare = ['lettuce', 'basil', 'chard', 'mint'].map((each) => `{ at: 14 d, leave-empty: ${each} }`);

const stories: readonly (readonly [story: string, told: Story, says: readonly RegExp[]])[] = [
  [
    'a drought: nobody tops up, the pump sucks air after a week, no water comes to the fish, and ammonia kills them',
    {
      scenario: 'glasshouse',
      set: { actions: '[{ at: 20 d, top-up: stopped }]' },
      days: 45,
    },
    [
      /^Fish: half or more dead by day 3\d/,
      /Dead: all of .*growers.*, of un-ionised ammonia/,
      /Pump main sucks air from day 2[678]/,
      /It began on day 20 .* the stop of top-up\.$/,
    ],
  ],
  [
    'empty beds: without crops the fish are well, because settled solids take the nitrate',
    { scenario: 'glasshouse', set: { actions: `[${[...bare, trade].join(', ')}]` }, days: 120 },
    [/^Fish: safe\.$/],
  ],
  [
    'a pump that stops at night over tanks without air: most fish are dead by morning, of want of oxygen',
    {
      scenario: 'glasshouse',
      set: {
        'vessels.tank-1.aeration': '0 1/h',
        'vessels.tank-2.aeration': '0 1/h',
        actions: '[{ at: 20.9 d, for: 8 h, pump-off: main }]',
        every: '1 h', // a fright of hours is dated by outputs as fine
      },
      days: 22,
    },
    [
      /^Fish: half or more dead by day 2[12]/,
      /Dead: 9\d % of .*, of want of oxygen/,
      /the stop of pump main\.$/,
    ],
  ],
  [
    'sixty fish at once into a small system that was never cycled: all dead in a week, of ammonia',
    {
      scenario: 'backyard',
      set: {
        'start.biofilm': 'uncycled',
        actions:
          '[{ at: 2 d, stock: { cohort: tilapia, number: 60, mass: 300 g } }, { at: 2 d, feed: { cohort: tilapia, factor: 5 } }]',
      },
      days: 30,
    },
    [/^Fish: half or more dead by day [5-9] /, /Dead: all of tilapia, of un-ionised ammonia/],
  ],
  [
    'water colder than the species bears: dead within days, of cold',
    { scenario: 'backyard', set: { 'climate.water-temperature': '9 degC' }, days: 30 },
    [/^Fish: half or more dead by day [1-5] /, /below 11 degC in tank/, /Dead: all of tilapia, of cold/],
  ],
  [
    'two kilograms of salt: the fish stand it and the basil does not',
    {
      scenario: 'backyard',
      set: { dosing: '[{ into: sump, product: sodium-chloride, mass: 2 kg, at: 20 d }]' },
    },
    [/^Crops: salt: chloride above 350 mg\/L for basil from day 2[01](\.\d)? /],
  ],
  [
    'four times the feed: uneaten and eaten feed make more ammonia than the filter takes, and all fish die of it',
    {
      scenario: 'glasshouse',
      set: { 'fish.growers.ration': '1600 g/d', 'fish.juveniles.ration': '1200 g/d' },
      days: 60,
    },
    [
      /^Fish: half or more dead by day [34]\d/,
      /Dead: all of juveniles and growers, of un-ionised ammonia\. What follows is no forecast\.$/,
    ],
  ],
  [
    'a start-up with fish on a filter that was never cycled: ammonia from the second day, then nitrite',
    { scenario: 'start-up' },
    [/^Fish: at risk from day [12]/, /free ammonia above .* in tank-2 and tank-1 for 1\d/, /also nitrite/],
  ],
  [
    'a small filter scrubbed: fish at risk from the same day, and it began with the cleaning',
    {
      scenario: 'backyard',
      set: { actions: '[{ at: 60 d, clean: { vessel: bed, biofilm: 98 %, solids: 90 % } }]' },
    },
    [/^Fish: at risk from day 60/, /free ammonia above/, /It began \S+ h after clean of bed/],
  ],
  ['a good year', { scenario: 'glasshouse', days: 365 }, [/^Fish: safe\.$/]],
];

describe('what is said first of', () => {
  it.each(stories)('%s', (_story, told, says) => {
    const line = firstLine(told);
    for (const words of says) expect(line).toMatch(words);
  });
});
