import { createParameters } from '@leat/core';
import { fedFish } from '../../support/fed-fish.js';
import { between, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const parameters = createParameters();

/** Thermal growth coefficient x 100 of a growth, Iwama & Tautz 1981: how the model's growth is told. */
const thermal = (from: number, to: number, degreeDays: number): number =>
  (100 * (Math.cbrt(to) - Math.cbrt(from))) / degreeDays;

/** Trout of 10 g at 11 degC given, morning by morning, what growth at a TGC of 0.2224 asks at the FCR of the tables. */
function thermallyFed(): number {
  const perDay = (0.2224 / 100) * 11;
  const conversion = parameters.value('fish.rainbow-trout.feed-conversion');
  const rows = Array.from({ length: 90 }, (_, step) => 9.5 * 1.05 ** step).map((mass) => ({
    mass,
    perDay: (conversion * 3 * perDay) / Math.cbrt(mass * 1.025),
  }));
  return fedFish({
    species: 'rainbow-trout',
    ration: { kind: 'table', rows },
    temperature: 11,
    mass: 10,
    days: 200,
  }).mass;
}

/** 100 tilapia of the UVI unit given every day what 4.4 g of growth a fish asks at an FCR of 1.7. */
const island = () =>
  fedFish({
    species: 'nile-tilapia',
    ration: { kind: 'mass', gramsPerDay: 100 * 4.4 * 1.7 },
    temperature: 28,
    mass: 79.2,
    days: 168,
  });

const thin =
  'a ration of 1 % a day is thin: upkeep takes the same from less feed. Published conversions are of fish fed to appetite';

/** Published feed conversions; whether 1 % a day misses them. */
const conversions: readonly (readonly [species: string, low: number, high: number, missed: boolean])[] = [
  ['nile-tilapia', 1, 1.8, true],
  ['rainbow-trout', 0.9, 1.2, true],
  ['common-carp', 1.4, 2, true],
  ['channel-catfish', 1.5, 2, true],
  ['european-perch', 1.1, 1.5, false],
  ['barramundi', 1.1, 1.6, true],
  ['murray-cod', 1.1, 1.4, false],
  ['silver-perch', 1.5, 2, true],
  ['jade-perch', 1.3, 1.8, true],
];

const conversionAt = (species: string, perDay: number): number => {
  const fish = fedFish({ species, ration: { kind: 'share', perDay } });
  return fish.feed / fish.gain;
};

const trout = {
  source: 'thermal-growth-example',
  where: '10 g to 350 g, 11 degC, 200 d',
  mark: 'R',
} as const;
const uvi = { source: 'rakocy-2004', where: 'Nile tilapia, last 20 harvests, 24 weeks', mark: 'R' } as const;

/** Growth and feed conversion. */
export const fishGrowth: Topic = {
  title: 'Growth by thermal units and feed conversion',
  kind: 'process',
  note:
    'Leat grows fish by what they are fed, not by temperature. The first cases feed what the published growth asks and ' +
    'look whether feed, upkeep and conversion bring it about.',
  checks: [
    {
      id: 'thermal-growth-trout-mass',
      ...trout,
      what: 'mass of rainbow trout after 200 d',
      unit: 'g',
      ...within(5, 350),
      compute: thermallyFed,
    },
    {
      id: 'thermal-growth-trout',
      ...trout,
      what: 'thermal growth coefficient x 100 of that growth',
      unit: 'g^(1/3)/(degC d)',
      ...within(5, 0.2224),
      compute: () => thermal(10, thermallyFed(), 11 * 200),
    },
    {
      id: 'thermal-growth-trout-normal',
      source: 'thermal-growth-example',
      where: 'normal range of trout',
      mark: 'R',
      what: 'thermal growth coefficient x 100 of trout of 50 g fed the reference ration (1.5 % a day) at 14 degC for 120 d',
      unit: 'g^(1/3)/(degC d)',
      ...between(0.13, 0.2),
      compute: (): number => {
        const perDay = parameters.value('fish.rainbow-trout.reference-ration');
        const { mass } = fedFish({
          species: 'rainbow-trout',
          ration: { kind: 'share', perDay },
          temperature: 14,
          mass: 50,
          days: 120,
        });
        return thermal(50, mass, 14 * 120);
      },
    },
    {
      id: 'uvi-harvest-mass',
      ...uvi,
      what: 'mass at harvest after 168 d at 28 degC, from 79.2 g [M], fed what 4.4 g/d [M] asks at FCR 1.7',
      unit: 'g',
      ...within(10, 813.8),
      compute: () => island().mass,
    },
    {
      id: 'uvi-conversion',
      ...uvi,
      what: 'feed conversion of that growth',
      unit: 'g/g',
      ...within(10, 1.7),
      miss: 'the 1.7 is put at a ration of 2 % a day eaten; the same mass of feed every day is less than 1 % at the end, of which upkeep takes more, and 4 % is not eaten',
      compute: (): number => {
        const fish = island();
        return fish.feed / fish.gain;
      },
    },
    ...conversions.flatMap(([species, low, high, missed]): readonly PublishedCheck[] => {
      const from = { source: 'feed-conversions', where: 'usual range', mark: 'M' } as const;
      return [
        {
          id: `conversion-full-${species}`,
          ...from,
          what: `feed conversion of ${species} fed 2 % a day`,
          unit: 'g/g',
          ...between(low, high),
          chosen: `fish.${species}.feed-conversion`,
          compute: () => conversionAt(species, 0.02),
        },
        {
          id: `conversion-thin-${species}`,
          ...from,
          what: `feed conversion of ${species} fed 1 % a day`,
          unit: 'g/g',
          ...between(low, high),
          compute: () => conversionAt(species, 0.01),
          ...(missed ? { miss: thin } : {}),
        },
      ];
    }),
  ],
};
