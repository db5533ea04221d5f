/**
 * Colours of pictures, by what they are for. Chosen for paper and for a dark room: lines and marks stand out from the
 * ground by 3 to 1 at least, words by 4.5 to 1, and neighbours differ in lightness as well as in hue, so that grey
 * prints and colour-blind eyes tell them apart. No meaning is left to colour alone: lines have dashes and names.
 * `tests/unit/view/pictures/colours.test.ts` checks all of this.
 */
export const colourNames = [
  'paper',
  'card',
  'ink',
  'soft',
  'grid',
  'water',
  'wash',
  'mist',
  'limit',
  'fish',
  'fish-pale',
  'crop',
  'crop-pale',
  'solids',
  'solids-pale',
  'gas',
  'ammonia',
  'pool',
  'pool-pale',
  'biofilm',
  'other',
] as const;

export type ColourName = (typeof colourNames)[number];
export type Colours = Readonly<Record<ColourName, string>>;

/** On paper and on a light screen. */
export const lightColours: Colours = {
  paper: '#fbfaf5',
  card: '#f3f1e7',
  ink: '#1a2a2b',
  soft: '#4d5d5b',
  grid: '#dddacd',
  water: '#0b5a70',
  wash: '#cfe0e0',
  mist: '#e4ece8',
  limit: '#a63d12',
  fish: '#ae5a10',
  'fish-pale': '#e9a866',
  crop: '#235a34',
  'crop-pale': '#a3c070',
  solids: '#2f231b',
  'solids-pale': '#b79a80',
  gas: '#8079b4',
  ammonia: '#a08110',
  pool: '#1f6f96',
  'pool-pale': '#8fc1d6',
  biofilm: '#93306a',
  other: '#6b7472',
};

/** On a dark screen. */
export const darkColours: Colours = {
  paper: '#10191b',
  card: '#182427',
  ink: '#e6ebe3',
  soft: '#aab7b2',
  grid: '#2c3a3c',
  water: '#74cbe0',
  wash: '#24474f',
  mist: '#1a2f34',
  limit: '#f29a6b',
  fish: '#e57c36',
  'fish-pale': '#a8662f',
  crop: '#c4ea66',
  'crop-pale': '#5f8038',
  solids: '#e6bfae',
  'solids-pale': '#806650',
  gas: '#a9a1e0',
  ammonia: '#e3c24f',
  pool: '#6cb8dd',
  'pool-pale': '#376f8a',
  biofilm: '#e389bd',
  other: '#98a3a0',
};

/** Colours as names that a page gives a value to. */
export const pageColours: Colours = Object.fromEntries(
  colourNames.map((name) => [name, `var(--${name})`]),
) as Record<ColourName, string>;

const byName: Readonly<Record<string, ColourName>> = {
  feed: 'other',
  'harvested fish': 'fish',
  'stocked fish': 'fish-pale',
  'kept in living fish': 'fish-pale',
  'drawn from living fish': 'fish-pale',
  'dead fish': 'other',
  fish: 'fish',
  'harvested crop': 'crop',
  'kept in standing crop': 'crop-pale',
  'drawn from standing crop': 'crop-pale',
  seedlings: 'crop-pale',
  transplants: 'crop-pale',
  crops: 'crop',
  sludge: 'solids',
  'kept in solids': 'solids-pale',
  'drawn from solids': 'solids-pale',
  solids: 'solids',
  'nitrogen gas': 'gas',
  'ammonia to air': 'ammonia',
  ammonia: 'ammonia',
  nitrite: 'pool-pale',
  nitrate: 'pool',
  discharge: 'pool',
  'source water': 'pool',
  'kept in water': 'pool-pale',
  'drawn from water': 'pool-pale',
  biofilm: 'biofilm',
  'kept in biofilm': 'biofilm',
  'drawn from biofilm': 'biofilm',
  treatment: 'biofilm',
};

/** Colour of a source, a form or a fate of nitrogen: the same in every picture. */
export function fateColour(name: string): ColourName {
  return byName[name] ?? 'other';
}
