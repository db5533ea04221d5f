import type { LessonFrame } from '@leat/view/lesson';
import type { edition as english } from '../text/en/index.js';
import type { Same } from './words.js';

/** All words of the lessons in one language. A language is one folder of `text`, whose index exports `edition`. */
export type Edition = Omit<Same<typeof english>, 'frame'> & { readonly frame: LessonFrame };
