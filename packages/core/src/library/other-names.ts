import { nearest } from '../base/nearest.js';

/** Other names of the same crop. */
export const sameCrops: Readonly<Record<string, string>> = {
  aubergine: 'eggplant',
  brinjal: 'eggplant',
  silverbeet: 'chard',
  'swiss-chard': 'chard',
  capsicum: 'pepper',
  'bell-pepper': 'pepper',
  'sweet-pepper': 'pepper',
  courgette: 'zucchini',
  'bok-choy': 'pak-choi',
  'pak-choy': 'pak-choi',
  kangkong: 'water-spinach',
  scallion: 'spring-onion',
  pawpaw: 'papaya',
};

/** Words that people type for a species or crop, by the subject of the tables that they most likely mean. */
const otherNames: Readonly<Record<string, string>> = {
  ...sameCrops,
  chilli: 'pepper',
  lettuce: 'lettuce-butterhead',
  butterhead: 'lettuce-butterhead',
  cos: 'lettuce-romaine',
  romaine: 'lettuce-romaine',
  iceberg: 'lettuce-crisphead',
  looseleaf: 'lettuce-looseleaf',
  'green-bean': 'bean',
  'french-bean': 'bean',
  peppermint: 'mint',
  spearmint: 'mint',
  seedlings: 'seedling-tray',
  tilapia: 'nile-tilapia',
  trout: 'rainbow-trout',
  carp: 'common-carp',
  koi: 'common-carp',
  catfish: 'channel-catfish',
  perch: 'european-perch',
  salmon: 'atlantic-salmon',
};

/** The name nearest to one that is not known: what is meant by another word for it, or by what is spelled most like it. */
export function nearestSubject(name: string, names: readonly string[]): string | undefined {
  const word = name.toLowerCase().replace(/[ _]/g, '-');
  const others = new Map(Object.entries(otherNames).filter(([, meant]) => names.includes(meant)));
  const near = others.has(word) ? word : nearest(word, [...names, ...others.keys()]);
  return near === undefined ? undefined : (others.get(near) ?? near);
}
