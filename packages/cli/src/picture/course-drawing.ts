import type { SeriesBands } from '@leat/core';
import type { Course } from '../report/courses.js';
import type { Colours } from './colours.js';
import type { Frame } from './plot-frame.js';
import type { Domain } from './scale.js';

/** What is drawn and on which scales. */
export interface CourseDrawing {
  readonly course: Course;
  /** Line of the first run, faint, behind that of another. */
  readonly before?: Pick<Course, 'time' | 'lines'>;
  readonly bands?: SeriesBands & { readonly time: readonly number[] };
  readonly vertical: Domain;
  /** Days. */
  readonly horizontal: Domain;
  readonly colours: Colours;
  readonly frame: Frame;
}
