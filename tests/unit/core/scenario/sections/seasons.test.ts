import { describe, expect, it } from 'vitest';
import { readScenarioFully } from '../../../../../packages/core/src/scenario/read-scenario.js';
import { seriesOf } from '../../../../../packages/core/src/result/series.js';
import { doneRun } from '../../../../support/run-of.js';
import { smallSystem } from '../../../../support/small-text.js';
import { messagesOf } from '../../../../product/faults/small-system.js';

const line =
  '  lettuce: { in: bed, crop: lettuce-butterhead, area: 4 m2, batches: 2, age: 14 d, light: 30 mol/m2/d }';
const beds = (...lines: readonly string[]): string => smallSystem.replace(line, lines.join('\n'));
const read = (text: string) => readScenarioFully(text, { file: 'small.yaml' });

describe('crops one after another in a bed', () => {
  const text = beds(
    '  lettuce: { in: bed, crop: lettuce-butterhead, area: 4 m2, light: 20 mol/m2/d, until: 10 d }',
    '  basil: { in: bed, crop: basil, area: 4 m2, light: 20 mol/m2/d, from: 2025-03-16, until: 35 d }',
  );

  it('are planted and cleared by date, and leave the bed fallow between', () => {
    const run = doneRun(read(text).scenario);
    const standing = (name: string): readonly boolean[] =>
      [...seriesOf(run, `crop-mass@${name}`).values].map((mass) => mass > 0);
    const days = (name: string): readonly number[] =>
      standing(name).flatMap((stands, day) => (stands ? [day] : []));
    // The run starts on 1 March: 16 March is its day 15. A sample of a day is taken before what is done on it.
    expect([Math.min(...days('lettuce')), Math.max(...days('lettuce'))]).toEqual([0, 10]);
    expect([Math.min(...days('basil')), Math.max(...days('basil'))]).toEqual([16, 35]);
  });

  it('may take the whole bed each', () => {
    expect(read(text).scenario.plantings.map(({ start }) => start)).toEqual(['new', 'empty']);
  });

  it.each([
    ['from: 20 d, until: 10 d', 'not after from'],
    ['from: 20 d, start: new', 'a bed that is planted later starts empty'],
    ['from: 500 d', 'not before the end of the run'],
  ])('%s is refused: %s', (keys, problem) => {
    const faults = messagesOf(beds(`  lettuce: { in: bed, crop: lettuce-butterhead, area: 4 m2, ${keys} }`));
    expect(faults.join()).toContain(problem);
  });
});

describe('a crop by a name that may mean several, or another kind', () => {
  it.each([
    ['lettuce', 'lettuce-butterhead'],
    ['Cos', 'lettuce-romaine'],
    ['chilli', 'pepper'],
    ['French bean', 'bean'],
  ])('%s is answered by %s', (word, meant) => {
    const faults = messagesOf(beds(`  bed: { in: bed, crop: ${word}, area: 4 m2 }`));
    expect(faults.join()).toContain(`did you mean ${meant}?`);
  });
});
