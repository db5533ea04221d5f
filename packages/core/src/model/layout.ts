// Reads numbers as: where lime may lie
import { sum } from '../base/sum.js';
import { batchName, type Scenario, type Vessel } from '../scenario/scenario.js';
import {
  unitOf,
  waterComponents,
  type Component,
  type FixedComponent,
  type WaterComponent,
} from '../processes/components.js';
import type { Tables } from './scope.js';
import { asOurs, type OwnComponent } from './own.js';

/** One state: what it counts and where. */
export interface State {
  readonly component: Component;
  /** Vessel, cohort or planting batch. */
  readonly place: string;
  /** Index of the vessel in which it stands. */
  readonly vessel: number;
}

/**
 * One batch of a planting, by index: its `planting`, its `vessel`, the states of its dry `mass` without fruit and its
 * `nitrogen`.
 */
export interface Batch {
  readonly name: string;
  readonly planting: number;
  readonly vessel: number;
  /** m2. */
  readonly area: number;
  readonly mass: number;
  readonly nitrogen: number;
  /** State of its fruit, -1 where it bears none. */
  readonly fruit: number;
}

/**
 * States of a cohort: its `mass`, `number` and body `fat`, of those that died and lie in the water the mass (`dead`) and fat
 * (`deadFat`), -1 where these are taken out; and the index of its `vessel`.
 */
export interface FishStates {
  readonly mass: number;
  readonly number: number;
  readonly fat: number;
  readonly dead: number;
  readonly deadFat: number;
  readonly vessel: number;
}

/** Places of all states in y. Water first: of each vessel in the order of waterComponents. */
export interface Layout {
  readonly states: readonly State[];
  readonly vessels: readonly string[];
  /** Of each vessel the state of its ammonia oxidisers, -1 where it has none; */
  readonly aob: readonly number[];
  /** The same of nitrite oxidisers. */
  readonly nob: readonly number[];
  /** The same of what its film has got used to. */
  readonly acclimation: readonly number[];
  /** The same of the share of its nitrifiers that are awake. */
  readonly awake: readonly number[];
  /** The same of its heterotrophs. */
  readonly heterotrophs: readonly number[];
  /** The same of settled solids that break down. */
  readonly settled: readonly number[];
  /** The same of settled solids that hardly break down. */
  readonly settledRefractory: readonly number[];
  /** The same of lime. */
  readonly calcite: readonly number[];
  /** Of each cohort where its states stand. */
  readonly fish: readonly FishStates[];
  readonly batches: readonly Batch[];
  /** Components of a user's own, behind all of ours. */
  readonly own: readonly OwnStates[];
}

/** Where a component of a user's own stands: its `states`, one index for each vessel, -1 where there is none. */
export interface OwnStates {
  readonly component: OwnComponent;
  readonly states: readonly number[];
}

/** Those of them that go with the water. */
export function ownInWater({ own }: Layout): readonly OwnStates[] {
  return own.filter(({ component }) => component.place === 'water');
}

/** Unit in which a component is counted, ours or a user's own. */
export function unitIn({ own }: Layout, component: Component): string {
  return own.find(({ component: { id } }) => id === component)?.component.unit ?? unitOf[component];
}

/** Index of a water component of a vessel. */
export function waterState(vessel: number, component: WaterComponent): number {
  return vessel * waterComponents.length + waterComponents.indexOf(component);
}

/** A place in a layout. */
export interface PlaceIndex {
  /** Index of the vessel. */
  readonly vessel: number;
  /** Index of the cohort, or -1. */
  readonly cohort: number;
  /** Index of the batch, or -1. */
  readonly batch: number;
  /** Index of the doser, where it is one. */
  readonly doser?: number | undefined;
  /** Index of the vessel whose water is measured, where a probe stands in another. */
  readonly probe?: number | undefined;
}

/** Index of a component at a place: -1 where its vessel has none, undefined for what is held nowhere. */
export function stateOf(layout: Layout, place: PlaceIndex, component: string): number | undefined {
  switch (component as FixedComponent) {
    case 'aob':
      return layout.aob[place.vessel];
    case 'nob':
      return layout.nob[place.vessel];
    case 'acclimation':
      return layout.acclimation[place.vessel];
    case 'awake':
      return layout.awake[place.vessel];
    case 'heterotrophs':
      return layout.heterotrophs[place.vessel];
    case 'settled':
      return layout.settled[place.vessel];
    case 'settled-refractory':
      return layout.settledRefractory[place.vessel];
    case 'calcite':
      return layout.calcite[place.vessel];
    case 'fish-mass':
      return layout.fish[place.cohort].mass;
    case 'fish-number':
      return layout.fish[place.cohort].number;
    case 'fish-fat':
      return layout.fish[place.cohort].fat;
    case 'fish-dead':
      return layout.fish[place.cohort].dead;
    case 'fish-dead-fat':
      return layout.fish[place.cohort].deadFat;
    case 'crop-mass':
      return layout.batches[place.batch].mass;
    case 'crop-nitrogen':
      return layout.batches[place.batch].nitrogen;
    case 'fruit-mass':
      return layout.batches[place.batch].fruit;
    default: {
      const water = waterComponents.find((name) => name === component);
      if (water !== undefined) return waterState(place.vessel, water);
      return layout.own.find(({ component: { id } }) => id === component)?.states[place.vessel];
    }
  }
}

/** Share of the wetted surface of a system from which on a vessel gets lime scale of its own. */
const SCALES = 0.1;

/**
 * Vessels that may hold lime: those given some, those dosed with a product that brings it, and those with much surface. Surfaces are
 * drawn in an ensemble: its members have the states of the file as it stands, or their series would not be the same ones.
 */
export function limedVessels(
  { vessels, actions, rules, dosers = [] }: Scenario,
  parameters: Tables,
): ReadonlySet<string> {
  const brings = (product: string): boolean => {
    const id = `dose.${product}.calcite`;
    return parameters.has(id) && parameters.value(id) > 0;
  };
  const done = [
    ...actions.map(({ action }) => action),
    ...rules.flatMap(({ doing, undoing }) => [...doing, ...undoing]),
  ];
  const dosed = [
    ...done.flatMap((action) => (action.kind === 'dose' && brings(action.product) ? [action.vessel] : [])),
    ...dosers.flatMap(({ vessel, products }) => (products.some(brings) ? [vessel] : [])),
  ];
  const whole = sum(vessels.map(({ surface }) => surface));
  const own = vessels.filter(({ lime, surface }) => lime !== undefined || surface > SCALES * whole);
  return new Set([...own.map(({ name }) => name), ...dosed]);
}

/** Whether a component of a user's own stands in a vessel. */
function stands({ place }: OwnComponent, { name, surface, floor }: Vessel): boolean {
  if (place === 'water') return true;
  if (place === 'surface') return surface > 0;
  return place === 'floor' ? floor > 0 : place.includes(name);
}

/** Gives every state of a scenario its place in y, components of a user's own last; `limed` as `limedVessels` finds them. */
export function layOut(
  scenario: Scenario,
  parameters: Tables,
  ownComponents: readonly OwnComponent[] = [],
  limed = limedVessels(scenario, parameters),
): Layout {
  const vessels = scenario.vessels.map((vessel) => vessel.name);
  const index = new Map(vessels.map((name, at) => [name, at]));
  const vesselOf = (name: string): number => index.get(name) ?? -1;
  const states: State[] = [];
  const add = (component: Component, place: string, vessel: number): number =>
    states.push({ component, place, vessel }) - 1;
  vessels.forEach((name, vessel) => waterComponents.forEach((component) => add(component, name, vessel)));
  const onSurface = (component: Component) =>
    scenario.vessels.map((vessel, index) => (vessel.surface > 0 ? add(component, vessel.name, index) : -1));
  const aob = onSurface('aob');
  const nob = onSurface('nob');
  const acclimation = onSurface('acclimation');
  const awake = onSurface('awake');
  const heterotrophs = onSurface('heterotrophs');
  const onFloor = (component: Component) =>
    scenario.vessels.map((vessel, index) =>
      vessel.floor > 0 || vessel.capture > 0 ? add(component, vessel.name, index) : -1,
    );
  const settled = onFloor('settled');
  const settledRefractory = onFloor('settled-refractory');
  const calcite = scenario.vessels.map(({ name }, index) =>
    limed.has(name) ? add('calcite', name, index) : -1,
  );
  const fish = scenario.fish.map((cohort) => {
    const vessel = vesselOf(cohort.vessel);
    const own = (component: Component): number => add(component, cohort.name, vessel);
    const left = (component: Component): number => (cohort.dead === 'left' ? own(component) : -1);
    return {
      mass: own('fish-mass'),
      number: own('fish-number'),
      fat: own('fish-fat'),
      dead: left('fish-dead'),
      deadFat: left('fish-dead-fat'),
      vessel,
    };
  });
  const batches = scenario.plantings.flatMap((planting, index) =>
    Array.from({ length: planting.batches }, (_, batch) => {
      const vessel = vesselOf(planting.vessel);
      const name = batchName(planting.name, planting.batches, batch);
      return {
        name,
        planting: index,
        vessel,
        area: planting.area / planting.batches,
        mass: add('crop-mass', name, vessel),
        nitrogen: add('crop-nitrogen', name, vessel),
        fruit: planting.picks === undefined ? -1 : add('fruit-mass', name, vessel),
      };
    }),
  );
  const own = ownComponents.map((component): OwnStates => ({
    component,
    states: scenario.vessels.map((vessel, at) =>
      stands(component, vessel) ? add(asOurs(component), vessel.name, at) : -1,
    ),
  }));
  return {
    ...{ states, vessels, aob, nob, acclimation, awake, heterotrophs },
    ...{ settled, settledRefractory, calcite, fish, batches, own },
  };
}
