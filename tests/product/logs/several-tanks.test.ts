import { readFileSync } from 'node:fs';
import { fit, summaryOfLog, type Fit, type FitSystem } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { openScenarios, fittedValuesAt } from '../../../packages/core/src/calibration/fitted-system.js';
import { readFree } from '../../../packages/core/src/calibration/read-free.js';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { backyardKit } from '../../support/backyard-twin.js';
import { fitSystem } from '../../support/fit-system.js';
import { inventedLog, inventedMap, joinedLogs, readInvented } from '../../support/invented-log.js';

const backyard = readFileSync(
  new URL('../../../packages/cli/scenarios/backyard.yaml', import.meta.url),
  'utf8',
);

/** The backyard with a nursery beside its tank, on half of a slow pump each. */
const twoTanks = backyard
  .replace(
    '  bed:\n',
    '  nursery: { kind: fish-tank, volume: 0.4 m3, area: 0.6 m2, aeration: 6 1/h }\n  bed:\n',
  )
  .replace(
    'rate: 1 m3/h }',
    'rate: 0.15 m3/h }\n  - { from: sump, to: nursery, pump: main, rate: 0.15 m3/h }',
  )
  .replace('  - { from: tank, to: bed }', '  - { from: tank, to: bed }\n  - { from: nursery, to: bed }')
  .replace(
    'plantings:',
    '  fry: { in: nursery, species: nile-tilapia, number: 60, mass: 10 g, feed: grower-32, ration: 20 g/d }\n\nplantings:',
  );

/** The scenario of a system where its free numbers truly stand at some deviates. */
function truly(system: FitSystem, names: readonly string[], deviates: readonly number[], days: number) {
  const base = system.read([], days);
  const free = readFree(names, base.scenario, createParameters());
  return openScenarios(system, base, days)(fittedValuesAt(free, deviates));
}

/** How many standard errors each fitted number lies from the truth. */
const off = ({ numbers }: Fit, truth: readonly number[]): number[] =>
  numbers.map(({ deviate, deviation }, j) => (deviate - truth[j]) / deviation);

describe('two tanks in two columns of one log', () => {
  const days = 60;
  const kit = ['tank', 'nursery'].flatMap((vessel) => backyardKit.map((column) => ({ ...column, vessel })));
  const system = fitSystem('backyard', twoTanks);
  // How much is fed in each tank is not written down: the waters tell.
  const free = ['start.nitrate', 'fish.tilapia.ration=40..160 g/d', 'fish.fry.ration=5..60 g/d'];
  const truth = [0.8, 0.4, 1];
  const text = inventedLog(truly(system, free, truth, days), { seed: 3, days, columns: kit, spoilt: 0.03 });
  const log = readInvented(text, inventedMap(kit, 'tank'));
  const fitted = fit({ system, log, free, furtherStarts: 0 });

  it('are told apart by the summary, and both are of the system', () => {
    const { courses, doubts } = summaryOfLog(log, system.read([], days).scenario);
    expect(courses.filter(({ reads }) => reads === 'ammonia').map(({ vessel }) => vessel)).toEqual([
      'nursery',
      'tank',
    ]);
    expect(doubts).toEqual([]);
  });

  it('are both fitted to, each reading in its own water', () => {
    expect(fitted.courses.map(({ reads, vessel }) => `${reads}@${vessel}`).sort()).toEqual(
      kit.map(({ reads, vessel }) => `${reads}@${vessel}`).sort(),
    );
    expect(fitted.readings).toBe(log.readings.length);
    for (const error of off(fitted, truth)) expect(Math.abs(error)).toBeLessThan(2.5);
    for (const { deviation } of fitted.numbers) expect(deviation).toBeLessThan(0.55);
  });

  it('readings of one tank say less of what was fed in the other', () => {
    const alone = readInvented(text, inventedMap(kit.slice(0, backyardKit.length), 'tank'));
    const { numbers, courses } = fit({ system, log: alone, free, furtherStarts: 0 });
    expect(new Set(courses.map(({ vessel }) => vessel))).toEqual(new Set(['tank']));
    // Nitrate goes round, so that the one tank tells of the other too.
    expect(numbers[2].deviation).toBeGreaterThan(1.1 * fitted.numbers[2].deviation);
  });

  it('feed and temperature of each tank go to its own fish and water', () => {
    const map = [
      'date: { column: Date }',
      'columns:',
      '  TAN 1: { reads: ammonia, in: tank, unit: mg N/L, resolution: 0.1 }',
      '  TAN 2: { reads: ammonia, in: nursery, unit: mg N/L, resolution: 0.1 }',
      '  Feed 1: { feed: tilapia, unit: g }',
      '  Feed 2: { feed: fry, unit: g }',
      '  Temp 1: { reads: temperature, in: tank, unit: degC }',
      '  Temp 2: { reads: temperature, in: nursery, unit: degC }',
      '',
    ].join('\n');
    /** How far readings that stay lie above the model in the tank, beyond those in the nursery, in errors of the kit. */
    const apart = (first: number, second: number): number => {
      const rows = Array.from(
        { length: 12 },
        (_, i) =>
          `2026-03-${String(i + 1).padStart(2, '0')},0.5,0.5,${first},${second},24,${24 + second / 20}`,
      );
      const header = 'Date,TAN 1,TAN 2,Feed 1,Feed 2,Temp 1,Temp 2';
      const told = fit({
        system,
        log: readInvented(`${[header, ...rows].join('\n')}\n`, map),
        free: ['aob.growth'],
        furtherStarts: 0,
      });
      const of = (vessel: string): number =>
        told.courses.find((course) => course.vessel === vessel)?.offset ?? Number.NaN;
      return of('tank') - of('nursery');
    };
    // Much feed in one tank: its model lies above the other's. The fit lies between both, so that either may be near its readings.
    expect(apart(300, 0)).toBeLessThan(-2);
    expect(apart(0, 120)).toBeGreaterThan(2);
  });
});

describe('two systems in one log, a map each', () => {
  const days = 60;
  const names = ['start.nitrate'];
  const system = fitSystem('backyard');
  // Of nitrate at the start a log says much; of the capacity of films, which are bound by what comes to them, little.
  const truths = { 'north ': 1.5, 'south ': -1.5 };
  const text = joinedLogs(
    Object.entries(truths).map(([name, truth], i) => ({
      system: name,
      text: inventedLog(truly(system, names, [truth], days), {
        seed: 20 + i,
        days,
        columns: backyardKit,
        spoilt: 0.03,
      }),
    })),
  );

  it.each(Object.entries(truths))('%s', (name, truth) => {
    const log = readInvented(text, inventedMap(backyardKit, 'tank', name));
    expect([log.from, log.to, log.days]).toEqual(['2026-03-01', '2026-04-29', days]);
    for (const { column } of log.readings) expect(column.startsWith(name)).toBe(true);
    // The columns of the other are told of, once each.
    const other = name === 'north ' ? 'south ' : 'north ';
    expect(log.oddities.map(({ column, problem, done }) => `${column}: ${problem}: ${done}`)).toEqual(
      [...backyardKit.map(({ reads, vessel }) => `${reads} ${vessel}`), 'Feed', 'Temp'].map(
        (column) => `${other}${column}: a column that the map does not name: left out`,
      ),
    );
    const fitted = fit({ system, log, free: names, furtherStarts: 0 });
    expect(Math.abs(off(fitted, [truth])[0])).toBeLessThan(2.5);
    // The other's lies outside a band of 99 %.
    expect(Math.abs(off(fitted, [-truth])[0])).toBeGreaterThan(2.58);
  });
});
