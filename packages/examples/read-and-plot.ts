// node read-and-plot.js system.yaml: reads a system, says what happens in it, and draws a course of each vessel with fish.
import { readFileSync, writeFileSync } from 'node:fs';
import { allSeries, limitsOf, run, verdictOf } from '@leat/core';
import { verdictLines } from '@leat/view/text';
import { course } from './course.js';

const file = process.argv[2] ?? 'system.yaml';
const done = run({ [file]: readFileSync(file, 'utf8') });
const series = allSeries(done);
const { title, startDate, fish: cohorts } = done.model.scenario;
const verdict = verdictOf(done, limitsOf(done, series), series);
console.log([title, ...verdictLines(verdict, startDate)].join('\n'));

for (const vessel of new Set(cohorts.map((cohort) => cohort.vessel))) {
  const drawn = series.find(({ name }) => name === `nitrate@${vessel}`);
  if (drawn !== undefined) writeFileSync(`nitrate-${vessel}.svg`, course(drawn));
}
