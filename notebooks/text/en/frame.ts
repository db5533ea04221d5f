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
  'kept in standing crop': 'kept in standing crop',
  'kept in living fish': 'kept in living fish',
  'dead fish': 'dead fish',
  'kept in solids': 'kept in solids',
  'kept in biofilm': 'kept in biofilm',
  'kept in water': 'kept in water',
  discharge: 'discharge',
  overflow: 'overflow',
} as const;
