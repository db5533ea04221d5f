import { createParameters } from '@leat/core';
import { fedFish, type FedFish } from '../../support/fed-fish.js';
import { about, between, printed, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const parameters = createParameters();
const carbonDioxide = parameters.value('molar.carbon') + parameters.value('molar.oxygen-gas');

/** Ration of a grow-out: the middle of 1-2 % of body mass a day (FAO 589 [R]). */
const fed = (species: string, perDay = 0.015): FedFish =>
  fedFish({ species, ration: { kind: 'share', perDay } });

/** Suspended particles of both pools, g dry, and the nitrogen in them, g N. */
const particles = (fish: FedFish): { readonly mass: number; readonly nitrogen: number } => ({
  mass: fish.made('solids') + fish.made('refractory'),
  nitrogen:
    fish.made('solids') * parameters.value('solids.nitrogen') +
    fish.made('refractory') * parameters.value('solids.refractory-nitrogen'),
});

/** Dissolved nitrogen, g N: TAN, and urea and other organic nitrogen that becomes TAN in filters. */
const dissolved = (fish: FedFish): number => fish.made('tan') + fish.made('organic-nitrogen');

/** g per kg of feed. */
const perFeed = (fish: FedFish, amount: number): number => (1000 * amount) / fish.feed;
const particulate = (fish: FedFish): number => {
  const nitrogen = particles(fish).nitrogen;
  return (100 * nitrogen) / (nitrogen + dissolved(fish));
};

const lecture = { source: 'recirculating-lecture', where: 'per kg of feed', mark: 'R' } as const;
const breath =
  'what closes oxygen demand between the feed and body values of the tables: at the feed conversion that comes out more ' +
  'of the feed is respired than the sheet has; feed and body demand are weak memory [W]';

const ureaToo =
  'the rule is of TAN alone, 0.9 of what is given off; with the tenth that is urea, which is counted here, it says 32.8 g per kg ' +
  'of feed with 32 % protein and 46.1 g with 45 %';

/** TAN by protein fed, Timmons & Ebeling. */
const ruled: readonly (readonly [species: string, protein: number, miss?: string])[] = [
  ['nile-tilapia', 0.32],
  ['common-carp', 0.32],
  ['channel-catfish', 0.32],
  ['silver-perch', 0.32],
  ['jade-perch', 0.32, ureaToo],
  ['rainbow-trout', 0.42],
  ['european-perch', 0.45],
  ['barramundi', 0.45],
  ['murray-cod', 0.45],
];

/** What becomes of feed in fish. */
export const fishWaste: Topic = {
  title: 'What fish make of feed',
  kind: 'process',
  note:
    'Fish of 100 g fed 1.5 % of body mass a day for 60 days at their reference temperature, in a tank with ample oxygen ' +
    'and no filter, unless said otherwise. What is not eaten (4 %) is counted with the feed. Nitrogen kept by single species but tilapia is known by weak memory ' +
    'only [W], and not checked.',
  checks: [
    {
      id: 'tan-per-feed',
      ...lecture,
      what: 'TAN, and urea and the like that become TAN, per kg of feed, Nile tilapia on 32 % protein',
      unit: 'g/kg',
      ...within(10, 30),
      compute: (): number => {
        const fish = fed('nile-tilapia');
        return perFeed(fish, dissolved(fish));
      },
    },
    ...ruled.map(([species, protein, miss]): PublishedCheck => ({
      id: `tan-by-protein-${species}`,
      source: 'timmons-ebeling',
      where: 'TAN = 0.092 x protein x feed',
      mark: 'M',
      what: `TAN, and urea and the like that become TAN, per kg of feed with ${100 * protein} % protein, ${species}`,
      unit: 'g/kg',
      ...within(10, Number((92 * protein).toPrecision(4))),
      compute: (): number => {
        const fish = fed(species);
        return perFeed(fish, dissolved(fish));
      },
      ...(miss === undefined ? {} : { miss }),
    })),
    {
      id: 'tan-rule-factors',
      source: 'timmons-ebeling',
      where: '0.16 x 0.80 x 0.80 x 0.90 = 0.09216',
      mark: 'C',
      what: 'TAN per protein fed, the number used by the audit',
      unit: 'g/g',
      ...printed('.092'),
      compute: () => parameters.value('limit.tan-per-protein.value'),
    },
    {
      id: 'tan-per-fish-thin',
      source: 'srac-282',
      where: 'mean 10 (4-21) g per 100 lb of fish a day',
      mark: 'R',
      what: 'TAN per 100 g of Nile tilapia a day, fed 1 % a day',
      unit: 'mg',
      ...between(9, 46),
      compute: (): number => {
        const fish = fed('nile-tilapia', 0.01);
        return perFeed(fish, fish.made('tan')) * 0.01 * 100;
      },
    },
    {
      id: 'tan-per-fish-full',
      source: 'srac-282',
      where: 'mean 10 (4-21) g per 100 lb of fish a day',
      mark: 'R',
      what: 'TAN per 100 g of Nile tilapia a day, fed 2 % a day',
      unit: 'mg',
      ...between(9, 46),
      compute: (): number => {
        const fish = fed('nile-tilapia', 0.02);
        return perFeed(fish, fish.made('tan')) * 0.02 * 100;
      },
    },
    ...(['nile-tilapia', 'rainbow-trout'] as const).map((species): PublishedCheck => ({
      id: `oxygen-per-feed-${species}`,
      ...lecture,
      what: `oxygen used by fish per kg of feed, ${species}`,
      unit: 'g/kg',
      ...within(20, 250),
      miss: breath,
      compute: (): number => {
        const fish = fed(species);
        return perFeed(fish, -fish.made('oxygen'));
      },
    })),
    {
      id: 'oxygen-of-whole-system',
      source: 'timmons-ebeling',
      where: 'oxygen demand of whole systems',
      mark: 'M',
      what: 'oxygen used by Nile tilapia and by oxidation of all their TAN, per kg of feed',
      unit: 'g/kg',
      ...between(400, 1000),
      compute: (): number => {
        const fish = fed('nile-tilapia');
        const perNitrogen = (2 * parameters.value('molar.oxygen-gas')) / parameters.value('molar.nitrogen');
        return perFeed(fish, -fish.made('oxygen') + perNitrogen * fish.made('tan'));
      },
    },
    {
      id: 'carbon-dioxide-per-feed',
      ...lecture,
      what: 'CO2 made by fish per kg of feed, Nile tilapia',
      unit: 'g/kg',
      ...within(20, 340),
      miss: `it follows the oxygen: ${breath}`,
      compute: (): number => {
        const fish = fed('nile-tilapia');
        return perFeed(fish, fish.made('carbon') * carbonDioxide);
      },
    },
    {
      id: 'carbon-dioxide-per-oxygen',
      ...lecture,
      where: 'CO2 over O2, respiratory quotient 1',
      what: 'CO2 made per oxygen used, Nile tilapia',
      unit: 'g/g',
      ...printed('1.375'),
      compute: (): number => {
        const fish = fed('nile-tilapia');
        return (-fish.made('carbon') * carbonDioxide) / fish.made('oxygen');
      },
    },
    {
      id: 'faecal-solids-per-feed',
      ...lecture,
      what: 'dry solids per kg of feed, Nile tilapia',
      unit: 'g/kg',
      ...between(300, 500),
      miss: 'particles are what digestion of energy leaves, less the 29 % that is dissolved',
      compute: (): number => {
        const fish = fed('nile-tilapia');
        return perFeed(fish, particles(fish).mass);
      },
    },
    {
      id: 'suspended-solids-per-feed',
      source: 'timmons-ebeling',
      where: 'TSS is 25 % of feed',
      mark: 'M',
      what: 'dry solids per feed, Nile tilapia',
      unit: '%',
      ...within(10, 25),
      miss: 'particles are what digestion of energy leaves, less what is dissolved; the rule counts ash and water-holding mucus too',
      compute: (): number => {
        const fish = fed('nile-tilapia');
        return perFeed(fish, particles(fish).mass) / 10;
      },
    },
    {
      id: 'faeces-tilapia-plant-diets',
      source: 'tilapia-plant-diets-2016',
      where: 'abstract: 69.4 to 77.0 % of dry mass digested; 10 % water is taken',
      mark: 'R',
      what: 'faeces of Nile tilapia before any of them dissolve, dry, per kg eaten',
      unit: 'g/kg',
      ...between(207, 275),
      compute: (): number => {
        const left = 1 - parameters.value('fish.nile-tilapia.energy-digestibility');
        return (1000 * left * parameters.value('feed.grower-32.demand')) / parameters.value('solids.demand');
      },
    },
    {
      id: 'faecal-nitrogen-tilapia',
      source: 'quillere-1995',
      where: 'nitrogen budget',
      mark: 'S',
      what: 'nitrogen in solids of that fed, Nile tilapia',
      unit: '%',
      ...about(10, 3, 'points'),
      compute: (): number => {
        const fish = fed('nile-tilapia');
        return (100 * particles(fish).nitrogen) / fish.nitrogen;
      },
    },
    {
      id: 'faecal-nitrogen-trout',
      source: 'cho-bureau',
      where: 'protein digestibility 87-92 %',
      mark: 'M',
      what: 'nitrogen in solids of that fed, rainbow trout',
      unit: '%',
      ...between(8, 13),
      compute: (): number => {
        const fish = fed('rainbow-trout');
        return (100 * particles(fish).nitrogen) / fish.nitrogen;
      },
    },
    {
      id: 'particulate-nitrogen-range',
      source: 'cripps-bergheim-2000',
      where: 'as cited',
      mark: 'R',
      what: 'particulate share of the nitrogen that leaves the fish, rainbow trout',
      unit: '%',
      ...between(7, 32),
      compute: () => particulate(fed('rainbow-trout')),
    },
    {
      id: 'particulate-nitrogen',
      source: 'kristiansen-cripps-1996',
      where: 'as cited',
      mark: 'R',
      what: 'particulate share of the nitrogen that leaves the fish, rainbow trout',
      unit: '%',
      ...about(25, 5, 'points'),
      miss: 'the tables have 90 % of protein digested, and a part of the rest is dissolved; the measured water also holds cells grown in the system',
      compute: () => particulate(fed('rainbow-trout')),
    },
    {
      id: 'excreted-share-fao',
      source: 'fao-589',
      where: 'App. 4',
      mark: 'M',
      what: 'dissolved nitrogen of that fed, Nile tilapia',
      unit: '%',
      ...about(61, 5, 'points'),
      miss: 'by a hair: a third is kept and a ninth is in solids of what is fed; the handbook has 61 % left over for a simple rule',
      compute: (): number => {
        const fish = fed('nile-tilapia');
        return (100 * dissolved(fish)) / fish.nitrogen;
      },
    },
    {
      id: 'retained-nitrogen-tilapia',
      source: 'quillere-1995',
      where: 'nitrogen budget',
      mark: 'S',
      what: 'nitrogen kept by Nile tilapia of that fed',
      unit: '%',
      ...between(18, 32),
      miss: 'tilapia of 100 g on a measured 1.5 % a day keep a third; the range is of a system whose adults were past 100 g, and its upper end is of growing fingerlings',
      compute: (): number => {
        const fish = fed('nile-tilapia');
        return (100 * fish.gain * parameters.value('fish.nile-tilapia.body-nitrogen')) / fish.nitrogen;
      },
    },
    {
      id: 'retained-nitrogen-general',
      source: 'crab-2007',
      where: 'as cited in Zou 2016',
      mark: 'R',
      what: 'nitrogen kept by fish of that fed, mean of the nine species',
      unit: '%',
      ...about(25, 5, 'points'),
      miss: 'a quarter is what farms at large recover, with ponds, feed lost and fish that die; here fish of 100 g eat all but 4 % in clean water',
      compute: (): number => {
        const shares = ruled.map(([species]) => {
          const fish = fed(species);
          return (100 * fish.gain * parameters.value(`fish.${species}.body-nitrogen`)) / fish.nitrogen;
        });
        return shares.reduce((sum, share) => sum + share, 0) / shares.length;
      },
    },
    {
      id: 'nitrogen-kept-farm',
      source: 'farm-nitrogen-budget',
      where: '37 +- 4 % of the nitrogen fed',
      mark: 'R',
      what: 'nitrogen kept by rainbow trout of that fed (the fish of that farm are not known)',
      unit: '%',
      ...between(33, 41),
      compute: (): number => {
        const fish = fed('rainbow-trout');
        return (100 * fish.gain * parameters.value('fish.rainbow-trout.body-nitrogen')) / fish.nitrogen;
      },
    },
    {
      id: 'excreted-of-digestible-trout',
      source: 'medale-1995',
      where: 'at rations of 1.5-2 %, DP/DE 18 mg/kJ',
      mark: 'R',
      what: 'dissolved nitrogen of the digestible nitrogen fed, rainbow trout',
      unit: '%',
      ...between(39, 40),
      miss: 'trout of 100 g fed 1.5 % a day keep less here than these young trout on a diet rich in energy, which kept some 60 % of the digestible',
      compute: (): number => {
        const fish = fed('rainbow-trout');
        const digestible = fish.nitrogen * parameters.value('fish.rainbow-trout.protein-digestibility');
        return (100 * dissolved(fish)) / digestible;
      },
    },
    {
      id: 'tan-of-dissolved-trout',
      source: 'dalsgaard-pedersen-2011',
      where: 'as cited, 42.8 % protein feed',
      mark: 'R',
      what: 'TAN of the dissolved nitrogen that trout make',
      unit: '%',
      ...about(71, 5, 'points'),
      chosen: 'fish.ammonia-share',
      compute: (): number => {
        const fish = fed('rainbow-trout');
        return (100 * fish.made('tan')) / dissolved(fish);
      },
    },
    {
      id: 'ammonia-of-feed-red-tilapia',
      source: 'red-tilapia-ammonia',
      where: 'abstract: 20-200 g, 115 d in a recirculating system',
      mark: 'R',
      what: 'ammonia given off by red tilapia of the nitrogen fed, fed what brings 20 g to 200 g in 115 d',
      unit: '%',
      ...within(10, 39.4),
      miss: 'nine tenths of what is dissolved would give it, as the rule of design has; the tables hold the mean of seven papers on six species, 0.75',
      compute: (): number => {
        const fish = fedFish({
          species: 'red-tilapia',
          // The middle of 3-4 % of a chart for 20-100 g and 1.5-3 % beyond (SRAC 282 [M]): what they leave is counted as fed.
          ration: { kind: 'share', perDay: 0.03 },
          mass: 20,
          days: 115,
        });
        return (100 * fish.made('tan')) / fish.nitrogen;
      },
    },
    {
      id: 'bicarbonate-per-feed',
      source: 'timmons-ebeling',
      where: 'sodium bicarbonate, rule of thumb',
      mark: 'M',
      what: 'NaHCO3 that makes good the alkalinity lost where all TAN of Nile tilapia is oxidised',
      unit: 'kg/kg',
      ...within(25, 0.25),
      miss: 'the rule goes with its 30 g of TAN per kg of feed, all of it lost to nitrate as if given off as ammonium; fish give off ammonia, which brings one of the two equivalents',
      compute: (): number => {
        const fish = fed('nile-tilapia');
        // Organic nitrogen brings its alkalinity as it becomes TAN.
        const perNitrogen = 1 / parameters.value('molar.nitrogen');
        const given = fish.made('alkalinity') + fish.made('organic-nitrogen') * perNitrogen;
        const lost = 2 * dissolved(fish) * perNitrogen - given;
        return lost / parameters.value('dose.sodium-bicarbonate.alkalinity') / fish.feed;
      },
    },
  ],
};
