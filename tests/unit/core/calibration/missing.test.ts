import { fit, type Fit } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { backyardKit } from '../../../support/backyard-twin.js';
import { fitSystem } from '../../../support/fit-system.js';
import { inventedLog, inventedMap, readInvented } from '../../../support/invented-log.js';

const days = 95;
const system = fitSystem('backyard');

/** A fit to the log of a backyard whose cup of feed weighs so many times what the keeper thinks. */
function fitOf(feed: number): Fit {
  const { scenario } = system.read([], days);
  const text = inventedLog(scenario, {
    ...{ seed: 21, days, columns: backyardKit, spoilt: 0.02 },
    feed: (day) => (day % 7 === 6 ? 0 : 70 + 5 * (day % 4)),
    temperature: (day) => 24 + 0.5 * Math.sin(day),
  });
  const [header, ...rows] = text.trimEnd().split('\n');
  const written = rows.map((row) => {
    const cells = row.split(',');
    const fed = cells.length - 2;
    if (cells[fed] !== '') cells[fed] = (Number(cells[fed]) / feed).toFixed(1);
    return cells.join(',');
  });
  return fit({
    ...{ system, free: ['biofilm.capacity', 'aob.growth'], furtherStarts: 0, pastFits: 0 },
    log: readInvented(`${[header, ...written].join('\n')}\n`, inventedMap(backyardKit, 'tank')),
  });
}

describe('what is missing in a fit that is not to be trusted', () => {
  it('feed that weighs 2.5 times what is written is told from water changes and volumes', () => {
    const { verdict, missing } = fitOf(2.5);
    expect(verdict).not.toBe('trusted');
    expect(missing[0]).toMatchObject({ kind: 'feed', size: 1.6 });
    expect(missing[0].gain).toBeGreaterThan(5);
  });

  it('is not looked for where the fit did well', () => {
    const { verdict, missing } = fitOf(1);
    expect([verdict, missing]).toEqual(['trusted', []]);
  });
});
