import { unitOf, waterComponents, type Component } from '../processes/components.js';
import type { Model } from '../model/model.js';
import type { Run } from '../run/run.js';
import { vesselSources } from './series.js';

/** Something that is held, as a sum of states, as water of vessels, or as a size that does not change. */
export type Store =
  | { readonly kind: 'states'; readonly states: readonly number[] }
  | { readonly kind: 'water'; readonly vessels: readonly number[] }
  | { readonly kind: 'size'; readonly name: string; readonly value: number };

/** A quantity that `why` can split: an amount, or an amount per another. */
export interface WhyQuantity {
  readonly name: string;
  readonly unit: string;
  readonly amount: Store;
  readonly per?: Store;
  /** The same quantity over the whole system, for a concentration in one vessel. */
  readonly whole?: WhyQuantity;
}

const statesOf = (model: Model, component: Component, within: (vessel: number) => boolean): number[] =>
  model.layout.states.flatMap((state, i) =>
    state.component === component && within(state.vessel) ? [i] : [],
  );

/** Water components of some vessels: as a concentration (with the whole beside it) and as an amount. */
function inWater(
  run: Run,
  place: string,
  vessels: readonly number[],
  wholes: readonly WhyQuantity[],
): WhyQuantity[] {
  const { model } = run;
  const units = new Map(vesselSources(run).map(({ name, unit }) => [name, unit]));
  return waterComponents.flatMap((component): WhyQuantity[] => {
    const states = statesOf(model, component, (vessel) => vessels.includes(vessel));
    const amount = { kind: 'states', states } as const;
    const whole = wholes.find(({ name }) => name === `${component}@system`);
    return [
      {
        name: `${component}@${place}`,
        unit: units.get(`${component}@${model.layout.vessels[vessels[0]]}`) ?? unitOf[component],
        amount,
        per: { kind: 'water', vessels },
        ...(whole && { whole }),
      },
      { name: `${component}-amount@${place}`, unit: unitOf[component], amount },
    ];
  });
}

/** Water and what stands in some vessels: volume, biofilm (per surface and whole), settled solids. */
function inVessels(model: Model, place: string, vessels: readonly number[]): WhyQuantity[] {
  const value = vessels.reduce((total, vessel) => total + model.scenario.vessels[vessel].surface, 0);
  const per = { kind: 'size', name: `surface of ${place}`, value } as const;
  const held = (component: 'aob' | 'nob' | 'settled'): WhyQuantity[] => {
    const states = statesOf(model, component, (vessel) => vessels.includes(vessel));
    if (states.length === 0) return [];
    const amount = { kind: 'states', states } as const;
    const unit = unitOf[component];
    if (component === 'settled') return [{ name: `settled@${place}`, unit, amount }];
    return [
      { name: `${component}@${place}`, unit: `${unit}/m2`, amount, per },
      { name: `${component}-amount@${place}`, unit, amount },
    ];
  };
  return [
    { name: `volume@${place}`, unit: 'm3', amount: { kind: 'water', vessels } },
    ...held('aob'),
    ...held('nob'),
    ...held('settled'),
  ];
}

/** Components of a user's own in some vessels: in water per volume and as an amount, elsewhere as an amount. */
function ownQuantities(
  { layout }: Model,
  place: string,
  vessels: readonly number[],
  wholes: readonly WhyQuantity[] = [],
): WhyQuantity[] {
  return layout.own.flatMap(({ component, states }): WhyQuantity[] => {
    const { id, unit } = component;
    const there = vessels.map((vessel) => states[vessel]).filter((state) => state >= 0);
    if (there.length === 0) return [];
    const amount = { kind: 'states', states: there } as const;
    const name = `${id}@${place}`;
    if (component.place !== 'water') return [{ name, unit, amount }];
    const whole = wholes.find((each) => each.name === `${id}@system`);
    return [
      { name, unit: `${unit}/m3`, amount, per: { kind: 'water', vessels }, ...(whole && { whole }) },
      { name: `${id}-amount@${place}`, unit, amount },
    ];
  });
}

/** Fish of some cohorts, if there are any: mass, number, mean mass. */
function fishQuantities(model: Model, place: string, cohorts: readonly number[]): WhyQuantity[] {
  if (cohorts.length === 0) return [];
  const { fish } = model.layout;
  const mass = { kind: 'states', states: cohorts.map((cohort) => fish[cohort].mass) } as const;
  const number = { kind: 'states', states: cohorts.map((cohort) => fish[cohort].number) } as const;
  return [
    { name: `fish-mass@${place}`, unit: 'g', amount: mass },
    { name: `fish-number@${place}`, unit: 'fish', amount: number },
    { name: `fish-mean-mass@${place}`, unit: 'g', amount: mass, per: number },
  ];
}

/** Standing crop of some plantings, if there are any: dry mass and nitrogen. */
function cropQuantities(model: Model, place: string, plantings: readonly number[]): WhyQuantity[] {
  if (plantings.length === 0) return [];
  const batches = model.layout.batches.filter(({ planting }) => plantings.includes(planting));
  const states = (which: 'mass' | 'nitrogen'): Store => ({
    kind: 'states',
    states: batches.map((batch) => batch[which]),
  });
  return [
    { name: `crop-mass@${place}`, unit: 'g dry', amount: states('mass') },
    { name: `crop-nitrogen@${place}`, unit: 'g N', amount: states('nitrogen') },
  ];
}

/**
 * Every quantity of a run that is a sum of what processes, flows and actions did. Names and units are
 * those of the series; beside them `-amount` for what a series gives per volume or surface, and
 * `@system` for all vessels, cohorts or plantings together (a concentration: the mean of all water).
 */
export function quantitiesOf(run: Run): readonly WhyQuantity[] {
  const { model } = run;
  const { layout, scenario } = model;
  const all = [...layout.vessels.keys()];
  const whole = inWater(run, 'system', all, []);
  const wholeOwn = ownQuantities(model, 'system', all);
  return [
    ...layout.vessels.flatMap((name, vessel) => [
      ...inWater(run, name, [vessel], whole),
      ...inVessels(model, name, [vessel]),
      ...ownQuantities(model, name, [vessel], wholeOwn),
    ]),
    ...scenario.cohorts.flatMap(({ name }, cohort) => fishQuantities(model, name, [cohort])),
    ...scenario.plantings.flatMap(({ name }, planting) => cropQuantities(model, name, [planting])),
    ...whole,
    ...inVessels(model, 'system', all),
    ...wholeOwn,
    ...fishQuantities(model, 'system', [...scenario.cohorts.keys()]),
    ...cropQuantities(model, 'system', [...scenario.plantings.keys()]),
  ];
}
