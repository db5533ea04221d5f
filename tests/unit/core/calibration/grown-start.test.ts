import { dateAfter, type WaterLog } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { grownOnLog } from '../../../../packages/core/src/calibration/grown-start.js';
import type { FitSystem } from '../../../../packages/core/src/calibration/fitted-system.js';
import { fitSystem } from '../../../support/fit-system.js';

const backyard = fitSystem('backyard');
const { startDate } = backyard.read([]).scenario;

/** A log that is of nothing but feed. */
const fed = (grams: number, first = 0): WaterLog => ({
  ...{ file: 'log.csv', from: startDate, to: dateAfter(startDate, 60), days: 60 },
  ...{ readings: [], notes: [], actions: [], added: [], oddities: [] },
  feed: Array.from({ length: 40 }, (_, day) => ({
    ...{ date: dateAfter(startDate, first + day), row: day + 2, column: 'Feed', cohort: 'all', grams },
  })),
});
const filmsOf = (system: FitSystem) => system.read([]).scenario.start.map(({ aob, nob }) => [aob, nob]);
const settings = (system: FitSystem, set: readonly { path: string; value: string }[]): FitSystem => ({
  read: (more, days) => system.read([...set, ...more], days),
});

describe('a cycled film at the start of a log', () => {
  it('holds what the ration of the log grows, as if the file had that ration', () => {
    const { system, notes } = grownOnLog(backyard, fed(8), dateAfter(startDate, 60));
    const written = settings(backyard, [{ path: 'fish.tilapia.ration', value: '8 g/d' }]);
    expect(filmsOf(system)).toEqual(filmsOf(written));
    expect(filmsOf(system)).not.toEqual(filmsOf(backyard));
    expect(notes.join()).toMatch(
      /^cycled films have grown on the log's first feed: 0\.\d+ times what the file/,
    );
    // The ration of the file stands for all else.
    expect(system.read([]).scenario.fish).toEqual(backyard.read([]).scenario.fish);
  });

  it('stays as the file has it where it is fresh, where the log feeds as the file does, and where feed is told of late', () => {
    const fresh = settings(backyard, [{ path: 'start.biofilm', value: 'uncycled' }]);
    for (const [system, log] of [
      [fresh, fed(8)],
      [backyard, fed(80)],
      [backyard, fed(8, 20)],
    ] as const) {
      const grown = grownOnLog(system, log, dateAfter(startDate, 60));
      expect(grown.notes).toEqual([]);
      expect(filmsOf(grown.system)).toEqual(filmsOf(system));
    }
  });
});
