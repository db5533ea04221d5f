import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { fit, fitBy, openFitRuns } from '@leat/core';
import { describe, expect, it } from 'vitest';
import {
  answered,
  answeredBy,
  ask,
  type Asking,
  sideBySide,
} from '../../../../packages/core/src/calibration/wanted.js';
import { backyardLog } from '../../../support/backyard-log.js';
import { fitSystem } from '../../../support/fit-system.js';
import { readInvented } from '../../../support/invented-log.js';

const doubling = { predict: (at: Float64Array) => at.map((each) => 2 * each) };

/** Doubles a number so many times, one after another. */
function* doubled(start: number, times: number): Asking<number> {
  let value = start;
  for (let i = 0; i < times; i++) {
    const [next] = yield* ask(doubling, [Float64Array.of(value)]);
    value = next?.[0] ?? Number.NaN;
  }
  return value;
}

describe('work that asks for predictions', () => {
  it('comes to the same whoever answers', async () => {
    expect(answered(doubled(3, 4))).toBe(48);
    const late = answeredBy(doubled(3, 4), (wanted) =>
      Promise.resolve(wanted.map(({ of, at }) => at.map((each) => of.predict(each)))),
    );
    expect(await late).toBe(48);
  });

  it('goes on side by side, also where one is done before the other', () => {
    let asked = 0;
    const counting = (work: Asking<readonly [number, number]>): readonly [number, number] => {
      let next = work.next();
      while (next.done !== true) {
        asked += 1;
        next = work.next(next.value.map(({ of, at }) => at.map((each) => of.predict(each))));
      }
      return next.value;
    };
    expect(counting(sideBySide(doubled(1, 5), doubled(10, 2)))).toEqual([32, 40]);
    expect(asked).toBe(5);
  });
});

describe('a fit whose runs are made elsewhere', () => {
  it('is the same to the last byte', async () => {
    const map = readFileSync(
      fileURLToPath(new URL('../../../../packages/cli/scenarios/backyard.map', import.meta.url)),
      'utf8',
    );
    const request = {
      system: fitSystem('backyard'),
      log: readInvented(backyardLog(), map),
      free: ['start.nitrate', 'aob.growth'],
      until: '2026-04-05',
      pastFits: 1,
    };
    const make = openFitRuns(request);
    let most = 0;
    const apart = await fitBy(request, (runs) => {
      most = Math.max(most, runs.length);
      // As a worker gets and gives it.
      return Promise.resolve(runs.map((run) => structuredClone(make(structuredClone(run)))));
    });
    expect(most).toBeGreaterThan(1);
    expect(JSON.stringify(apart)).toBe(JSON.stringify(fit(request)));
  });
});
