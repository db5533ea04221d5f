// What the cells of the lessons import.
export { answerLater } from './answer-later.js';
export { bars } from './bars.js';
export { chart } from './chart.js';
export { course } from './course.js';
export { ensembleView } from './ensemble-view.js';
export { figure, runFigure } from './figure.js';
export { html } from './html.js';
export { inventedLog } from './invented-log.js';
export { knownMisses, missedInSystems } from './known-misses.js';
export { logOf, logPoints, misfit } from './log-points.js';
export { nitrogenShares } from './nitrogen-shares.js';
export { numberOf } from './number-of.js';
export { guessFirst, pickFirst, veil } from './predict.js';
export { runText } from './run-text.js';
export { slider } from './slider.js';
export { smallSystem } from './small-system.js';
export { sources } from './sources.js';
export { systemFile } from './system-file.js';
