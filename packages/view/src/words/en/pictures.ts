import { plural } from '../plural.js';

const many = plural('en');

/** What stands in pictures. */
export const pictures = {
  titles: {
    tan: 'Total ammonia (TAN)',
    'un-ionised-ammonia': 'Free (un-ionised) ammonia',
    nitrite: 'Nitrite',
    nitrate: 'Nitrate',
    pH: 'pH',
    alkalinity: 'Alkalinity',
    oxygen: 'Oxygen',
    chloride: 'Chloride',
    volume: 'Water level',
    feed: 'Feed given',
    'fish-mass': 'Fish',
  },
  crops: (planting: string): string => `Crops: ${planting}`,
  others: (count: number): string => `${count} others`,
  batch: (number: number): string => `batch ${number}`,
  batches: (count: number): string => `${count} ${many(count, { one: 'batch', other: 'batches' })}`,
  allOfIt: 'all of it',
  allFish: 'all fish',
  keptIn: (store: string): string => `in ${store}`,
  drawnFrom: (store: string): string => `out of ${store}`,
  rainTank: 'rain tank',
  /** A kind of flow from outside, such as `top-up with mains`: what comes. */
  tap: (kind: string): string => kind.replace('top-up with ', ''),
  perDay: (amount: string): string => `${amount}/d`,
  dayZero: (date: string, year: string): string => `day 0 is ${date} ${year}`,
  dayOfRun: 'day of the run',
  fromTo: (what: string, from: string, to: string): string => `${what} from ${from} to ${to}`,
  days: (from: string, to: string): string => `day ${from} to ${to}`,
  valuesOf: (count: number, path: string, from: string, to: string): string =>
    `${count} values of ${path} from ${from} to ${to}`,
  edgeOf: (condition: string): string => `edge of: ${condition}`,
  over: (asked: string, ranges: string): string => `${asked} over ${ranges}`,
};
