// A season in two halves: what is saved at the end of the first is where the second goes on.
import { compileModel, createParameters, endStateOf, seriesOf, simulate, type Scenario } from '@leat/core';
import { tank } from './tank.js';

const season = tank(0.015, 60);
const runOf = (scenario: Scenario) => simulate(compileModel(scenario, createParameters()));
const whole = runOf(season);
const spring = runOf({ ...season, days: 30 });
const saved = endStateOf(spring); // plain data: JSON.stringify keeps it
const summer = runOf({ ...season, saved });

const [one, two] = [whole, summer].map((run) => seriesOf(run, 'nitrate@tank').values.at(-1));
console.log(`day ${summer.samples[0].time} to ${summer.outcome.time}: ${two} mg N/L, unbroken ${one}`);
if (one !== two) process.exitCode = 1;
