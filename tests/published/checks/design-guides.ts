import { budgetOf, fatesOf, limitsOf, parseQuantity, seriesOf, simulate, type Run } from '@leat/core';
import { compileModel, createParameters } from '@leat/core';
import {
  planting,
  scenarioOf,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../support/scenario-builder.js';
import { shippedScenario } from '../../support/shipped-scenario.js';
import { between, nearPrinted, printed } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

let shipped: Run | undefined;
/** The invented glasshouse that ships as the demo, half a year. */
const glasshouse = (): Run =>
  (shipped ??= simulate(compileModel(shippedScenario('glasshouse'), createParameters())));

/** Share of the water held that is taken in, each day. */
const waterUse = (): number[] => {
  const volume = seriesOf(glasshouse(), 'volume@system').values;
  return Array.from(seriesOf(glasshouse(), 'top-up@system').values, (taken, i) => taken / volume[i]).slice(1);
};
const mean = (course: readonly number[]): number =>
  course.reduce((sum, value) => sum + value, 0) / course.length;

/** A bed of one crop over fish, for its limits; catfish in water with nitrite and no chloride. */
function bedOf(crop: string): Run {
  const sump = vessel('sump', 5);
  const cohort = tilapia('fish', 'sump', { species: 'channel-catfish' });
  const water = stillWater(50, 7.5, { nitrite: 1, chloride: 0, oxygen: 1e4 });
  const scenario = scenarioOf([sump], {
    fish: [cohort],
    plantings: [planting('crop', 'sump', crop, 4)],
    start: [startOf(sump, { water })],
  });
  return simulate(compileModel(scenario, createParameters()));
}

const feedLimit = (crop: string, direction: 'below' | 'above'): number => {
  const found = limitsOf(bedOf(crop)).find(
    (limit) => limit.quantity === 'feed-per-planted-area' && limit.direction === direction,
  );
  return found?.value ?? Number.NaN;
};

const asNitrogen = (text: string, dimension: 'nitrite' | 'nitrate'): number => {
  const read = parseQuantity(text, dimension);
  return 'value' in read ? read.value : Number.NaN;
};

const feed: readonly (readonly [crop: string, kind: string, direction: 'below' | 'above', text: string])[] = [
  ['lettuce-butterhead', 'leafy', 'below', '40'],
  ['lettuce-butterhead', 'leafy', 'above', '50'],
  ['tomato', 'fruiting', 'below', '50'],
  ['tomato', 'fruiting', 'above', '80'],
];

/** Guides of design that limits and the demo are held to. */
export const designGuides: Topic = {
  title: 'Design guides, nitrite and chloride, the demo',
  kind: 'formula',
  note: 'The demo is an invented glasshouse: no measurement exists of it. It is only asked to lie where real systems do.',
  checks: [
    ...feed.map(([crop, kind, direction, text]): PublishedCheck => ({
      id: `feed-per-area-${kind}-${direction}`,
      source: 'fao-589',
      where: 'feed rate ratio, 32 % protein',
      mark: 'R',
      what: `feed per area of ${kind} crops that a run is judged by, ${direction === 'below' ? 'lower' : 'upper'} end`,
      unit: 'g/(m2 d)',
      ...printed(text),
      compute: () => feedLimit(crop, direction),
    })),
    {
      id: 'feed-per-area-demo',
      source: 'fao-589',
      where: 'feed rate ratio, 32 % protein, leafy crops',
      mark: 'R',
      what: 'feed per planted area of the demo',
      unit: 'g/(m2 d)',
      ...between(40, 50),
      miss: 'on purpose: the demo is short of water, and is fed 23 g',
      compute: () => mean(Array.from(seriesOf(glasshouse(), 'feed@system').values)) / 24,
    },
    {
      id: 'water-loss-demo',
      source: 'fao-589',
      where: 's3.4 p.29',
      mark: 'R',
      what: 'water taken in by the demo, mean of 180 d',
      unit: '% a day',
      ...between(1, 3),
      compute: () => 100 * mean(waterUse()),
    },
    {
      id: 'water-loss-demo-week',
      source: 'fao-589',
      where: 's3.4 p.29',
      mark: 'R',
      what: 'water taken in by the demo, the thirstiest week',
      unit: '% a day',
      ...between(1, 3),
      compute: (): number => {
        const use = waterUse();
        return 100 * Math.max(...use.slice(6).map((_, i) => mean(use.slice(i, i + 7))));
      },
    },
    {
      id: 'denitrified-demo',
      source: 'van-rijn-2006',
      where: 'passive denitrification',
      mark: 'M',
      what: 'nitrogen gas over feed nitrogen, the demo',
      unit: '%',
      ...between(9, 21),
      miss: 'a farm drains its solids daily; here they lie for four weeks, and those that settle in the beds for good: thick layers, of which oxygen reaches little',
      compute: (): number => {
        const { from, to } = fatesOf(budgetOf(glasshouse(), 'nitrogen', 'system'));
        const amount = (list: typeof from, name: string): number =>
          list.find((share) => share.name === name)?.amount ?? Number.NaN;
        return (100 * amount(to, 'nitrogen gas')) / amount(from, 'feed');
      },
    },
    {
      id: 'chloride-for-nitrite',
      source: 'srac-462',
      where: '10 mg of chloride per mg of nitrite (as NO2), x 46 / 14',
      mark: 'C',
      what: 'chloride wanting for channel catfish in water with 1 mg N/L of nitrite and none of chloride',
      unit: 'mg/L',
      ...nearPrinted('32.9'),
      compute: () =>
        limitsOf(bedOf('lettuce-butterhead')).find(({ quantity }) => quantity === 'chloride-shortage')
          ?.worst ?? Number.NaN,
    },
    {
      id: 'nitrate-as-n',
      source: 'fao-589',
      where: 's7.3.1: over 400 mg/L as NO3',
      mark: 'C',
      what: 'nitrate of 400 mg/L counted as N, by the units of a scenario',
      unit: 'mg N/L',
      ...printed('90.4'),
      compute: () => asNitrogen('400 mg/L as NO3', 'nitrate'),
    },
  ],
};
