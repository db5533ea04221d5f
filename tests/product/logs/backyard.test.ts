import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { fit } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { backyardDays, backyardLog, backyardNitrate } from '../../support/backyard-log.js';
import { fitSystem } from '../../support/fit-system.js';
import { readInvented } from '../../support/invented-log.js';

const folder = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));

describe('the log that ships with the invented backyard', () => {
  // After a change of the model: `npx vitest run tests/product/logs/backyard.test.ts -u`.
  it('is one of the model as it stands', async () => {
    await expect(backyardLog()).toMatchFileSnapshot(`${folder}backyard.csv`);
  });

  it('lets a fit find the nitrate at the start that the keeper has written wrongly', () => {
    const log = readInvented(backyardLog(), readFileSync(`${folder}backyard.map`, 'utf8'));
    const [{ low, high }] = fit({ system: fitSystem('backyard'), log, free: ['start.nitrate'] }).numbers;
    expect(log.readings.length).toBeGreaterThan(backyardDays);
    expect(low).toBeGreaterThan(20);
    expect(low).toBeLessThan(backyardNitrate);
    expect(high).toBeGreaterThan(backyardNitrate);
  });
});
