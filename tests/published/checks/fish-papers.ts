import { createParameters } from '@leat/core';
import { fedFish, type Fed } from '../../support/fed-fish.js';
import { between, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const parameters = createParameters();
const number = (id: string): number => parameters.value(id);

/** Gross energy of a gram of oxygen demand, kJ. */
const perDemand = 15.2;

const share = (perDay: number) => ({ kind: 'share', perDay }) as const;

/** How many times as much holds a fish at one temperature as at another. */
const warmed = (from: number, to: number): number => number('fish.maintenance-theta') ** (to - from);

/** Feed conversion of what was eaten. */
function eatenConversion(given: Fed): number {
  const fish = fedFish(given);
  return fish.eaten / fish.gain;
}

/** Growth of one fish, % of body mass a day. */
function growthPerDay(given: Fed & { readonly mass: number; readonly days: number }): number {
  return (100 * Math.log(fedFish(given).mass / given.mass)) / given.days;
}

/** Share of the energy eaten that is kept in the body, %. */
function energyKept(given: Fed): number {
  const fish = fedFish(given);
  const lean = (number(`fish.${given.species}.body-nitrogen`) / 0.16) * number('protein.demand');
  const eaten = fish.eaten * number('feed.carnivore-45.demand');
  return (100 * (lean * fish.made('fish-mass') + fish.made('fish-fat'))) / eaten;
}

const carp = {
  source: 'goolish-adelman-1984',
  where: 'abstract: maintenance rations of 0.40, 0.75, 1.20 and 1.90 %/d at 12, 18, 24 and 30 degC',
  mark: 'R',
} as const;
const salmon = { source: 'koskela-1997', where: 'abstract: 60 g, 11-23 degC', mark: 'R' } as const;

const costly = 'with what they digest and their upkeep salmon keep less than half of what they eat here';
const ravenous =
  'fish of 114 g ate 5 % a day of warm purified feed; the appetite of the tables, from memory, is that of pond feed';

const upkeeps: readonly PublishedCheck[] = [
  ...(
    [
      [18, 1.875],
      [24, 3],
      [30, 4.75],
    ] as const
  ).map(([temperature, ratio]): PublishedCheck => ({
    id: `maintenance-carp-${temperature}-over-12`,
    ...carp,
    what: `maintenance ration of common carp at ${temperature} over that at 12 degC`,
    unit: '1',
    ...within(25, ratio),
    compute: () => warmed(12, temperature),
  })),
  {
    id: 'maintenance-trout-23-over-7',
    source: 'wurtsbaugh-davis-1977',
    where: 'abstract: 2.2 to 7.5 % of body mass a day of natural food',
    mark: 'R',
    what: 'maintenance ration of rainbow trout at 22.5 over that at 6.9 degC',
    unit: '1',
    ...within(25, 7.5 / 2.2),
    compute: () => warmed(6.9, 22.5),
  },
  {
    id: 'maintenance-catfish-fingerling',
    source: 'gatlin-1986',
    where: 'abstract: 15.06-17.33 kcal/(kg d); 20 g is taken',
    mark: 'R',
    what: 'maintenance of channel catfish fingerlings',
    unit: 'kJ/(kg d)',
    ...between(63, 72.5),
    compute: () => number('fish.channel-catfish.maintenance') * perDemand * 1000 * 0.2 ** -0.2,
  },
  {
    id: 'oxygen-fed-african-catfish',
    source: 'conceicao-1998',
    where: 'abstract: 38 g dry, eating 6.2 % of dry body a day; 25 % dry is taken',
    mark: 'R',
    what: 'oxygen used by African catfish of 150 g fed 1.7 % a day',
    unit: 'mg/(kg h)',
    ...within(30, 264),
    compute: () => {
      const fish = fedFish({ species: 'african-catfish', ration: share(0.017), mass: 150, days: 5 });
      const held = 100 * (150 + fish.mass) * 0.5;
      return (-fish.made('oxygen') * 1e6) / held / 5 / 24;
    },
  },
];

const growths: readonly PublishedCheck[] = [
  {
    id: 'conversion-catfish-cage',
    source: 'catfish-cages',
    where: 'abstract: 84 to 312 g, mean of four feeds; no difference between them',
    mark: 'R',
    what: 'feed conversion of channel catfish of 84 g fed to satiety for 12 weeks',
    unit: 'g/g',
    ...within(15, 1.47),
    compute: () => eatenConversion({ species: 'channel-catfish', ration: share(0.06), mass: 84, days: 84 }),
  },
  {
    id: 'growth-catfish-cage',
    source: 'catfish-cages',
    where: 'abstract: 84 to 312 g',
    mark: 'R',
    what: 'growth of these catfish',
    unit: '%/d',
    ...within(25, 1.47),
    miss: 'by a hair, a quarter too much: in a cage fish spend what swimming takes, and part of the feed drifts out',
    compute: () => growthPerDay({ species: 'channel-catfish', ration: share(0.06), mass: 84, days: 84 }),
  },
  ...(
    [
      [114, 5],
      [500, 2],
    ] as const
  ).map(([mass, published]): PublishedCheck => ({
    id: `appetite-catfish-${mass}`,
    source: 'page-andrews-1973',
    where: 'abstract: fed to satiation',
    mark: 'R',
    what: `most that channel catfish of ${mass} g eat`,
    unit: '%/d',
    ...within(20, published),
    ...(mass === 114 ? { miss: ravenous } : {}),
    compute: () =>
      100 * number('fish.channel-catfish.appetite') * (mass / 100) ** -number('fish.appetite-exponent'),
  })),
  {
    id: 'conversion-perch-fingerling',
    source: 'perch-meals-2001',
    where: 'abstract: 12 g to 58 (males) and 87 g (females), 18 degC, five meals a day in excess, 100 d',
    mark: 'R',
    what: 'feed conversion of European perch of 12 g fed in excess',
    unit: 'g/g',
    ...between(0.88, 1.04),
    miss: 'growth is made of a little less than was measured in two of three groups: body and digestion of perch are weak memory',
    compute: () =>
      eatenConversion({
        species: 'european-perch',
        ration: share(0.08),
        temperature: 18,
        mass: 12,
        days: 100,
      }),
  },
  {
    id: 'growth-perch-fingerling',
    source: 'perch-meals-2001',
    where: 'abstract: 12 g to 58 (males) and 87 g (females), 18 degC, five meals a day in excess, 100 d',
    mark: 'R',
    what: 'growth of these perch',
    unit: '%/d',
    ...between(1.55, 1.98),
    miss: 'small perch eat too much here: appetite at 100 g is weak memory, and carried to 12 g by the exponent of other fish',
    compute: () =>
      growthPerDay({ species: 'european-perch', ration: share(0.08), temperature: 18, mass: 12, days: 100 }),
  },
  {
    id: 'conversion-cod-ration',
    source: 'abery-de-silva-2005',
    where: 'abstract: 1.2 % a day and other schedules, 84 d; size not told, 100 g is taken',
    mark: 'R',
    what: 'feed conversion of Murray cod fed 1.2 % a day',
    unit: 'g/g',
    ...between(0.92, 1.09),
    miss: 'the feed of that trial held 50 % protein and 16 % fat, a tenth more energy than that of the tables',
    compute: () => eatenConversion({ species: 'murray-cod', ration: share(0.012), days: 84 }),
  },
  {
    id: 'growth-cod-ration',
    source: 'abery-de-silva-2005',
    where: 'abstract: 1.2 % a day and other schedules, 84 d; size not told, 100 g is taken',
    mark: 'R',
    what: 'growth of Murray cod fed 1.2 % a day',
    unit: '%/d',
    ...between(0.89, 1.07),
    compute: () => growthPerDay({ species: 'murray-cod', ration: share(0.012), mass: 100, days: 84 }),
  },
  {
    id: 'conversion-cod-fingerling',
    source: 'de-silva-2000',
    where: 'abstract: 21.5 g, 56 d, 50 % protein, 21 kJ/g',
    mark: 'R',
    what: 'feed conversion of Murray cod of 21.5 g fed to satiety',
    unit: 'g/g',
    ...within(15, 1.05),
    compute: () => eatenConversion({ species: 'murray-cod', ration: share(0.05), mass: 21.5, days: 56 }),
  },
  {
    id: 'conversion-silver-perch-cage',
    source: 'silver-perch-cages',
    where: 'abstract: 109-115 to 455-471 g, 20.6-29.8 degC, 32 % protein',
    mark: 'R',
    what: 'feed conversion of silver perch of 112 g given what that growth took, 210 d at 25 degC',
    unit: 'g/g',
    ...between(2.3, 2.5),
    miss: 'cages in a pond: what drifts out is counted as fed, and the cool end of the season keeps fish without growth',
    compute: () => {
      const fish = fedFish({
        species: 'silver-perch',
        ration: { kind: 'mass', gramsPerDay: 100 * 1.67 * 2.4 },
        temperature: 25,
        mass: 112,
        days: 210,
      });
      return fish.feed / fish.gain;
    },
  },
  ...(
    [
      [11, 1.18],
      [15, 1.59],
    ] as const
  ).map(([temperature, published]): PublishedCheck => ({
    id: `growth-salmon-${temperature}`,
    ...salmon,
    what: `growth of Atlantic salmon of 60 g fed to satiety at ${temperature} degC`,
    unit: '%/d',
    ...within(20, published),
    compute: () =>
      growthPerDay({ species: 'atlantic-salmon', ration: share(0.05), temperature, mass: 60, days: 42 }),
  })),
  {
    id: 'energy-kept-salmon-11',
    ...salmon,
    what: 'energy kept by Atlantic salmon of that eaten at 11 degC',
    unit: '%',
    ...within(15, 57),
    miss: costly,
    compute: () =>
      energyKept({
        species: 'atlantic-salmon',
        ration: share(0.05),
        temperature: 11,
        mass: 60,
        days: 42,
      }),
  },
];

/** Trout of 106 g, 86 d, on three feeds of 20 % fat: protein and feed conversion, growth in % a day, nitrogen released in kg/t. */
const feedsOfTrout = [
  ['A', 0.367, 1.31, 0.94, 46],
  ['B', 0.39, 1.27, 0.98, 47.6],
  ['C', 0.43, 1.17, 1.05, 49.7],
] as const;

const dietaryNitrogen: readonly PublishedCheck[] = feedsOfTrout.flatMap(
  ([diet, protein, conversion, growth, released]) => {
    const from = {
      source: 'trout-diets-1995',
      where: 'abstract: 106.4 g, 86 d, 20.45 % fat; protein 36.7, 39.0 and 43.0 % of dry mass',
      mark: 'R',
    } as const;
    // Protein of the feed as fed, 91 % dry; the ration is what that growth took.
    const given: Fed & { readonly mass: number; readonly days: number } = {
      species: 'rainbow-trout',
      feed: { name: 'trout-42', protein: 0.91 * protein },
      ration: share((growth / 100) * conversion),
      mass: 106.4,
      days: 86,
    };
    const fish = (): ReturnType<typeof fedFish> => fedFish(given);
    const what = `rainbow trout of 106 g on feed ${diet} given what that growth took`;
    return [
      {
        id: `conversion-trout-diet-${diet}`,
        ...from,
        what: `feed conversion of ${what}`,
        unit: 'g/g',
        ...within(10, conversion),
        compute: () => fish().feed / fish().gain,
      },
      {
        id: `growth-trout-diet-${diet}`,
        ...from,
        what: `growth of ${what}`,
        unit: '%/d',
        ...within(10, growth),
        compute: () => growthPerDay(given),
      },
      {
        id: `released-trout-diet-${diet}`,
        ...from,
        what: `nitrogen released by ${what}, per gain`,
        unit: 'kg/t',
        ...within(10, released),
        compute: (): number => {
          const { nitrogen, gain } = fish();
          return 1000 * (nitrogen / gain - number('fish.rainbow-trout.body-nitrogen'));
        },
      },
    ];
  },
);

/** Feed efficiency of trout on a share of what they eat to satiety over that to satiety, 60 d from 100 g at 12 degC. */
function efficiencyAt(eatenShare: number): number {
  const trout = { species: 'rainbow-trout', temperature: 12, days: 60 } as const;
  const full = fedFish({ ...trout, ration: share(0.05) });
  const given = (eatenShare * full.eaten) / trout.days / (1 - number('fish.uneaten'));
  const less = fedFish({ ...trout, ration: { kind: 'mass', gramsPerDay: given } });
  return less.gain / less.feed / ((full.gain / full.eaten) * (1 - number('fish.uneaten')));
}

const rations: readonly PublishedCheck[] = ([0.85, 0.7] as const).map((eatenShare) => ({
  id: `efficiency-trout-${100 * eatenShare}`,
  source: 'azevedo-1998',
  where: 'abstract: not affected by feeding 85 or 70 % of what was eaten to near satiety, 6-15 degC',
  mark: 'R',
  what: `feed efficiency of rainbow trout given ${100 * eatenShare} % of what they eat to satiety, over that to satiety`,
  unit: '1',
  ...within(10, 1),
  compute: () => efficiencyAt(eatenShare),
}));

/** Upkeep, conversion, growth and appetite of seven species, each held against a paper of its own. */
export const fishPapers: Topic = {
  title: 'Fish, each by a paper of its own',
  kind: 'process',
  note:
    'Upkeep over temperature, oxygen, conversion, growth and appetite by size, ration and temperature. Feeds are those of the ' +
    'tables of like protein; what an abstract does not tell is taken as the line says. How much salmon eat, and at which temperatures, is set by the paper whose growth and efficiency are checked.',
  checks: [...upkeeps, ...growths, ...dietaryNitrogen, ...rations],
};
