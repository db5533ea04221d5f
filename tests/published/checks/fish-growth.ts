import { fedFish } from '../../support/fed-fish.js';
import { between, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

/** Thermal growth coefficient x 100 of a growth, Iwama & Tautz 1981: how the model's growth is told. */
const thermal = (from: number, to: number, degreeDays: number): number =>
  (100 * (Math.cbrt(to) - Math.cbrt(from))) / degreeDays;

/** Trout of 10 g at 11 degC given, morning by morning, what growth at a TGC of 0.2224 asks at the usual FCR. */
function thermallyFed(): number {
  const perDay = (0.2224 / 100) * 11;
  // The middle of 0.9-1.2, the usual range of trout [M].
  const conversion = 1.05;
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

const costly =
  'trout of 100 g hold 7.3 MJ/kg here, by a published law and a dry share from memory, and fat grows with their mass as that of bream does';
const lean =
  'a hundredth under the lower end of a usual range, which farms have with all the feed that they lose: here fish leave 4 % of a ration that they want';
const sparing =
  'the conversion by which it is fed, 1.05, is the middle of a usual range; trout make a gram of less feed than that here at 11 degC, and that is a seventh of mass after 200 d';
const fed = '2 % a day is more than these fish want at 100 g: what is left is counted';
const fatty =
  'at 0.6 g COD per g (weak memory) these fish are so fat that little more than half of the usual growth goes into a gram of feed';

/** Published feed conversions, and why 2 % a day and 1 % a day miss them where they do. */
const conversions: readonly (readonly [
  species: string,
  low: number,
  high: number,
  full?: string | undefined,
  thin?: string,
])[] = [
  ['nile-tilapia', 1, 1.8],
  ['rainbow-trout', 0.9, 1.2, undefined, costly],
  ['common-carp', 1.4, 2],
  ['channel-catfish', 1.5, 2, lean],
  ['european-perch', 1.1, 1.5],
  ['barramundi', 1.1, 1.6],
  ['murray-cod', 1.1, 1.4, fed],
  ['silver-perch', 1.5, 2],
  ['jade-perch', 1.3, 1.8, fatty, fatty],
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
  note: 'The first cases feed what the published growth asks and look whether energy, protein and upkeep bring it about.',
  checks: [
    {
      id: 'thermal-growth-trout-mass',
      ...trout,
      what: 'mass of rainbow trout after 200 d',
      unit: 'g',
      ...within(5, 350),
      miss: sparing,
      compute: thermallyFed,
    },
    {
      id: 'thermal-growth-trout',
      ...trout,
      what: 'thermal growth coefficient x 100 of that growth',
      unit: 'g^(1/3)/(degC d)',
      ...within(5, 0.2224),
      miss: sparing,
      compute: () => thermal(10, thermallyFed(), 11 * 200),
    },
    {
      id: 'thermal-growth-trout-normal',
      source: 'thermal-growth-example',
      where: 'normal range of trout',
      mark: 'R',
      what: 'thermal growth coefficient x 100 of trout of 50 g fed 1.5 % a day at 14 degC for 120 d',
      unit: 'g^(1/3)/(degC d)',
      ...between(0.13, 0.2),
      compute: (): number => {
        const perDay = 0.015;
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
      compute: (): number => {
        const fish = island();
        return fish.feed / fish.gain;
      },
    },
    ...conversions.flatMap(([species, low, high, full, thin]): readonly PublishedCheck[] => {
      const from = { source: 'feed-conversions', where: 'usual range', mark: 'M' } as const;
      return [
        {
          id: `conversion-full-${species}`,
          ...from,
          what: `feed conversion of ${species} fed 2 % a day`,
          unit: 'g/g',
          ...between(low, high),
          compute: () => conversionAt(species, 0.02),
          ...(full === undefined ? {} : { miss: full }),
        },
        {
          id: `conversion-thin-${species}`,
          ...from,
          what: `feed conversion of ${species} fed 1 % a day`,
          unit: 'g/g',
          ...between(low, high),
          compute: () => conversionAt(species, 0.01),
          ...(thin === undefined ? {} : { miss: thin }),
        },
      ];
    }),
  ],
};
