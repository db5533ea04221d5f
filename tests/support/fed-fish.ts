import type { Component } from '../../packages/core/src/processes/components.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import type { Feed, Ration } from '../../packages/core/src/scenario/scenario.js';
import type { Run } from '../../packages/core/src/run/run.js';
import { amountOf, doneRun, extentOf, lastOf } from './run-of.js';
import { constant, scenarioOf, startOf, stillWater, tilapia, vessel } from './scenario-builder.js';

const parameters = createParameters();

/** Feeds by protein: what a species of this kind is given. */
const feeds: Readonly<Record<string, Feed>> = {
  'rainbow-trout': { name: 'trout-42', protein: 0.42 },
  'european-perch': { name: 'carnivore-45', protein: 0.45 },
  barramundi: { name: 'carnivore-45', protein: 0.45 },
  'murray-cod': { name: 'carnivore-45', protein: 0.45 },
  'golden-perch': { name: 'carnivore-45', protein: 0.45 },
  'atlantic-salmon': { name: 'carnivore-45', protein: 0.45 },
  'african-catfish': { name: 'starter-42', protein: 0.42 },
};

/** Fish to be fed. What is absent: the feed of its kind, its reference temperature, 100 g, 60 days. */
export interface Fed {
  readonly species: string;
  /** As the model takes it: what is offered, of which a share is not eaten. */
  readonly ration: Ration;
  readonly feed?: Feed;
  readonly temperature?: number;
  readonly mass?: number;
  readonly days?: number;
}

const processes = ['feeding', 'uneaten-feed', 'growing', 'excretion', 'upkeep-fat', 'upkeep'];

/** Fish in a tank of unlimited oxygen without a filter, and what came of their feed. */
export interface FedFish {
  /** g of feed offered. */
  readonly feed: number;
  /** g N of that feed. */
  readonly nitrogen: number;
  /** g gained by the fish, deaths aside. */
  readonly gain: number;
  /** g, mean mass at the end. */
  readonly mass: number;
  /** g of feed eaten. */
  readonly eaten: number;
  /** g COD of body per g wet at the end. */
  readonly density: number;
  /** What feeding and upkeep made (+) or took (-) of a component, in its unit. */
  made(component: Component): number;
}

function made(run: Run, component: Component): number {
  return run.model.rows
    .filter(({ process }) => processes.includes(process))
    .flatMap((row) => row.entries.map((entry) => ({ ...entry, extent: extentOf(run, lastOf(run), row.id) })))
    .filter((entry) => entry.component === component)
    .reduce((sum, entry) => sum + entry.coefficient * entry.extent, 0);
}

/** Oxygen demand of the body at the end, g COD per g wet. */
function densityOf(run: Run, species: string): number {
  const lean =
    (parameters.value(`fish.${species}.body-nitrogen`) / parameters.value('protein.nitrogen')) *
    parameters.value('protein.demand');
  const held = (component: Component): number => amountOf(run, lastOf(run), component, 'fish');
  return lean + held('fish-fat') / held('fish-mass');
}

/** Feeds fish by the model. */
export function fedFish({ species, ration, feed, temperature, mass = 100, days = 60 }: Fed): FedFish {
  const given = feed ?? feeds[species] ?? { name: 'grower-32', protein: 0.32 };
  const degrees = temperature ?? parameters.value(`fish.${species}.reference-temperature`);
  // So much water that nothing of what fish give off is felt.
  const tank = vessel('tank', 1e9, { temperature: constant(degrees) });
  const water = stillWater(1e-3, 7.5, { oxygen: 100 });
  const cohorts = [tilapia('fish', 'tank', { species, ration, feed: given, mass })];
  const run = doneRun(
    scenarioOf([tank], { start: [startOf(tank, { water })], fish: cohorts, days, every: days }),
    {
      tolerance: 1e-8,
    },
  );
  const last = lastOf(run);
  const offered = extentOf(run, last, 'feeding@fish') + extentOf(run, last, 'uneaten-feed@fish');
  return {
    feed: offered,
    nitrogen: offered * given.protein * parameters.value('protein.nitrogen'),
    eaten: extentOf(run, last, 'feeding@fish'),
    density: densityOf(run, species),
    gain: made(run, 'fish-mass'),
    mass: amountOf(run, last, 'fish-mass', 'fish') / amountOf(run, last, 'fish-number', 'fish'),
    made: (component) => made(run, component),
  };
}
