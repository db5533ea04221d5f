import fc from 'fast-check';
import type { Action, Scenario } from '../../packages/core/src/scenario/scenario.js';
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

const share = (low: number, high: number) =>
  fc.integer({ min: 0, max: 1000 }).map((n) => low + ((high - low) * n) / 1000);

const vesselSpec = fc.record({
  volume: share(0.2, 4),
  surface: share(0, 100),
  floor: share(0, 4),
  open: share(0, 4),
  aeration: share(5, 80),
  capture: fc.constantFrom(0, 0, 0.3, 0.8),
  exchange: fc.constantFrom(0, 0, 0.05),
  /** Pumped from the sump (m3 d-1; the first always is). */
  feed: fc.constantFrom(0, 4, 20),
  /** Two places, below this one, to which it gives its water. */
  next: fc.tuple(share(0, 1), share(0, 1)),
  split: share(0.1, 0.9),
  temperature: share(12, 30),
  fish: fc.constantFrom(0, 0, 30),
  crop: fc.constantFrom('', '', 'basil', 'lettuce-butterhead'),
  water: fc.record({
    tan: share(0, 3),
    nitrite: share(0, 2),
    nitrate: share(0, 80),
    solids: share(0, 20),
    alkalinity: share(0.3, 4),
    oxygen: share(2, 9),
    chloride: share(1, 200),
  }),
  cells: share(0, 0.45),
  settled: share(0, 200),
});

const actionSpec = fc.record({
  at: share(0, 3),
  kind: fc.constantFrom('dose', 'change-water', 'drain-solids', 'clean', 'harvest-fish', 'power'),
  where: share(0, 0.999),
  share: share(0.05, 0.95),
});

/** Random networks of two to six vessels with all that can stand in them, run for three days. */
export const networks: fc.Arbitrary<Scenario> = fc
  .record({
    specs: fc.array(vesselSpec, { minLength: 2, maxLength: 6 }),
    actions: fc.array(actionSpec, { maxLength: 5 }),
    cap: fc.constantFrom(0, 0.02, Infinity),
    et0: share(0, 0.01),
    timer: fc.boolean(),
  })
  .map(({ specs, actions, cap, et0, timer }): Scenario => {
    const last = specs.length - 1;
    const name = (index: number): string => (index === last ? 'sump' : `vessel-${index}`);
    const vessels = specs.map((spec, index) =>
      vessel(name(index), spec.volume, {
        surface: spec.surface,
        floor: spec.floor,
        open: spec.open,
        aeration: spec.aeration,
        capture: spec.capture,
        exchange: spec.exchange,
        temperature: constant(spec.temperature),
      }),
    );
    const flows = specs.slice(0, last).flatMap((spec, index) => {
      const below = (at: number): number => index + 1 + Math.floor(at * (last - index) * 0.999);
      const [one, two] = spec.next.map(below);
      const rate = index === 0 ? 10 : spec.feed;
      return [
        ...(rate > 0 ? [pumped('sump', name(index), rate)] : []),
        ...(one === two
          ? [gravity(name(index), name(one))]
          : [gravity(name(index), name(one), spec.split), gravity(name(index), name(two), 1 - spec.split)]),
      ];
    });
    const stocked = specs.flatMap((spec, index) => (spec.fish > 0 ? [{ ...spec, index }] : []));
    const planted = specs.flatMap((spec, index) => (spec.crop === '' ? [] : [{ ...spec, index }]));
    const act = ({ at, kind, where, share }: (typeof actions)[number]): Action[] => {
      const place = name(Math.floor(where * specs.length));
      switch (kind) {
        case 'dose':
          return [{ at, deed: { kind, vessel: place, product: 'sodium-bicarbonate', mass: 100 * share } }];
        case 'change-water':
          return [{ at, deed: { kind, vessel: place, share, water: 'mains' } }];
        case 'drain-solids':
          return [{ at, deed: { kind, vessel: place, share, water: 0.01 } }];
        case 'clean':
          return [{ at, deed: { kind, vessel: place, biofilm: share, solids: share } }];
        case 'harvest-fish':
          return stocked
            .slice(0, 1)
            .map(({ index }) => ({ at, deed: { kind, cohort: `fish-${index}`, share } }));
        default:
          return [false, true].map((running) => ({
            at: running ? at + share / 2 : at,
            deed: { kind: 'pump', pump: 'main', running },
          }));
      }
    };
    const sump = specs[last].volume;
    return scenarioOf(vessels, {
      days: 3,
      et0: constant(et0),
      waters: [sourceWater('mains', { nitrate: 2, chloride: 30 })],
      pumps: [
        {
          name: 'main',
          inlet: 0.3 * sump,
          restart: 0.5 * sump,
          ...(timer && { timer: { on: 0.3, off: 0.1, offset: 0 } }),
        },
      ],
      flows,
      topUp: { level: 0.9 * sump, rate: 5, sources: [{ kind: 'mains', water: 'mains', dailyCap: cap }] },
      cohorts: stocked.map(({ index, fish }) =>
        tilapia(`fish-${index}`, name(index), { number: fish, mass: 80 }),
      ),
      plantings: planted.map(({ index, crop }) =>
        planting(`crop-${index}`, name(index), crop, 2, {
          harvest: 30,
          start: 'staggered',
          batches: 2,
          age: 29,
        }),
      ),
      start: specs.map((spec, index) => {
        const { alkalinity, ...water } = spec.water;
        const still = stillWater(alkalinity, 7.4, water);
        return startOf(vessels[index], {
          water: still,
          aob: spec.cells,
          nob: spec.cells,
          settled: spec.settled,
        });
      }),
      actions: actions.flatMap(act),
    });
  });
