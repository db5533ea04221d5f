import type { ColourName } from './colours.js';

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
