import { unitOf, waterComponents, type Component, type WaterComponent } from '../processes/components.js';
import type { Model } from '../model/model.js';
import type { SampledRun } from '../run/run.js';
import { suspendedNames, vesselSources } from './series.js';

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
  run: SampledRun,
  place: string,
  vessels: readonly number[],
  wholes: readonly WhyQuantity[],
): WhyQuantity[] {
  const { model } = run;
  const units = new Map(vesselSources(run).map(({ name, unit }) => [name, unit]));
  const both = (named: string, components: readonly WaterComponent[]): WhyQuantity[] => {
    const states = components.flatMap((each) => statesOf(model, each, (vessel) => vessels.includes(vessel)));
    const amount = { kind: 'states', states } as const;
    const unit = unitOf[components[0]];
    const whole = wholes.find(({ name }) => name === `${named}@system`);
    return [
      {
        name: `${named}@${place}`,
        unit: units.get(`${named}@${model.layout.vessels[vessels[0]]}`) ?? unit,
        amount,
        per: { kind: 'water', vessels },
        ...(whole && { whole }),
      },
      { name: `${named}-amount@${place}`, unit, amount },
    ];
  };
  return waterComponents.flatMap((each) => [
    ...(each === 'solids' ? both('solids', ['solids', 'refractory']) : []),
    ...both(suspendedNames[each] ?? each, [each]),
  ]);
}

/** Water and what stands in some vessels: volume, biofilm (per surface and whole), settled solids, lime. */
function inVessels(model: Model, place: string, vessels: readonly number[]): WhyQuantity[] {
  const value = vessels.reduce((total, vessel) => total + model.scenario.vessels[vessel].surface, 0);
  const per = { kind: 'size', name: `surface of ${place}`, value } as const;
  const settled = (name: string, components: readonly Component[]): WhyQuantity[] => {
    const states = components.flatMap((each) => statesOf(model, each, (vessel) => vessels.includes(vessel)));
    const amount = { kind: 'states', states } as const;
    return states.length === 0 ? [] : [{ name: `${name}@${place}`, unit: unitOf[components[0]], amount }];
  };
  const held = (component: 'aob' | 'nob'): WhyQuantity[] => {
    const states = statesOf(model, component, (vessel) => vessels.includes(vessel));
    if (states.length === 0) return [];
    const amount = { kind: 'states', states } as const;
    const unit = unitOf[component];
    return [
      { name: `${component}@${place}`, unit: `${unit}/m2`, amount, per },
      { name: `${component}-amount@${place}`, unit, amount },
    ];
  };
  return [
    { name: `volume@${place}`, unit: 'm3', amount: { kind: 'water', vessels } },
    ...held('aob'),
    ...held('nob'),
    ...settled('settled', ['settled', 'settled-refractory']),
    ...settled('degradable-settled', ['settled']),
    ...settled('refractory-settled', ['settled-refractory']),
    ...settled('calcite', ['calcite']),
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
  const fat = { kind: 'states', states: cohorts.map((cohort) => fish[cohort].fat) } as const;
  const number = { kind: 'states', states: cohorts.map((cohort) => fish[cohort].number) } as const;
  return [
    { name: `fish-mass@${place}`, unit: 'g', amount: mass },
    { name: `fish-number@${place}`, unit: 'fish', amount: number },
    { name: `fish-mean-mass@${place}`, unit: 'g', amount: mass, per: number },
    { name: `fish-fat@${place}`, unit: 'g COD', amount: fat },
  ];
}

/** Standing crop of some plantings, if there are any: dry mass and nitrogen. */
function cropQuantities(model: Model, place: string, plantings: readonly number[]): WhyQuantity[] {
  if (plantings.length === 0) return [];
  const batches = model.layout.batches.filter(({ planting }) => plantings.includes(planting));
  const states = (which: 'mass' | 'nitrogen' | 'fruit'): Store => ({
    kind: 'states',
    states: batches.map((batch) => batch[which]).filter((state) => state >= 0),
  });
  const bears = batches.some(({ fruit }) => fruit >= 0);
  return [
    { name: `crop-mass@${place}`, unit: 'g dry', amount: states('mass') },
    { name: `crop-nitrogen@${place}`, unit: 'g N', amount: states('nitrogen') },
    ...(bears ? [{ name: `fruit-mass@${place}`, unit: 'g dry', amount: states('fruit') }] : []),
  ];
}

/**
 * Every quantity of a run that is a sum of what processes, flows and actions did. Names and units are
 * those of the series; beside them `-amount` for what a series gives per volume or surface, and
 * `@system` for all vessels, cohorts or plantings together (a concentration: the mean of all water).
 */
export function quantitiesOf(run: SampledRun): readonly WhyQuantity[] {
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
    ...scenario.fish.flatMap(({ name }, cohort) => fishQuantities(model, name, [cohort])),
    ...scenario.plantings.flatMap(({ name }, planting) => cropQuantities(model, name, [planting])),
    ...whole,
    ...inVessels(model, 'system', all),
    ...wholeOwn,
    ...fishQuantities(model, 'system', [...scenario.fish.keys()]),
    ...cropQuantities(model, 'system', [...scenario.plantings.keys()]),
  ];
}
