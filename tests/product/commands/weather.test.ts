import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith();
writeFileSync(join(folder, 'dry.csv'), `Tx,Tn\n${'33,17\n'.repeat(40)}`);
writeFileSync(
  join(folder, 'dry.yaml'),
  [
    'include: small.yaml',
    'climate:',
    '  water-temperature: null',
    '  et0:',
    '    weather: dry.csv',
    '    latitude: -34',
    '    altitude: 250 m',
    '    columns: { high: { column: Tx, unit: degC }, low: { column: Tn, unit: degC } }',
    'vessels:',
    '  tank: { temperature: { follows: air, lag: 2 d } }',
    '  filter: { temperature: 25 degC }',
    '  bed: { temperature: 25 degC }',
    '  sump: { temperature: 25 degC }',
  ].join('\n'),
);

describe('weather from a file', () => {
  it('runs, and the notes say what was assumed for want of data', async () => {
    const { code, out, err } = await leat(['run', 'dry.yaml', '--json'], folder);
    expect(code).toBe(0);
    expect(err.split('\n').filter((line) => line.includes('climate.et0'))).toEqual([
      'dry.yaml:4: climate.et0: dew point from the lowest temperature on 40 of 40 days',
      'dry.yaml:4: climate.et0: solar radiation from the range of temperature (interior) on 40 of 40 days',
      'dry.yaml:4: climate.et0: wind of 2 m/s on 40 of 40 days',
    ]);
    expect(() => JSON.parse(out) as unknown).not.toThrow();
  });

  it('is silent with --quiet', async () => {
    expect((await leat(['run', 'dry.yaml', '--quiet'], folder)).err).toBe('');
  });
});
