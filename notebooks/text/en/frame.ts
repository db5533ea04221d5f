import { englishFrame } from '@leat/view/lesson';

export { englishFrame as frame };

/** Names in the system files of the lessons: words that a grower of this language would give. */
export const names = {
  tank: 'tank',
  filter: 'filter',
  bed: 'bed',
  sump: 'sump',
  pump: 'main',
  tap: 'mains',
  fish: 'tilapia',
  crop: 'lettuce',
  note: 'Invented for a lesson.',
} as const;

/** Ways of nitrogen, by the name that the library gives them. */
export const fates = {
  'nitrogen gas': 'nitrogen gas',
  'ammonia to air': 'ammonia to air',
  'harvested crop': 'harvested crop',
  'harvested fish': 'harvested fish',
  'standing crop': 'standing crop',
  'living fish': 'living fish',
  'dead fish in the water': 'dead fish in the water',
  'dead fish': 'dead fish',
  solids: 'solids',
  biofilm: 'biofilm',
  water: 'water',
  discharge: 'discharge',
  overflow: 'overflow',
} as const;
