import { readFileSync } from 'node:fs';
import { compileModel, createParameters, readScenario, simulate, type Model } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { ratio } from './support/kept.js';
import { compared, once } from './support/meter.js';
import { shortShare } from './support/short-share.js';

const text = readFileSync(new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url), 'utf8');
const DAYS = 5;

const modelOf = (timer?: string): Model => {
  const pump = '    restart: 400 L\n';
  if (!text.includes(pump)) throw new Error('the demo has another pump');
  const timed = timer === undefined ? text : text.replace(pump, `${pump}    timer: ${timer}\n`);
  return compileModel(readScenario(timed, { file: 'timer.yaml', days: DAYS }), createParameters());
};

describe('a pump on a timer', () => {
  it('against one that always runs, the same days', () => {
    console.log('');
    const plain = modelOf();
    for (const [name, timer] of [
      ['15 minutes on and off', '{ on: 15 min, off: 15 min }'],
      ['15 minutes on, 45 off', '{ on: 15 min, off: 45 min }'],
    ] as const) {
      const timed = modelOf(timer);
      const run = simulate(timed);
      expect(run.outcome.kind).toBe('done');
      // A run without a timer is too short to be timed once.
      const times = 10;
      const { ratio: found } = compared(
        () => once(() => void simulate(timed)),
        () => once(() => Array.from({ length: times }, () => simulate(plain))) / times,
        5,
      );
      console.log(`  ${name}: ${run.work.steps} steps, ${run.work.passed} stretches passed`);
      ratio(`a pump ${name} against none`, found, 10);
      ratio(`share of steps in stretches under 1e-3 d, ${name}`, shortShare(timed), 0.05);
    }
  });
});
