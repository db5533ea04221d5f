// Reads numbers as: base plan
import { sum } from '../base/sum.js';
import { conditionsOf } from '../library/conditions.js';
import type { Parameters } from '../library/parameters.js';
import type { Run } from '../run/run.js';
import { feedGiven } from './harvest.js';

/** What one product brought to one vessel over a run. */
export interface BaseUse {
  readonly product: string;
  readonly vessel: string;
  /** g. */
  readonly mass: number;
  /** eq of alkalinity; below 0: an acid. */
  readonly equivalents: number;
  /** What the product is, what it brings beside its base and how to handle it, as its row in the tables says. */
  readonly note: string;
}

/** Base and acid used in a run, by actions, plans, rules and dosers together. */
export interface BasePlan {
  /** Length of the run, d. */
  readonly days: number;
  /** Feed given, kg. */
  readonly feed: number;
  /** Products that bring base or acid, by vessel, in the order in which they were first used. */
  readonly uses: readonly BaseUse[];
  /** eq of base in all. */
  readonly base: number;
  /** eq of acid in all. */
  readonly acid: number;
}

/** g of a product that went into a vessel. */
type Given = readonly [vessel: string, product: string, mass: number];

/** What dosers that hold pH or alkalinity gave. */
function byDosers({ model, samples }: Run): readonly Given[] {
  const { dosers = [] } = model.scenario;
  const last = samples[samples.length - 1];
  return model.instances.flatMap(({ row, vessel, place, doser }): Given[] => {
    if (doser === undefined) return [];
    const name = model.layout.vessels[vessel];
    const product = dosers[doser].products.find((each) => place === `${name} (${each})`);
    return product === undefined ? [] : [[name, product, last.x[row] - samples[0].x[row]]];
  });
}

/** g of every product that went into a vessel over a run, by actions, plans, rules and dosers together. */
export function productsGiven(
  run: Run,
): readonly { readonly product: string; readonly vessel: string; readonly mass: number }[] {
  return givenIn(run).map(([vessel, product, mass]) => ({ vessel, product, mass }));
}

/** All that was given, one by one. */
function givenIn(run: Run): readonly Given[] {
  const { samples, doses } = run;
  const last = samples[samples.length - 1];
  return [
    ...doses
      .filter(({ time }) => time >= samples[0].time && time <= last.time)
      .map(({ vessel, product, mass }): Given => [vessel, product, mass]),
    ...byDosers(run),
  ];
}

/** eq of alkalinity in one g of a product. */
function strength(parameters: Parameters, product: string): number {
  return parameters.value(`dose.${product}.alkalinity`);
}

/**
 * The base plan of a run: grams and equivalents of every product with alkalinity, for growers who must buy and feed it.
 * What has none (salt, citric acid) is left out.
 */
export function basePlan(run: Run): BasePlan {
  const { model, samples } = run;
  const { parameters } = model;
  const last = samples[samples.length - 1];
  const given = givenIn(run);
  const masses = new Map<string, { vessel: string; product: string; mass: number[] }>();
  for (const [vessel, product, mass] of given) {
    const key = `${vessel} ${product}`;
    const entry = masses.get(key) ?? { vessel, product, mass: [] };
    masses.set(key, entry);
    entry.mass.push(mass);
  }
  const uses = [...masses.values()].flatMap(({ vessel, product, mass }): BaseUse[] => {
    const total = sum(mass);
    const equivalents = total * strength(parameters, product);
    const note = conditionsOf(parameters.number(`dose.${product}.alkalinity`));
    return equivalents === 0 ? [] : [{ product, vessel, mass: total, equivalents, note }];
  });
  return {
    days: last.time - samples[0].time,
    feed: feedGiven(run) / 1000,
    uses,
    base: sum(uses.map(({ equivalents }) => Math.max(0, equivalents))),
    acid: sum(uses.map(({ equivalents }) => Math.max(0, -equivalents))),
  };
}
