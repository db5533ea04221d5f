import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  basisOf,
  compileModel,
  createParameters,
  createRandom,
  openRuns,
  openScenarioText,
  simulate,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { checking, figure, ratio } from './support/kept.js';
import { once } from './support/meter.js';
import { wholeProcess, type Taken } from './support/whole-process.js';

const main = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));
const demo = fileURLToPath(new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url));

/** `npm run bench -- --full ensemble`: all members in place of what two smaller ensembles let expect. */
const full = process.env['LEAT_BENCH_FULL'] === '1';
const members = 1000;
/** Both are counted in bins, as many members are. */
const [few, more] = [150, 300];
const bar = { time: 0.55, memory: 250 };

function ensemble(size: number, days = 365, workers = 2): Taken {
  const asked = ['--days', String(days), '--members', String(size), '--workers', String(workers), '--json'];
  const taken = wholeProcess([main, 'ensemble', demo, ...asked]);
  const { wall, processor, memory } = taken;
  console.log(
    `  ${size} members of ${days} days on ${workers}: ${(wall / 1000).toFixed(1)} s by the clock, ${(processor / 1000).toFixed(1)} s of processors, ${memory.toFixed(0)} MB`,
  );
  return taken;
}

/** Processor time of 1,000 members on two workers, ms, and the memory. */
function thousand(): Pick<Taken, 'processor' | 'memory'> {
  if (full) return ensemble(members);
  const [a, b] = [ensemble(few), ensemble(more)];
  figure(`memory of ${more} members against ${few}`, b.memory / a.memory);
  const each = (b.processor - a.processor) / (more - few);
  return { processor: b.processor + each * (members - more), memory: b.memory };
}

/** Mean processor time of some work, ms, after it has been done often enough to be warm. */
function warm(work: () => void): number {
  for (let i = 0; i < 20; i++) work();
  return (
    once(() => {
      for (let i = 0; i < 40; i++) work();
    }) / 40
  );
}

/** Members of a month, few enough for a check. */
const short = { days: 30, few: 20, many: 60 };

describe('members of a month', () => {
  it('on one worker and on two, few and many', () => {
    console.log('');
    const { days, few: less, many } = short;
    const [a, one, two] = [ensemble(less, days, 1), ensemble(many, days, 1), ensemble(many, days, 2)];
    expect(a.memory).toBeGreaterThan(0);
    ratio(`memory of ${many} members against ${less}`, one.memory / a.memory);
    ratio('processor time of two workers against one', two.processor / one.processor);
    // By the clock two workers are as fast as the second core is idle.
    figure('two workers against one, by the clock', two.wall / one.wall, '', 0.55);
  });
});

// Minutes: a check leaves it out.
describe.skipIf(checking)('1,000 members of the demo year on two workers', () => {
  it('against as many single warm years on one core', () => {
    console.log('\n  demo, 365 days, tolerance 1e-5, latin-hypercube, all series and limits');
    const open = openScenarioText(readFileSync(demo, 'utf8'), { file: 'glasshouse.yaml', days: 365 });
    const { scenario } = open.reading;
    const model = compileModel(scenario, createParameters());
    const { rows } = basisOf(open, { measures: [], conditions: [] });
    const random = createRandom(1);
    const runAt = openRuns(open, rows);
    const drawn = Array.from({ length: 20 }, () => runAt(rows.map(() => random())));
    expect(drawn.filter(({ outcome }) => outcome.kind === 'done').length).toBeGreaterThan(15);
    const single = warm(() => void simulate(model));
    let next = 0;
    const same = warm(() => void simulate(drawn[next++ % drawn.length].model));
    console.log(
      `  a single warm year: ${single.toFixed(1)} ms of processor time; of systems that were drawn: ${same.toFixed(1)} ms`,
    );
    const { processor, memory } = thousand();
    // Of two cores that nothing else uses: the clock of a busy machine says nothing.
    const time = processor / 2;
    figure(
      '1,000 members on two cores against 1,000 single warm years',
      time / (members * single),
      '',
      bar.time,
    );
    figure(
      '1,000 members on two cores against 1,000 years of drawn systems',
      time / (members * same),
      '',
      bar.time,
    );
    figure('memory of an ensemble', memory, 'MB', bar.memory);
  });
});
