import { plural } from '../plural.js';

const many = plural('en');

/** What may be changed in a system, and what comes of it. */
export const advice = {
  feed: (percent: number): string => (percent >= 100 ? 'no feed at all' : `${percent} % less feed`),
  'harvest-fish': (percent: number, where: string): string =>
    `${percent} % of the fish of ${where} taken out early, and their feed with them`,
  stagger: (where: string, span: string): string => `${where} stocked in four parts, ${span} apart`,
  fewer: (percent: number, where: string): string => `${percent} % fewer fish put in: ${where}`,
  'leave-empty': (count: number, where: string): string =>
    `${where} cleared and the ${many(count, { one: 'bed', other: 'beds' })} left empty`,
  salt: (mass: string, where: string): string => `${mass} of common salt once, into ${where}`,
  base: (mass: string, product: string): string => `${mass} of ${product} more each week`,
  'top-up': (volume: string): string => `top-up of ${volume} a day where it is capped lower or shut`,
  'change-water': (percent: number, where: string): string =>
    `${percent} % of the water of ${where} changed every day`,
  air: (rate: number, where: string): string =>
    `more air in ${where}: ${rate} 1/h (kLa) on top of what is there`,
  media: (percent: number, where: string): string => `${percent} % more media in ${where}`,
  shade: (percent: number): string => `shade cloth of ${percent} % over the crops`,
  heat: (temperature: string): string => `water heated to ${temperature} where it is colder`,
  gentler: (percent: number, where: string): string =>
    percent >= 100
      ? `the bacteria of ${where} left alone when it is cleaned or bathed`
      : `${where} cleaned or bathed ${percent} % more gently`,
  sooner: (stop: string, span: string): string => `${stop} over after ${span}`,
  'smaller-dose': (percent: number, product: string): string =>
    percent >= 100 ? `no ${product}` : `${percent} % less ${product}`,
  stops: {
    'power-cut': 'the power cut',
    'pump-off': 'the stop of the pump',
    'air-off': 'the stop of the air',
    'control-off': 'the stop of the doser',
    'top-up': 'the stop of top-up',
  },
  kinds: {
    feed: 'less feed',
    'harvest-fish': 'fish taken out early',
    stagger: 'staggered stock',
    fewer: 'fewer fish',
    'leave-empty': 'beds left empty',
    salt: 'common salt',
    base: 'more base',
    'top-up': 'more top-up',
    'change-water': 'water changes',
    air: 'more air',
    media: 'more media',
    shade: 'shade cloth',
    heat: 'warmer water',
    gentler: 'gentler cleaning',
    sooner: 'a shorter stop',
    'smaller-dose': 'smaller doses',
  },
  fromTheStart: (what: string): string => `${what}, from the start`,
  on: (what: string, day: string): string => `${what} on ${day}`,
  toTheEnd: (what: string, from: string): string => `${what} from ${from} to the end`,
  until: (what: string, from: string, until: string): string => `${what} from ${from} until ${until}`,
  was: (now: string, was: string): string => `${now} (was ${was})`,
  yields: {
    crops: (mass: string): string => `crops ${mass}`,
    fish: (mass: string): string => `fish gain ${mass}`,
    feed: (mass: string): string => `feed ${mass}`,
    water: (volume: string): string => `water ${volume}`,
  },
};
