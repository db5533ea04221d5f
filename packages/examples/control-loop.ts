// A feeder that looks at the water each morning and feeds half where ammonia is high.
import { compileModel, createParameters, openRun } from '@leat/core';
import { tank } from './tank.js';

const fed = openRun(compileModel(tank(0.03), createParameters()));
const held: number[] = [];
while (fed.advance(fed.day + 1)) {
  const high = fed.read('tan@tank') > 1;
  if (high) held.push(fed.day);
  fed.do({ kind: 'feed', cohort: 'fish', factor: high ? 0.5 : 1 });
}
const run = fed.finish();
console.log(`${run.outcome.kind}; half rations on ${held.length} days, first on day ${held[0] ?? '-'}`);
