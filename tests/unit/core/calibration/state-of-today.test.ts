import { describe, expect, it } from 'vitest';
import {
  openFitProblem,
  predictionsOf,
  soughtOf,
} from '../../../../packages/core/src/calibration/fit-problem.js';
import type { FitSystem } from '../../../../packages/core/src/calibration/fitted-system.js';
import { pacesOf } from '../../../../packages/core/src/calibration/paces.js';
import { openWindow, predictThrough, windowStart } from '../../../../packages/core/src/calibration/window.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import type { SavedState } from '../../../../packages/core/src/scenario/saved-state.js';
import { endStateOf } from '../../../../packages/core/src/run/saved.js';
import { backyardKit } from '../../../support/backyard-twin.js';
import { fitSystem } from '../../../support/fit-system.js';
import { inventedLog, inventedMap, readInvented } from '../../../support/invented-log.js';

const backyard = fitSystem('backyard');
const withFilm = (biofilm: string): FitSystem => ({
  read: (set, days) => backyard.read([{ path: 'start.biofilm', value: biofilm }, ...set], days),
});
/** Fifty days of readings of a backyard whose film is what it is, without spoilt ones. */
const logOf = (system: FitSystem) =>
  readInvented(
    inventedLog(system.read([], 50).scenario, { seed: 4, days: 50, columns: backyardKit, spoilt: 0 }),
    inventedMap(backyardKit, 'tank'),
  );
const free = ['aob.growth'];
const middle = new Float64Array(1);

describe('the state of today by the last weeks', () => {
  // The file believes in a film of 2 %; truly there is a fifth of that, and ammonia rises before it is grown.
  const problem = openFitProblem({ system: withFilm('2 %'), log: logOf(withFilm('0.4 %')), free });
  const window = openWindow(problem, middle);
  const start = window && windowStart(problem, middle, window);

  it('moves films towards what the readings say, and comes nearer to them', () => {
    expect(start?.day).toBe(1);
    if (window === undefined || start === undefined) return;
    const scenario = problem.scenarioAt(middle);
    const before = problem.runOf({
      ...scenario,
      days: 1,
      actions: scenario.actions.filter(({ at }) => at < 1),
    });
    const state = endStateOf(before);
    const held = (of: SavedState['states'], component: string): number =>
      of.filter((each) => each.component === component).reduce((sum, { amount }) => sum + amount, 0);
    const moved = start.moved(state).states;
    expect(held(moved, 'aob')).toBeLessThan(0.95 * held(state.states, 'aob'));
    // What the window does not move stays to the last bit.
    for (const component of ['chloride', 'fish-mass', 'alkalinity'])
      expect(held(moved, component)).toBe(held(state.states, component));
    const sought = soughtOf(problem.observations);
    const misses = (values: Float64Array | undefined): number =>
      problem.observations.reduce((sum, { reading }, i) => {
        if (reading.reads !== 'ammonia' || values === undefined) return sum;
        const low = Math.max(0, reading.low - values[i]);
        return sum + Math.min(4, (low + Math.max(0, values[i] - reading.high)) / 0.25);
      }, 0);
    const long = problem.predict(middle, sought);
    const saved = start.moved(endStateOf(window.before));
    const late = predictThrough(sought, window, (after) => problem.predictOf({ ...scenario, saved }, after));
    expect(misses(late)).toBeLessThan(misses(long));
  });

  it('is that of the long fit where too few readings tell', () => {
    const [first] = problem.observations;
    expect(openWindow({ ...problem, observations: [first] }, middle)).toBeUndefined();
  });
});

describe('the pace of a start-up', () => {
  const fresh = withFilm('uncycled');
  const problem = openFitProblem({ system: fresh, log: logOf(fresh), free });
  const scenario = problem.scenarioAt(middle);
  const run = problem.runOf(scenario);

  it('is as fitted, or slower down to a third, and nitrite falls later by it', () => {
    const paces = pacesOf([run], scenario, 20) ?? [];
    const growth = paces.map(({ overrides }) => createParameters(overrides).value('nob.growth'));
    const own = createParameters(scenario.overrides).value('nob.growth');
    expect(growth).toHaveLength(5);
    expect(growth[0]).toBeCloseTo(own, 12);
    expect(growth[4]).toBeCloseTo(own / 3, 12);
    const sought = Array.from({ length: 50 }, (_, time) => ({ reads: 'nitrite', vessel: 0, time }) as const);
    const peaks = [paces[0], paces[2]].map((each) => {
      const values = [...(predictionsOf(problem.runOf(each), sought) ?? [])];
      return values.indexOf(Math.max(...values));
    });
    expect(peaks[1]).toBeGreaterThan(peaks[0]);
  });

  it('is none of a cycled system, nor of one whose start-up is long over', () => {
    const cycled = openFitProblem({ system: backyard, log: logOf(backyard), free });
    const known = cycled.scenarioAt(middle);
    expect(pacesOf([cycled.runOf(known)], known, 20)).toBeUndefined();
    expect(pacesOf([run], scenario, 400)).toBeUndefined();
  });
});

describe('a second meter', () => {
  it('is told of by a fit and a forecast where the map names it', () => {
    const text = inventedLog(backyard.read([], 50).scenario, {
      ...{ seed: 4, days: 50, spoilt: 0 },
      columns: [{ reads: 'pH', vessel: 'tank', resolution: 0.2, often: 0.9 }],
    });
    const column = /^.*pH.*$/m
      .exec(text.split('\n')[0])?.[0]
      .split(',')
      .find((name) => name.includes('pH'));
    const map = inventedMap([{ reads: 'pH', vessel: 'tank', resolution: 0.2, often: 0.9 }], 'tank');
    const half = readInvented(text, map).readings[20].date;
    const changed = map.replace(
      /(reads: pH[^}]*)\}/,
      `$1, changes: [{ from: ${half}, instrument: new meter }] }`,
    );
    expect(column).toBeDefined();
    expect(changed).not.toBe(map);
    const { notes, offsets } = openFitProblem({ system: backyard, log: readInvented(text, changed), free });
    expect(offsets).toHaveLength(1);
    // Both meters are one and the same.
    expect(offsets[0].low).toBeLessThan(offsets[0].at);
    expect(offsets[0].high).toBeGreaterThan(offsets[0].at);
    expect(notes.join('\n')).toMatch(
      /^pH in tank: new meter \(from [-\d]+\) reads 0\.\d+ (higher|lower) than the one before/m,
    );
  });
});
