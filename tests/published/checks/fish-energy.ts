import { createParameters } from '@leat/core';
import { temperatureShare } from '../../../packages/core/src/processes/kernels/intake.js';
import { scopeTo } from '../../../packages/core/src/model/scope.js';
import { fedFish, type Fed, type FedFish } from '../../support/fed-fish.js';
import { about, between, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const parameters = createParameters();
const number = (id: string): number => parameters.value(id);

/** Gross energy of a gram of oxygen demand, kJ: feed and fish alike (23.6, 39.5, 17.2 kJ per g protein, fat, starch). */
const perDemand = 15.2;

/** Maintenance of a fish of a mass (g) at a temperature, kJ digestible per kg^0.8 and day. */
function maintenance(species: string, temperature: number, mass: number): number {
  const warmth = temperature - number(`fish.${species}.reference-temperature`);
  const perDay =
    number(`fish.${species}.maintenance`) *
    number('fish.maintenance-theta') ** warmth *
    100 *
    (mass / 100) ** number('fish.maintenance-exponent');
  return (perDay * perDemand) / (mass / 1000) ** 0.8;
}

/** The same per kg of fish and day. */
const perKilogram = (species: string, temperature: number, mass: number): number =>
  maintenance(species, temperature, mass) * (mass / 1000) ** -0.2;

const share = (perDay: number) => ({ kind: 'share', perDay }) as const;
const conversion = (fish: FedFish): number => fish.feed / fish.gain;

/** Feed conversion of what was eaten. */
const eatenConversion = (given: Fed): number => {
  const fish = fedFish(given);
  return fish.eaten / fish.gain;
};

/** Share of the energy eaten that is kept in the body, %. */
function energyKept(given: Fed, demand: number): number {
  const fish = fedFish(given);
  const lean = (number(`fish.${given.species}.body-nitrogen`) / 0.16) * number('protein.demand');
  return (100 * (lean * fish.made('fish-mass') + fish.made('fish-fat'))) / (fish.eaten * demand);
}

/** Oxygen that fish of 100 g use, mg per kg and hour. */
function breath(species: string, temperature: number, mass: number): number {
  const fish = fedFish({ species, ration: share(0), temperature, mass, days: 1 });
  return (-fish.made('oxygen') * 1e6) / (100 * mass) / 24;
}

/** Heat of an unfed fish: what upkeep takes of its body, kJ per kg^0.8 and day. */
const fastingHeat = (species: string, temperature: number): number =>
  number(`fish.${species}.energy-retention`) * maintenance(species, temperature, 38);

/** Oxygen of a resting fish of 50 g by 69 species, mg per kg and hour: ln R = 15.7 - 5.02 / T, R in mmol an hour, T in 1000 K. */
const resting = (temperature: number): number =>
  (Math.exp(15.7 - 5020 / (temperature + 273.15)) * number('molar.oxygen-gas')) / 0.05;

const heat = {
  source: 'tilapia-heat',
  where: 'abstract: 27.6 and 54.4 kJ/(kg^0.8 d) at 24 and 32 degC, where what is kept meets nothing eaten',
  mark: 'R',
} as const;

const barramundi = {
  source: 'glencross-bermudes',
  where: 'abstract: 25-32 degC, and 36',
  mark: 'R',
} as const;
const trout = {
  source: 'trout-rations-1996',
  where: 'abstract: 1.4, 9.1, 23.7 and 73.8 g',
  mark: 'R',
} as const;

const level =
  'upkeep is 32 kJ at 30 degC, the middle of other fish, and rises with a Q10 of 2.4 as theirs does; this paper found it level ' +
  'near 40 from 25 to 32 degC and far higher at 36';
const halved =
  'half of it: upkeep of tilapia is the middle of five other fish, 32 kJ; with the 63 of this paper the tilapia of four trials would make a ' +
  'gram of 1.6 to 2.1 of feed, where 1.16 to 1.8 were measured, unless they digest more of its energy than the tables say';
const general =
  'the line of 69 species of all waters; upkeep of single fish lies around it by a factor of two, of trout above it and of warm-water fish ' +
  'below, by the papers that set it';
const upkeep =
  'upkeep of trout is 53 kJ/(kg^0.8 d) by three sources; this paper found 25-32 on practical feeds: sources conflict';
const eager =
  'appetite is that of feeding charts from memory; the ration for most growth of this paper is what hand-fed trout took';
const fingerlings =
  'the fingerlings of this trial grew on casein and gelatin, less than half as fast as those of charts; digestion and appetite here are of good pellets';

const maintenances: readonly PublishedCheck[] = [
  ...[25, 29, 32].map((temperature): PublishedCheck => ({
    id: `maintenance-barramundi-${temperature}`,
    ...barramundi,
    what: `maintenance of barramundi at ${temperature} degC`,
    unit: 'kJ/(kg^0.8 d)',
    ...within(20, 40),
    ...(temperature === 32 ? {} : { miss: level }),
    compute: () => maintenance('barramundi', temperature, 100),
  })),
  {
    id: 'maintenance-barramundi-36',
    ...barramundi,
    what: 'maintenance of barramundi at 36 degC',
    unit: 'kJ/(kg^0.8 d)',
    ...within(20, 110),
    miss: level,
    compute: () => maintenance('barramundi', 36, 100),
  },
  ...(
    [
      [9.1, 96],
      [73.8, 87.4],
    ] as const
  ).map(([mass, published]): PublishedCheck => ({
    id: `maintenance-trout-${Math.round(mass)}`,
    ...trout,
    what: `maintenance of rainbow trout of ${mass} g on casein`,
    unit: 'kJ/(kg d)',
    ...within(20, published),
    ...(mass > 50 ? {} : { miss: 'the exponent 0.8 does not hold for trout below 100 g by this paper' }),
    compute: () => perKilogram('rainbow-trout', 15, mass),
  })),
  {
    id: 'heat-tilapia-32-over-24',
    ...heat,
    what: 'heat of unfed Nile tilapia at 32 over that at 24 degC',
    unit: '1',
    ...within(10, 54.4 / 27.6),
    chosen: 'fish.maintenance-theta',
    compute: () => fastingHeat('nile-tilapia', 32) / fastingHeat('nile-tilapia', 24),
  },
  ...(
    [
      [24, 27.6],
      [32, 54.4],
    ] as const
  ).map(([temperature, published]): PublishedCheck => ({
    id: `heat-tilapia-${temperature}`,
    ...heat,
    what: `heat of unfed Nile tilapia of 38 g at ${temperature} degC`,
    unit: 'kJ/(kg^0.8 d)',
    ...within(20, published),
    miss: halved,
    compute: () => fastingHeat('nile-tilapia', temperature),
  })),
  {
    id: 'maintenance-trout-24-practical',
    ...trout,
    what: 'maintenance of rainbow trout of 23.7 g on practical feeds',
    unit: 'kJ/(kg d)',
    ...between(53, 67),
    miss: upkeep,
    compute: () => perKilogram('rainbow-trout', 15, 23.7),
  },
];

const growths: readonly PublishedCheck[] = [
  {
    id: 'conversion-catfish-fingerling',
    source: 'farhat-khan-2011',
    where: 'abstract: 35 % protein, 8 weeks to satiety from 8.2 g',
    mark: 'R',
    what: 'feed conversion of African catfish fingerlings fed to satiety',
    unit: 'g/g',
    ...within(15, 1.39),
    miss: fingerlings,
    compute: () =>
      eatenConversion({
        species: 'african-catfish',
        feed: { name: 'grower-32', protein: 0.35 },
        ration: share(0.15),
        mass: 8.22,
        days: 56,
      }),
  },
  {
    id: 'growth-catfish-fingerling',
    source: 'farhat-khan-2011',
    where: 'abstract: 35 % protein, 8 weeks to satiety from 8.2 g',
    mark: 'R',
    what: 'gain of African catfish fingerlings fed to satiety',
    unit: '%',
    ...within(25, 867),
    miss: fingerlings,
    compute: () => {
      const fish = fedFish({
        species: 'african-catfish',
        feed: { name: 'grower-32', protein: 0.35 },
        ration: share(0.15),
        mass: 8.22,
        days: 56,
      });
      return 100 * (fish.mass / 8.22 - 1);
    },
  },
  {
    id: 'conversion-tilapia-220',
    source: 'nozzi-2018',
    where: 'three systems, 220 g, 2 % a day, 37.5 % protein',
    mark: 'S',
    what: 'feed conversion of Nile tilapia of 220 g fed 2 % a day',
    unit: 'g/g',
    ...between(1.16, 1.49),
    compute: () =>
      conversion(
        fedFish({
          species: 'nile-tilapia',
          feed: { name: 'starter-42', protein: 0.375 },
          ration: share(0.02),
          mass: 220,
          days: 30,
        }),
      ),
  },
  {
    id: 'conversion-tilapia-fingerling',
    source: 'loop-rate-2024',
    where: 'abstract: 39 to 121 g in 60 d, SGR 1.88 %/d',
    mark: 'R',
    what: 'feed conversion of Nile tilapia of 39 g given what that growth took',
    unit: 'g/g',
    ...within(15, 1.2),
    compute: () =>
      conversion(
        fedFish({
          species: 'nile-tilapia',
          ration: { kind: 'mass', gramsPerDay: 100 * 1.36 * 1.2 },
          mass: 39,
          days: 60,
        }),
      ),
  },
  {
    id: 'conversion-red-tilapia',
    source: 'rakocy-2004',
    where: 'red tilapia, 59 [M] to 512.5 g in 24 weeks',
    mark: 'R',
    what: 'feed conversion of red tilapia given what that growth took',
    unit: 'g/g',
    ...within(10, 1.8),
    compute: () =>
      conversion(
        fedFish({
          species: 'red-tilapia',
          ration: { kind: 'mass', gramsPerDay: 100 * 2.7 * 1.8 },
          temperature: 28,
          mass: 59,
          days: 168,
        }),
      ),
  },
  {
    id: 'energy-kept-carp',
    source: 'carp-energy-1979',
    where: 'abstract',
    mark: 'R',
    what: 'energy kept by common carp of that eaten, fed 3 % a day',
    unit: '%',
    ...between(32, 49),
    compute: () =>
      energyKept({ species: 'common-carp', ration: share(0.03) }, number('feed.grower-32.demand')),
  },
  {
    id: 'retention-barramundi',
    ...barramundi,
    what: 'digestible energy kept above maintenance by barramundi',
    unit: 'kJ/kJ',
    ...within(10, 0.56),
    miss: 'the tables have 0.64, the mean of other fish; 0.56 is this paper, kept apart',
    compute: () => number('fish.barramundi.energy-retention'),
  },
];

const appetites: readonly PublishedCheck[] = [
  {
    id: 'appetite-barramundi-span',
    source: 'katersky-carter',
    where: 'abstract: intake, growth and efficiency',
    mark: 'R',
    what: 'span of temperatures in which barramundi eat at least 90 % of the most',
    unit: 'K',
    ...within(25, 8),
    compute: () => {
      const values = scopeTo(parameters, { species: 'barramundi' });
      const warm = Array.from({ length: 400 }, (_, i) => 10 + i / 10);
      return warm.filter((temperature) => temperatureShare(values, temperature) >= 0.9).length / 10;
    },
  },
  ...(
    [
      [9.1, 1.9, 2.2],
      [73.8, 1.4, 1.6],
    ] as const
  ).map(([mass, low, high]): PublishedCheck => ({
    id: `best-ration-trout-${Math.round(mass)}`,
    ...trout,
    what: `most that rainbow trout of ${mass} g eat, as the ration for most growth`,
    unit: '%/d',
    ...between(low, high),
    miss: eager,
    compute: () =>
      100 * number('fish.rainbow-trout.appetite') * (mass / 100) ** -number('fish.appetite-exponent'),
  })),
];

const breaths: readonly PublishedCheck[] = [
  {
    id: 'oxygen-unfed-carp',
    source: 'yamanaka-2013',
    where: 'abstract: crucian carp, 100 g, 25 degC',
    mark: 'R',
    what: 'oxygen used by unfed common carp',
    unit: 'mg/(kg h)',
    ...within(30, 113),
    compute: () => breath('common-carp', 25, 100),
  },
  ...(
    [
      ['rainbow-trout', 15, general],
      ['european-perch', 23, general],
      ['common-carp', 25, general],
      ['nile-tilapia', 28, general],
    ] as const
  ).map(([species, temperature, miss]): PublishedCheck => ({
    id: `resting-${species}`,
    source: 'clarke-johnston-1999',
    where: 'abstract: line of 69 species, fish of 50 g',
    mark: 'R',
    what: `oxygen used by unfed ${species} of 50 g at ${temperature} degC`,
    unit: 'mg/(kg h)',
    ...within(30, resting(temperature)),
    miss,
    compute: () => breath(species, temperature, 50),
  })),
  ...([0.015, 0.02] as const).flatMap((ration) =>
    (['nile-tilapia', 'rainbow-trout'] as const).map((species): PublishedCheck => ({
      id: `oxygen-fed-${species}-${ration * 1000}`,
      source: 'oxygen-of-fed-fish',
      where: 'tilapia and trout, fed',
      mark: 'M',
      what: `oxygen used by ${species} fed ${100 * ration} % a day, per kg of feed`,
      unit: 'g/kg',
      ...between(400, 600),
      compute: () => {
        const fish = fedFish({ species, ration: share(ration), days: 30 });
        return (-1000 * fish.made('oxygen')) / fish.feed;
      },
    })),
  ),
  {
    id: 'nitrogen-fasting-trout',
    source: 'van-weerd-1995',
    where: 'abstract: trout, fasting',
    mark: 'R',
    what: 'ammonia given off by fasting rainbow trout of 100 g at 15 degC',
    unit: 'g/(kg d)',
    ...about(0.07, 0.02, 'g/(kg d)'),
    miss: `${upkeep}; size and temperature are not told`,
    compute: () => {
      const fish = fedFish({ species: 'rainbow-trout', ration: share(0), days: 1 });
      return fish.made('tan') / 10;
    },
  },
];

/** Energy of fish: upkeep, growth, appetite and breath by size, ration and temperature. */
export const fishEnergy: Topic = {
  title: 'Energy of fish: upkeep, conversion, appetite, breath',
  kind: 'process',
  note:
    'Values of papers by which no number of the tables was set. Where size, ration or feed are not told by the abstract they ' +
    'are taken as the line says; fish are 100 g at their reference temperature unless said otherwise.',
  checks: [...maintenances, ...growths, ...appetites, ...breaths],
};
