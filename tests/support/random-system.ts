import fc from 'fast-check';
import { InputError } from '../../packages/core/src/base/faults.js';
import { checkScenario } from '../../packages/core/src/scenario/check-scenario.js';
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

const share = (low: number, high: number) =>
  fc.integer({ min: 0, max: 1000 }).map((n) => low + ((high - low) * n) / 1000);

/** A number between two, over all its powers of ten alike. */
const scaled = (low: number, high: number) => share(Math.log(low), Math.log(high)).map(Math.exp);

type Numbers = fc.Arbitrary<number>;

/** How far the numbers of a random system go. */
interface Ranges {
  readonly volume: Numbers;
  readonly surface: Numbers;
  readonly aeration: Numbers;
  /** Pumped from the sump into the first vessel, and into any other, m3 d-1. */
  readonly main: Numbers;
  readonly feed: Numbers;
  readonly temperature: Numbers;
  readonly fish: Numbers;
  readonly mass: Numbers;
  readonly planted: Numbers;
  readonly et0: Numbers;
  readonly water: Readonly<
    Record<'tan' | 'nitrite' | 'nitrate' | 'solids' | 'alkalinity' | 'oxygen' | 'chloride', Numbers>
  >;
  readonly cells: Numbers;
  readonly settled: Numbers;
}

const usual: Ranges = {
  volume: share(0.2, 4),
  surface: share(0, 100),
  aeration: share(5, 80),
  main: fc.constant(10),
  feed: fc.constantFrom(0, 4, 20),
  temperature: share(12, 30),
  fish: fc.constantFrom(0, 0, 30),
  mass: fc.constant(80),
  planted: fc.constant(2),
  et0: share(0, 0.01),
  water: {
    tan: share(0, 3),
    nitrite: share(0, 2),
    nitrate: share(0, 80),
    solids: share(0, 20),
    alkalinity: share(0.3, 4),
    oxygen: share(2, 9),
    chloride: share(1, 200),
  },
  cells: share(0, 0.45),
  settled: share(0, 200),
};

/** From a jar to a farm, from spring water to sludge, sound or not. */
const wide: Ranges = {
  volume: scaled(0.001, 1000),
  surface: fc.oneof(fc.constant(0), scaled(0.01, 1e5)),
  aeration: fc.oneof(fc.constant(0), scaled(0.1, 2000)),
  main: scaled(0.001, 1e4),
  feed: fc.oneof(fc.constant(0), scaled(0.001, 1e4)),
  temperature: share(0, 40),
  fish: fc.oneof(
    fc.constant(0),
    scaled(1, 1e5).map((number) => Math.round(number)),
  ),
  mass: scaled(0.5, 5000),
  planted: scaled(0.01, 1000),
  et0: fc.oneof(fc.constant(0), scaled(1e-4, 0.05)),
  water: {
    tan: fc.oneof(fc.constant(0), scaled(1e-6, 500)),
    nitrite: fc.oneof(fc.constant(0), scaled(1e-6, 500)),
    nitrate: fc.oneof(fc.constant(0), scaled(1e-6, 2000)),
    solids: fc.oneof(fc.constant(0), scaled(1e-6, 2000)),
    alkalinity: share(0.01, 20),
    oxygen: share(0, 20),
    chloride: fc.oneof(fc.constant(0), scaled(1e-3, 2e4)),
  },
  cells: fc.oneof(fc.constant(0), scaled(1e-9, 0.45)),
  settled: fc.oneof(fc.constant(0), scaled(1e-3, 1e5)),
};

const vesselSpec = (ranges: Ranges) =>
  fc.record({
    volume: ranges.volume,
    surface: ranges.surface,
    floor: share(0, 4),
    open: share(0, 4),
    aeration: ranges.aeration,
    capture: fc.constantFrom(0, 0, 0.3, 0.8),
    exchange: fc.constantFrom(0, 0, 0.05),
    /** Pumped from the sump (m3 d-1; the first always is). */
    feed: ranges.feed,
    /** Two places, below this one, to which it gives its water. */
    next: fc.tuple(share(0, 1), share(0, 1)),
    split: share(0.1, 0.9),
    temperature: ranges.temperature,
    fish: ranges.fish,
    mass: ranges.mass,
    crop: fc.constantFrom('', '', 'basil', 'lettuce-butterhead'),
    planted: ranges.planted,
    water: fc.record(ranges.water),
    cells: ranges.cells,
    settled: ranges.settled,
  });

const actionSpec = fc.record({
  at: share(0, 3),
  kind: fc.constantFrom('dose', 'change-water', 'drain-solids', 'clean', 'harvest-fish', 'power'),
  where: share(0, 0.999),
  share: share(0.05, 0.95),
});

const networksIn = (ranges: Ranges): fc.Arbitrary<Scenario> =>
  fc
    .record({
      specs: fc.array(vesselSpec(ranges), { minLength: 2, maxLength: 6 }),
      actions: fc.array(actionSpec, { maxLength: 5 }),
      cap: fc.constantFrom(0, 0.02, Infinity),
      main: ranges.main,
      et0: ranges.et0,
      timer: fc.boolean(),
    })
    .map(({ specs, actions, cap, main, et0, timer }): Scenario => {
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
        const rate = index === 0 ? main : spec.feed;
        return [
          ...(rate > 0 ? [pumped('sump', name(index), rate)] : []),
          ...(one === two
            ? [gravity(name(index), name(one))]
            : [gravity(name(index), name(one), spec.split), gravity(name(index), name(two), 1 - spec.split)]),
        ];
      });
      const stocked = specs.flatMap((spec, index) => (spec.fish > 0 ? [{ ...spec, index }] : []));
      const planted = specs.flatMap((spec, index) => (spec.crop === '' ? [] : [{ ...spec, index }]));
      const act = ({ at, kind, where, share }: (typeof actions)[number]): TimedAction[] => {
        const place = name(Math.floor(where * specs.length));
        switch (kind) {
          case 'dose':
            return [
              { at, action: { kind, vessel: place, product: 'sodium-bicarbonate', mass: 100 * share } },
            ];
          case 'change-water':
            return [{ at, action: { kind, vessel: place, share, water: 'mains' } }];
          case 'drain-solids':
            return [{ at, action: { kind, vessel: place, share, water: 0.01 } }];
          case 'clean':
            return [{ at, action: { kind, vessel: place, biofilm: share, solids: share } }];
          case 'harvest-fish':
            return stocked
              .slice(0, 1)
              .map(({ index }) => ({ at, action: { kind, cohort: `fish-${index}`, share } }));
          default:
            return [false, true].map((running) => ({
              at: running ? at + share / 2 : at,
              action: { kind: 'pump', pump: 'main', running },
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
        fish: stocked.map(({ index, fish, mass }) =>
          tilapia(`fish-${index}`, name(index), { number: fish, mass }),
        ),
        plantings: planted.map(({ index, crop, planted: area }) =>
          planting(`crop-${index}`, name(index), crop, area, {
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

function isSound(scenario: Scenario): boolean {
  try {
    checkScenario(scenario);
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}

/** Random networks of two to six vessels with all that can stand in them, run for three days: those that a file might hold. */
export const networks = networksIn(usual).filter(isSound);

/** The same with numbers over many powers of ten, whether anyone would build that or not. */
export const wideNetworks = networksIn(wide);
