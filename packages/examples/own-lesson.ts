// One page of a course of your own: a question, a picture of the answer, and where the nitrogen went.
import { writeFileSync } from 'node:fs';
import { budgetOf, compileModel, createParameters, fatesOf, seriesOf, simulate } from '@leat/core';
import { course } from './course.js';
import { tank } from './tank.js';

const run = simulate(compileModel(tank(0.02), createParameters()));
const fates = fatesOf(budgetOf(run, 'nitrogen', 'system')).to;
const shares = fates.map(({ name, share }) => `<li>${name}: ${(100 * share).toFixed(0)} %</li>`);
writeFileSync(
  'lesson.html',
  `<!doctype html><html lang="en"><meta charset="utf-8" /><title>Where does it go?</title>
<h1>Where does it go?</h1>
<p>Thirty fish in an invented tank are fed 60 g a day. How much nitrate is there after a month? Write down your guess.</p>
<details><summary>The answer</summary>${course(seriesOf(run, 'nitrate@tank'))}
<p>What became of the nitrogen that was fed:</p><ul>${shares.join('')}</ul></details></html>
`,
);
console.log(`lesson.html: ${shares.length} fates`);
