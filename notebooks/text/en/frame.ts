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
