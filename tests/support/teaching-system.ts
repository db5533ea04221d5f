import type { TimedAction, Scenario } from '../../packages/core/src/scenario/scenario.js';
import {
  constant,
  gravity,
  planting,
  pumped,
  scenarioOf,
  sourceWater,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from './scenario-builder.js';

/** What a test may vary of the teaching system. */
export interface TeachingOptions {
  readonly days: number;
  readonly temperature?: number;
  /** Share of the room on surfaces taken by each group at the start; absent: cycled. */
  readonly seed?: number;
  readonly planted?: boolean;
  /** Whether 500 g of potassium bicarbonate are given each week. */
  readonly dosed?: boolean;
  /** Feed times this. */
  readonly load?: number;
  readonly actions?: readonly TimedAction[];
}

/**
 * An invented system with a bit of everything: two fish tanks, a settler, a biofilter, a media bed, two
 * raft beds and a sump, rationed mains and a rain tank, two cohorts, three plantings, dosing and drains.
 */
export function teachingSystem(options: TeachingOptions): Scenario {
  const { days, temperature: degrees = 25, seed, load = 1 } = options;
  const temperature = constant(degrees);
  const tank = { kind: 'fish-tank', open: 2, aeration: 60, surface: 7, temperature } as const;
  const raft = { kind: 'raft-bed', floor: 6, covered: 6, aeration: 20, surface: 20, temperature } as const;
  const vessels = [
    vessel('tank-1', 1.8, tank),
    vessel('tank-2', 1.6, tank),
    vessel('settler', 0.4, {
      kind: 'settler',
      capture: 0.5,
      floor: 0.5,
      surface: 2,
      covered: 0.5,
      temperature,
    }),
    vessel('biofilter', 0.5, { kind: 'biofilter', surface: 125, aeration: 100, covered: 0.5, temperature }),
    // A channel by name: its plants take more than its area.
    vessel('media', 0.6, {
      kind: 'channel',
      surface: 225,
      floor: 3,
      covered: 3,
      aeration: 50,
      temperature,
    }),
    vessel('raft-1', 2, raft),
    vessel('raft-2', 2.2, raft),
    vessel('sump', 1.2, { kind: 'sump', open: 1, surface: 5, temperature }),
  ];
  const bed = (name: string, place: string, crop: string, area: number, harvest: number) =>
    planting(name, place, crop, area, {
      batches: 2,
      harvest,
      start: options.planted === false ? 'empty' : 'staggered',
      age: harvest * 0.75,
    });
  const weekly = (from: number, action: TimedAction['action']): TimedAction[] =>
    Array.from({ length: Math.ceil(Math.max(0, days - from) / 7) }, (_, week) => ({
      at: from + 7 * week,
      action,
    }));
  const dose = { kind: 'dose', vessel: 'sump', product: 'potassium-bicarbonate', mass: 500 } as const;
  const drain = { kind: 'drain-solids', vessel: 'settler', share: 0.9, water: 0.02 } as const;
  return scenarioOf(vessels, {
    days,
    et0: constant(0.004),
    waters: [
      sourceWater('mains', { nitrate: 1 }),
      sourceWater('rain', { ...stillWater(0.1, 6.5), chloride: 2 }),
    ],
    pumps: [{ name: 'main', inlet: 0.3, restart: 0.45 }],
    flows: [
      pumped('sump', 'tank-1', 48),
      pumped('sump', 'tank-2', 48),
      gravity('tank-1', 'settler'),
      gravity('tank-2', 'settler'),
      gravity('settler', 'biofilter'),
      gravity('biofilter', 'media', 0.4),
      gravity('biofilter', 'raft-1', 0.3),
      gravity('biofilter', 'raft-2', 0.3),
      gravity('media', 'sump'),
      gravity('raft-1', 'sump'),
      gravity('raft-2', 'sump'),
    ],
    topUp: {
      level: 1,
      rate: 2,
      sources: [{ kind: 'rain-tank' }, { kind: 'mains', water: 'mains', dailyCap: 0.3 }],
    },
    rainTank: { capacity: 2, volume: 0.5, roof: 40, rain: constant(0.0008), water: 'rain' },
    fish: [
      tilapia('grown', 'tank-1', { number: 70, mass: 180, ration: { kind: 'share', perDay: 0.012 * load } }),
      tilapia('young', 'tank-2', { number: 80, mass: 60, ration: { kind: 'share', perDay: 0.02 * load } }),
    ],
    plantings: [
      bed('basil', 'media', 'basil', 6, 35),
      bed('lettuce', 'raft-1', 'lettuce-butterhead', 6, 32),
      bed('pak-choi', 'raft-2', 'pak-choi', 6, 32),
    ],
    start: vessels.map((each) =>
      startOf(each, {
        volume: each.name === 'sump' ? 1 : each.volume,
        water: stillWater(2, 7.4, { nitrate: 20, solids: 2, chloride: 60 }),
        aob: seed ?? 0.3,
        nob: seed ?? 0.12,
      }),
    ),
    actions: [
      ...(options.dosed === false ? [] : weekly(7, dose)),
      ...weekly(3, drain),
      ...(options.actions ?? []),
    ],
  });
}
