// Pictures of a run, built in a document that is handed in: that of a browser, or one that stands for it.
export { coursePicture, panelFrame, smallFrame } from './course-picture.js';
export {
  courseSets,
  domainOf,
  type Course,
  type CourseDrawing,
  type CourseLimit,
  type CourseLine,
  type CourseRun,
  type CourseSet,
  type Domain,
} from './courses.js';
export { newMaker, type Child, type Maker } from './document.js';
export type { DrawnFlow, DrawnVessel, LevelMark, Stand } from './drawn-system.js';
export { eventsPicture } from './events-picture.js';
export { fatesArea, type FatesScale } from './fates-area.js';
export { harvestBars, type HarvestBars } from './harvest-bars.js';
export { finished, type Frame, type Telling } from './frame.js';
export { spreadLabels } from './labels.js';
export { nitrogenFlow, outerPaths, perGramFor, type FlowFrame } from './nitrogen-flow.js';
export {
  colourNames,
  darkColours,
  fateColour,
  lightColours,
  pageColours,
  type ColourName,
  type Colours,
} from './palette.js';
export { slide, type Slide, type SlideSeries } from './slide.js';
export { sweepPicture } from './sweep.js';
export { narrowSystem, roomySystem, wideSystem, type SystemFrame } from './system-layout.js';
export { systemPicture } from './system-picture.js';
