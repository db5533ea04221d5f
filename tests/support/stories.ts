import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openScenarioText, type OpenScenario } from '@leat/core';

/** Folder of the scenarios that ship with the command. */
const folder = fileURLToPath(new URL('../../packages/cli/scenarios/', import.meta.url));

/** Reads a file that a shipped scenario names. */
const load = (path: string): string => readFileSync(path, 'utf8');

/** A shipped scenario, with values over it at some paths. */
export interface Story {
  readonly scenario: string;
  readonly set?: Readonly<Record<string, string>>;
  readonly days?: number;
}

const trade =
  '{ at: 14 d, every: 14 d, harvest-fish: { cohort: growers, number: 12 } }, ' +
  '{ at: 14 d, every: 14 d, grade: { cohort: juveniles, to: growers, share: 20 % } }, ' +
  '{ at: 14 d, every: 14 d, stock: { cohort: juveniles, number: 12, mass: 20 g } }';
const bare = ['lettuce', 'basil', 'chard', 'mint'].map((each) => `{ at: 14 d, leave-empty: ${each} }`);

/** Ten stories whose endings are known. */
export const told = {
  drought: {
    scenario: 'glasshouse',
    set: { actions: '[{ at: 20 d, top-up: stopped }]' },
    days: 45,
  },
  emptyBeds: {
    scenario: 'glasshouse',
    set: {
      actions: `[${[...bare, trade].join(', ')}]`,
      // Bare beds drink little of the mains, which bring base: the keeper doses twice as much, and goes on.
      dosing: '[{ into: sump, product: potassium-bicarbonate, mass: 240 g, every: 7 d }]',
    },
    days: 120,
  },
  pumpAtNight: {
    scenario: 'glasshouse',
    set: {
      'vessels.tank-1.aeration': '0 1/h',
      'vessels.tank-2.aeration': '0 1/h',
      actions: '[{ at: 20.9 d, for: 8 h, pump-off: main }]',
      every: '1 h', // a fright of hours is dated by outputs as fine
    },
    days: 22,
  },
  sixtyFish: {
    scenario: 'backyard',
    set: {
      'start.biofilm': 'uncycled',
      actions:
        '[{ at: 2 d, stock: { cohort: tilapia, number: 60, mass: 300 g } }, { at: 2 d, feed: { cohort: tilapia, factor: 5 } }]',
    },
    days: 30,
  },
  cold: { scenario: 'backyard', set: { 'climate.water-temperature': '9 degC' }, days: 30 },
  salt: {
    scenario: 'backyard',
    // The salt takes the place of the weekly base: shell brings base here, so that salt alone is the trouble.
    set: {
      dosing: '[{ into: sump, product: sodium-chloride, mass: 2 kg, at: 20 d }]',
      'vessels.sump.lime': '{ kind: shell, mass: 10 kg }',
    },
  },
  overfeeding: {
    scenario: 'glasshouse',
    set: { 'fish.growers.ration': '2400 g/d', 'fish.juveniles.ration': '1800 g/d' },
    days: 60,
  },
  startUp: { scenario: 'start-up' },
  scrubbed: {
    scenario: 'backyard',
    set: { actions: '[{ at: 60 d, clean: { vessel: bed, biofilm: 98 %, solids: 90 % } }]' },
  },
  goodYear: { scenario: 'glasshouse', days: 365 },
} as const satisfies Readonly<Record<string, Story>>;

/** Opens a story, or the shipped scenario it is told of with another text laid over that. */
export function openStory({ scenario, set = {}, days }: Story, over?: string): OpenScenario {
  const values = Object.entries(set).map(([path, value]) => ({ path, value }));
  const name = `${folder}${scenario}.yaml`;
  if (over !== undefined)
    return openScenarioText(`include: ${scenario}.yaml\n${over}`, { file: `${folder}told.yaml`, load });
  return openScenarioText(load(name), { file: name, load, set: values, ...(days !== undefined && { days }) });
}
